package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.ValueKind;
import daubline.model.Piece;
import daubline.model.Trial;
import daubline.ui.grid.Grid;
import daubline.ui.look.Passage;
import daubline.ui.study.OpenStudy;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** From an empty study to a balanced trial, by keys and mouse alone: the work of the perspective Record. */
class RecordByHandTest {

  private static final int CHARGES = 4;
  private static final double ORE = 2.5;
  private static final double CHARCOAL = 3;
  private static final double BLOOM = 2;
  private static final double METAL = 0.9 * BLOOM;
  private static final double SLAG = 3 + 1;

  @AfterEach
  void clear() throws Exception {
    Window.clear();
    Hands.forget("record-by-hand");
  }

  @Test
  void whatIsLeftOfATrialIsRecordedAndBalanced() throws Exception {
    Person.acts(() -> {
      OpenStudy study = Hands.begin("Record by Hand");
      byte[] empty = Hands.file(study);
      Hands.perspective("Record");
      Hands.menu("Trial", "New Trial");
      Trial trial = Hands.model(study).getSeries().get(0).getTrials().get(0);
      Hands.page("page.facts");
      Hands.choose("status", "recorded");
      log(trial);
      left(trial);
      analysed(trial);
      values();
      balanced(trial);
      Grid checks = Hands.of(Hands.grid("checks"));
      Person.await("nothing left to check", () -> study.isSettled() && checks.model().rows() == 0);
      Hands.undoneAndDoneAgain(study, empty);
    });
  }

  private static NatTable page(String id) {
    Hands.page("record." + id);
    NatTable grid = Hands.grid(id);
    Hands.cellAt(grid, 0, Person.see(() -> ((Grid) grid.getData(Grid.GRID)).model().heading(0)));
    return grid;
  }

  /** 4 charges of 2.5 kg of ore and 3 kg of charcoal. */
  private static void log(Trial trial) {
    NatTable log = page("log");
    Keys.cells(log, "0930", "phase", "lit", "");
    for (int i = 0; i < CHARGES; i++) {
      Keys.cells(log, "10" + i + "0", "charge", "2.5 kg", "3 kg", "", "");
    }
    Keys.cells(log, "1230", "phase", "blast off", "");
    assertEquals(CHARGES + 2, trial.getLog().size());
  }

  private static void left(Trial trial) {
    Keys.cells(page("pieces"), "Bloom", "", "raw", "2 ± 0.05 kg");
    NatTable residues = page("residues");
    Keys.cells(residues, "Tapped slag", "3 ± 0.1 kg", "12", "Furnace slag", "1 ± 0.1 kg", "", "Blue glass", "not weighed", "4");
    Hands.cellAt(residues, 2, "Definition of the class");
    Keys.cells(residues, "blue and glassy right through");
    Keys.cells(page("samples"), "S-1", "slag", "", "what the slag took up");
    assertEquals(List.of("Bloom"), trial.getPieces().stream().map(Piece::getName).toList());
    assertEquals(ValueKind.NOT_WEIGHED, trial.getRemains().getResidues().get(2).getKind());
    assertEquals("S-1", trial.getSamples().get(0).getName());
  }

  private static void analysed(Trial trial) {
    NatTable analyses = page("analyses");
    Keys.cells(analyses, "Slag 1", "S-1", "", "slag", "all iron as FeO", "25", "0.4", "5", "60", "n.d.", "1.5", "0.8", "3", "<0.1", "1.2", "0.9");
    assertEquals(trial.getSamples().get(0), trial.getAnalyses().get(0).getSample());
  }

  private static void value(String name, String column, String text) {
    Hands.field(() -> Window.find("find", Text.class), name);
    NatTable values = Hands.grid("values");
    Hands.cell(values, name, column);
    Keys.cells(values, text);
  }

  private static void values() {
    Hands.page("page.values");
    value("Ore iron content", "Planned", "50 %");
    value("Base internal diameter", "Planned", "30 cm");
    value("Air flow", "Planned", "500 L/min");
    value("Metal in the bloom", "As fired", "90 %");
    value("Pit depth", "As found", "21 ± 1 cm");
  }

  /** Reckoned by hand: slag 4 kg and what of the 2 kg of bloom is no metal, at 60 % of FeO, of which iron is 55.845 / 71.844. */
  private static void balanced(Trial trial) {
    assertEquals(0.21, trial.getRemains().getClaims().get(0).getValue(), 1e-12);
    Hands.page("page.balance");
    NatTable elements = Hands.grid("balance.elements");
    Person.await("the balance", () -> Hands.of(elements).model().rows() > 0);
    double in = number(elements, "Fe", 1);
    double found = number(elements, "Fe", 2);
    assertEquals(METAL + (SLAG + BLOOM - METAL) * 0.60 * 55.845 / 71.844, found, 1e-3);
    assertEquals(in - found, number(elements, "Fe", 3), 2e-3);
    NatTable ratios = Hands.grid("balance.ratios");
    assertEquals(SLAG / METAL, number(ratios, "slag per metal", 1), 5e-3);
    Passage charged = Hands.seen("balance-charged", Passage.class);
    double ore = Double.parseDouble(Person.see(() -> charged.getText().replaceFirst(".*ore ([0-9.]+) kg dry.*", "$1")));
    assertTrue(ore > 0.85 * CHARGES * ORE && ore <= CHARGES * ORE, "the ore of the log, dry: " + ore);
    assertEquals(BLOOM / ore, number(ratios, "bloom per ore", 1), 1e-3);
    assertEquals(CHARGES * CHARCOAL / ore, number(ratios, "charcoal per ore", 1), 5e-3);
  }

  private static double number(NatTable table, String row, int column) {
    Grid grid = Hands.of(table);
    return Double.parseDouble(Person.see(() -> grid.model().cell(column, Hands.rowWith(grid, row)).text()));
  }
}
