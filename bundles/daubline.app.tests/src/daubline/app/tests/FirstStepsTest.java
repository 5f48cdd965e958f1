package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.inference.Comparison;
import daubline.model.Citation;
import daubline.model.EvidenceSheet;
import daubline.model.Study;
import daubline.ui.Parts;
import daubline.ui.compare.ComparisonView;
import daubline.ui.compare.Selection;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Seeds;
import daubline.ui.study.Studies;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** What the help page "First steps" says, step by step: from nothing to two trials ranked against a sheet typed from a report. */
class FirstStepsTest {

  private static final String NAME = "First Steps";

  @AfterEach
  void clear() throws Exception {
    Selection.set(null);
    Window.clear();
    Path folder = Seeds.home().resolve("first-steps");
    if (Files.exists(folder)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private static void command(String id, String kind) throws Exception {
    Command command = PlatformUI.getWorkbench().getService(ICommandService.class).getCommand(id);
    ParameterizedCommand whole = ParameterizedCommand.generateCommand(command, kind == null ? Map.of() : Map.of("daubline.ui.add.kind", kind));
    PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand(whole, null);
    Window.pump();
  }

  private static OpenStudy newStudy() throws Exception {
    Display.getCurrent().timerExec(100, new Runnable() {
      @Override
      public void run() {
        for (Shell shell : Display.getCurrent().getShells()) {
          if (shell.getText().equals("New Study")) {
            Window.all(shell).stream().filter(c -> c instanceof Text t && t.getEditable()).map(Text.class::cast).findFirst().orElseThrow().setText(NAME);
            return;
          }
        }
        Display.getCurrent().timerExec(100, this);
      }
    });
    Window.answer("New Study", "OK");
    command("daubline.ui.newStudy", null);
    Window.waitFor("the new study", () -> Studies.get().current().isPresent());
    return Studies.get().current().orElseThrow();
  }

  private static SheetEditor editor() {
    return (SheetEditor) Window.page().getActiveEditor();
  }

  private static void type(NatTable grid, String... texts) {
    for (String text : texts) {
      if (text.isEmpty()) {
        Window.key(grid, SWT.CR, SWT.CR);
      } else {
        Window.enter(grid, text);
      }
    }
  }

  private static void trial(String status, String variable, String... found) throws Exception {
    command("daubline.ui.add", "TRIAL");
    editor().show("page.facts");
    Window.pump();
    Combo combo = Window.find("status", Combo.class);
    combo.select(combo.indexOf(status));
    combo.notifyListeners(SWT.Selection, new Event());
    Window.pump();
    editor().show("page.values");
    editor().reveal(null, variable);
    Window.pump();
    NatTable grid = Window.find("values", NatTable.class);
    for (int i = 0; i < 3; i++) {
      Window.key(grid, (char) 0, SWT.ARROW_RIGHT);
    }
    for (String text : found) {
      Window.type(grid, text);
    }
  }

  @Test
  void anEmptyStudyBecomesARankedComparison() throws Exception {
    OpenStudy study = newStudy();
    Study model = study.session().study();
    command("daubline.ui.add", "EVIDENCE_SHEET");
    command("daubline.ui.add", "CITATION");
    NatTable claims = Window.find("claims", NatTable.class);
    type(claims, "Base internal diameter", "285 ± 10 mm", "12", "high", "", "");
    type(claims, "Base external diameter", "480 ± 20 mm", "12", "high", "", "");
    type(claims, "Pit depth", "not preserved", "13", "", "", "");
    Citation report = model.getCitations().get(0);
    EvidenceSheet sheet = model.getSites().get(0).getContexts().get(0).getSheets().get(0);
    assertEquals(3, sheet.getClaims().size(), "what was typed went to the one sheet there is");
    assertTrue(sheet.getClaims().stream().allMatch(c -> c.getCitation() == report));

    trial("recorded", "base_internal_diameter", "340 ± 5 mm", "560 ± 5 mm");
    trial("recorded", "base_internal_diameter", "288 ± 5 mm", "475 ± 5 mm");
    List<String> names = model.getSeries().get(0).getTrials().stream().map(t -> t.getName()).toList();
    assertEquals(2, names.stream().distinct().count(), "each has a name of its own: " + names);

    PlatformUI.getWorkbench().showPerspective("daubline.app.compare", Window.page().getWorkbenchWindow());
    Window.waitForResults(study);
    ComparisonView view = Window.view(Parts.COMPARISON, ComparisonView.class);
    assertEquals(2, view.grid().model().rows());
    assertEquals(names.get(1), view.ranking().model().cell(1, 0).text(), "the one that was closer comes first");
    assertEquals(names.get(0), view.ranking().model().cell(1, 1).text());
    Comparison best = study.results().orElseThrow().comparisons().stream().filter(c -> c.trialName().equals(names.get(1))).findFirst().orElseThrow();
    assertTrue(best.agreement() > 0.8, "agreement " + best.agreement());
    assertTrue(best.coverage() > 0 && best.coverage() < 0.2, "two diameters are a small part of all that could be tested: " + best.coverage());
  }
}
