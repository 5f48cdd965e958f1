package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Variable;
import daubline.model.Citation;
import daubline.model.EvidenceSheet;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.Prediction;
import daubline.model.Trial;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every column of every table says what it asks for, in both languages, and which variable it is about. */
class ColumnsAskedTest {

  private static final ModelFactory MAKE = ModelFactory.eINSTANCE;

  @TempDir
  Path folder;

  private Desk english;
  private Trial trial;

  @BeforeEach
  void open() throws Exception {
    english = Desks.desk(folder);
    trial = Desks.trial(english);
  }

  @AfterEach
  void close() {
    english.session().close();
  }

  private List<EntryTable> tables(Desk desk) {
    EvidenceSheet sheet = MAKE.createEvidenceSheet();
    Lot lot = MAKE.createLot();
    FurnaceBuild build = MAKE.createFurnaceBuild();
    Citation citation = MAKE.createCitation();
    return List.of(new AnalysisTable(desk, trial::getAnalyses, trial::getSamples), new BandTable(desk, lot), new DryingTable(desk, build),
        new HazardTable(desk, LocalDate::now), new LogTable(desk, trial), new MeasureTable(desk, trial), new MixTable(desk, lot), new PermissionTable(desk, LocalDate::now),
        new PhotoTable(desk, sheet::getFiles), new PictureTable(desk, () -> sheet), new PieceTable(desk, trial), new PredictionTable(desk, trial, Instant::now),
        new ReadingTable(desk, citation), new ResidueTable(desk, () -> sheet, () -> sheet), new RoleTable(desk, desk.session().study().getSeries().get(0)),
        new SampleTable(desk, trial), new SpreadTable(desk, () -> sheet, () -> sheet), new StepTable(desk, lot), new TraceTable(desk, lot),
        new VisitTable(desk, trial, LocalDate::now), new WordTable(desk), new ZoneTable(desk, () -> sheet, () -> sheet));
  }

  private TreeSet<String> silent(Locale language) {
    Desk desk = new Desk(english.session(), english.decimal(), new RecordWords(language));
    TreeSet<String> silent = new TreeSet<>();
    for (EntryTable table : tables(desk)) {
      assertFalse(table.columns().isEmpty(), table.id());
      for (int i = 0; i < table.columns().size(); i++) {
        String about = table.about(i);
        if (about.isBlank() || about.equalsIgnoreCase(table.heading(i))) {
          silent.add(table.id() + "." + table.columns().get(i));
        }
      }
    }
    return silent;
  }

  @Test
  void everyColumnSaysWhatItAsksForInBothLanguages() {
    assertEquals(new TreeSet<>(), silent(Locale.ENGLISH));
    assertEquals(new TreeSet<>(), silent(Locale.GERMAN));
  }

  @Test
  void aCellNamesItsVariable() {
    PieceTable pieces = new PieceTable(english, trial);
    assertEquals("water_temperature", pieces.variable(0, pieces.columns().indexOf("water_temperature")).map(Variable::id).orElse(""), "by its column");
    Prediction stated = MAKE.createPrediction();
    stated.setVariable("bloom_mass");
    english.session().edit("add", () -> trial.getPredictions().add(stated));
    PredictionTable predictions = new PredictionTable(english, trial, Instant::now);
    assertEquals("bloom_mass", predictions.variable(0, 1).map(Variable::id).orElse(""), "by the value of its row");
    assertTrue(predictions.variable(1, 1).isEmpty(), "a row not begun is about none");
  }
}
