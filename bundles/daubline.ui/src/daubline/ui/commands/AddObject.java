package daubline.ui.commands;

import daubline.ui.sheet.Sheets;
import daubline.ui.study.Additions;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.handlers.HandlerUtil;

/** Adds a new object to the current study and opens it; the parameter says what. */
public final class AddObject extends AbstractHandler {

  /** The id of the parameter. */
  public static final String KIND = "daubline.ui.add.kind";

  @Override
  public Object execute(ExecutionEvent event) {
    Optional<OpenStudy> study = Studies.get().current();
    if (study.isPresent() && !study.get().session().isReadOnly()) {
      Additions.Kind kind = Additions.Kind.valueOf(event.getParameter(KIND).toUpperCase(Locale.ROOT));
      EObject added = Additions.add(study.get(), kind, selected(event));
      Sheets.open(added);
    }
    return null;
  }

  private static EObject selected(ExecutionEvent event) {
    return HandlerUtil.getCurrentSelection(event) instanceof IStructuredSelection s && s.getFirstElement() instanceof EObject o ? o : null;
  }
}
