package daubline.ui.record;

import daubline.record.ResidueTable;
import org.eclipse.swt.widgets.Composite;

/** Residues by class, with one button that lays out a row for each class. */
final class ResiduesPage extends RecordPage {

  ResiduesPage(Composite parent, ResidueTable table) {
    super(parent, table);
    button("record.layOut", () -> {
      table.layOut();
      refresh();
      grid().control().setFocus();
    });
  }
}
