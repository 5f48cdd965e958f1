package daubline.ui.store;

import daubline.record.TraceTable;
import daubline.ui.record.RecordPage;
import daubline.ui.sheet.Sheets;
import org.eclipse.swt.widgets.Composite;

/** Where a lot came from and where it went, with a button that opens the selected lot or trial. */
public final class TracePage extends RecordPage {

  /** A page for a trace. */
  public TracePage(Composite parent, TraceTable table) {
    super(parent, table);
    button("store.open", () -> grid().selected().flatMap(p -> table.object(p.y)).ifPresent(Sheets::open));
  }
}
