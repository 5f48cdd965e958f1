package daubline.ui.sheet;

import daubline.ui.grid.Grid;
import java.util.function.BooleanSupplier;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** A value that is still being typed: undo drops it before it touches the study, and saving commits it. */
public final class Pending {

  /** Key of the data under which a field keeps what takes its text back. */
  static final String REVERT = "daubline.revert";

  private Pending() {
  }

  /** Whether something is being typed that the study does not hold yet. */
  public static boolean isTyping() {
    NatTable grid = grid();
    return grid != null && grid.getData(Grid.TYPING) instanceof BooleanSupplier typing && typing.getAsBoolean() || field() != null;
  }

  /** Drops what is being typed and closes an open cell; returns whether anything had been typed. */
  public static boolean drop() {
    boolean typing = isTyping();
    NatTable grid = grid();
    if (grid != null) {
      grid.getActiveCellEditor().close();
      grid.setFocus();
      return typing;
    }
    Runnable revert = field();
    if (revert != null) {
      revert.run();
    }
    return revert != null;
  }

  /** Commits what is being typed. */
  public static void commit() {
    NatTable grid = grid();
    if (grid != null) {
      grid.commitAndCloseActiveCellEditor();
    } else if (field() != null) {
      Display.getCurrent().getFocusControl().getShell().forceFocus();
    }
  }

  private static NatTable grid() {
    for (Control c = Display.getCurrent().getFocusControl(); c != null; c = c.getParent()) {
      if (c instanceof NatTable table) {
        boolean open = table.getActiveCellEditor() != null && !table.getActiveCellEditor().isClosed();
        return open ? table : null;
      }
    }
    return null;
  }

  private static Runnable field() {
    Control focus = Display.getCurrent().getFocusControl();
    return focus == null || !(focus.getData(REVERT) instanceof Runnable revert) ? null : revert;
  }
}
