package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.PlannedRun;
import daubline.model.Series;
import daubline.ui.grid.Grid;
import daubline.ui.plan.RunSheetFile;
import daubline.ui.study.OpenStudy;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The shortest way of the help page “Planning a series”, walked as a newcomer would in the demonstration study: an empty series becomes a
 * budgeted, randomised, printable plan. How long a hand takes for it is worked out in docs/performance.md; here nothing is timed that could
 * fail on a slow machine, but what the tool took is printed for that page.
 */
class NewcomerPlanTest {

  @TempDir
  Path folder;

  private final StringBuilder took = new StringBuilder();

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** Does one step and notes how long the tool took to answer. */
  private void step(String what, Runnable action) {
    long start = System.nanoTime();
    action.run();
    took.append(String.format(java.util.Locale.ROOT, "%s %.2f s%n", what, (System.nanoTime() - start) / 1e9));
  }

  private static void newSeries() {
    try {
      Command command = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand("daubline.ui.add");
      ParameterizedCommand whole = ParameterizedCommand.generateCommand(command, Map.of("daubline.ui.add.kind", "SERIES"));
      PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(whole, null);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
    Window.pump();
  }

  private static void press(String id) {
    Button button = Window.find(id, Button.class);
    Window.waitFor(id, button::isEnabled);
    button.notifyListeners(SWT.Selection, new Event());
    Window.pump();
  }

  private static OptionalInt rowOf(Grid grid, String row) {
    return IntStream.range(0, grid.model().rows()).filter(i -> grid.model().cell(0, i).text().equals(row)).findFirst();
  }

  private static void typeAt(NatTable table, String row, String text) {
    Grid grid = (Grid) table.getData(Grid.GRID);
    Window.waitFor("row " + row, () -> rowOf(grid, row).isPresent());
    table.forceFocus();
    grid.select(1, rowOf(grid, row).getAsInt());
    Window.pump();
    Keys.plainly(() -> Keys.write(table, text));
  }

  @Test
  void anEmptySeriesBecomesABudgetedRandomisedPrintablePlan() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Window.front();
    List<Series> all = study.session().study().getSeries();
    int before = all.size();
    step("New Series", NewcomerPlanTest::newSeries);
    assertEquals(before + 1, all.size());
    Series series = all.get(before);
    NatTable grid = Window.find("plan", NatTable.class);
    step("Air flow", () -> typeAt(grid, "Vary something else", "Air flow"));
    step("its limits", () -> typeAt(grid, "Air flow", "500 to 800 L/min"));
    step("Ore charged", () -> typeAt(grid, "Vary something else", "Ore charged"));
    step("its limits", () -> typeAt(grid, "Ore charged", "18 to 26 kg"));
    assertEquals(List.of("air_flow 500 to 800 L/min", "ore_total 18 to 26 kg"), series.getFactors().stream().map(f -> f.getVariable() + " " + f.getLevels()).toList());
    step("From the Lots", () -> press("plan.lots.take"));
    assertEquals(3, series.getProvisions().size(), "ore, charcoal and clay");
    Window.waitForResults(study);
    step("Propose", () -> {
      press("plan.propose");
      Window.waitFor("a proposal", Window.find("plan.freeze", Button.class)::isEnabled);
    });
    step("Freeze", () -> {
      press("plan.freeze");
      Window.waitFor("the frozen plan", () -> !series.getTrials().isEmpty());
    });
    int trials = series.getTrials().size();
    assertTrue(trials >= 6 && trials <= 9, "what the stock allows: " + trials);
    List<PlannedRun> runs = series.getPlans().get(0).getRuns();
    assertEquals(trials, runs.size());
    assertNotNull(series.getSeed(), "the order can be dealt again");
    Set<Integer> places = new HashSet<>();
    runs.forEach(r -> places.add(r.getPlace()));
    assertEquals(trials, places.size());
    Path sheets = folder.resolve("sheets.pdf");
    step("Run Sheets", () -> {
      RunSheetFile.write(study, series, sheets);
      Window.waitFor("the run sheets", () -> sheets.toFile().length() > 10_000);
    });
    assertTrue(new String(Files.readAllBytes(sheets), StandardCharsets.ISO_8859_1).startsWith("%PDF"));
    System.out.println("The tool took, on this machine:\n" + took);
  }
}
