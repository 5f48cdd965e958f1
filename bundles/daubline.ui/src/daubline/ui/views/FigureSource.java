package daubline.ui.views;

import daubline.ui.Parts;
import org.eclipse.core.runtime.Platform;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/**
 * What a figure is called as a file and which table holds the numbers that it draws.
 *
 * @param name its name without an ending
 * @param table the short name of the table; empty when no table of the publication holds them
 */
public record FigureSource(String name, String table) {

  /** Of a figure that has neither. */
  public static final FigureSource NONE = new FigureSource("figure", "");

  /** Whether there is a table to show. */
  boolean isShown() {
    return !table.isEmpty();
  }

  /** Shows the table among the tables of the publication. */
  void show() {
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    try {
      ((TablesView) window.getActivePage().showView(Parts.TABLES)).choose(table);
    } catch (PartInitException e) {
      Platform.getLog(FigureSource.class).error(e.getMessage(), e);
    }
  }
}
