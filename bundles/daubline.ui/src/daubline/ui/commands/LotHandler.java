package daubline.ui.commands;

import daubline.model.Lot;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.sheet.Sheets;
import daubline.ui.study.OpenStudy;
import java.util.List;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.handlers.HandlerUtil;

/** A command on the selected lots, or on the lot in the active sheet. */
abstract class LotHandler extends AbstractHandler {

  abstract void run(OpenStudy study, List<Lot> lots);

  @Override
  public final Object execute(ExecutionEvent event) {
    List<Lot> lots = HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection s
        ? s.stream().filter(Lot.class::isInstance).map(Lot.class::cast).toList() : List.of();
    if (lots.isEmpty() && HandlerUtil.getActiveEditor(event) instanceof SheetEditor editor && editor.object() instanceof Lot lot) {
      lots = List.of(lot);
    }
    List<Lot> chosen = lots;
    if (!chosen.isEmpty()) {
      Sheets.studyOf(chosen.get(0)).filter(s -> !s.session().isReadOnly()).ifPresent(study -> run(study, chosen));
    }
    return null;
  }
}
