package daubline.app.tests;

import daubline.model.Series;
import daubline.model.Trial;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.sheet.Sheets;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import daubline.ui.study.Start;
import daubline.ui.study.Studies;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.junit.jupiter.api.Assertions;

/** Hands and eyes of the tests: waits, finds controls, presses keys, and opens studies in the real window. */
final class Window {

  private static final long PATIENCE_MILLIS = 60_000;
  private static final long IDLE_MILLIS = 15_000;
  private static final long REST_MILLIS = 60;
  private static final int WIDTH = 1600;
  private static final int HEIGHT = 1000;

  private Window() {
  }

  static IWorkbenchPage page() {
    return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
  }

  static void pump() {
    while (Display.getCurrent().readAndDispatch()) {
      // until nothing waits
    }
  }

  static void waitFor(String what, BooleanSupplier condition) {
    long end = System.currentTimeMillis() + PATIENCE_MILLIS;
    while (!condition.getAsBoolean()) {
      Assertions.assertTrue(System.currentTimeMillis() < end, "waited in vain for " + what);
      pump();
      try {
        Thread.sleep(10);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
    pump();
  }

  /** Opens a fresh copy of the demonstration study. */
  static OpenStudy demonstration() throws IOException {
    return open(Seeds.freshCopy(Seeds.DEMONSTRATION));
  }

  static OpenStudy open(Path folder) {
    Start.open(() -> folder);
    waitFor("the study " + folder, () -> Studies.get().find(folder).isPresent());
    return Studies.get().find(folder).orElseThrow();
  }

  static void waitForResults(OpenStudy study) {
    waitFor("results", study::isSettled);
  }

  /** Waits until nothing is reckoned behind that would change the screen, or for a quarter of a minute. */
  static void idle() {
    long end = System.currentTimeMillis() + IDLE_MILLIS;
    waitFor("what is reckoned behind", () -> Job.getJobManager().isIdle() || System.currentTimeMillis() > end);
  }

  /** Closes every study without saving and every sheet; the window is as wide and laid out as at the start. */
  static void clear() {
    page().closeAllEditors(false);
    for (OpenStudy study : Studies.get().all()) {
      study.session().discardChanges();
      Studies.get().close(study);
    }
    shell().setMaximized(false);
    shell().setBounds(0, 0, WIDTH, HEIGHT);
    // a menu or dialog of the test before may have taken the keyboard along
    shell().forceActive();
    try {
      PlatformUI.getWorkbench().showPerspective("daubline.app.evidence", page().getWorkbenchWindow());
    } catch (WorkbenchException e) {
      throw new IllegalStateException(e);
    }
    page().resetPerspective();
    away();
  }

  /** Moves the pointer to where nothing is: a tip that still stands under it would take the keys. */
  static void away() {
    Event event = new Event();
    event.type = SWT.MouseMove;
    event.x = WIDTH - 4;
    event.y = 4;
    Display.getCurrent().post(event);
    settle();
  }

  static Trial firstTrial(OpenStudy study) {
    Series series = study.session().study().getSeries().get(0);
    return series.getTrials().get(0);
  }

  static SheetEditor sheet(org.eclipse.emf.ecore.EObject object) {
    SheetEditor editor = Sheets.open(object).orElseThrow();
    pump();
    return editor;
  }

  static <V> V view(String id, Class<V> type) throws Exception {
    IViewPart view = page().showView(id);
    pump();
    return type.cast(view);
  }

  static List<Control> all(Composite root) {
    List<Control> found = new ArrayList<>();
    for (Control child : root.getChildren()) {
      found.add(child);
      if (child instanceof Composite composite) {
        found.addAll(all(composite));
      }
    }
    return found;
  }

  static Shell shell() {
    return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getShell();
  }

  /** Gives the window the keyboard, which a dialog or menu of before may have taken along; there is no window manager to do it. */
  static void front() {
    waitFor("the keyboard in the window", () -> {
      shell().forceActive();
      return Display.getCurrent().getActiveShell() == shell();
    });
  }

  /** The visible control with an id of its own. */
  static <C extends Control> C find(String id, Class<C> type) {
    return all(shell()).stream().filter(type::isInstance).filter(c -> id.equals(c.getData("id")) && c.isVisible()).map(type::cast).findFirst()
        .orElseThrow(() -> new AssertionError("no visible " + type.getSimpleName() + " " + id));
  }

  /** Chooses in a list with an id of its own. */
  static void choose(String id, int index) {
    Combo combo = find(id, Combo.class);
    combo.select(index);
    combo.notifyListeners(SWT.Selection, new Event());
    pump();
  }

  /** Presses and lets go a key on a control. */
  static void key(Control control, char character, int keyCode) {
    Event event = new Event();
    event.character = character;
    event.keyCode = keyCode;
    event.type = SWT.KeyDown;
    control.notifyListeners(SWT.KeyDown, event);
    pump();
  }

  /** Waits as a hand does between two texts, so that a grid that was just filled has its size and its selection. */
  private static void settle() {
    long end = System.currentTimeMillis() + REST_MILLIS;
    waitFor("a moment", () -> System.currentTimeMillis() > end);
  }

  /** Types a text into the selected cell of a grid and ends with Enter. */
  static void type(NatTable grid, String text) {
    settle();
    key(grid, text.charAt(0), text.charAt(0));
    Assertions.assertNotNull(grid.getActiveCellEditor(), "typing begins to edit");
    Text field = (Text) grid.getActiveCellEditor().getEditorControl();
    field.setText(text);
    key(field, SWT.CR, SWT.CR);
  }

  /** Types a text into the selected cell of a grid, free or with words on offer, and ends with Enter. */
  static void enter(NatTable grid, String text) {
    settle();
    key(grid, text.charAt(0), text.charAt(0));
    Assertions.assertNotNull(grid.getActiveCellEditor(), "typing begins to edit");
    Control editor = grid.getActiveCellEditor().getEditorControl();
    Text field = editor instanceof Text t ? t
        : (Text) all((Composite) editor).stream().filter(Text.class::isInstance).findFirst().orElseThrow();
    field.setText(text);
    key(field, SWT.CR, SWT.CR);
  }

  /** Presses a button of the next dialog with this title, as soon as it is there and enabled; closes the dialog when it never is. */
  static void answer(String title, String button) {
    Display.getCurrent().timerExec(100, new Runnable() {
      private final long end = System.currentTimeMillis() + PATIENCE_MILLIS;
      private boolean pressed;

      @Override
      public void run() {
        for (Shell shell : Display.getCurrent().getShells()) {
          if (shell.getText().equals(title)) {
            all(shell).stream().filter(c -> c instanceof Button b && b.isEnabled() && b.getText().replace("&", "").equals(button)).findFirst()
                .ifPresent(b -> {
                  pressed = true;
                  b.notifyListeners(SWT.Selection, new Event());
                });
            if (pressed) {
              return;
            }
            if (System.currentTimeMillis() > end) {
              shell.close();
              return;
            }
          }
        }
        Display.getCurrent().timerExec(100, this);
      }
    });
  }
}
