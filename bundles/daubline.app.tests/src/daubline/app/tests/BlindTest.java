package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Snapshots;
import daubline.model.BlindRecording;
import daubline.model.Claim;
import daubline.model.ResidueMass;
import daubline.model.Trial;
import daubline.session.BlindRecordings;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.views.ChecksView;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.core.commands.Command;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.commands.ICommandService;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** While somebody records blind the window shows neither run nor evidence, whatever is opened; ended it shows them again. */
class BlindTest {

  /** What may be done meanwhile; a new command is to be thought about and put here or made to wait. */
  private static final Set<String> ALLOWED = Set.of("hearthside", "newStudy", "openStudy", "saveAs", "add", "repeatTrial", "recordBlind", "splitLot", "mergeLots",
      "exportCitations", "copyToDisk", "copyToSameDisk", "openBackup", "closeStudy", "whatIsThis", "find", "workOut", "askWhereFrom");

  private static final int TRY_MILLIS = 50;

  @TempDir
  Path folder;

  @AfterEach
  void clear() {
    Window.clear();
  }

  /** Runs the command and answers its question: first the name, then the button. */
  private static void answer(String title, String button, String name) throws Exception {
    Display.getCurrent().timerExec(TRY_MILLIS, new Runnable() {
      @Override
      public void run() {
        Optional<Combo> who = Arrays.stream(Display.getCurrent().getShells()).filter(s -> s.isVisible() && s.getText().equals(title)).flatMap(s -> Window.all(s).stream())
            .filter(c -> "recorder".equals(c.getData("id"))).map(Combo.class::cast).findFirst();
        who.ifPresentOrElse(combo -> {
          combo.setText(name);
          Window.answer(title, button);
        }, () -> Display.getCurrent().timerExec(TRY_MILLIS, this));
      }
    });
    run("recordBlind");
  }

  private static void run(String command) throws Exception {
    PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("daubline.ui." + command, null);
    Window.pump();
  }

  private static void begin(String name) throws Exception {
    answer("Record Blind", "Begin", name);
  }

  @Test
  void nothingThatCanBeReadTellsOfRunOrEvidence() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Secrets secrets = Secrets.of(study.session().study());
    WindowWalk seeing = new WindowWalk(study, 1);
    Set<String> seen = secrets.in(seeing.texts());
    assertTrue(seen.size() > 100, "the walk reads what is there: " + seen);
    int findings = study.findings().size();
    begin("Ann");
    assertEquals("Ann", study.blind().orElseThrow().getBy().getName());
    assertFalse(study.session().isDirty(), "saved at once");
    assertTrue(study.results().isEmpty() && study.compared().isEmpty());
    WindowWalk blind = new WindowWalk(study, 3);
    Set<String> told = new TreeSet<>();
    blind.texts().forEach((where, texts) -> secrets.in(texts).forEach(secret -> told.add(where + ": " + secret)));
    assertTrue(told.isEmpty(), told.size() + " told: " + told);
    assertTrue(blind.texts().size() > 60, "many places: " + blind.texts().keySet());
    assertEquals(findings, study.findings().size() + study.hiddenFindings());
    assertTrue(study.hiddenFindings() > 0);
    assertEquals(study.findings().size(), Window.view("daubline.ui.checks", ChecksView.class).grid().model().rows());
    System.out.println("BlindTest: " + secrets.size() + " secrets, " + seen.size() + " of them read in the open window, none in " + blind.texts().size() + " places while blind");
    answer("End Blind Recording", "End It", "Bo");
    assertTrue(secrets.in(new WindowWalk(study, 1).texts()).size() > 100, "shown again");
  }

  @Test
  void whatIsOpenIsCoveredInPlaceAndTellingCommandsWait() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Trial trial = Window.firstTrial(study);
    String name = trial.getName();
    SheetEditor editor = Window.sheet(trial);
    SheetEditor evidence = Window.sheet(EvidenceTest.firstSheet(study));
    begin("Ann");
    assertEquals(BlindRecordings.codes(study.session().study()).get(trial.getId()), editor.getPartName());
    assertFalse(editor.getTitleToolTip().contains(name));
    for (String key : List.of("page.before", "page.balance", "page.facts", "record.predictions", "record.log", "record.loggers", "record.measures", "record.analyses", "record.visits")) {
      assertNull(editor.show(key), key);
    }
    assertNull(evidence.show("page.values"));
    assertNotNull(evidence.show("page.blind"));
    int trials = study.session().study().getSeries().get(0).getTrials().size();
    Window.sheet(trial);
    Window.answer("That Did Not Work", "OK");
    run("repeatTrial");
    assertEquals(trials, study.session().study().getSeries().get(0).getTrials().size());
    ICommandService commands = PlatformUI.getWorkbench().getService(ICommandService.class);
    for (Command command : commands.getDefinedCommands()) {
      if (command.getId().startsWith("daubline.ui.")) {
        assertTrue(ALLOWED.contains(command.getId().substring("daubline.ui.".length())) || !command.isEnabled(), command.getId());
      }
    }
    Path table = Files.writeString(folder.resolve("table.csv"), "a,b\n1,2\n");
    String before = study.session().digest();
    Window.answer("That Did Not Work", "OK");
    FileDrop.take(List.of(table));
    assertEquals(before, study.session().digest(), "a table that is dropped is refused by a message");
  }

  @Test
  void whatIsWrittenMeanwhileIsMarkedAndKeptThroughUndoAndReopening() throws Exception {
    OpenStudy study = Window.demonstration();
    Window.waitForResults(study);
    Trial trial = study.session().study().getSeries().get(0).getTrials().stream()
        .filter(t -> t.getRemains() != null && !t.getRemains().getResidues().isEmpty() && !t.getRemains().getClaims().isEmpty()).findFirst().orElseThrow();
    String name = trial.getName();
    String variable = trial.getRemains().getClaims().stream().filter(c -> c.getValue() != null).findFirst().orElseThrow().getVariable();
    int residues = trial.getRemains().getResidues().size();
    int claims = trial.getRemains().getClaims().size();
    begin("Ann");
    assertTrue(study.session().undoLabel().isEmpty(), "undo does not go behind the beginning");
    Window.sheet(trial).show("record.residues");
    Window.pump();
    NatTable grid = Window.find("residues", NatTable.class);
    assertEquals(2, grid.getRowCount(), "the heading and the row to begin");
    Window.enter(grid, "Tapped slag");
    Window.enter(grid, "2.5 kg");
    Window.sheet(trial).reveal(null, variable);
    Window.pump();
    Window.type(Window.find("values", NatTable.class), "not preserved");
    assertEquals(residues + 1, trial.getRemains().getResidues().size());
    assertEquals(claims + 1, trial.getRemains().getClaims().size(), "a statement of its own beside the one that is not shown");
    ResidueMass mass = trial.getRemains().getResidues().get(residues);
    Claim claim = trial.getRemains().getClaims().get(claims);
    assertTrue(BlindRecordings.of(mass).isPresent() && BlindRecordings.of(claim).isPresent());
    study.session().undo();
    assertEquals(claims, trial.getRemains().getClaims().size());
    study.session().redo();
    assertTrue(BlindRecordings.of(trial.getRemains().getClaims().get(claims)).isPresent(), "done again it bears its mark");
    study.session().save();
    reopen(study.folder(), name, claim.getId());
  }

  /** Closed and opened again it is still on; ending it is kept with the person, and undo does not go behind it. */
  private static void reopen(Path folder, String name, String claim) throws Exception {
    Window.page().closeAllEditors(false);
    Studies.get().close(Studies.get().find(folder).orElseThrow());
    OpenStudy study = Window.open(folder);
    Window.waitForResults(study);
    assertTrue(study.blind().isPresent() && study.results().isEmpty());
    answer("End Blind Recording", "Cancel", "Bo");
    assertTrue(study.blind().isPresent(), "only asked");
    answer("End Blind Recording", "End It", "Bo");
    assertTrue(study.blind().isEmpty() && !study.session().isDirty());
    BlindRecording kept = study.session().study().getBlindRecordings().get(0);
    assertEquals("Bo", kept.getEndedBy().getName());
    assertNotNull(kept.getEnded());
    assertEquals(2, BlindRecordings.written(kept).size());
    String trail = Snapshots.trailOf(study.session(), study.session().find(claim, Claim.class).orElseThrow()).asText();
    assertTrue(trail.contains("recorded blind by") && trail.contains("Ann") && trail.contains("ended by Bo"), trail);
    study.session().undo();
    assertTrue(study.blind().isEmpty());
    Window.waitForResults(study);
    assertTrue(study.results().isPresent());
    assertTrue(study.session().study().getSeries().stream().flatMap(s -> s.getTrials().stream()).map(OpenStudy::nameOf).anyMatch(name::equals));
  }
}
