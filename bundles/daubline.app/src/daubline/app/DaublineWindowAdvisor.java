package daubline.app;

import daubline.ui.study.FileDrop;
import daubline.ui.study.Studies;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The window: its bars, its size and what may be dropped on it. Menus are in the extensions of daubline.ui. */
final class DaublineWindowAdvisor extends WorkbenchWindowAdvisor {

  private static final String NAME = "Daubline";
  private static final Point WANTED = new Point(1440, 900);

  private final Runnable entitle = this::entitle;

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
    window.setTitle(NAME);
    window.setShowCoolBar(true);
    window.setShowPerspectiveBar(true);
    window.setShowStatusLine(true);
    window.setShowProgressIndicator(true);
  }

  @Override
  public void postWindowOpen() {
    FileDrop.on(getWindowConfigurer().getWindow().getShell());
    Studies.get().onChange(entitle);
    entitle();
  }

  /** The study that commands act on stands in the title, so that two windows on a task bar are told apart. */
  private void entitle() {
    String title = Studies.get().current().map(s -> s.name() + " – " + NAME).orElse(NAME);
    if (!title.equals(getWindowConfigurer().getTitle())) {
      getWindowConfigurer().setTitle(title);
    }
  }

  @Override
  public void dispose() {
    Studies.get().remove(entitle);
    super.dispose();
  }
}
