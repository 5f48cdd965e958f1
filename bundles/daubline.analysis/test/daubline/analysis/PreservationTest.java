package daubline.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.ValueKind;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Progress;
import daubline.model.Claim;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What lies above the height to which it could be seen counts against nobody. */
class PreservationTest {

  private static Amount zone(Amount amount, double limit) {
    return Preservation.seen("vitrified_height", amount, limit);
  }

  @Test
  void aClaimIsLeftAsItIsCutOrGone() {
    assertEquals(Amount.exact(0.15), zone(Amount.exact(0.15), 0.21), "it ended below");
    assertEquals(Amount.atLeast(0.21), zone(Amount.exact(0.21), 0.21), "it reached the broken edge");
    assertEquals(Amount.atLeast(0.20), zone(Amount.range(0.20, 0.23), 0.21));
    assertEquals(Amount.atLeast(0.21), zone(Amount.plusMinus(0.22, 0.01), 0.21), "within two standard uncertainties");
    assertEquals(ValueKind.NOT_PRESERVED, zone(Amount.plusMinus(0.24, 0.01), 0.21).kind());
    assertEquals(ValueKind.NOT_PRESERVED, zone(Amount.range(0.22, 0.30), 0.21).kind());
    assertEquals(ValueKind.NOT_PRESERVED, zone(Amount.of(ValueKind.NOT_RECORDED), 0).kind(), "nothing of it is left");
    assertEquals(ValueKind.NOT_RECORDED, zone(Amount.of(ValueKind.NOT_RECORDED), 0.21).kind(), "below it somebody could have looked");
    assertEquals(Amount.exact(0.4), zone(Amount.exact(0.4), Double.NaN));
    assertEquals(Amount.exact(0.21), Preservation.seen("inlet_height_above_floor", Amount.exact(0.21), 0.21), "an inlet does not go on");
    assertEquals(Amount.exact(0.4), Preservation.seen("pit_depth", Amount.exact(0.4), 0.21), "a pit is no height of the wall");
    for (Amount once : List.of(zone(Amount.exact(0.21), 0.21), zone(Amount.exact(0.5), 0.21))) {
      assertEquals(once, zone(once, 0.21), "cutting twice is cutting once");
    }
  }

  private static Comparison compare(StudySession session, EvidenceSheet sheet) {
    ComparisonOptions options = new ComparisonOptions(true, List.of(), List.of(sheet.getId()), 200, 5, 1);
    return StudyComparison.of(Snapshots.of(session), List.of(), options, Progress.NONE).comparisons().stream()
        .filter(c -> result(c).isTested()).findFirst().orElseGet(() -> StudyComparison.of(Snapshots.of(session), List.of(), options, Progress.NONE).comparisons().get(0));
  }

  private static CriterionResult result(Comparison c) {
    return c.criteria().stream().filter(r -> r.criterion().equals("wall_zones")).findFirst().orElseThrow();
  }

  /** One demonstration trial against a sheet that claims a reduced height: the claim counts, then is cut, then is gone from agreement and coverage. */
  @Test
  void whatCouldNotBeSeenIsOutOfAgreementAndCoverageWithItsReason() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      EvidenceSheet sheet = session.study().getSites().get(0).getContexts().get(0).getSheets().get(0);
      Claim claim = ModelFactory.eINSTANCE.createClaim();
      session.edit("claim", () -> {
        sheet.getClaims().removeIf(c -> List.of("reduced_height", "oxidised_height").contains(c.getVariable()));
        claim.setVariable("reduced_height");
        Readings.put(claim, Amount.exact(0.30));
        sheet.getClaims().add(claim);
        session.study().getSeries().forEach(s -> s.getTrials().stream().filter(t -> t.getRemains() != null).forEach(t -> {
          t.getRemains().getClaims().removeIf(c -> List.of("reduced_height", "oxidised_height").contains(c.getVariable()));
          Claim found = ModelFactory.eINSTANCE.createClaim();
          found.setVariable("reduced_height");
          Readings.put(found, Amount.exact(0.60));
          t.getRemains().getClaims().add(found);
        }));
      });
      Comparison whole = compare(session, sheet);
      CriterionResult counted = result(whole);
      assertTrue(counted.isTested() && counted.agreement() < 0.01, counted.reason());
      session.edit("limit", () -> claim.setPreservationLimit(0.30));
      CriterionResult cut = result(compare(session, sheet));
      assertTrue(cut.isTested() && cut.agreement() > 0.99, "the zone may have gone on: " + cut.reason());
      session.edit("limit", () -> claim.setPreservationLimit(0.21));
      Comparison without = compare(session, sheet);
      CriterionResult gone = result(without);
      assertFalse(gone.isTested());
      assertTrue(gone.reason().contains("above 210 mm nothing of it is preserved"), gone.reason());
      session.edit("gone", () -> Readings.put(claim, Amount.of(ValueKind.NOT_PRESERVED)));
      Comparison typed = compare(session, sheet);
      assertEquals(typed.coverage(), without.coverage(), 0, "the denominator is that of what is not preserved");
      assertEquals(typed.agreement(), without.agreement(), 0);
    }
  }
}
