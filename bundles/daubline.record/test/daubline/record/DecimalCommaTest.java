package daubline.record;

import static daubline.record.Desks.cell;
import static daubline.record.Desks.row;
import static daubline.record.Desks.type;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import daubline.base.DecimalSign;
import daubline.base.HowGot;
import daubline.model.Analysis;
import daubline.model.DataFile;
import daubline.model.Lot;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.MixPart;
import daubline.model.Trial;
import daubline.model.WallZone;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a comma is chosen as decimal sign, every cell prints what it would read. */
class DecimalCommaTest {

  @TempDir
  Path folder;
  private Desk desk;
  private Trial trial;

  @BeforeEach
  void open() throws Exception {
    Desk point = Desks.desk(folder);
    desk = new Desk(point.session(), () -> DecimalSign.COMMA, new RecordWords(Locale.ENGLISH));
    trial = Desks.trial(desk);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  @Test
  void lengthsComeBackAsTheyWereTyped() {
    EntryColumn<WallZone> low = Columns.length(desk, "low", 1, Literals.WALL_ZONE__LOW);
    WallZone zone = ModelFactory.eINSTANCE.createWallZone();
    desk.session().edit("low", () -> low.read().apply("125,5").change().accept(zone));
    assertEquals(0.1255, zone.getLow(), 1e-12);
    assertEquals("125,5", low.print().apply(zone));
    desk.session().edit("low", () -> low.read().apply("12,55 cm").change().accept(zone));
    assertEquals("125,5", low.print().apply(zone));
  }

  @Test
  void photographsPrintTheirOffset() {
    DataFile photo = ModelFactory.eINSTANCE.createDataFile();
    photo.setPath("a.jpg");
    desk.session().edit("photo", () -> trial.getFiles().add(photo));
    PhotoTable photos = new PhotoTable(desk, trial::getFiles);
    assertEquals("", type(photos, 0, "offset", "12,5"));
    assertEquals(12.5, photo.getClockOffset());
    assertEquals("12,5", cell(photos, 0, "offset"));
  }

  @Test
  void elapsedTimesPrintMinutes() {
    LogEntry entry = ModelFactory.eINSTANCE.createLogEntry();
    entry.setElapsed(750.0);
    assertEquals("+12,5", new LogClock(desk, trial).print(entry));
  }

  @Test
  void totalsOfAnalysesPrintPerCent() {
    Analysis analysis = ModelFactory.eINSTANCE.createAnalysis();
    analysis.setName("A");
    analysis.setTotal(0.985);
    desk.session().edit("analysis", () -> trial.getAnalyses().add(analysis));
    AnalysisTable table = new AnalysisTable(desk, trial::getAnalyses, trial::getSamples);
    assertEquals("98,50", cell(table, 0, "total"));
    assertEquals("", type(table, 0, "total", "99,25"));
    assertEquals("99,25", cell(table, 0, "total"));
  }

  @Test
  void partsOfAMixAreWeighedMeasuredOrNeither() {
    Lot lot = ModelFactory.eINSTANCE.createLot();
    desk.session().edit("lot", () -> desk.session().study().getLots().add(lot));
    MixTable mix = new MixTable(desk, lot);
    row(mix, "part", "Clay", "amount", "12,5 kg");
    row(mix, "part", "Water", "amount", "3 L");
    row(mix, "part", "Straw", "amount", "2");
    List<HowGot> how = lot.getRecipe().stream().map(MixPart::getHow).toList();
    assertEquals(HowGot.WEIGHED, how.get(0));
    assertEquals(HowGot.MEASURED, how.get(1));
    assertNull(how.get(2), "so many parts are neither weighed nor measured");
  }
}
