package daubline.analysis.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Snapshots;
import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.HowGot;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.process.ArcDiameter.Way;
import daubline.model.Claim;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.Site;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A diameter from an arc enters a study with what it was reckoned from; data invented. */
class ArcMeasurementTest {

  private static final Variable INSIDE = Variables.standard().find("base_internal_diameter").orElseThrow();

  @TempDir
  Path folder;

  private static ArcMeasurement read(String chord, String rise) {
    return ArcMeasurement.read(Way.CHORD_AND_RISE, chord, rise, DecimalSign.POINT).measurement().orElseThrow();
  }

  @Test
  void theClaimKeepsChordAndRiseAsTypedAndUndoTakesItBack() throws Exception {
    try (StudySession session = StudySession.create(folder.resolve("study"), "Test")) {
      EvidenceSheet sheet = ModelFactory.eINSTANCE.createEvidenceSheet();
      session.edit("sheet", () -> {
        Site site = ModelFactory.eINSTANCE.createSite();
        Context context = ModelFactory.eINSTANCE.createContext();
        context.getSheets().add(sheet);
        site.getContexts().add(context);
        session.study().getSites().add(site);
      });
      String before = session.digest();
      Claim claim = read("40.0 ± 0.2 cm", "150 ± 2").enter(session, sheet, INSIDE, "Diameter from an arc");
      assertEquals(0.15 + 0.16 / 0.6, claim.getValue(), 1e-12);
      assertEquals(0.0031, claim.getSigma(), 1e-4);
      assertEquals(HowGot.CALCULATED, claim.getHow());
      String trail = Snapshots.trailOf(session, claim).asText();
      assertTrue(trail.contains("calculated by: D = h + c²/(4h)") && trail.contains("c as typed: 40.0 ± 0.2 cm") && trail.contains("h as typed: 150 ± 2 mm"), trail);
      session.save();
      try (StudySession again = StudySession.read(folder.resolve("study"))) {
        Claim read = again.find(claim.getId(), Claim.class).orElseThrow();
        assertEquals("40.0 ± 0.2", read.getInputs().get(0).getTyped());
        assertEquals(0.002, read.getInputs().get(0).getSigma(), 1e-12);
        assertEquals("h", read.getInputs().get(1).getSymbol());
      }
      session.undo();
      assertEquals(before, session.digest());
    }
  }

  @Test
  void aValueTypedOverItForgetsTheArc() {
    Claim claim = ModelFactory.eINSTANCE.createClaim();
    claim.setFormula("D = h + c²/(4h)");
    claim.getInputs().add(ModelFactory.eINSTANCE.createClaimInput());
    assertTrue(Readings.put(claim, INSIDE, "410", "mm", DecimalSign.POINT).isEmpty());
    assertTrue(claim.getInputs().isEmpty() && claim.getFormula() == null);
  }

  @Test
  void aFlatArcBecomesARangeAndAStraightOneAtLeast() {
    assertEquals(ValueKind.PLUS_MINUS, read("400 ± 2", "150 ± 2").amount().kind());
    Amount flat = read("400 ± 5 mm", "50 ± 3 mm").amount();
    assertEquals(ValueKind.RANGE, flat.kind());
    assertTrue(flat.high() - 0.85 > 0.85 - flat.low(), "the greater side is the wider one");
    assertEquals(ValueKind.AT_LEAST, read("300 ± 5", "4 ± 3").amount().kind());
    assertTrue(ArcMeasurement.read(Way.CHORD_AND_RISE, "400 ± 5", "50 ± 3", DecimalSign.POINT).findings().stream().anyMatch(f -> f.code().equals("arc.lopsided")));
  }

  @Test
  void whatCannotBeReadSaysWhichInputAndHowToMendIt() {
    ArcMeasurement.Outcome outcome = ArcMeasurement.read(Way.CHORD_AND_ANGLE, "≥ 400 mm", "370", DecimalSign.POINT);
    assertTrue(outcome.measurement().isEmpty());
    assertEquals(java.util.List.of("c", "θ"), outcome.findings().stream().map(f -> f.where()).toList());
    assertTrue(outcome.findings().get(1).remedy().contains("360"));
    assertTrue(ArcMeasurement.read(Way.CHORD_AND_RISE, "4o0", "", DecimalSign.POINT).findings().stream().allMatch(f -> f.isError() && !f.remedy().isEmpty()));
    assertTrue(ArcMeasurement.read(Way.CHORD_AND_RISE, "400", "150", DecimalSign.POINT).findings().stream().allMatch(f -> f.code().equals("arc.exact")));
  }
}
