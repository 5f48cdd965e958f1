package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Basis;
import daubline.base.Stage;
import daubline.base.Trail;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.ValueKind;
import daubline.model.Choice;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.Reconstruction;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.session.Predictions;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.commands.ExportCitations;
import daubline.ui.evidence.ReconstructionsView;
import daubline.ui.grid.Grid;
import daubline.ui.sheet.SheetEditor;
import daubline.ui.study.Chosen;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Evidence is read, reckoned and chosen in the window; undo brings back the same bytes. */
class EvidenceTest {

  @AfterEach
  void clear() {
    Window.clear();
  }

  static EvidenceSheet firstSheet(OpenStudy study) {
    return study.session().study().getSites().stream().flatMap(s -> s.getContexts().stream()).flatMap(c -> c.getSheets().stream()).findFirst().orElseThrow();
  }

  /** Fills texts of a dialog as soon as it is open; the dialog itself runs its own loop. */
  private static void fill(String title, String... idsAndTexts) {
    Display.getCurrent().timerExec(50, () -> {
      for (Shell shell : Display.getCurrent().getShells()) {
        for (int i = 0; shell.getText().equals(title) && i < idsAndTexts.length; i += 2) {
          String id = idsAndTexts[i];
          Text text = Window.all(shell).stream().filter(c -> id.equals(c.getData("id"))).map(Text.class::cast).findFirst().orElseThrow();
          text.setText(idsAndTexts[i + 1]);
        }
      }
    });
  }

  static void press(String id) {
    Window.find(id, Button.class).notifyListeners(SWT.Selection, new Event());
    Window.pump();
  }

  @Test
  void aDiameterFromAnArcBecomesAClaimThatKeepsWhatWasTyped() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = firstSheet(study);
    Window.sheet(sheet).show("page.values");
    String before = study.session().digest();
    int claims = sheet.getClaims().size();
    fill(Words.of("arc.title"), "arcFirst", "400 ± 2 mm", "arcSecond", "150 ± 2 mm");
    Window.answer(Words.of("arc.title"), Words.of("arc.enter"));
    press("fromArc");
    assertEquals(claims + 1, sheet.getClaims().size());
    Claim claim = sheet.getClaims().get(claims);
    assertEquals(0.41667, claim.getValue(), 1e-5);
    assertEquals("150 ± 2", claim.getInputs().get(1).getTyped());
    assertTrue(study.session().undoLabel().orElseThrow().contains("Base internal diameter"));
    study.session().undo();
    assertEquals(before, study.session().digest());
  }

  @Test
  void theSectionFollowsTheChoicesAndTwoReconstructionsShowWhatDiffers() throws Exception {
    OpenStudy study = Window.demonstration();
    Reconstruction shaft = study.session().study().getReconstructions().get(0);
    Window.sheet(shaft).reveal(null, "furnace_height");
    Window.pump();
    Label caption = Window.find("sectionCaption", Label.class);
    assertTrue(caption.getText().contains("210 mm") && caption.getText().contains("furnace height"), caption.getText());
    String before = study.session().digest();
    ReconstructionsView view = Window.view(Parts.RECONSTRUCTIONS, ReconstructionsView.class);
    int differences = view.grid().model().rows();
    assertTrue(differences > 3, "the two differ");
    Window.sheet(shaft).reveal(null, "furnace_height");
    Window.pump();
    Window.type(Window.find("values", NatTable.class), "80 cm");
    assertFalse(caption.isDisposed());
    Choice height = shaft.getChoices().stream().filter(c -> "furnace_height".equals(c.getVariable())).findFirst().orElseThrow();
    study.edit("change.field", "basis", () -> height.setBasis(Basis.EVIDENCE));
    Window.pump();
    assertFalse(caption.getText().contains("Guessed"), "it followed: " + caption.getText() + shaft.getChoices());
    Combo second = Window.find("secondReconstruction", Combo.class);
    second.select(0);
    second.notifyListeners(SWT.Selection, new Event());
    Window.pump();
    assertEquals(0, view.grid().model().rows(), "nothing differs from itself");
    study.session().undo();
    study.session().undo();
    assertEquals(before, study.session().digest());
  }

  @Test
  void aPredictionIsTypedLockedAndStatedAnew() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial trial = Window.firstTrial(study);
    int stated = trial.getPredictions().size();
    assertTrue(Window.sheet(trial).show("record.predictions") != null);
    Window.pump();
    NatTable grid = Window.find("predictions", NatTable.class);
    String before = study.session().digest();
    Window.enter(grid, "Bloom mass");
    Window.enter(grid, "2400 ± 300 g");
    assertEquals(stated + 1, trial.getPredictions().size());
    assertTrue(Predictions.isLocked(trial.getPredictions().get(stated)), "its fire is over");
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }

  @Test
  void citationsComeFromABibliographicFile() throws Exception {
    OpenStudy study = Window.demonstration();
    int known = study.session().study().getCitations().size();
    String before = study.session().digest();
    Path file = Files.writeString(Files.createTempFile("refs", ".bib"), "@article{new-1, author = {M{\\\"u}ller, J.}, title = {New}, year = 2030}\n");
    Window.answer(Words.of("import.title"), Words.of("import.do"));
    FileDrop.take(List.of(file));
    Window.pump();
    assertEquals(known + 1, study.session().study().getCitations().size());
    assertEquals("Müller, J.", study.session().study().getCitations().get(known).getAuthors());
    Path out = file.resolveSibling("out-" + file.getFileName());
    ExportCitations.write(study, out);
    assertTrue(Files.readString(out).contains("@article{new-1,"));
    study.session().undo();
    assertEquals(before, study.session().digest());
    Files.delete(file);
    Files.delete(out);
  }

  @Test
  void reasonsForNoNumberAreTypedAsEasilyAsANumber() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = firstSheet(study);
    Window.sheet(sheet).reveal(null, "pit_depth");
    NatTable grid = Window.find("values", NatTable.class);
    for (Map.Entry<String, ValueKind> word : Map.of("not preserved", ValueKind.NOT_PRESERVED, "not looked for", ValueKind.NOT_LOOKED_FOR,
        "absent", ValueKind.ABSENT, "≥ 18 cm", ValueKind.AT_LEAST).entrySet()) {
      Window.sheet(sheet).reveal(null, "pit_depth");
      Window.enter(grid, word.getKey());
      assertEquals(word.getValue(), last(sheet, "pit_depth").getKind(), word.getKey());
    }
    Window.sheet(sheet).reveal(null, "pit_depth");
    press("NOT_PRESERVED");
    assertEquals(ValueKind.NOT_PRESERVED, last(sheet, "pit_depth").getKind());
    Window.sheet(sheet).reveal(last(sheet, "pit_depth"), "pit_depth");
    Text limit = Window.find("preservationLimit", Text.class);
    limit.setFocus();
    limit.setText("21 cm");
    limit.notifyListeners(SWT.DefaultSelection, new Event());
    Window.pump();
    assertEquals(0.21, last(sheet, "pit_depth").getPreservationLimit(), 1e-9);
    assertEquals("210 mm", limit.getText());
  }

  private static Claim last(EvidenceSheet sheet, String variable) {
    return sheet.getClaims().stream().filter(c -> variable.equals(c.getVariable())).reduce((a, b) -> b).orElseThrow();
  }

  @Test
  void contradictoryClaimsStandTogetherUntilOneIsPickedWithAReason() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = firstSheet(study);
    Window.waitForResults(study);
    List<Claim> both = sheet.getClaims().stream().filter(c -> "base_internal_diameter".equals(c.getVariable())).toList();
    assertTrue(both.size() > 1, "the demonstration contradicts itself here");
    study.edit("change.field", "pick", () -> both.forEach(c -> c.setPicked(false)));
    Window.waitForResults(study);
    assertTrue(study.findings().stream().anyMatch(f -> f.code().startsWith("claims.") && f.variable().equals("base_internal_diameter") && f.where().contains(sheet.getName())), study.findings().toString());
    Window.sheet(sheet).reveal(both.get(1), "base_internal_diameter");
    Window.choose("picked", 1);
    Text because = Window.find("pickedBecause", Text.class);
    because.setFocus();
    because.setText("seen on the plan itself");
    because.notifyListeners(SWT.DefaultSelection, new Event());
    Window.pump();
    assertTrue(both.get(1).isPicked() && !both.get(0).isPicked());
    Window.sheet(sheet).reveal(both.get(0), "base_internal_diameter");
    Window.choose("picked", 1);
    assertTrue(both.get(0).isPicked() && !both.get(1).isPicked(), "picking one takes the pick from the other");
    study.session().undo();
    Window.sheet(sheet).reveal(both.get(1), "base_internal_diameter");
    Window.pump();
    assertEquals("seen on the plan itself", both.get(1).getPickedBecause());
    Window.waitForResults(study);
    assertFalse(study.findings().stream().anyMatch(f -> f.code().startsWith("claims.") && f.variable().equals("base_internal_diameter") && f.where().contains(sheet.getName())), study.findings().toString());
  }

  @Test
  void aTrialIsRepeatedWithItsPlanAndWithoutItsOutcome() throws Exception {
    OpenStudy study = Window.demonstration();
    Trial original = Window.firstTrial(study);
    Window.sheet(original);
    String before = study.session().digest();
    PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("daubline.ui.repeatTrial", null);
    Window.pump();
    Series series = (Series) original.eContainer();
    Trial repeat = series.getTrials().get(series.getTrials().size() - 1);
    assertEquals(original, repeat.getRepeatOf());
    assertEquals(TrialKind.REPEAT, repeat.getKind());
    assertEquals(TrialStatus.PLANNED, repeat.getStatus());
    assertEquals(original.getBuild(), repeat.getBuild());
    assertEquals(original.getLots(), repeat.getLots());
    assertEquals(original.getValues().stream().filter(v -> v.getStage() == Stage.PLANNED).count(), repeat.getValues().size());
    assertTrue(repeat.getLog().isEmpty() && repeat.getPieces().isEmpty() && repeat.getSamples().isEmpty() && repeat.getAnalyses().isEmpty()
        && repeat.getPredictions().isEmpty() && repeat.getLoggers().isEmpty() && repeat.getFiles().isEmpty() && repeat.getVisits().isEmpty());
    assertTrue(repeat.getRemains() == null && repeat.getConclusion() == null && repeat.getOn() == null && repeat.getReadyBecause() == null);
    assertTrue(series.getTrials().stream().map(Trial::getNumber).filter(n -> n != null && n.equals(repeat.getNumber())).count() == 1, "a number of its own");
    assertTrue(repeat.getMeasures().stream().noneMatch(m -> original.getMeasures().stream().anyMatch(o -> o.getId().equals(m.getId()))));
    study.session().undo();
    assertEquals(before, study.session().digest());
  }

  @Test
  void aReportIsReadIntoClaimsByKeyboardAlone() throws Exception {
    OpenStudy study = Window.demonstration();
    Citation report = study.session().study().getCitations().get(0);
    assertTrue(Window.sheet(report).show("page.report") != null);
    Window.pump();
    Window.waitForResults(study);
    NatTable grid = Window.find("claims", NatTable.class);
    int claims = count(study, report);
    String before = study.session().digest();
    type(grid, "Pit depth", "35 ± 3 cm", "23", "high", "50 %", "some 35 cm deep");
    type(grid, "Wall thickness", "≥ 60 mm", "fig. 4", "medium", "", "");
    type(grid, "Surviving height", "not preserved", "24", "", "", "");
    assertEquals(claims + 3, count(study, report));
    EvidenceSheet sheet = study.session().study().getSites().stream().flatMap(s -> s.getContexts().stream()).flatMap(c -> c.getSheets().stream())
        .filter(s -> s.getClaims().stream().anyMatch(c -> "some 35 cm deep".equals(c.getVerbatim()))).findFirst().orElseThrow();
    Claim depth = last(sheet, "pit_depth");
    assertEquals(0.35, depth.getValue(), 1e-12);
    assertEquals(0.03, depth.getSigma(), 1e-12);
    assertEquals("23", depth.getPage());
    assertEquals(0.5, depth.getSamplingFraction(), 1e-12);
    assertEquals(ValueKind.AT_LEAST, last(sheet, "wall_thickness").getKind());
    assertEquals(ValueKind.NOT_PRESERVED, last(sheet, "surviving_height").getKind());
    while (!study.session().digest().equals(before) && study.session().undoLabel().isPresent()) {
      study.session().undo();
    }
    assertEquals(before, study.session().digest());
  }

  /** Types texts one after the other, each ended by Enter; an empty one is Enter alone. */
  private static void type(NatTable grid, String... texts) {
    for (String text : texts) {
      if (text.isEmpty()) {
        Window.key(grid, SWT.CR, SWT.CR);
      } else {
        Window.enter(grid, text);
      }
    }
  }

  private static int count(OpenStudy study, Citation report) {
    return (int) study.session().study().getSites().stream().flatMap(s -> s.getContexts().stream()).flatMap(c -> c.getSheets().stream())
        .flatMap(s -> s.getClaims().stream()).filter(c -> c.getCitation() == report).count();
  }

  @Test
  void fromAClaimOneStepLeadsToItsReportAndPage() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = firstSheet(study);
    Claim claim = sheet.getClaims().stream().filter(c -> c.getCitation() != null && c.getPage() != null).findFirst().orElseThrow();
    Window.sheet(sheet).reveal(claim, claim.getVariable());
    Window.pump();
    Trail trail = Chosen.trail().orElseThrow();
    assertTrue(trail.asText().contains("citation"), trail.asText());
    press("toReport");
    assertEquals(claim.getCitation(), ((SheetEditor) Window.page().getActiveEditor()).object());
    NatTable grid = Window.find("claims", NatTable.class);
    assertTrue(grid.getRowCount() > 1);
  }

  /** A total said to be of the whole deposit, but read with low confidence, is shown as at least that much. */
  @Test
  void aTotalReadWithLowConfidenceReadsAtLeast() throws Exception {
    OpenStudy study = Window.demonstration();
    EvidenceSheet sheet = firstSheet(study);
    Claim claim = daubline.model.ModelFactory.eINSTANCE.createClaim();
    study.session().edit("Total", () -> {
      sheet.getClaims().removeIf(c -> "residue_total".equals(c.getVariable()));
      claim.setVariable("residue_total");
      daubline.session.Readings.put(claim, daubline.base.Amount.exact(31));
      claim.setSamplingFraction(1.0);
      sheet.getClaims().add(claim);
    });
    assertEquals("31\u00A0kg", shown(sheet, claim));
    study.session().edit("Doubt", () -> claim.setConfidence(daubline.base.Confidence.LOW));
    assertEquals("at least 31\u00A0kg (read with low confidence)", shown(sheet, claim));
  }

  private static String shown(EvidenceSheet sheet, Claim claim) {
    Window.sheet(sheet).reveal(claim, claim.getVariable());
    Window.pump();
    Grid grid = (Grid) Window.find("values", NatTable.class).getData(Grid.GRID);
    return grid.selected().map(p -> grid.model().cell(p.x, p.y).text()).orElse("");
  }
}
