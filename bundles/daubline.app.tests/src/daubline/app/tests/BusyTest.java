package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Study;
import daubline.model.Trial;
import daubline.ui.Parts;
import daubline.ui.compare.WeightsView;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * How long the window's thread works on end while a person types and turns pages, on the demonstration study; the longest stretches
 * are printed. A stretch counts by the best of a few tries: work that is really done is done in each, what the machine or the
 * loading of classes adds is not. The limit is that of an idle machine: where the same work of the toolkit, done before each try, takes
 * longer than there, the limit is longer in the same ratio.
 */
class BusyTest {

  private static final long MOST_MILLIS = 200;
  private static final int TRIES = 5;
  /** What the yardstick takes on a machine of two cores with nothing else to do, where the limit holds as it stands. */
  private static final double IDLE_YARDSTICK_MILLIS = 26;
  private static final int YARDSTICK_WIDTHS = 40;
  private static final String FIRST = "page.values";
  private static final String OTHER = "page.facts";

  private OpenStudy study;

  /** Something a person does, told apart by its number so that each try changes something. */
  private interface Work {
    void run(int number) throws Exception;
  }

  @AfterEach
  void clear() {
    Window.clear();
  }

  private void isShort(String what, Work work) throws Exception {
    isShort(what, i -> { }, work);
  }

  /** @param before what is done before each try, and does not count */
  private void isShort(String what, Work before, Work work) throws Exception {
    List<Long> stretches = new ArrayList<>();
    List<Double> slowness = new ArrayList<>();
    boolean isShort = false;
    for (int i = 0; i < TRIES && !isShort; i++) {
      before.run(i);
      slowness.add(Math.max(1, yardstick() / IDLE_YARDSTICK_MILLIS));
      Watchdog watchdog = Watchdog.watch();
      work.run(i);
      Window.waitForResults(study);
      Window.idle(); // what is reckoned behind is shown at the end of it
      stretches.add(watchdog.end());
      isShort = stretches.get(i) < MOST_MILLIS * slowness.get(i);
    }
    String found = what + " " + stretches + " ms on end, machine slower than idle by " + slowness.stream().map(x -> String.format(Locale.ROOT, "%.2f", x)).toList();
    System.out.println("busy: " + found);
    assertTrue(isShort, found);
  }

  /** Milliseconds that the window's thread takes to break a text into lines at some widths, with the toolkit's own means. */
  private static double yardstick() {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    String text = "slag ran from the tap arch for a quarter of an hour; ".repeat(20);
    long begin = threads.getCurrentThreadCpuTime();
    TextLayout layout = new TextLayout(Display.getCurrent());
    layout.setText(text);
    for (int i = 1; i <= YARDSTICK_WIDTHS; i++) {
      layout.setWidth(100 + 20 * i);
      layout.getBounds();
    }
    layout.dispose();
    return (threads.getCurrentThreadCpuTime() - begin) / 1e6;
  }

  private static NatTable grid(EObject object, String page, String id) {
    SheetEditor editor = Window.sheet(object);
    editor.show(page);
    Window.pump();
    return Window.find(id, NatTable.class);
  }

  private static void perspective(String name) throws Exception {
    PlatformUI.getWorkbench().showPerspective("daubline.app." + name, Window.page().getWorkbenchWindow());
    Window.pump();
  }

  @Test
  void typingKeepsTheWindowFree() throws Exception {
    study = Window.demonstration();
    Window.waitForResults(study);
    Study model = study.session().study();
    Trial trial = Window.firstTrial(study);
    Window.view(Parts.BESIDE, Object.class);
    Window.view(Parts.CHECKS, Object.class);

    perspective("evidence");
    NatTable claims = grid(model.getSites().get(0).getContexts().get(0).getSheets().get(0), "page.values", "values");
    isShort("a claim", i -> Window.enter(claims, "4" + i));
    perspective("plan");
    NatTable steps = grid(model.getLots().get(0), "record.steps", "steps");
    isShort("a step of a lot", i -> Window.enter(steps, "dry"));
    perspective("record");
    NatTable values = grid(trial, "page.values", "values");
    isShort("a value of a trial", i -> Window.enter(values, "8" + i));
    NatTable log = grid(trial, "record.log", "log");
    isShort("a line of the run log", i -> {
      Window.enter(log, "164" + i);
      Window.enter(log, "note");
      Window.enter(log, "flame is white");
      Window.key(log, '\r', '\r');
    });
    perspective("compare");
    WeightsView weights = Window.view(Parts.WEIGHTS, WeightsView.class);
    weights.reveal("weight.group.geometry");
    isShort("a weight", i -> {
      weights.reveal("weight.group.geometry");
      Window.type(weights.grid().control(), "2" + i);
    });
  }

  @Test
  void turningPagesKeepsTheWindowFree() throws Exception {
    study = Window.demonstration();
    Window.waitForResults(study);
    perspective("record");
    for (String key : Window.sheet(Window.firstTrial(study)).pageKeys()) {
      // a page is built when it is shown first, so each try begins with a sheet that has not shown it
      isShort("page " + key, i -> {
        Window.page().closeAllEditors(false);
        Window.sheet(Window.firstTrial(study)).show(key.equals(FIRST) ? OTHER : FIRST);
        Window.idle();
      }, i -> ((SheetEditor) Window.page().getActiveEditor()).show(key));
    }
  }
}
