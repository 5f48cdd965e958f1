package daubline.ui.sheet;

import daubline.ui.Parts;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.views.BranchOwner;
import java.util.Optional;
import org.eclipse.core.runtime.Platform;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** Opens objects of a study in the sheet editor. */
public final class Sheets {

  private Sheets() {
  }

  /** The open study that an element of a tree or grid belongs to. */
  public static Optional<OpenStudy> studyOf(Object element) {
    return switch (element) {
      case OpenStudy study -> Optional.of(study);
      case BranchOwner owner -> Optional.of(owner.study());
      case EObject object -> Studies.get().all().stream().filter(s -> EcoreUtil.isAncestor(s.session().study(), object)).findFirst();
      case null, default -> Optional.empty();
    };
  }

  /** Opens an object; returns the editor, or empty when the object belongs to no open study. */
  public static Optional<SheetEditor> open(EObject object) {
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    Optional<OpenStudy> study = studyOf(object);
    if (window == null || study.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of((SheetEditor) window.getActivePage().openEditor(new SheetInput(study.get(), object), Parts.SHEET));
    } catch (PartInitException e) {
      Platform.getLog(Sheets.class).error(e.getMessage(), e);
      return Optional.empty();
    }
  }
}
