package daubline.app;

import daubline.ui.study.Start;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** What the workbench does at its start and its end. */
final class DaublineAdvisor extends WorkbenchAdvisor {

  private final String[] arguments;

  DaublineAdvisor(String[] arguments) {
    this.arguments = arguments;
  }

  @Override
  public String getInitialWindowPerspectiveId() {
    return "daubline.app.evidence";
  }

  @Override
  public void initialize(IWorkbenchConfigurer configurer) {
    configurer.setSaveAndRestore(true);
  }

  @Override
  public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
    return new DaublineWindowAdvisor(configurer);
  }

  @Override
  public void postStartup() {
    Start.with(arguments);
  }

  /** Asks about unsaved studies before anything is closed. */
  @Override
  public boolean preShutdown() {
    return Start.mayEnd();
  }
}
