package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.Map;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Does the last undone change again. */
public final class RedoChange extends StudyHandler implements IElementUpdater {

  @Override
  boolean can(OpenStudy study) {
    return study.session().redoLabel().isPresent();
  }

  @Override
  void run(OpenStudy study) {
    study.session().redo();
  }

  @Override
  void noticeState() {
    ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
    if (commands != null) {
      commands.refreshElements("org.eclipse.ui.edit.redo", null);
    }
  }

  @Override
  @SuppressWarnings("rawtypes")
  public void updateElement(UIElement element, Map parameters) {
    String label = Studies.get().current().flatMap(s -> s.session().redoLabel()).orElse("");
    element.setText(Words.of("command.redo", label).strip());
    element.setTooltip(Words.of("command.redo.tip", label).strip());
  }
}
