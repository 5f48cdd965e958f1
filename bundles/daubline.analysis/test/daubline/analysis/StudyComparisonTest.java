package daubline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Variables;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Progress;
import daubline.model.Claim;
import daubline.model.Reading;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.eclipse.emf.common.util.ECollections;
import org.junit.jupiter.api.Test;

/** Comparisons of both studies that come with the tool: what must not change them, and what an edit changes. */
class StudyComparisonTest {

  private static final List<String> STUDIES = List.of("seeds/aldervale", "seeds/open-smelts");
  private static final ComparisonOptions OPTIONS = new ComparisonOptions(true, List.of(), List.of(), 200, 5, 1);
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

  private static Map<String, Comparison> compare(StudySession session, ComparisonOptions options) {
    return StudyComparison.of(Snapshots.of(session), List.of(), options, Progress.NONE).comparisons().stream()
        .collect(Collectors.toMap(c -> c.trial() + " " + c.sheet(), Function.identity()));
  }

  private static List<Claim> claims(StudySession session) {
    return StreamSupport.stream(((Iterable<Object>) () -> (java.util.Iterator<Object>) (java.util.Iterator<?>) session.study().eAllContents()).spliterator(), false)
        .filter(Claim.class::isInstance).map(Claim.class::cast).toList();
  }

  /** Every list of the study back to front, and three threads: the same comparisons, figure by figure. */
  @Test
  void orderOfRowsAndThreadsChangeNothing() throws Exception {
    for (String study : STUDIES) {
      try (StudySession session = StudySession.read(Path.of(study))) {
        Map<String, Comparison> before = compare(session, OPTIONS);
        session.edit("Reverse", () -> {
          session.study().getSites().forEach(s -> s.getContexts().forEach(c -> c.getSheets().forEach(e -> {
            ECollections.reverse(e.getClaims());
            ECollections.reverse(e.getResidues());
            ECollections.reverse(e.getAnalyses());
          })));
          session.study().getSeries().forEach(s -> ECollections.reverse(s.getTrials()));
          ECollections.reverse(session.study().getSites());
          ECollections.reverse(session.study().getSeries());
        });
        Map<String, Comparison> after = compare(session, new ComparisonOptions(true, List.of(), List.of(), 200, 5, 3));
        assertEquals(before.keySet(), after.keySet());
        before.forEach((pair, c) -> assertAlike(c, after.get(pair), 0));
      }
    }
  }

  /** Every length typed anew, millimetres in centimetres and the other way round: the same comparisons but for the last digits. */
  @Test
  void unitsChangeNothing() throws Exception {
    int[] typed = {0};
    for (String study : STUDIES) {
      try (StudySession session = StudySession.read(Path.of(study))) {
        Map<String, Comparison> before = compare(session, OPTIONS);
        session.edit("Units", () -> claims(session).stream().filter(c -> List.of("mm", "cm").contains(String.valueOf(c.getUnit())))
            .forEach(c -> typed[0] += inAnotherUnit(c)));
        Map<String, Comparison> after = compare(session, OPTIONS);
        before.forEach((pair, c) -> assertAlike(c, after.get(pair), 1e-6));
      }
    }
    assertTrue(typed[0] >= 20, typed[0] + " lengths");
  }

  private static int inAnotherUnit(Reading reading) {
    boolean small = reading.getUnit().equals("mm");
    String text = NUMBER.matcher(reading.getTyped()).replaceAll(n -> new BigDecimal(n.group()).movePointLeft(small ? 1 : -1).toPlainString());
    assertEquals(Optional.empty(), Readings.put(reading, Variables.standard().get(reading.getVariable()), text, small ? "cm" : "mm", DecimalSign.POINT), text);
    return 1;
  }

  private static void assertAlike(Comparison a, Comparison b, double tolerance) {
    assertEquals(a.agreement(), b.agreement(), 100 * tolerance, a.trialName() + " against " + a.sheetName());
    assertEquals(a.low(), b.low(), 100 * tolerance);
    assertEquals(a.coverage(), b.coverage(), tolerance);
    assertEquals(a.bandLow(), b.bandLow(), 100 * tolerance);
    for (int i = 0; i < a.criteria().size(); i++) {
      CriterionResult x = a.criteria().get(i);
      CriterionResult y = b.criteria().get(i);
      assertEquals(x.verdict(), y.verdict(), x.criterion());
      assertEquals(x.agreement(), y.agreement(), tolerance, x.criterion());
      assertEquals(x.compatibility(), y.compatibility(), tolerance, x.criterion());
    }
  }

  /** After an edit what is kept from before equals what is worked out anew, and what it concerns has changed. */
  @Test
  void keptComparisonsEqualNewOnes() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      StudyResults before = StudyComparison.of(Snapshots.of(session), List.of(), OPTIONS, Progress.NONE);
      Claim claim = session.study().getSeries().get(0).getTrials().get(0).getRemains().getClaims().stream()
          .filter(c -> c.getVariable().equals("wall_thickness")).findFirst().orElseThrow();
      session.edit("Edit", () -> Readings.put(claim, Amount.exact(0.9)));
      StudySnapshot now = Snapshots.of(session);
      StudyResults anew = StudyComparison.of(now, List.of(), OPTIONS, Progress.NONE);
      int[] worked = {0};
      StudyResults kept = StudyComparison.of(now, List.of(), OPTIONS, Optional.of(before), new Progress() {
        @Override
        public void done(int part, int all) {
          worked[0] = all;
        }

        @Override
        public boolean isCancelled() {
          return false;
        }
      });
      assertEquals(anew.comparisons(), kept.comparisons());
      assertEquals(1, worked[0]);
      assertTrue(!before.comparisons().equals(kept.comparisons()));
    }
  }
}
