package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Study;
import daubline.session.StudySession;
import daubline.ui.grid.Grid;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import daubline.ui.study.Studies;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/** What a person does by hand with the parts of the window: menus, perspectives, pages, fields, choices, tables; each by keys and clicks alone. */
final class Hands {

  private static final int MOST_STEPS = 60;
  private static final int TRIES = 3;
  private static final long LIST_MILLIS = 120;

  private Hands() {
  }

  /** Goes through a menu by its letter and arrows, and chooses; each step waits until the line is marked. */
  static void menu(String title, String... lines) {
    String[] armed = new String[1];
    Listener mark = e -> armed[0] = e.widget instanceof MenuItem item ? plain(item.getText()) : armed[0];
    Person.touch(() -> Display.getCurrent().addFilter(SWT.Arm, mark));
    try {
      char letter = Character.toLowerCase(Person.see(() -> mnemonic(title)));
      Keys.chord(SWT.ALT, letter, letter);
      for (int i = 0; i < lines.length; i++) {
        to(lines[i], armed);
        Keys.tap(i + 1 < lines.length ? SWT.ARROW_RIGHT : SWT.CR);
      }
    } finally {
      Person.touch(() -> Display.getCurrent().removeFilter(SWT.Arm, mark));
    }
  }

  private static void to(String line, String[] armed) {
    Person.await("a marked line in the menu", () -> armed[0] != null);
    for (int i = 0; i < MOST_STEPS && !line.equals(Person.see(() -> armed[0])); i++) {
      Keys.tap(SWT.ARROW_DOWN);
    }
    assertEquals(line, Person.see(() -> armed[0]), "the line of the menu");
  }

  private static char mnemonic(String title) {
    MenuItem item = Arrays.stream(Window.shell().getMenuBar().getItems()).filter(i -> plain(i.getText()).equals(title)).findFirst().orElseThrow();
    return item.getText().charAt(item.getText().indexOf('&') + 1);
  }

  private static String plain(String text) {
    return text.replace("&", "").replace("…", "").split("\t")[0].strip();
  }

  /** Clicks a perspective at the upper right; it is laid out as on the first day, whatever was done in it before. */
  static void perspective(String name) {
    Supplier<ToolItem> look = () -> Window.all(Window.shell()).stream().filter(c -> c instanceof ToolBar && c.isVisible()).flatMap(c -> Arrays.stream(((ToolBar) c).getItems()))
        .filter(i -> name.equals(i.getText())).findFirst().orElseThrow();
    ToolItem item = Person.see(look);
    Mouse.click(Person.see(item::getParent), () -> middle(item.getBounds()));
    Person.await("the perspective " + name, () -> Window.page().getPerspective().getLabel().equals(name));
    Person.touch(() -> Window.page().resetPerspective());
  }

  /** Clicks the tab of a view or sheet. */
  static void tab(String title) {
    CTabItem item = Person.see(() -> Window.all(Window.shell()).stream().filter(c -> c instanceof CTabFolder && c.isVisible())
        .flatMap(c -> Arrays.stream(((CTabFolder) c).getItems())).filter(i -> i.isShowing() && i.getText().replaceFirst("^\\*", "").equals(title)).findFirst()
        .orElseThrow(() -> new AssertionError("no tab " + title)));
    Mouse.click(Person.see(item::getParent), () -> beginning(item.getBounds()));
    Person.await("what stands under the tab " + title, () -> item.getControl() == null || item.getControl().isVisible());
  }

  /** Left of the middle, where no cross to close it is. */
  private static Point beginning(Rectangle area) {
    return new Point(area.x + area.width / 3, area.y + area.height / 2);
  }

  static Point middle(Rectangle area) {
    return new Point(area.x + area.width / 2, area.y + area.height / 2);
  }

  /** Clicks the title of a page of the sheet; once more where the titles moved away under the pointer, as they do while a sheet is laid out. */
  static void page(String key) {
    for (int tries = 0; tries < TRIES && !Person.see(() -> isShown(key)); tries++) {
      Control title = seen(key, Control.class);
      Mouse.click(() -> title);
      Person.rest(LIST_MILLIS);
    }
    Person.await("the page " + key, () -> isShown(key));
  }

  private static boolean isShown(String key) {
    return Window.page().getActiveEditor() instanceof SheetEditor editor && editor.shownKey().equals(key);
  }

  /** Clicks a button with an id of its own, as soon as it can be. */
  static void press(String id) {
    Button button = seen(id, Button.class);
    Mouse.click(() -> button);
  }

  /** Clicks a button of a dialog by what stands on it. */
  static void press(Shell dialog, String text) {
    Mouse.click(() -> button(dialog, text));
  }

  private static Button button(Shell dialog, String text) {
    return Window.all(dialog).stream().filter(c -> c instanceof Button b && b.getText().replace("&", "").equals(text)).map(Button.class::cast).findFirst().orElseThrow();
  }

  /** Clicks a field, types into it in place of what stands there and ends with Enter. */
  static void field(String id, String text) {
    reach(id);
    field(() -> Window.find(id, Text.class), text);
    Keys.tap(SWT.CR);
  }

  /** Clicks a field and types into it in place of what stands there. */
  static void field(Supplier<Text> look, String text) {
    Text field = Person.see(look);
    Mouse.click(() -> field);
    Person.await("the keyboard in the field", field::isFocusControl);
    Keys.chord(SWT.CTRL, 'a', 'a');
    Keys.text(text);
    Person.await("“" + text + "” in its field", () -> field.getText().equals(text));
  }

  /** Comes to a field that may be scrolled out of sight: from one beside it that is seen by Tab, or back by Shift+Tab. */
  static void reach(String id) {
    Control wanted = seen(id, Control.class);
    if (!Person.see(() -> Mouse.isInSight(wanted))) {
      List<Control> all = Person.see(() -> List.of(wanted.getParent().getChildren()));
      Control near = Person.see(() -> all.stream().filter(c -> c instanceof Text && Mouse.isInSight(c)).findFirst().orElseThrow());
      Mouse.click(() -> near);
      boolean back = all.indexOf(wanted) < all.indexOf(near);
      for (int i = 0; i < MOST_STEPS && !Person.see(wanted::isFocusControl); i++) {
        Control from = Person.see(() -> Display.getCurrent().getFocusControl());
        Keys.chord(back ? SWT.SHIFT : 0, SWT.TAB, SWT.TAB);
        Person.await("the keyboard to go on", () -> Display.getCurrent().getFocusControl() != null && Display.getCurrent().getFocusControl() != from);
      }
      Person.await(id + " in sight", () -> Mouse.isInSight(wanted));
    }
  }

  /** Opens a choice by a click and chooses by arrows. */
  static void choose(String id, String text) {
    reach(id);
    choose(() -> Window.find(id, Combo.class), text);
  }

  static void choose(Supplier<Combo> look, String text) {
    Combo combo = Person.see(look);
    for (int i = 0; i < TRIES && !Person.see(() -> combo.isDisposed() || combo.getText().equals(text)); i++) {
      open(combo, text);
      Person.rest(LIST_MILLIS);
    }
    Person.await("“" + text + "” chosen", () -> combo.isDisposed() || combo.getText().equals(text));
  }

  /** Opens a choice by a click and chooses by arrows, whatever comes of it. */
  static void open(Combo combo, String text) {
    int wanted = Person.see(() -> combo.indexOf(text));
    assertTrue(wanted >= 0, () -> text + " is not offered, but " + Person.see(() -> List.of(combo.getItems())));
    Mouse.click(() -> combo);
    // the list opens a moment later, and the toolkit tells no one
    Person.rest(LIST_MILLIS);
    Keys.tap(SWT.HOME);
    IntStream.range(0, wanted).forEach(step -> Keys.tap(SWT.ARROW_DOWN));
    Keys.tap(SWT.CR);
  }

  /** Opens what stands in the tree of the study under the lines that lead there, with + and Enter. */
  static void inTree(String... path) {
    Tree tree = Person.see(() -> Window.all(Window.shell()).stream().filter(c -> c instanceof Tree t && c.isVisible() && t.getItemCount() > 0).map(Tree.class::cast).findFirst().orElseThrow());
    for (int i = 0; i < path.length; i++) {
      String line = path[i];
      Supplier<TreeItem> look = () -> line(tree.getItems(), line);
      Person.await(line + " in the tree", () -> look.get() != null);
      TreeItem item = Person.see(look);
      Mouse.click(tree, () -> middle(item.getBounds()));
      Person.await(line + " selected", () -> tree.getSelectionCount() == 1 && tree.getSelection()[0] == item);
      if (i + 1 < path.length) {
        if (!Person.see(item::getExpanded)) {
          Keys.text("+");
        }
        Person.await(line + " opened", item::getExpanded);
      } else {
        Keys.tap(SWT.CR);
      }
    }
  }

  private static TreeItem line(TreeItem[] items, String text) {
    for (TreeItem item : items) {
      TreeItem found = item.getText().replaceFirst("^\\*", "").startsWith(text) ? item : item.getExpanded() ? line(item.getItems(), text) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** A control with an id of its own, as soon as it is there. */
  static <C extends Control> C seen(String id, Class<C> type) {
    Person.await(id, () -> Window.find(id, type) != null);
    return Person.see(() -> Window.find(id, type));
  }

  /** A table with an id of its own, as soon as it is there. */
  static NatTable grid(String id) {
    return seen(id, NatTable.class);
  }

  /** What a table shows. */
  static Grid of(NatTable table) {
    return Person.see(() -> (Grid) table.getData(Grid.GRID));
  }

  /** Clicks the cell of a row that begins with a name and of a column with a heading. */
  static void cell(NatTable table, String name, String heading) {
    Grid grid = of(table);
    Person.await("the row " + name, () -> rowOf(grid, name) >= 0);
    cellAt(table, Person.see(() -> rowOf(grid, name)), heading);
  }

  /** Clicks the cell of a row and of a column with a heading. */
  static void cellAt(NatTable table, int row, String heading) {
    Grid grid = of(table);
    int column = Person.see(() -> IntStream.range(0, grid.model().columns()).filter(i -> grid.model().heading(i).equals(heading)).findFirst()
        .orElseThrow(() -> new AssertionError("no column " + heading + " but " + IntStream.range(0, grid.model().columns()).mapToObj(grid.model()::heading).toList())));
    BooleanSupplier selected = () -> grid.selected().filter(p -> p.y == row && p.x == column).isPresent();
    // a click on what is selected already would open it
    if (!Person.see(() -> table.isFocusControl() && selected.getAsBoolean())) {
      Mouse.cell(table, column, row);
    }
    Person.await("the cell of row " + row + " under " + heading, selected);
  }

  /** Clicks a cell of the first row in which a text stands anywhere. */
  static void rowWith(NatTable table, String text) {
    Grid grid = of(table);
    Person.await("a row with “" + text + "”", () -> rowWith(grid, text) >= 0);
    Mouse.cell(table, 0, Person.see(() -> rowWith(grid, text)));
  }

  static int rowWith(Grid grid, String text) {
    return IntStream.range(0, grid.model().rows()).filter(r -> IntStream.range(0, grid.model().columns()).anyMatch(c -> grid.model().cell(c, r).text().contains(text)))
        .findFirst().orElse(-1);
  }

  private static int rowOf(Grid grid, String name) {
    return IntStream.range(0, grid.model().rows()).filter(i -> grid.model().cell(0, i).text().equals(name)).findFirst().orElse(-1);
  }

  /** Begins an empty study by File › New Study. */
  static OpenStudy begin(String name) {
    menu("File", "New Study");
    Shell dialog = Person.dialog("New Study");
    Keys.text(name);
    press(dialog, "OK");
    Person.gone(dialog);
    Person.await("the new study", () -> Studies.get().current().isPresent());
    return Person.see(() -> Studies.get().current().orElseThrow());
  }

  static Study model(OpenStudy study) {
    return study.session().study();
  }

  /** By Ctrl+Z back to the study as it began, byte for byte, by Ctrl+Y forward to what it became, and saved by Ctrl+S. */
  static void undoneAndDoneAgain(OpenStudy study, byte[] empty) throws IOException {
    StudySession session = study.session();
    String done = Person.see(session::digest);
    int steps = 0;
    while (Person.see(() -> session.undoLabel().isPresent())) {
      String label = Person.see(() -> session.undoLabel().orElseThrow());
      String before = Person.see(session::digest);
      Keys.chord(SWT.CTRL, 'z', 'z');
      Person.await("“" + label + "” undone", () -> !session.digest().equals(before));
      steps++;
    }
    Keys.chord(SWT.CTRL, 's', 's');
    Person.await("the study saved", () -> !session.isDirty());
    Path file = study.folder().resolve("study.xmi");
    assertEquals(new String(empty), Files.readString(file), "undone to the same bytes");
    for (int i = 0; i < steps; i++) {
      String before = Person.see(session::digest);
      Keys.chord(SWT.CTRL, 'y', 'y');
      Person.await("a change done again", () -> !session.digest().equals(before));
    }
    assertEquals(done, Person.see(session::digest), "done again");
  }

  /** The file of a study as it stands on the disk. */
  static byte[] file(OpenStudy study) throws IOException {
    return Files.readAllBytes(study.folder().resolve("study.xmi"));
  }

  /** Takes away the folder of a study that a person began. */
  static void forget(String folder) throws IOException {
    Path at = Seeds.home().resolve(folder);
    if (Files.exists(at)) {
      try (Stream<Path> files = Files.walk(at)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }
}
