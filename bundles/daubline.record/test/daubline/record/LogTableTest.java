package daubline.record;

import static daubline.record.Desks.cell;
import static daubline.record.Desks.row;
import static daubline.record.Desks.type;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.HowGot;
import daubline.base.SensorState;
import daubline.base.ValueKind;
import daubline.model.Charge;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Paper is typed in its own order; what cannot be read, is only about, late or corrected stays told apart. */
class LogTableTest {

  @TempDir
  Path folder;

  private Desk desk;
  private Trial trial;
  private LogTable log;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    trial = Desks.trial(desk);
    log = new LogTable(desk, trial);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  @Test
  void rowsStayInTheOrderOfThePaperAndKeepTheirTimes() {
    row(log, "time", "0935", "kind", "phase", "text", "lit");
    row(log, "time", "~10:05", "kind", "c", "charcoal", "2.1", "ore", "800 g");
    row(log, "time", "9:50", "kind", "note", "text", "wind from the west", "marks", "late");
    assertEquals(3, trial.getLog().size());
    LogEntry charge = trial.getLog().get(1);
    assertEquals("2031-08-16T10:05:00", charge.getAt());
    assertEquals(1800, charge.getElapsed(), 1e-9);
    assertTrue(charge.isAbout());
    assertEquals(0.8, ((Charge) charge).getItems().stream().filter(i -> i.getMaterial() == daubline.base.Material.ORE).findFirst().orElseThrow().getValue(), 1e-12);
    assertEquals("~10:05", cell(log, 1, "time"));
    assertEquals("800 g", cell(log, 1, "ore"));
    assertTrue(trial.getLog().get(2).isLate());
    assertTrue(log.finding(2, 0).isEmpty(), "late rows may be earlier than the one above");
    type(log, 2, "marks", "");
    assertEquals("log.order", log.finding(2, 0).orElseThrow().code());
  }

  @Test
  void aTimeAfterMidnightIsOnTheNextDay() {
    row(log, "time", "22:10", "kind", "phase", "text", "lit");
    row(log, "time", "00:40", "kind", "note", "text", "burn-down");
    assertEquals("2031-08-17T00:40:00", trial.getLog().get(1).getAt());
    assertEquals(9000, trial.getLog().get(1).getElapsed(), 1e-9);
    row(log, "time", "+200", "kind", "note");
    assertEquals(12_000, trial.getLog().get(2).getElapsed(), 1e-9);
    assertEquals("2031-08-17T01:30:00", trial.getLog().get(2).getAt());
  }

  @Test
  void illegibleIsNotBlankAndNotLost() throws Exception {
    int row = row(log, "time", "10:20", "kind", "charge", "ore", "?");
    assertEquals("illegible", cell(log, row, "ore"));
    assertEquals("", cell(log, row, "charcoal"));
    assertEquals("ore", trial.getLog().get(0).getIllegible());
    desk.session().save();
    try (StudySession again = StudySession.read(desk.session().folder())) {
      assertEquals("ore", again.study().getSeries().get(0).getTrials().get(0).getLog().get(0).getIllegible());
    }
    type(log, row, "ore", "1.2");
    assertEquals("1.2 kg", cell(log, row, "ore"));
    assertNull(trial.getLog().get(0).getIllegible());
  }

  @Test
  void aFinishedRowKeepsWhatStoodThere() {
    row(log, "time", "10:20", "kind", "charge", "ore", "1.2");
    type(log, 0, "ore", "1.3");
    assertNull(trial.getLog().get(0).getOriginal(), "the row was still being typed");
    row(log, "time", "10:30", "kind", "note");
    type(log, 0, "ore", "1.4");
    type(log, 0, "time", "10:25");
    assertEquals("Ore (kg): 1.3 kg | Time: 10:20", trial.getLog().get(0).getOriginal());
    assertEquals("corrected", cell(log, 0, "marks"));
    assertEquals("1.4 kg", cell(log, 0, "ore"));
  }

  @Test
  void aSecondPersonChecksNotTheSame() {
    row(log, "time", "10:20", "kind", "note", "by", "J. Ashe");
    assertEquals("check.same", type(log, 0, "checked", "j. ashe"));
    assertNull(trial.getLog().get(0).getCheckedBy());
    assertTrue(log.isRefused(0, log.columns().indexOf("checked")));
    assertEquals("", type(log, 0, "checked", "M. Toft"));
    assertEquals("M. Toft", trial.getLog().get(0).getCheckedBy().getName());
  }

  @Test
  void severalProbesStandInOneLineAndStatesOfSensorsAreData() {
    row(log, "time", "11:00", "kind", "t", "probes", "1170/930/open/OL/");
    LogEntry entry = trial.getLog().get(0);
    assertEquals(4, entry.getValues().size());
    assertEquals(1170, entry.getValues().get(0).getValue(), 0);
    assertEquals(SensorState.OPEN.word(), Readings.amount(entry.getValues().get(2)).category());
    assertEquals(ValueKind.TEXT, entry.getValues().get(3).getKind());
    assertEquals("1170/930/open/OL", cell(log, 0, "probes"));
    assertEquals("probes.more", type(log, 0, "probes", "1/2/3/4/5/6/7"));
    assertEquals("number.form", type(log, 0, "probes", "1170/9E/550").replace("number.text", "number.form"));
    assertEquals("1170/930/open/OL", cell(new LogTable(desk, trial), 0, "probes"), "what was refused changed nothing");
  }

  @Test
  void theBlastIsStrokesFlowOrPressure() {
    row(log, "time", "11:00", "kind", "blast", "blast", "24; 420 L/min; 150 Pa");
    LogEntry entry = trial.getLog().get(0);
    assertEquals(24 / 60.0, entry.getValues().get(0).getValue(), 1e-12);
    assertEquals(0.42 / 60, entry.getValues().get(1).getValue(), 1e-12);
    assertEquals(150, entry.getValues().get(2).getValue(), 0);
    row(log, "time", "11:10", "kind", "blast", "blast", "72 /s");
    assertEquals("value.implausible", log.finding(1, log.columns().indexOf("blast")).map(f -> f.code().contains("plausib") ? "value.implausible" : f.code()).orElse(""),
        "seventy strokes a second are a slip");
  }

  @Test
  void countedChargesShareTheUncertaintyOfTheirMeasure() {
    MeasureTable measures = new MeasureTable(desk, trial);
    assertEquals("measure.none", type(log, 0, "charcoal", "2×"));
    row(measures, "name", "bucket", "material", "charcoal", "weighings", "1.92; 2.05; 1.98; 2.01");
    UnitMass unit = UnitMass.of(trial.getMeasures().get(0));
    assertEquals(1.99, unit.mean(), 1e-12);
    assertEquals(Math.sqrt(0.003), unit.spread(), 1e-12);
    assertEquals(Math.sqrt(0.003) / 2, unit.shared(), 1e-12);
    row(log, "time", "10:20", "kind", "charge", "charcoal", "3x");
    var item = ((Charge) trial.getLog().get(0)).getItems().get(0);
    assertEquals(5.97, item.getValue(), 1e-12);
    assertEquals(Math.sqrt(9 * 0.00075 + 3 * 0.003), item.getSigma(), 1e-12);
    assertEquals(HowGot.COUNTED, item.getHow());
    assertEquals("3 × bucket", cell(log, 0, "charcoal"));
    type(measures, 0, "weighings", "2.2; 2.2");
    assertEquals(6.6, item.getValue(), 1e-12, "what was counted follows the weighings");
    assertEquals("mass.negative", type(measures, 0, "weighings", "2.2; -2"));
    row(log, "time", "10:30", "kind", "charge", "ore", "2 × 500 g");
    assertEquals("2 × 0.5 kg", cell(log, 1, "ore"));
    assertEquals("", type(log, 1, "ore", cell(log, 1, "ore")), "what the cell shows can be typed");
    assertEquals(1.0, ((Charge) trial.getLog().get(1)).getItems().get(0).getValue(), 1e-12);
  }

  @Test
  void anIncidentHasDurationAndEffectAndAKindIsChangedWithoutLoss() {
    String before = desk.session().digest();
    row(log, "time", "12:05", "kind", "note", "text", "blower stopped", "by", "J. Ashe");
    String id = trial.getLog().get(0).getId();
    type(log, 0, "kind", "incident");
    Incident incident = assertInstanceOf(Incident.class, trial.getLog().get(0));
    assertEquals(id, incident.getId());
    assertEquals("blower stopped", incident.getText());
    assertEquals("J. Ashe", incident.getBy().getName());
    type(log, 0, "lasted", "12");
    type(log, 0, "effect", "blast at half");
    assertEquals(720, incident.getDuration(), 0);
    while (desk.session().undoLabel().filter(l -> !l.equals("Trial")).isPresent()) {
      desk.session().undo();
    }
    assertEquals(before, desk.session().digest());
    desk.session().redo();
    desk.session().redo();
    desk.session().redo();
    desk.session().redo();
    desk.session().redo();
    desk.session().redo();
    desk.session().redo();
    assertEquals("blower stopped", trial.getLog().get(0).getText());
    assertInstanceOf(Incident.class, trial.getLog().get(0));
  }

  @Test
  void lookingIsAPickListThatTheStudyMayChange() {
    int flame = log.columns().indexOf("flame_colour");
    assertTrue(log.choices(0, flame).contains("lilac"));
    assertEquals("value.category", type(log, 0, "flame_colour", "violet"));
    desk.session().edit("Words", () -> {
      var setting = daubline.model.ModelFactory.eINSTANCE.createSetting();
      setting.setKey("words.flame_colour");
      setting.setValue("none; violet; white");
      desk.session().study().getSettings().add(setting);
    });
    log.refresh();
    assertEquals("", type(log, 0, "flame_colour", "violet"));
    assertFalse(log.choices(0, flame).contains("lilac"));
    assertEquals(Amount.category("violet"), Readings.amount(trial.getLog().get(0).getValues().get(0)));
  }

  @Test
  void enterStopsOnlyWhereTheKindAsks() {
    row(log, "time", "11:00", "kind", "temperature");
    assertTrue(log.isAsked(0, log.columns().indexOf("probes")));
    assertFalse(log.isAsked(0, log.columns().indexOf("ore")));
    assertTrue(log.isAsked(0, log.columns().indexOf("text")));
  }

  @Test
  void aTrialWithoutDateSaysSo() {
    trial.setOn(null);
    assertEquals("time.day", type(log, 0, "time", "10:20"));
    assertEquals("time.form", type(log, 0, "time", "25:99"));
    assertEquals(0, trial.getLog().size());
  }

  @Test
  void rowsNameThePaperTheyWereTypedFrom() {
    row(log, "time", "0935", "kind", "note", "text", "lit");
    daubline.model.DataFile paper = daubline.model.ModelFactory.eINSTANCE.createDataFile();
    paper.setName("sheet-1.pdf");
    paper.setPath("photos/sheet-1.pdf");
    desk.session().edit("paper", () -> trial.getFiles().add(paper));
    log.refresh();
    assertEquals("name.unknown", type(log, 0, "scan", "sheet-9.pdf"));
    assertEquals("", type(log, 0, "scan", "sheet-1.pdf"));
    assertEquals(paper, trial.getLog().get(0).getScan());
    assertEquals("", type(log, 0, "scan", ""));
    assertNull(trial.getLog().get(0).getOriginal(), "which paper it was is no correction of what was seen");
    assertFalse(log.isPrinted(log.columns().indexOf("scan")), "the paper does not ask for its scan");
    assertTrue(log.isPrinted(log.columns().indexOf("text")));
  }
}
