package daubline.ui.look;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** Over what a dialog opens. A tip or a progress window closes by itself and would take the question with it, unanswered. */
public final class Over {

  private Over() {
  }

  /** The dialog a person is in, otherwise the window; null before there is a window. */
  public static Shell shell() {
    Shell active = Display.getDefault().getActiveShell();
    if (active != null && active.getData() instanceof Dialog dialog && !(dialog instanceof ProgressMonitorDialog)) {
      return active;
    }
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    return window == null ? active : window.getShell();
  }
}
