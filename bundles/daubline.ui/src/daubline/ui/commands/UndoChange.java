package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.sheet.Pending;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.Map;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.commands.IElementUpdater;
import org.eclipse.ui.menus.UIElement;

/** Takes the last change back; a value that is still being typed is dropped first. */
public final class UndoChange extends StudyHandler implements IElementUpdater {

  @Override
  boolean can(OpenStudy study) {
    return Pending.isTyping() || study.session().undoLabel().isPresent();
  }

  @Override
  void run(OpenStudy study) {
    if (!Pending.drop()) {
      study.session().undo();
    }
  }

  @Override
  void noticeState() {
    ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
    if (commands != null) {
      commands.refreshElements("org.eclipse.ui.edit.undo", null);
    }
  }

  @Override
  @SuppressWarnings("rawtypes")
  public void updateElement(UIElement element, Map parameters) {
    String label = Studies.get().current().flatMap(s -> s.session().undoLabel()).orElse("");
    element.setText(Words.of("command.undo", label).strip());
    element.setTooltip(Words.of("command.undo.tip", label).strip());
  }
}
