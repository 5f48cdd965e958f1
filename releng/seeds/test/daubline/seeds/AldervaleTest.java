package daubline.seeds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Snapshots;
import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.analysis.checks.Checks;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.ValueKind;
import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.SheetData;
import daubline.model.Claim;
import daubline.model.DataFile;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.LoggerFile;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class AldervaleTest {

  private StudySession session;
  private Series series;

  @BeforeEach
  void open() throws Exception {
    session = StudySession.read(SeedsTest.SEEDS.resolve("aldervale"));
    series = session.study().getSeries().get(0);
  }

  @AfterEach
  void close() {
    session.close();
  }

  @Test
  void everyPartOfAStudyIsShown() {
    assertEquals(10, series.getTrials().size());
    assertEquals(4, series.getTrials().stream().map(Trial::getBuild).distinct().count());
    assertEquals(3, session.study().getReconstructions().size());
    assertEquals(2, session.study().getSites().size());
    assertEquals(Set.of(TrialKind.PILOT, TrialKind.EXPERIMENT, TrialKind.REPEAT, TrialKind.DEMONSTRATION),
        series.getTrials().stream().map(Trial::getKind).collect(Collectors.toSet()));
    assertTrue(series.getTrials().stream().anyMatch(t -> t.getStatus() == TrialStatus.FAILED));
    assertTrue(series.getTrials().stream().allMatch(t -> t.getRemains() != null && t.getRemains().getClaims().size() > 40));
    List<LogEntry> log = series.getTrials().stream().flatMap(t -> t.getLog().stream()).toList();
    assertTrue(log.stream().anyMatch(LogEntry::isLate) && log.stream().anyMatch(LogEntry::isAbout));
    assertTrue(log.stream().anyMatch(LogEntry::isInferred));
    assertTrue(log.stream().anyMatch(e -> e.getOriginal() != null) && log.stream().anyMatch(Incident.class::isInstance));
  }

  @Test
  void evidenceHoldsContradictionsLimitsAndGaps() {
    StudySnapshot snapshot = Snapshots.of(session);
    assertEquals(3, snapshot.sheet("sheet-ka-f1").orElseThrow().sheet().about("base_internal_diameter").size());
    assertTrue(snapshot.sheet("sheet-ka-f2").orElseThrow().sheet().about("base_internal_diameter").get(0).picked());
    Set<ValueKind> kinds = snapshot.sheets().stream().flatMap(s -> s.sheet().statements().values().stream()).flatMap(List::stream)
        .map(s -> s.amount().kind()).collect(Collectors.toSet());
    assertTrue(kinds.containsAll(Set.of(ValueKind.EXACT, ValueKind.PLUS_MINUS, ValueKind.RANGE, ValueKind.AT_LEAST,
        ValueKind.CATEGORY, ValueKind.PRESENT, ValueKind.ABSENT, ValueKind.NOT_PRESERVED, ValueKind.NOT_LOOKED_FOR,
        ValueKind.NOT_RECORDED)), kinds.toString());
  }

  @Test
  void mostOfWhatTheEvidenceSaysCanBeComparedWithEachTrial() {
    Set<String> evidence = new HashSet<>();
    session.study().getSites().get(0).getContexts().get(0).getSheets().get(0).getClaims().stream()
        .filter(c -> !Readings.amount(c).isMissing()).map(Claim::getVariable).forEach(evidence::add);
    for (Trial trial : series.getTrials()) {
      long shared = trial.getRemains().getClaims().stream().map(Claim::getVariable).distinct().filter(evidence::contains).count();
      assertTrue(shared > 0.85 * evidence.size(), trial.getName() + " shares " + shared + " of " + evidence.size());
    }
  }

  @Test
  void trialsLeaveDifferentRemains() {
    assertTrue(series.getTrials().stream().map(t -> t.getRemains().getClaims().get(0).getTyped()).distinct().count() >= 7);
    assertEquals(Set.of(ValueKind.PRESENT, ValueKind.ABSENT), series.getTrials().stream().flatMap(t -> t.getRemains().getClaims().stream())
        .filter(c -> c.getVariable().equals("tapped_slag")).map(Claim::getKind).collect(Collectors.toSet()));
  }

  /** The invented evidence was meant to resemble the shaft furnaces A and D, and the pit of furnace B. */
  @Test
  void theComparisonRanksTheFurnacesAsTheyWereMeant() {
    Map<String, Double> shaft = agreementWith("sheet-ka-f1");
    for (String tapped : List.of("trial-g01", "trial-g02", "trial-g07", "trial-g08")) {
      for (String other : List.of("trial-g03", "trial-g04", "trial-g05", "trial-g06")) {
        assertTrue(shaft.get(tapped) > shaft.get(other), tapped + " and " + other + ": " + shaft);
      }
    }
    Map<String, Double> pit = agreementWith("sheet-ka-f2");
    assertEquals("trial-g03", pit.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey(), pit.toString());
  }

  private Map<String, Double> agreementWith(String sheet) {
    StudySnapshot snapshot = Snapshots.of(session);
    List<SheetData> trials = snapshot.trials().stream().map(TrialData::found).toList();
    return ComparisonEngine.compare(trials, List.of(snapshot.sheet(sheet).orElseThrow().sheet()), Criteria.all(), ComparisonSettings.standard())
        .stream().collect(Collectors.toMap(Comparison::trial, Comparison::agreement));
  }

  /** Only what the study means to show is found: contradictions nobody decided and odd totals. */
  @Test
  void checksFindWhatIsMeantToBeFoundAndNothingElse() {
    Set<String> codes = Checks.run(session).stream().map(f -> f.code()).collect(Collectors.toSet());
    assertEquals(Set.of("claims.several", "analysis.total"), codes);
  }

  @Test
  void theLoggersFileIsSixHoursOnceASecondWithAGap() throws Exception {
    LoggerFile file = series.getTrials().get(6).getLoggers().get(0);
    List<String> lines = Files.readAllLines(session.folder().resolve(file.getPath()));
    List<String> rows = lines.subList(file.getHeaderRows(), lines.size());
    assertEquals(6 * 3600 - 395, rows.size());
    assertTrue(rows.stream().allMatch(r -> r.split(file.getDelimiter()).length == 9));
    Set<String> states = rows.stream().flatMap(r -> Arrays.stream(r.split(";"))).filter(c -> c.matches("[a-z]+"))
        .collect(Collectors.toSet());
    assertEquals(Set.of("open", "saturated", "removed"), states);
    assertTrue(file.getBytes() < 3_000_000);
    assertEquals(List.of(2, 3, 4, 5, 6, 7, 8, 9), file.getChannels().stream().map(c -> c.getColumn()).toList());
  }

  @Test
  void photographsAreRealPicturesAndSomeMayNotBeShown() throws Exception {
    List<DataFile> photographs = series.getTrials().stream().flatMap(t -> t.getFiles().stream()).toList();
    for (DataFile photograph : photographs) {
      BufferedImage image = ImageIO.read(session.folder().resolve(photograph.getPath()).toFile());
      assertEquals(120, image.getWidth());
      assertFalse(photograph.getCaption().isBlank() || photograph.getRights().isBlank());
    }
    assertEquals(2, photographs.stream().filter(p -> !p.isConsent()).count());
  }
}
