package daubline.ui.store;

import daubline.base.MoistureBasis;
import daubline.record.StepTable;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.record.RecordPage;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/** The steps of a lot, what is left of it and the water in it, with the buttons that split it and put it together with others. */
public final class StepsPage extends RecordPage {

  private static final List<String> BASES = List.of("none", "wet", "dry");

  private final StepTable table;
  private final OpenStudy study;
  private final Combo basis;
  private final List<Button> moves;

  /** A page for the steps of a lot. */
  public StepsPage(Composite parent, OpenStudy study, StepTable table) {
    super(parent, table);
    this.table = table;
    this.study = study;
    moves = List.of(button("store.split", () -> SplitDialog.open(study, table.lot())), button("store.merge", () -> MergeDialog.open(study, List.of(table.lot()))));
    basis = new Combo(bar(), SWT.READ_ONLY);
    BASES.forEach(b -> basis.add(Words.of("store.basis." + b)));
    basis.setData("id", "store.basis");
    Pages.named(basis, Words.of("store.basis"), Words.of("store.basis.tip"));
    basis.addListener(SWT.Selection, e -> {
      table.basis(MoistureBasis.find(BASES.get(basis.getSelectionIndex())).orElse(null));
      refresh();
    });
    refresh();
  }

  @Override
  public void refresh() {
    super.refresh();
    if (basis != null) {
      basis.select(Math.max(0, BASES.indexOf(Optional.ofNullable(table.lot().getMoistureBasis()).orElse("none"))));
      basis.setEnabled(!study.session().isReadOnly());
      moves.forEach(b -> b.setEnabled(!study.session().isReadOnly()));
    }
  }
}
