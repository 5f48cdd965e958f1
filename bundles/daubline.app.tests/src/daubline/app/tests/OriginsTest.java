package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.Trail;
import daubline.base.ValueType;
import daubline.base.Variables;
import daubline.model.Claim;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.model.Site;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import daubline.ui.Parts;
import daubline.ui.compare.ComparisonView;
import daubline.ui.explain.WhereFrom;
import daubline.ui.grid.Grid;
import daubline.ui.study.Chosen;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every number that the window shows leads to where it comes from. */
class OriginsTest {

  private static final int MANY = 40;

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** A new view, page, grid or figure is walked over too, so that it cannot forget. */
  @Test
  void everyNumberOfEveryGridAndEveryFigureLeadsOn() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    OriginsWalk walk = new OriginsWalk(study);
    walk.views();
    walk.sheets();
    assertTrue(walk.cells() > 5000, "cells with a number: " + walk.cells());
    assertTrue(walk.marks() > 1000, "marks of figures: " + walk.marks());
    assertEquals("", walk.complaints().stream().distinct().limit(80).collect(Collectors.joining("\n")));
  }

  /** Claims of a sheet of which nothing is said lead to the sheet, it to its claims, and so on: at first only a page of that is open. */
  @Test
  void amongManyBareClaimsOneOpensFewLines(@TempDir Path folder) throws Exception {
    Path at = folder.resolve("study");
    StudySession.create(at, "Brackenfold").close();
    OpenStudy study = Window.open(at);
    EvidenceSheet sheet = ModelFactory.eINSTANCE.createEvidenceSheet();
    study.session().edit("Many claims", () -> {
      Site site = ModelFactory.eINSTANCE.createSite();
      Context context = ModelFactory.eINSTANCE.createContext();
      study.session().study().getSites().add(site);
      site.getContexts().add(context);
      context.getSheets().add(sheet);
      sheet.setName("Furnace A");
      Variables.standard().all().stream().filter(v -> v.type() == ValueType.NUMBER).limit(MANY).forEach(v -> {
        Claim claim = ModelFactory.eINSTANCE.createClaim();
        Readings.put(claim, v, "3", "", DecimalSign.POINT);
        sheet.getClaims().add(claim);
      });
    });
    Claim claim = sheet.getClaims().get(0);
    Window.view(Parts.WHERE_FROM, Object.class);
    Window.sheet(sheet).reveal(claim, claim.getVariable());
    Tree tree = Window.find("wherefrom", Tree.class);
    Window.waitFor("the origin", () -> tree.getItemCount() > 0 && tree.getItem(0).getText().contains(claim.getTyped()));
    List<String> lines = new ArrayList<>();
    texts(tree.getItems(), lines);
    assertTrue(lines.size() > 3 && lines.size() < 400, lines.size() + " lines: " + lines.stream().limit(20).toList());
    String last = Variables.standard().get(sheet.getClaims().get(MANY - 1).getVariable()).name();
    Window.front();
    tree.forceFocus();
    Keys.rest(300);
    Keys.plainly(() -> Keys.chord(SWT.CTRL, 'f'));
    Window.find("tree-find", Text.class).setText(last);
    Window.pump();
    assertTrue(tree.getSelection()[0].getText().startsWith(last), "found below what is closed");
  }

  private static void move(Control control, Point at) {
    Point there = control.toDisplay(at);
    Event event = new Event();
    event.type = SWT.MouseMove;
    event.x = there.x;
    event.y = there.y;
    Display.getCurrent().post(event);
    Keys.rest(200);
  }

  /** The middle of the first mark, scrolled to where it is seen. */
  private static Point inSight(FigureCanvas canvas) {
    ScrolledComposite scroll = (ScrolledComposite) canvas.getParent().getParent();
    Point at = canvas.middle(0);
    scroll.setOrigin(Math.max(0, at.x - scroll.getClientArea().width / 2), Math.max(0, at.y - scroll.getClientArea().height / 2));
    Window.pump();
    return at;
  }

  private static FigureCanvas drawn() {
    FigureCanvas canvas = Window.find("figure-canvas", FigureCanvas.class);
    Window.waitFor("the figure", () -> !canvas.marks().isEmpty());
    return canvas;
  }

  /** The pointer tells a mark, the arrow keys step from mark to mark, and Enter opens Where From down to what was typed. */
  @Test
  void aMarkIsToldByThePointerAndOpenedByKeys() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Window.view(Parts.COMPARISON, ComparisonView.class);
    Window.view(Parts.BESIDE, Object.class);
    Window.choose("beside", 3);
    Window.idle();
    FigureCanvas canvas = drawn();
    Point mark = inSight(canvas);
    Window.waitFor("the pointer to be told what it rests on", () -> {
      move(canvas, new Point(mark.x + 1, mark.y + 1));
      move(canvas, mark);
      return canvas.getToolTipText() != null && canvas.getToolTipText().contains("FeO");
    });
    Window.away();
    Window.front();
    canvas.forceFocus();
    Window.waitFor("the keyboard on the drawing", canvas::isFocusControl);
    Keys.plainly(() -> {
      Keys.press(SWT.HOME, (char) 0);
      assertEquals(canvas.marks().get(0).from().get(), Chosen.trail().orElseThrow());
      Keys.press(SWT.ARROW_RIGHT, (char) 0);
      assertEquals(canvas.marks().get(1).from().get(), Chosen.trail().orElseThrow());
      Keys.press(SWT.CR, SWT.CR);
    });
    Window.waitFor("Where From", () -> Window.page().isPartVisible(Window.page().findView(Parts.WHERE_FROM)));
    List<String> shown = new ArrayList<>();
    texts(Window.find("wherefrom", Tree.class).getItems(), shown);
    Window.view(Parts.BESIDE, Object.class);
    Window.choose("beside", 0);
    assertTrue(shown.stream().anyMatch(t -> t.contains("citation") || t.contains("as typed") || t.contains("printed as") || t.contains("method")), shown.toString());
  }

  /** F8 on a cell opens Where From; a value changed in this session says what stood there before, by which change. */
  @Test
  void aChangedValueSaysWhatStoodThereBefore() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    Reading value = trial.getValues().stream().filter(v -> v.getTyped() != null && v.getValue() != null).findFirst().orElseThrow();
    String before = value.getTyped();
    study.session().edit("Weighed again", () -> value.setTyped(before + "5"));
    Window.sheet(trial).reveal(value, value.getVariable());
    Window.pump();
    NatTable table = Window.find("values", NatTable.class);
    table.forceFocus();
    Keys.plainly(() -> Keys.press(SWT.F8, (char) 0));
    Window.waitFor("Where From", () -> Window.page().isPartVisible(Window.page().findView(Parts.WHERE_FROM)));
    Trail trail = Chosen.trail().orElseThrow();
    assertTrue(trail.asText().contains("before the change “Weighed again”") && trail.asText().contains(before + " " + value.getUnit() + " → " + before + "5 " + value.getUnit()), trail.asText());
    assertTrue(trail.asText().contains("part of: trial " + trial.getName()), trail.asText());
    study.session().undo();
    assertTrue(value.getEarlier().isEmpty(), "undo takes it back");
  }

  private static void texts(TreeItem[] items, List<String> into) {
    for (TreeItem item : items) {
      into.add(item.getText());
      texts(item.getItems(), into);
    }
  }

  /** What the line Where From of every grid's menu does; the menu itself is opened in ArrangeTest. */
  @Test
  void aGridLeadsToTheViewFromItsMenu() throws Exception {
    Window.demonstration();
    Window.view(Parts.WEIGHTS, Object.class);
    NatTable table = (NatTable) Window.all(Window.shell()).stream().filter(c -> c instanceof NatTable && c.isVisible() && c.getData(Grid.GRID) != null).findFirst().orElseThrow();
    ((Grid) table.getData(Grid.GRID)).select(1, 0);
    WhereFrom.ask(table);
    Window.pump();
    assertTrue(Window.page().isPartVisible(Window.page().findView(Parts.WHERE_FROM)));
  }
}
