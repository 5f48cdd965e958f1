package daubline.app;

import daubline.ui.study.FileDrop;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The window: its bars, its size and what may be dropped on it. Menus are in the extensions of daubline.ui. */
final class DaublineWindowAdvisor extends WorkbenchWindowAdvisor {

  private static final Point WANTED = new Point(1440, 900);

  DaublineWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
    super(configurer);
  }

  @Override
  public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
    return new ActionBarAdvisor(configurer);
  }

  @Override
  public void preWindowOpen() {
    IWorkbenchWindowConfigurer window = getWindowConfigurer();
    Rectangle screen = Display.getCurrent().getPrimaryMonitor().getClientArea();
    window.setInitialSize(new Point(Math.min(WANTED.x, screen.width), Math.min(WANTED.y, screen.height)));
    window.setTitle("Daubline");
    window.setShowCoolBar(true);
    window.setShowPerspectiveBar(true);
    window.setShowStatusLine(true);
    window.setShowProgressIndicator(true);
  }

  @Override
  public void postWindowOpen() {
    FileDrop.on(getWindowConfigurer().getWindow().getShell());
  }
}
