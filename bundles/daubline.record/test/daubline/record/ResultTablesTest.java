package daubline.record;

import static daubline.record.Desks.cell;
import static daubline.record.Desks.row;
import static daubline.record.Desks.type;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Amount;
import daubline.base.ValueKind;
import daubline.model.Analysis;
import daubline.model.ModelFactory;
import daubline.model.Sheet;
import daubline.model.Trial;
import daubline.session.Readings;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Residues, pieces, samples and analyses as they are weighed, labelled and printed by laboratories. */
class ResultTablesTest {

  @TempDir
  Path folder;

  private Desk desk;
  private Trial trial;

  @BeforeEach
  void open() throws Exception {
    desk = Desks.desk(folder);
    trial = Desks.trial(desk);
  }

  private ResidueTable residues() {
    Supplier<Sheet> make = () -> {
      if (trial.getRemains() == null) {
        trial.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
      }
      return trial.getRemains();
    };
    return new ResidueTable(desk, trial::getRemains, make);
  }

  @AfterEach
  void close() {
    desk.session().close();
  }

  @Test
  void theTotalOfTheClassesReadsAtLeastWhereOnlyAShareWasRecovered() {
    ResidueTable table = residues();
    assertEquals("", table.summary());
    row(table, "class", "Tapped slag", "mass", "10");
    row(table, "class", "Furnace slag", "mass", "2.3");
    assertEquals("All classes weighed: 12.3\u00A0kg", table.summary());
    trial.getRemains().setSamplingFraction(0.4);
    assertEquals("All classes weighed: at least 12.3\u00A0kg (40\u00A0% of it recovered)", table.summary());
    row(table, "class", "Charcoal", "mass", "not weighed");
    assertEquals("All classes weighed: at least 12.3\u00A0kg (40\u00A0% of it recovered; classes not weighed: 1)", table.summary());
  }

  @Test
  void notWeighedIsNotZero() {
    ResidueTable table = residues();
    row(table, "class", "Tapped slag", "mass", "0");
    row(table, "class", "Furnace slag", "mass", "not weighed");
    row(table, "class", "Charcoal");
    row(table, "class", "Fired clay", "mass", "≥ 12");
    var kinds = trial.getRemains().getResidues().stream().map(r -> r.getKind()).toList();
    assertEquals(List.of(ValueKind.EXACT, ValueKind.NOT_WEIGHED, ValueKind.NOT_RECORDED, ValueKind.AT_LEAST), kinds);
    assertEquals("tapped_slag", trial.getRemains().getResidues().get(0).getResidueClass().getId());
    assertEquals("not weighed", cell(table, 1, "mass"));
    assertEquals("", cell(table, 2, "mass"));
    assertEquals("mass.negative", type(table, 0, "mass", "-3"));
    assertEquals("residue.twice", type(table, 2, "class", "tapped slag"));
    row(table, "class", "Blue glass", "mass", "1.5 lb", "definition", "Glassy, blue in thin pieces.");
    assertEquals("Glassy, blue in thin pieces.", desk.session().study().getResidueClasses().get(4).getDefinition());
    assertEquals(0.680388555, trial.getRemains().getResidues().get(4).getValue(), 1e-9, "international pound of 1959");
  }

  @Test
  void everyClassCanBeLaidOutAtOnceAndTakenBack() {
    ResidueTable table = residues();
    String before = desk.session().digest();
    table.layOut();
    assertEquals(daubline.base.ResidueKinds.standard().size(), trial.getRemains().getResidues().size());
    desk.session().undo();
    assertEquals(before, desk.session().digest());
  }

  /** Density of water: Tanaka and others 2001, table of the recommended values. */
  @Test
  void waterHasTheRecommendedDensity() {
    assertEquals(998.2071, Displacement.water(20), 5e-4);
    assertEquals(999.1026, Displacement.water(15), 5e-4);
    assertEquals(999.9749, Displacement.water(4), 5e-4);
  }

  /** A body of 3.410 kg that shows 2.486 kg under water of 15 °C pushes 0.924 kg aside: 3.410/0.924 × 0.99910 g/cm³, by hand. */
  @Test
  void densityFollowsFromTwoWeighingsWithItsUncertainty() {
    PieceTable table = new PieceTable(desk, trial);
    row(table, "name", "Bloom", "stage", "bloom", "mass", "3.410 ± 0.005", "mass_in_water", "2.486 ± 0.005");
    Amount density = Readings.amount(trial.getPieces().get(0).getValues().stream().filter(r -> "bloom_density".equals(r.getVariable())).findFirst().orElseThrow());
    assertEquals(3687.2, density.value(), 0.1);
    double numerical = Math.hypot(3687.2 - 999.1026 * 3.415 / (3.415 - 2.486), 3687.2 - 999.1026 * 3.410 / (3.410 - 2.491));
    assertEquals(numerical, density.sigma(), 0.4);
    type(table, 0, "bloom_density", "3.7");
    type(table, 0, "mass", "3.5");
    assertEquals("3.7 g/cm³", cell(table, 0, "bloom_density"), "a density that was typed is left alone");
    row(table, "name", "Stone", "mass", "1.0", "mass_in_water", "1.2");
    assertEquals("mass.water", table.finding(1, table.columns().indexOf("mass_in_water")).orElseThrow().code());
  }

  /** A published bloom went from 6.65 kg to pieces of 5.661 kg together. */
  @Test
  void partsThatWeighMoreThanTheWholeAreFlagged() {
    PieceTable table = new PieceTable(desk, trial);
    row(table, "name", "Bloom", "stage", "bloom", "mass", "6.65");
    row(table, "name", "A", "of", "Bloom", "mass", "3.2");
    row(table, "name", "B", "of", "Bloom", "mass", "2.461", "stage", "billet");
    int mass = table.columns().indexOf("mass");
    assertEquals("0.989 kg", cell(table, 0, "lost"));
    assertTrue(table.finding(0, mass).isEmpty());
    assertEquals(1, table.depth(1));
    assertEquals("billet_mass", trial.getPieces().get(0).getPieces().get(1).getValues().get(0).getVariable());
    type(table, 1, "mass", "4.6");
    assertEquals("mass.pieces", table.finding(0, mass).orElseThrow().code());
    assertEquals("piece.round", type(table, 0, "of", "A"));
    assertEquals("piece.unknown", type(table, 1, "of", "C"));
    type(table, 1, "of", "B");
    assertEquals(2, table.depth(2));
  }

  @Test
  void labelsStandOnceAndLookAlikesAreFlagged() {
    SampleTable table = new SampleTable(desk, trial);
    row(table, "material", "slag");
    assertEquals("T4-S1", trial.getSamples().get(0).getName());
    row(table, "name", "B10");
    row(table, "name", "8I0");
    assertEquals("name.alike", table.finding(2, 0).orElseThrow().code());
    assertEquals("name.twice", type(table, 2, "name", "b10"));
    assertEquals("name.none", type(table, 2, "name", " "));
    assertEquals("date.form", type(table, 0, "takenOn", "16/8/31"));
    assertEquals("", type(table, 0, "takenOn", "2031-08-17"));
  }

  private AnalysisTable analyses() {
    return new AnalysisTable(desk, trial::getAnalyses, trial::getSamples);
  }

  @Test
  void fiveThingsThatAreNoNumbersStayFive() {
    AnalysisTable table = analyses();
    row(table, "name", "tap 1", "SiO2", "<0.05", "TiO2", "bdl", "Al2O3", "n.d.", "MnO", "n.a.", "MgO", "0");
    List<ValueKind> kinds = trial.getAnalyses().get(0).getComponents().stream().map(c -> c.getKind()).toList();
    assertEquals(List.of(ValueKind.BELOW_LIMIT, ValueKind.BELOW_DETECTION, ValueKind.NOT_DETECTED, ValueKind.NOT_ANALYSED, ValueKind.EXACT), kinds);
    assertEquals(List.of("<0.05", "bdl", "n.d.", "n.a.", "0.00"), List.of("SiO2", "TiO2", "Al2O3", "MnO", "MgO").stream().map(s -> cell(table, 0, s)).toList());
    assertEquals(List.of("<", "bdl", "n.d.", "n.a."), List.of("SiO2", "TiO2", "Al2O3", "MnO").stream().map(s -> cell(table, 1, s).replaceAll("(<).*", "$1")).toList(),
        "also when normalised");
    assertEquals("", cell(table, 0, "K2O"));
    assertEquals("analysis.negative", type(table, 0, "CaO", "-0.5"));
    assertEquals("", type(table, 0, "LOI", "-2.1"));
  }

  /** 1.1113 is the factor of the laboratories from FeO to Fe2O3 (NRCan geochemical survey notes). */
  @Test
  void ironStepsAreNamedAndGoneWhenNotChosen() {
    AnalysisTable table = analyses();
    row(table, "name", "slag", "SiO2", "25.00", "FeO", "60.00", "Fe2O3", "5.00", "Al2O3", "4.00", "total", "94.00");
    String printed = desk.session().digest();
    table.look(AnalysisStep.IRON_AS_FE2O3, true);
    assertEquals(60 * 1.1113 + 5, Double.parseDouble(cell(table, 1, "Fe2O3")), 0.02);
    assertEquals("all iron as Fe2O3", cell(table, 1, "name"));
    assertEquals("", cell(table, 1, "FeO"));
    assertEquals("all iron as Fe2O3, normalised to 100 %; original total 94.0 %", cell(table, 2, "name"));
    assertEquals("100.00", cell(table, 2, "sum"));
    assertEquals("94.00", cell(table, 2, "total"), "the original total is always printed");
    table.look(AnalysisStep.IRON_AS_FEO, false);
    assertEquals(60 + 5 * 0.8998, Double.parseDouble(cell(table, 1, "FeO")), 0.01);
    table.look(AnalysisStep.MEASURED, false);
    assertEquals(List.of("60.00", "5.00"), List.of(cell(table, 0, "FeO"), cell(table, 0, "Fe2O3")));
    assertEquals(printed, desk.session().digest(), "the study keeps what was printed");
  }

  @Test
  void totalsOutsideTheStudysLimitsAreFlagged() {
    AnalysisTable table = analyses();
    row(table, "name", "slag", "SiO2", "25", "FeO", "60", "Al2O3", "4", "CaO", "3");
    int sum = table.columns().indexOf("sum");
    assertEquals("analysis.total", table.finding(0, sum).orElseThrow().code());
    desk.session().edit("Limits", () -> {
      var setting = ModelFactory.eINSTANCE.createSetting();
      setting.setKey(AnalysisTable.LOW);
      setting.setValue("0.90");
      desk.session().study().getSettings().add(setting);
    });
    assertTrue(table.finding(0, sum).isEmpty());
  }

  @Test
  void whatReadersNeedIsAskedForBeforePublishing() {
    AnalysisTable table = analyses();
    int row = row(table, "name", "slag", "FeO", "60");
    Analysis analysis = trial.getAnalyses().get(0);
    assertEquals(List.of("method", "instrument", "conditions", "standards", "accuracy", "areas", "ironBasis"), Publishable.missing(analysis));
    assertNotEquals("yes", cell(table, row, "publishable"));
    for (String[] cell : new String[][] {{"method", "SEM-EDS"}, {"instrument", "bench 2"}, {"conditions", "20 kV, 60 s"}, {"standards", "glass A 61.2 v. 61.5"},
        {"accuracy", "2 % of the value"}, {"areas", "5"}, {"ironBasis", "all iron as FeO"}}) {
      assertEquals("", type(table, row, cell[0], cell[1]));
    }
    assertEquals("yes", cell(table, row, "publishable"));
  }
}
