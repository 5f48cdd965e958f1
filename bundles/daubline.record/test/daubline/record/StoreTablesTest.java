package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.MoistureBasis;
import daubline.base.Variables;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.session.Readings;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lot is followed from its delivery through the sieve; data invented, sums by hand. */
class StoreTablesTest {

  @TempDir
  Path folder;
  private Desk desk;
  private final Lot lot = ModelFactory.eINSTANCE.createLot();

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    desk.session().edit("lot", () -> {
      lot.setName("Ore");
      lot.setMaterial(Material.ORE);
      desk.session().study().getLots().add(lot);
    });
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  @Test
  void stepsFollowEachOtherAndWhatDoesNotAddUpIsSaid() {
    String before = desk.session().digest();
    StepTable steps = new StepTable(desk, lot);
    Desks.row(steps, "step", "del", "on", "2031-02-20", "massIn", "100", "massOut", "100", "sigma", "200 g");
    Desks.row(steps, "step", "dry", "on", "2031-03-01", "massOut", "92", "lost", "8");
    assertEquals("100", Desks.cell(steps, 1, "massIn"), "it takes up what was there");
    assertEquals("deliver", lot.getTreatments().get(0).getStep());
    assertEquals(0.2, lot.getTreatments().get(0).getSigma(), 1e-12);
    assertTrue(steps.finding(1, steps.columns().indexOf("massOut")).isEmpty());
    Desks.type(steps, 1, "lost", "2");
    assertEquals("mass.treatment", steps.finding(1, steps.columns().indexOf("massOut")).map(Finding::code).orElse(""));
    assertEquals("number.bounds", Desks.type(steps, 1, "massOut", "much"));
    assertEquals("number.bounds", Desks.type(steps, 1, "massOut", "-3"));
    assertEquals("date.form", Desks.type(steps, 1, "on", "last May"));
    while (!desk.session().digest().equals(before)) {
      desk.session().undo();
    }
  }

  @Test
  void waterIsSaidOnBothBasesOnceItsBasisIs() {
    StepTable steps = new StepTable(desk, lot);
    Desks.row(steps, "step", "deliver", "massIn", "125", "massOut", "125", "sigma", "0.5");
    desk.session().edit("water", () -> {
      Reading water = ModelFactory.eINSTANCE.createReading();
      Readings.put(water, Variables.standard().get("ore_moisture"), "25", "%", DecimalSign.POINT);
      lot.getValues().add(water);
    });
    assertEquals("moisture.basis", steps.problem().map(Finding::code).orElse(""));
    assertFalse(steps.summary().contains("ater"), steps.summary());
    steps.basis(MoistureBasis.DRY);
    assertTrue(steps.summary().contains("Water 20 % of the moist mass, 25 % of the dry mass."), steps.summary());
    assertTrue(steps.summary().contains("hold 100.00 ± 0.40\u00A0kg dry"), steps.summary());
  }

  @Test
  void finesAreKeptAsABandAndBecomeALot() {
    BandTable bands = new BandTable(desk, lot);
    assertEquals("band.none", Desks.type(bands, 0, "meshFrom", "5"));
    Desks.row(new StepTable(desk, lot), "step", "sieve", "on", "2031-04-07", "massIn", "100", "massOut", "80", "sigma", "0.5");
    bands.refresh();
    Desks.row(bands, "meshFrom", "5", "meshTo", "15", "mass", "80 ± 0.5");
    assertEquals("mass.bands", bands.finding(0, bands.columns().indexOf("mass")).map(Finding::code).orElse(""));
    int fines = Desks.row(bands, "meshTo", "0.5 cm", "mass", "20", "lot", "Fines");
    assertEquals("20 %", Desks.cell(bands, fines, "share"));
    assertEquals("5", Desks.cell(bands, fines, "meshTo"));
    assertTrue(bands.finding(0, bands.columns().indexOf("mass")).isEmpty());
    Lot kept = desk.session().study().getLots().get(1);
    assertEquals("Fines", kept.getName());
    assertEquals(20, kept.getTreatments().get(0).getMassOut(), 1e-12);
    assertEquals(lot, kept.getFrom().get(0));
    assertEquals("band.mesh", bands.put(0, 0, "25").or(() -> bands.finding(0, 0)).map(Finding::code).orElse(""));
    TraceTable trace = new TraceTable(desk, lot);
    assertEquals("this lot", Desks.cell(trace, 0, "what"));
    assertEquals("Fines", Desks.cell(trace, 1, "name"));
    assertEquals("went into", Desks.cell(trace, 1, "what"));
  }
}
