package daubline.ui.commands;

import daubline.ui.publish.PublishWizard;
import daubline.ui.study.OpenStudy;
import org.eclipse.swt.widgets.Display;

/** Writes everything that leaves the current study, after a preview. */
public final class PublishStudy extends StudyHandler {

  @Override
  void run(OpenStudy study) {
    PublishWizard.open(Display.getDefault().getActiveShell(), study);
  }
}
