package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.edit.EditTarget.Deed;
import daubline.ui.edit.Edits;
import daubline.ui.sheet.Sheets;
import daubline.ui.study.OpenStudy;
import java.util.List;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.handlers.HandlerUtil;

/** Deletes what is selected in the study, with everything in it; undo brings it back. */
public final class DeleteObjects extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    if (Display.getCurrent().getFocusControl() instanceof Text) {
      // the bar in which something is searched for has the keyboard
      Edits.target(Deed.DELETE).ifPresent(t -> t.act(Deed.DELETE));
      return null;
    }
    if (HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection selection) {
      List<EObject> objects = selection.stream().filter(EObject.class::isInstance).map(EObject.class::cast).toList();
      if (!objects.isEmpty()) {
        Sheets.studyOf(objects.get(0)).filter(s -> !s.session().isReadOnly())
            .ifPresent(study -> study.session().delete(label(objects), objects));
      }
    }
    return null;
  }

  private static String label(List<EObject> objects) {
    String first = OpenStudy.nameOf(objects.get(0));
    return objects.size() == 1 ? Words.of("change.remove", first) : Words.of("change.removeSeveral", first, objects.size() - 1);
  }
}
