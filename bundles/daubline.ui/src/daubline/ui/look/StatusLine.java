package daubline.ui.look;

import org.eclipse.jface.action.IStatusLineManager;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorSite;
import org.eclipse.ui.IViewSite;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartSite;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** The line at the bottom of the window: what is selected and what was just done. */
public final class StatusLine {

  private StatusLine() {
  }

  /** Says something on behalf of the part that a person works in, and of the sheet in the middle; empty takes it away. */
  public static void say(String text) {
    IWorkbenchWindow window = PlatformUI.isWorkbenchRunning() && Display.getCurrent() != null ? PlatformUI.getWorkbench().getActiveWorkbenchWindow() : null;
    if (window != null && window.getActivePage() != null) {
      IWorkbenchPart active = window.getActivePage().getActivePart();
      IEditorPart editor = window.getActivePage().getActiveEditor();
      say(active == null ? null : active.getSite(), text);
      if (editor != null && editor != active) {
        say(editor.getSite(), text);
      }
    }
  }

  private static void say(IWorkbenchPartSite site, String text) {
    IStatusLineManager line = switch (site) {
      case IViewSite view -> view.getActionBars().getStatusLineManager();
      case IEditorSite editor -> editor.getActionBars().getStatusLineManager();
      case null, default -> null;
    };
    if (line != null) {
      line.setMessage(text);
    }
  }
}
