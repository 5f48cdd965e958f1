package daubline.app.tests;

import daubline.base.Trail;
import daubline.model.Choice;
import daubline.model.Named;
import daubline.ui.Parts;
import daubline.ui.compare.RanksView;
import daubline.ui.grid.Grid;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.look.PageBook;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.views.IViewDescriptor;

/** Walks through every view with all its choices and tabs, and every page of a sheet of each kind; asks every cell with a digit and every figure for origins. */
final class OriginsWalk {

  /** Grids that show no numbers of the study, and why. */
  private static final Map<String, String> EXCEPTIONS = Map.of("checks", "findings in words; Enter leads from each to the field that it is about");
  private static final Set<Look> NAMES = Set.of(Look.NAME, Look.GROUP, Look.VOID);
  private static final Pattern DIGIT = Pattern.compile("\\d");
  private static final int EACH = 1;

  private final OpenStudy study;
  private final List<String> complaints = new ArrayList<>();
  private final Set<String> looked = new HashSet<>();
  private int cells;
  private int marks;

  OriginsWalk(OpenStudy study) {
    this.study = study;
  }

  List<String> complaints() {
    return complaints;
  }

  int cells() {
    return cells;
  }

  int marks() {
    return marks;
  }

  void views() throws Exception {
    Window.view(Parts.COMPARISON, Object.class);
    for (IViewDescriptor view : PlatformUI.getWorkbench().getViewRegistry().getViews()) {
      if (view.getId().startsWith("daubline.ui.")) {
        Window.page().showView(view.getId());
        Window.idle();
        choices("view " + view.getLabel());
      }
    }
    RanksView ranks = Window.view(Parts.RANKS, RanksView.class);
    for (String key : List.of("ranks.ranks", "ranks.pairs", "ranks.weights", "ranks.criteria", "ranks.equal", "ranks.ruled", "ranks.repeats")) {
      ranks.turnTo(key);
      look("ranks " + key);
    }
  }

  /** What each item of the choices of a view brings; a long list of figures is tried by its kinds. */
  private void choices(String where) {
    look(where);
    for (String id : List.of("table", "figure", "beside", "compare.map")) {
      Optional<Combo> combo = Window.all(Window.shell()).stream().filter(c -> c instanceof Combo && c.isVisible() && id.equals(c.getData("id"))).map(Combo.class::cast).findFirst();
      for (int i = 0; combo.isPresent() && i < combo.get().getItemCount(); i++) {
        String title = combo.get().getItem(i);
        if (!id.equals("figure") || looked.add(title.replaceFirst("[:,].*", ""))) {
          combo.get().select(i);
          combo.get().notifyListeners(SWT.Selection, new Event());
          Window.idle();
          look(where + ", " + title);
        }
      }
    }
  }

  void sheets() {
    Map<Class<?>, Integer> opened = new HashMap<>();
    List<EObject> all = new ArrayList<>(List.of(study.session().study()));
    for (Iterator<EObject> i = study.session().study().eAllContents(); i.hasNext();) {
      EObject o = i.next();
      if (o instanceof Named && !(o instanceof Choice)) {
        all.add(o);
      }
    }
    for (EObject object : all) {
      if (opened.merge(object.getClass(), 1, Integer::sum) <= EACH) {
        daubline.ui.sheet.Sheets.open(object).ifPresent(editor -> pages(object, editor));
      }
    }
    Window.page().closeAllEditors(false);
  }

  private void pages(EObject object, SheetEditor editor) {
    Window.pump();
    List<PageBook> books = Window.all(Window.shell()).stream().filter(c -> c instanceof PageBook && c.isVisible()).map(PageBook.class::cast)
        .filter(b -> b.keys().stream().anyMatch(k -> k.startsWith("page.") || k.startsWith("record."))).toList();
    for (PageBook book : books) {
      for (String key : List.copyOf(book.keys())) {
        editor.show(key);
        Window.idle();
        String where = object.eClass().getName() + " " + key;
        look(where);
        Window.all(book).stream().filter(c -> c instanceof PageBook && c.isVisible() && c != book).map(PageBook.class::cast).toList()
            .forEach(inner -> List.copyOf(inner.keys()).forEach(tab -> {
              inner.show(tab);
              look(where + " " + tab);
            }));
      }
    }
    Window.page().closeEditor(editor, false);
  }

  private void look(String where) {
    Window.pump();
    for (Control control : Window.all(Window.shell())) {
      if (!control.isDisposed() && control.isVisible()) {
        if (control.getData(Grid.GRID) instanceof Grid grid && !EXCEPTIONS.containsKey(String.valueOf(control.getData("id")))) {
          grid(where + " [" + control.getData("id") + "]", grid);
        } else if (control instanceof FigureCanvas canvas && canvas.heightFor(500) > 0 && canvas.getSize().x > 60 && canvas.getSize().y > 60) {
          figure(where + " [" + canvas.getData("id") + "]", canvas);
        }
      }
    }
  }

  private void grid(String where, Grid grid) {
    for (int row = 0; row < grid.model().rows(); row++) {
      for (int column = 0; column < grid.model().columns(); column++) {
        GridCell cell = grid.model().cell(column, row);
        if (!NAMES.contains(cell.look()) && DIGIT.matcher(cell.text()).find()) {
          cells++;
          if (grid.model().origin(column, row).filter(Trail::leadsOn).isEmpty()) {
            complaints.add(where + ": nothing under “" + grid.model().heading(column) + "” says where it comes from");
          }
        }
      }
    }
  }

  private void figure(String where, FigureCanvas canvas) {
    Window.waitFor("the drawing of " + where, canvas::isDrawn);
    marks += canvas.marks().size();
    if (canvas.marks().isEmpty()) {
      complaints.add(where + ": no mark of the figure says where it comes from");
    }
    canvas.marks().stream().filter(m -> m.told().isBlank() || !m.from().get().leadsOn()).forEach(m -> complaints.add(where + ": a mark leads nowhere: " + m.told()));
  }
}
