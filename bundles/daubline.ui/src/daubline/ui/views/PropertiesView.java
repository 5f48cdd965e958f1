package daubline.ui.views;

import daubline.model.Study;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.look.Described;
import daubline.ui.sheet.PropertiesPane;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.IPartListener;
import org.eclipse.ui.ISelectionListener;
import org.eclipse.ui.IWorkbenchPart;

/** What is written about whatever is selected in the study or open in front, for quick changes; several things of one kind together. */
public final class PropertiesView extends StudyPart {

  private final ISelectionListener follower = this::follow;
  private final IPartListener opener = new Opener();
  private Described described;
  private PropertiesPane pane;
  private List<EObject> chosen = List.of();
  private List<EObject> shown = List.of();

  @Override
  protected void fill(Composite area) {
    described = new Described(area);
    getSite().getPage().addSelectionListener(Parts.STUDY, follower);
    getSite().getPage().addPartListener(opener);
    ISelection now = getSite().getPage().getSelection(Parts.STUDY);
    if (getSite().getPage().getActiveEditor() instanceof SheetEditor editor) {
      chosen = List.of(editor.object());
    } else if (now != null) {
      chosen = objects(now);
    }
  }

  private void follow(IWorkbenchPart part, ISelection selection) {
    choose(objects(selection));
  }

  private static List<EObject> objects(ISelection selection) {
    return selection instanceof IStructuredSelection s ? s.stream().map(o -> o instanceof OpenStudy study ? study.session().study() : o)
        .filter(o -> o instanceof EObject object && PropertiesPane.has(object)).map(EObject.class::cast).toList() : List.of();
  }

  private void choose(List<EObject> objects) {
    if (!objects.isEmpty() && !objects.equals(chosen)) {
      chosen = objects;
      show(study());
    }
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    List<EObject> now = study.map(s -> chosen.stream().filter(o -> EcoreUtil.isAncestor(s.session().study(), o)).toList()).orElse(List.of());
    boolean alike = now.stream().map(EObject::eClass).distinct().count() == 1;
    if (!now.equals(shown) || pane == null && alike) {
      shown = now;
      if (pane != null) {
        pane.control().dispose();
        pane = null;
      }
      if (alike) {
        pane = new PropertiesPane(described.body(), study.orElseThrow(), now);
      }
      described.body().layout();
    } else if (pane != null) {
      pane.show(now);
    }
    described.say(now.isEmpty() ? Words.of("properties.none") : !alike ? Words.of("properties.mixed")
        : now.size() == 1 ? Words.of("properties.one", kind(now.get(0)), OpenStudy.nameOf(now.get(0))) : Words.of("properties.several", now.size(), kind(now.get(0))));
  }

  private static String kind(EObject object) {
    String name = object.eClass().getName().replaceAll("([a-z])([A-Z])", "$1_$2").toUpperCase(Locale.ROOT);
    return object instanceof Study ? Words.of("tree.name") : Words.orElse("kind." + switch (name) {
      case "FURNACE_BUILD" -> "FURNACE";
      case "VARIABLE_DEFINITION" -> "VARIABLE";
      default -> name;
    }, name);
  }

  @Override
  public void setFocus() {
    if (pane != null) {
      pane.focus();
    } else {
      described.setFocus();
    }
  }

  @Override
  public void dispose() {
    getSite().getPage().removeSelectionListener(Parts.STUDY, follower);
    getSite().getPage().removePartListener(opener);
    super.dispose();
  }

  /** A sheet that comes to the front is what is spoken of. */
  private final class Opener implements IPartListener {
    @Override
    public void partActivated(IWorkbenchPart part) {
      if (part instanceof SheetEditor editor && PropertiesPane.has(editor.object())) {
        choose(List.of(editor.object()));
      }
    }

    @Override
    public void partBroughtToTop(IWorkbenchPart part) {
      partActivated(part);
    }

    @Override
    public void partClosed(IWorkbenchPart part) {
      // what was shown stays until something else is selected
    }

    @Override
    public void partDeactivated(IWorkbenchPart part) {
      // the same
    }

    @Override
    public void partOpened(IWorkbenchPart part) {
      // it is activated as well
    }
  }
}
