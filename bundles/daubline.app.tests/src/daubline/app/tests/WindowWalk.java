package daubline.app.tests;

import daubline.model.Citation;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.Person;
import daubline.model.Reconstruction;
import daubline.model.RemainsSheet;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.ui.look.PageBook;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;

/** A walk through every perspective, every view and every page of the sheets of a study, with all that can be read there. */
final class WindowWalk {

  private final Map<String, List<String>> texts = new LinkedHashMap<>();
  private final Consumer<String> arrived;

  /**
   * Walks.
   *
   * @param each how many objects of each kind are opened
   */
  WindowWalk(OpenStudy study, int each) throws Exception {
    this(study, each, where -> {
      // the texts are enough
    });
  }

  /**
   * Walks.
   *
   * @param each how many objects of each kind are opened
   * @param arrived is told where the walk has come to
   */
  WindowWalk(OpenStudy study, int each, Consumer<String> arrived) throws Exception {
    this.arrived = arrived;
    for (IPerspectiveDescriptor perspective : PlatformUI.getWorkbench().getPerspectiveRegistry().getPerspectives()) {
      if (perspective.getId().startsWith("daubline.")) {
        PlatformUI.getWorkbench().showPerspective(perspective.getId(), Window.page().getWorkbenchWindow());
        look(study, "perspective " + perspective.getLabel());
      }
    }
    for (IViewDescriptor view : PlatformUI.getWorkbench().getViewRegistry().getViews()) {
      if (view.getId().startsWith("daubline.ui.")) {
        Window.page().showView(view.getId());
        look(study, "view " + view.getLabel());
      }
    }
    Map<Class<?>, Integer> opened = new HashMap<>();
    for (EObject object : sheets(study.session().study())) {
      if (opened.merge(object.getClass(), 1, Integer::sum) <= each) {
        pages(study, object);
      }
    }
    Window.page().closeAllEditors(false);
    Window.pump();
  }

  private static List<EObject> sheets(Study study) {
    List<EObject> all = new ArrayList<>(List.of(study));
    for (Iterator<EObject> i = study.eAllContents(); i.hasNext();) {
      EObject o = i.next();
      if (o instanceof Site || o instanceof Context || o instanceof EvidenceSheet || o instanceof RemainsSheet || o instanceof Reconstruction || o instanceof FurnaceBuild
          || o instanceof Series || o instanceof Trial || o instanceof Lot || o instanceof Citation || o instanceof Person) {
        all.add(o);
      }
    }
    return all;
  }

  private void pages(OpenStudy study, EObject object) {
    SheetEditor editor = Window.sheet(object);
    PageBook book = Window.all(Window.shell()).stream().filter(c -> c instanceof PageBook && c.isVisible()).map(PageBook.class::cast)
        .filter(b -> b.keys().stream().anyMatch(k -> k.startsWith("page.") || k.startsWith("record."))).findFirst().orElseThrow();
    for (String key : List.copyOf(book.keys())) {
      editor.show(key);
      look(study, object.eClass().getName() + " " + object.hashCode() + " " + key);
    }
    Window.page().closeEditor(editor, false);
  }

  private void look(OpenStudy study, String where) {
    Window.pump();
    List<String> all = new ArrayList<>(List.of(study.session().undoLabel().orElse(""), study.session().redoLabel().orElse("")));
    Arrays.stream(Display.getCurrent().getShells()).filter(org.eclipse.swt.widgets.Shell::isVisible).forEach(s -> all.addAll(WindowTexts.of(s)));
    texts.put(where, all);
    arrived.accept(where);
  }

  /** What was read, by place. */
  Map<String, List<String>> texts() {
    return texts;
  }
}
