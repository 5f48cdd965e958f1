package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Variables;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.session.Readings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Drying to constant mass on curves whose end is known, and mixes whose shares a reader can reckon; all invented. */
class DryingTest {

  private static final double[] HOURS = {0, 12, 24, 36, 48, 72, 96};

  @TempDir
  Path folder;
  private Desk desk;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  /** 8 kg dry and 2 kg of water that goes at 5 % an hour: within 1 % of 8 kg after ln(2 ÷ 0.08) ÷ 0.05 = 64.4 h. */
  private static List<DryingCurve.Weighing> brick(int weighings, Random error, double sigma) {
    List<DryingCurve.Weighing> all = new ArrayList<>();
    for (int i = 0; i < weighings; i++) {
      all.add(new DryingCurve.Weighing(HOURS[i], 8 + 2 * Math.exp(-0.05 * HOURS[i]) + sigma * error.nextGaussian(), sigma));
    }
    return all;
  }

  @Test
  void theEndOfAKnownCurveIsFound() {
    DryingCurve curve = DryingCurve.fit(brick(7, new Random(1), 0)).orElseThrow();
    assertEquals(8, curve.dry(), 0.01);
    assertEquals(0.05, curve.rate(), 0.001);
    assertEquals(64.4, curve.hours(), 0.5);
    assertTrue(curve.low() < 8 && curve.high() > 8 && curve.hoursLow() < 64.4 && curve.hoursHigh() > 64.4);
  }

  @Test
  void theRangeHoldsTheDryMassAboutAsOftenAsItSays() {
    Random random = new Random(20310420);
    int held = 0;
    int said = 0;
    for (int i = 0; i < 400; i++) {
      var curve = DryingCurve.fit(brick(7, random, 0.02));
      said += curve.isPresent() ? 1 : 0;
      held += curve.filter(c -> c.low() <= 8 && c.high() >= 8).isPresent() ? 1 : 0;
    }
    assertTrue(said >= 390, "it dares to say " + said);
    assertTrue(held >= 0.9 * said && held <= 0.995 * said, held + " of " + said + " ranges hold the dry mass");
  }

  @Test
  void itIsNotForeseenTooEarly() {
    assertTrue(DryingCurve.fit(brick(3, new Random(1), 0)).isEmpty(), "three weighings only");
    List<DryingCurve.Weighing> straight = new ArrayList<>();
    for (double hours : HOURS) {
      straight.add(new DryingCurve.Weighing(hours, 10 - 0.01 * hours, 0.02));
    }
    assertTrue(DryingCurve.fit(straight).isEmpty(), "it does not bend");
    assertTrue(DryingCurve.fit(HOURS.length == 0 ? List.of() : List.of(new DryingCurve.Weighing(0, 8, 0.02), new DryingCurve.Weighing(10, 8.3, 0.02),
        new DryingCurve.Weighing(20, 8.5, 0.02), new DryingCurve.Weighing(40, 8.6, 0.02))).isEmpty(), "it takes up water");
  }

  @Test
  void aDiaryIsTypedAndForeseesTheDay() {
    FurnaceBuild build = ModelFactory.eINSTANCE.createFurnaceBuild();
    desk.session().edit("build", () -> desk.session().study().getBuilds().add(build));
    String before = desk.session().digest();
    DryingTable table = new DryingTable(desk, build);
    Desks.row(table, "at", "2031-04-20", "kind", "lift", "text", "ring 1", "top", "150 mm", "lift", "38 kg");
    Desks.row(table, "at", "2031-04-20 12:00", "kind", "weighing", "text", "Brick A", "mass", "10");
    assertTrue(table.summary().contains("1 weighings"), table.summary());
    String[] masses = {"9.1", "8.602", "8.331", "8.181", "8.06"};
    for (int i = 0; i < masses.length; i++) {
      boolean last = i == masses.length - 1;
      assertTrue(!last || table.summary().contains("Brick A: expected dry at 7.996 kg") && table.summary().contains("about 2031-04-23 04 h"), table.summary());
      Desks.row(table, "at", java.time.LocalDateTime.parse("2031-04-20T12:00").plusHours((long) HOURS[i + 1]).toString().replace('T', ' '), "mass", masses[i]);
    }
    assertEquals("Brick A", Desks.cell(table, 6, "text"), "the next row is of the same thing");
    assertEquals("19.4 %", Desks.cell(table, 6, "lost"));
    assertTrue(table.summary().startsWith("Brick A: dry within 1 %"), table.summary());
    assertEquals("date.form", Desks.type(table, 0, "at", "Easter"));
    Desks.type(table, 6, "at", "2031-04-19");
    assertEquals("log.order", table.finding(6, 0).map(Finding::code).orElse(""));
    while (!desk.session().digest().equals(before)) {
      desk.session().undo();
    }
  }

  @Test
  void sharesByMassNeedDensitiesAndDrySharesNeedWater() {
    Lot mix = ModelFactory.eINSTANCE.createLot();
    Lot clay = ModelFactory.eINSTANCE.createLot();
    Lot sand = ModelFactory.eINSTANCE.createLot();
    desk.session().edit("lots", () -> {
      clay.setName("Clay");
      sand.setName("Sand");
      desk.session().study().getLots().addAll(List.of(mix, clay, sand));
    });
    MixTable table = new MixTable(desk, mix);
    Desks.row(table, "part", "clay", "amount", "3", "by", "volume", "lot", "Clay");
    Desks.row(table, "part", "sand", "amount", "2", "lot", "Sand");
    assertEquals("volume", Desks.cell(table, 1, "by"), "like the row above");
    assertEquals("mix.density", table.problem().map(Finding::code).orElse(""));
    assertEquals("", Desks.cell(table, 0, "share"));
    Desks.type(table, 0, "density", "1200");
    Desks.type(table, 1, "density", "1.8 g/cm³");
    assertEquals("50 %", Desks.cell(table, 0, "share"), "3 × 1200 and 2 × 1800");
    assertEquals("", Desks.cell(table, 0, "dryShare"));
    desk.session().edit("water", () -> {
      water(clay, "25", "dry");
      water(sand, "0", "wet");
    });
    table.refresh();
    assertEquals("44.4 %", Desks.cell(table, 0, "dryShare"), "0.8 ÷ 1.8");
    Desks.type(table, 1, "amount", "40 kg");
    assertEquals("mass", Desks.cell(table, 1, "by"));
    assertEquals("mix.parts", table.problem().map(Finding::code).orElse(""));
    Desks.type(table, 0, "amount", "50 L");
    assertEquals("60 %", Desks.cell(table, 0, "share"), "50 L × 1.2 kg/L beside 40 kg");
    assertEquals("mix.unit", Desks.type(table, 0, "by", "mass"));
    assertTrue(!Desks.type(table, 0, "amount", "some").isEmpty());
  }

  private static void water(Lot lot, String percent, String basis) {
    Reading reading = ModelFactory.eINSTANCE.createReading();
    Readings.put(reading, Variables.standard().get("clay_moisture"), percent, "%", DecimalSign.POINT);
    lot.getValues().add(reading);
    lot.setMoistureBasis(basis);
  }
}
