package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.study.DiskCopy;
import daubline.ui.study.OpenStudy;
import java.util.Map;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Copies the current study to where the last copy went, without asking. */
public final class CopyToSameDisk extends StudyHandler implements IElementUpdater {

  @Override
  boolean can(OpenStudy study) {
    return DiskCopy.last().isPresent();
  }

  @Override
  void run(OpenStudy study) {
    DiskCopy.last().ifPresent(folder -> DiskCopy.start(study, folder));
  }

  @Override
  void noticeState() {
    ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
    if (commands != null) {
      commands.refreshElements("daubline.ui.copyToSameDisk", null);
    }
  }

  @Override
  @SuppressWarnings("rawtypes")
  public void updateElement(UIElement element, Map parameters) {
    DiskCopy.last().ifPresent(folder -> element.setText(Words.of("disk.again", folder)));
  }
}
