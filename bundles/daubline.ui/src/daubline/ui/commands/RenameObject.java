package daubline.ui.commands;

import daubline.model.Named;
import daubline.ui.Words;
import daubline.ui.sheet.Sheets;
import daubline.ui.study.OpenStudy;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.jface.window.Window;
import org.eclipse.ui.handlers.HandlerUtil;

/** Gives the thing selected in the study another name. */
public final class RenameObject extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    if (HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection selection) {
      Object chosen = selection.getFirstElement() instanceof OpenStudy open ? open.session().study() : selection.getFirstElement();
      if (chosen instanceof Named named && !OpenStudy.isBlind(named)) {
        Sheets.studyOf(selection.getFirstElement()).filter(s -> !s.session().isReadOnly()).ifPresent(study -> rename(event, study, named));
      }
    }
    return null;
  }

  private static void rename(ExecutionEvent event, OpenStudy study, Named named) {
    String before = named.getName() == null ? "" : named.getName();
    InputDialog dialog = new InputDialog(HandlerUtil.getActiveShell(event), Words.of("rename.title"), Words.of("rename.text"), before,
        text -> text.isBlank() ? Words.of("new.empty") : null);
    if (dialog.open() == Window.OK && !dialog.getValue().strip().equals(before)) {
      study.edit("change.field", Words.of("feature.name"), () -> named.setName(dialog.getValue().strip()));
    }
  }
}
