package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.ui.look.PageBook;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A book of pages: titles whole at any width, one page in sight, the keyboard goes everywhere. */
class PageBookTest {

  private static final List<String> TITLES = List.of("Values", "Run Log", "Photographs", "Before the Fire", "Drying & Diary");

  private Shell shell;
  private PageBook book;
  private int made;
  private int told;

  @BeforeEach
  void open() {
    shell = new Shell(Display.getCurrent());
    shell.setLayout(new FillLayout());
    book = new PageBook(shell, SWT.BOTTOM);
    for (String title : TITLES.subList(0, 4)) {
      book.add(title, title, new Text(book.body(), SWT.NONE));
    }
    book.addLater(TITLES.get(4), TITLES.get(4), () -> {
      made++;
      return new Text(book.body(), SWT.NONE);
    });
    book.addListener(SWT.Selection, e -> told++);
    shell.setSize(700, 300);
    shell.open();
    Window.pump();
  }

  @AfterEach
  void close() {
    shell.dispose();
  }

  private List<Canvas> titles() {
    return Window.all(book).stream().filter(c -> c instanceof Canvas && TITLES.contains(c.getData("id"))).map(Canvas.class::cast).toList();
  }

  private Control page() {
    return Window.all(book.body()).stream().filter(Control::isVisible).findFirst().orElseThrow();
  }

  @Test
  void titlesStayWholeInANarrowWindow() {
    long lines = distinctLines();
    shell.setSize(180, 300);
    Window.pump();
    assertTrue(distinctLines() > lines, "titles that find no room go to a further line");
    for (Canvas title : titles()) {
      assertTrue(title.getSize().x >= title.computeSize(SWT.DEFAULT, SWT.DEFAULT).x, "whole: " + title.getData("id"));
      assertTrue(title.getParent().getSize().y >= title.getLocation().y + title.getSize().y, "in sight: " + title.getData("id"));
    }
  }

  private long distinctLines() {
    return titles().stream().mapToInt(t -> t.getLocation().y).distinct().count();
  }

  @Test
  void onePageIsInSightAndALateOneIsMadeOnce() {
    assertEquals("Values", book.shown());
    Control first = page();
    book.show("Run Log");
    assertTrue(first != page());
    assertEquals(0, made, "not before it is looked at");
    book.show("Drying & Diary");
    book.show("Values");
    book.show("Drying & Diary");
    assertEquals(1, made);
    assertEquals(0, told, "only what a person chose is told");
    book.show("no such page");
    assertEquals("Drying & Diary", book.shown());
  }

  @Test
  void arrowsGoFromTitleToTitleAndRound() {
    titles().get(0).setFocus();
    Window.key(titles().get(0), (char) 0, SWT.ARROW_LEFT);
    assertEquals("Drying & Diary", book.shown());
    Window.key(titles().get(4), (char) 0, SWT.ARROW_RIGHT);
    assertEquals("Values", book.shown());
    assertEquals(2, told);
  }

  @Test
  void aClickChooses() {
    titles().get(2).notifyListeners(SWT.MouseDown, new Event());
    titles().get(2).notifyListeners(SWT.MouseUp, new Event());
    assertEquals("Photographs", book.shown());
    assertEquals(1, told);
  }

  @Test
  void pagesAreTurnedFromInsideAndTheStackAroundIsLeftAlone() {
    turn(SWT.TRAVERSE_PAGE_NEXT);
    assertEquals("Run Log", book.shown());
    turn(SWT.TRAVERSE_PAGE_PREVIOUS);
    assertEquals("Values", book.shown());
  }

  /** The platform asks the parts around the one with the keyboard in turn, until one says that it is done. */
  private void turn(int detail) {
    Event asked = new Event();
    asked.detail = detail;
    asked.doit = true;
    book.notifyListeners(SWT.Traverse, asked);
    assertTrue(asked.doit && asked.detail == SWT.TRAVERSE_NONE, "nobody around turns too");
  }

  @Test
  void theTitlesAreOneStopOfTheKeyboard() {
    book.show("Photographs");
    Composite bar = titles().get(0).getParent();
    assertEquals(1, bar.getTabList().length);
    assertSame(titles().get(2), bar.getTabList()[0]);
  }
}
