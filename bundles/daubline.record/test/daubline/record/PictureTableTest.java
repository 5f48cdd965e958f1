package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Snapshots;
import daubline.analysis.deposit.Disclosure;
import daubline.analysis.deposit.PublicCopy;
import daubline.base.Amount;
import daubline.base.ValueKind;
import daubline.engine.stats.Propagation;
import daubline.engine.stats.Uncertain;
import daubline.model.Claim;
import daubline.model.DataFile;
import daubline.model.Measurement;
import daubline.model.ModelFactory;
import daubline.model.RemainsSheet;
import daubline.model.Trial;
import daubline.record.PictureLength.Line;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lengths from a scaled picture, and the claims they become; data invented. */
class PictureTableTest {

  @TempDir
  Path folder;

  private Desk open;

  @AfterEach
  void close() {
    if (open != null) {
      open.session().close();
    }
  }

  private Desk desk() throws Exception {
    open = Desks.desk(folder);
    return open;
  }

  /**
   * By hand after JCGM 100:2008, 5.1.2: S = 500 ± 2 mm on s = 500 px, d = 1000 px, points ± 1 px. L = 1000 mm;
   * u(s) = u(d) = √2 px; (u/L)² = (2/500)² + 2/500² + 2/1000² = 26·10⁻⁶, u = 5.0990 mm.
   */
  @Test
  void theUncertaintyIsThatWorkedOutByHand() {
    PictureLength l = PictureLength.of(Amount.plusMinus(0.5, 0.002), new Line(0, 0, 300, 400, 1), new Line(50, 50, 650, 850, 1));
    assertEquals(1, l.length(), 1e-12);
    assertEquals(0.004, l.fromKnown(), 1e-12);
    assertEquals(0.0028284, l.fromScale(), 1e-7);
    assertEquals(0.0014142, l.fromPoints(), 1e-7);
    assertEquals(0.0050990, l.sigma(), 1e-7);
    assertTrue(l.clear());
    PictureLength range = PictureLength.of(Amount.range(0.49, 0.51), new Line(0, 0, 500, 0, 0), new Line(0, 0, 0, 500, 0));
    assertEquals(0.02 / Math.sqrt(12), range.sigma(), 1e-12, "a range is rectangular, JCGM 100:2008, 4.3.7");
    assertFalse(PictureLength.of(Amount.exact(0.5), new Line(0, 0, 500, 0, 1), new Line(0, 0, 10, 0, 1)).clear(), "√2 px on 10 px is too much for first order");
    assertThrows(IllegalArgumentException.class, () -> PictureLength.of(Amount.exact(0.5), new Line(3, 3, 3, 3, 1), new Line(0, 0, 10, 0, 1)));
    assertThrows(IllegalArgumentException.class, () -> PictureLength.of(Amount.of(ValueKind.NOT_RECORDED), new Line(0, 0, 3, 3, 1), new Line(0, 0, 10, 0, 1)));
  }

  /** The three parts against the general law with all nine inputs, for lines in any direction. */
  @Test
  void theThreePartsAreTheGeneralLaw() {
    double[] at = {0.4, 12, 700, 431, 88, 903.5, 20, 611, 512};
    double[] u = {0.0015, 1.2, 1.2, 1.2, 1.2, 2.5, 2.5, 2.5, 2.5};
    List<Uncertain> inputs = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      inputs.add(Uncertain.normal(at[i], u[i]));
    }
    Propagation law = Propagation.of(x -> x[0] * Math.hypot(x[7] - x[5], x[8] - x[6]) / Math.hypot(x[3] - x[1], x[4] - x[2]), inputs);
    PictureLength l = PictureLength.of(Amount.plusMinus(0.4, 0.0015), new Line(12, 700, 431, 88, 1.2), new Line(903.5, 20, 611, 512, 2.5));
    assertEquals(law.value(), l.length(), 1e-12);
    assertEquals(law.sigma(), l.sigma(), 1e-5 * law.sigma());
  }

  private static DataFile picture(Trial trial) {
    DataFile file = ModelFactory.eINSTANCE.createDataFile();
    file.setPath("photos/section.png");
    file.setSha256("ab12");
    trial.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
    trial.getRemains().getFiles().add(file);
    return file;
  }

  @Test
  void aLengthBecomesAClaimThatFollowsThePoints() throws Exception {
    Desk desk = desk();
    StudySession session = desk.session();
    Trial trial = Desks.trial(desk);
    DataFile[] file = new DataFile[1];
    session.edit("picture", () -> file[0] = picture(trial));
    RemainsSheet sheet = trial.getRemains();
    String before = session.digest();
    PictureTable table = new PictureTable(desk, () -> sheet);
    table.of(file[0]);
    session.edit("line", () -> Pictures.add(file[0], 0, 0, 300, 400));
    table.refresh();
    assertEquals("Scale", Desks.cell(table, 0, "property"));
    assertEquals("picture.unscaled", table.finding(0, 1).orElseThrow().code());
    session.edit("line", () -> Pictures.add(file[0], 0, 0, 600, 800));
    table.refresh();
    assertEquals("", Desks.cell(table, 1, "length"), "nothing can be measured yet");
    assertEquals("", Desks.type(table, 1, "property", "Pit depth"));
    Claim claim = sheet.getClaims().get(0);
    assertEquals(ValueKind.NOT_RECORDED, claim.getKind());
    assertEquals("picture.known", Desks.type(table, 0, "length", "≥ 50 cm"));
    assertEquals("", Desks.type(table, 0, "length", "50.0 ± 0.2 cm"));
    assertEquals(1, claim.getValue(), 1e-12);
    assertEquals(0.005099, claim.getSigma(), 1e-6);
    assertEquals(PictureLength.FORMULA, claim.getFormula());
    assertEquals("50.0 ± 0.2", claim.getInputs().get(0).getTyped());
    assertEquals("1000.0 ± 1.4", claim.getInputs().get(2).getTyped());
    assertEquals("S 4, s 2.8, d 1.4", Desks.cell(table, 1, "parts"));
    assertEquals("", Desks.type(table, 1, "pointing", "3"));
    assertEquals(0.001 * Math.sqrt(16 + 8 + 18), claim.getSigma(), 1e-9);
    assertEquals("picture.pointing", Desks.type(table, 1, "pointing", "-3"));
    Measurement scale = file[0].getMeasurements().get(0);
    session.edit("point", () -> Pictures.move(scale, 0, 0, 600, 800));
    assertEquals(0.5, claim.getValue(), 1e-12, "the claim follows the scale");
    assertFalse(table.canRemove(0), "lengths rest on the scale");
    session.save();
    try (StudySession again = StudySession.read(session.folder())) {
      Claim read = again.find(claim.getId(), Claim.class).orElseThrow();
      assertEquals(600, read.getMeasurement().getX2());
      assertEquals(3, read.getMeasurement().getPointing());
    }
    table.refresh();
    table.remove(1);
    assertTrue(sheet.getClaims().isEmpty(), "a claim goes with the length it states");
    assertTrue(table.canRemove(0));
    while (!session.digest().equals(before) && session.undoLabel().isPresent()) {
      session.undo();
    }
    assertEquals(before, session.digest());
  }

  @Test
  void aValueTypedOverTheClaimForgetsThePicture() throws Exception {
    Desk desk = desk();
    Trial trial = Desks.trial(desk);
    DataFile[] file = new DataFile[1];
    desk.session().edit("picture", () -> file[0] = picture(trial));
    PictureTable table = new PictureTable(desk, trial::getRemains);
    table.of(file[0]);
    desk.session().edit("line", () -> {
      Pictures.add(file[0], 0, 0, 100, 0);
      Pictures.add(file[0], 0, 50, 200, 50);
    });
    table.refresh();
    Desks.type(table, 0, "length", "100 mm");
    Desks.type(table, 1, "property", "Pit depth");
    Claim claim = trial.getRemains().getClaims().get(0);
    assertEquals(0.2, claim.getValue(), 1e-12);
    desk.session().edit("typed", () -> daubline.session.Readings.put(claim, Amount.exact(0.3)));
    desk.session().edit("point", () -> Pictures.move(file[0].getMeasurements().get(0), 0, 0, 50, 0));
    assertEquals(0.3, claim.getValue(), 1e-12, "what a person typed stays");
    assertTrue(claim.getInputs().isEmpty() && claim.getMeasurement() == null);
  }

  @Test
  void aClaimCanBeTracedEvenWhereThePictureIsWithheld() throws Exception {
    Desk desk = desk();
    Trial trial = Desks.trial(desk);
    DataFile[] file = new DataFile[1];
    desk.session().edit("picture", () -> file[0] = picture(trial));
    PictureTable table = new PictureTable(desk, trial::getRemains);
    table.of(file[0]);
    desk.session().edit("line", () -> {
      Pictures.add(file[0], 0, 0, 100, 0);
      Pictures.add(file[0], 0, 50, 200, 50);
    });
    table.refresh();
    Desks.type(table, 0, "length", "100 ± 1 mm");
    Desks.type(table, 1, "property", "Pit depth");
    String trail = Snapshots.trailOf(desk.session(), trial.getRemains().getClaims().get(0)).asText();
    assertTrue(trail.contains("on the picture: photos/section.png") && trail.contains("points of the length d: (0.0, 50.0) – (200.0, 50.0) px")
        && trail.contains("points of the scale s: (0.0, 0.0) – (100.0, 0.0) px") && trail.contains("ab12"), trail);
    Claim published = PublicCopy.of(desk.session().study(), Disclosure.standard()).study().getSeries().get(0).getTrials().get(0).getRemains().getClaims().get(0);
    assertEquals(null, published.getMeasurement(), "nobody released the picture");
    assertEquals(PictureLength.FORMULA, published.getFormula());
    assertEquals("100 ± 1", published.getInputs().get(0).getTyped());
  }
}
