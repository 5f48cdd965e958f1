package daubline.ui.commands;

import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.sheet.Sheets;
import daubline.ui.study.Additions;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.handlers.HandlerUtil;

/** Adds a repeat of the selected trial, or of the one in the active sheet. */
public final class RepeatTrial extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    Trial trial = HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection s && s.getFirstElement() instanceof Trial t ? t : null;
    if (trial == null && HandlerUtil.getActiveEditor(event) instanceof SheetEditor editor && editor.object() instanceof Trial t) {
      trial = t;
    }
    if (trial != null && OpenStudy.isBlind(trial)) {
      Notices.show(Words.of("repeat.blind", OpenStudy.nameOf(trial)), Words.of("repeat.blind.remedy"));
    } else if (trial != null) {
      Trial original = trial;
      Sheets.studyOf(original).map(study -> Additions.repeat(study, original)).ifPresent(Sheets::open);
    }
    return null;
  }
}
