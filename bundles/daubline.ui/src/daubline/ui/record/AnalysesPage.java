package daubline.ui.record;

import daubline.record.AnalysisStep;
import daubline.record.AnalysisTable;
import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** Analyses as printed; below each, as chosen here, with its iron on one basis and normalised. */
final class AnalysesPage extends RecordPage {

  private static final List<AnalysisStep> IRON = List.of(AnalysisStep.MEASURED, AnalysisStep.IRON_AS_FEO, AnalysisStep.IRON_AS_FE2O3);

  AnalysesPage(Composite parent, AnalysisTable table) {
    super(parent, table);
    Combo iron = new Combo(bar(), SWT.READ_ONLY);
    IRON.forEach(step -> iron.add(Words.of("record.iron." + step.name())));
    iron.select(0);
    iron.setData("id", "record.iron");
    Pages.named(iron, Words.of("record.iron"), Words.of("record.iron.tip"));
    Button normalised = new Button(bar(), SWT.CHECK);
    normalised.setText(Words.of("record.normalised"));
    normalised.setSelection(true);
    normalised.setBackground(Hue.ASH.color());
    normalised.setData("id", "record.normalised");
    Pages.named(normalised, Words.of("record.normalised"), Words.of("record.normalised.tip"));
    Runnable look = () -> {
      table.look(IRON.get(Math.max(0, iron.getSelectionIndex())), normalised.getSelection());
      refresh();
    };
    iron.addListener(SWT.Selection, e -> look.run());
    normalised.addListener(SWT.Selection, e -> look.run());
  }
}
