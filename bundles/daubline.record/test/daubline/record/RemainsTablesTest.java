package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.ValueKind;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.Sheet;
import daubline.model.SpreadSquare;
import daubline.model.Trial;
import daubline.model.WallZone;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Wall and ground of remains are mapped by keyboard, the same for both kinds of sheets; data invented. */
class RemainsTablesTest {

  @TempDir
  Path folder;

  private Desk open;

  @AfterEach
  void close() {
    open.session().close();
  }

  private Desk desk() throws Exception {
    open = Desks.desk(folder);
    return open;
  }

  private static Sheet remains(Trial trial) {
    if (trial.getRemains() == null) {
      trial.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
    }
    return trial.getRemains();
  }

  @Test
  void zonesAreTypedInAnyUnitAndStateAndUndoTakesThemBack() throws Exception {
    Desk desk = desk();
    Trial trial = Desks.trial(desk);
    String before = desk.session().digest();
    ZoneTable table = new ZoneTable(desk, trial::getRemains, () -> remains(trial));
    assertEquals("zone.clock", Desks.type(table, 0, "clock", "13"));
    assertEquals(before, desk.session().digest(), "what was refused changes nothing");
    Desks.row(table, "clock", "6", "low", "0", "high", "24 cm", "state", "vitr");
    Desks.row(table, "clock", "6", "low", "200 mm", "high", "400", "state", "oxidised");
    WallZone first = trial.getRemains().getZones().get(0);
    assertEquals(6, first.getClock());
    assertEquals(0.24, first.getHigh(), 0);
    assertEquals("vitrified", first.getState());
    assertEquals("240", Desks.cell(table, 0, "high"));
    assertEquals("zone.twice", table.finding(0, 0).orElseThrow().code(), "both cover 200 to 240 mm");
    assertEquals("", Desks.type(table, 1, "low", "240"));
    assertTrue(table.finding(0, 0).isEmpty());
    assertEquals("zone.upside", Desks.type(table, 1, "high", "10 cm"));
    assertEquals("length.form", Desks.type(table, 1, "low", "knee-high"));
    Desks.row(table, "clock", "7", "state", "spalled");
    assertEquals("zone.part", table.finding(2, 0).orElseThrow().code());
    assertEquals("spalled", trial.getRemains().getZones().get(2).getState(), "a word of one’s own");
    Desk german = new Desk(desk.session(), () -> DecimalSign.COMMA, new RecordWords(Locale.GERMAN));
    ZoneTable inGerman = new ZoneTable(german, trial::getRemains, () -> remains(trial));
    assertEquals("verglast", Desks.cell(inGerman, 0, "state"));
    assertEquals("", Desks.type(inGerman, 2, "state", "weich"));
    assertEquals("soft", trial.getRemains().getZones().get(2).getState(), "kept in one language");
    assertEquals("", Desks.type(inGerman, 2, "high", "12,5 cm"));
    assertEquals(0.125, trial.getRemains().getZones().get(2).getHigh(), 0);
    while (!desk.session().digest().equals(before) && desk.session().undoLabel().isPresent()) {
      desk.session().undo();
    }
    assertEquals(before, desk.session().digest());
  }

  @Test
  void squaresTakeSideAndClassFromTheRowBefore() throws Exception {
    Desk desk = desk();
    EvidenceSheet sheet = ModelFactory.eINSTANCE.createEvidenceSheet();
    desk.session().edit("sheet", () -> {
      daubline.model.Site site = ModelFactory.eINSTANCE.createSite();
      daubline.model.Context context = ModelFactory.eINSTANCE.createContext();
      context.getSheets().add(sheet);
      site.getContexts().add(context);
      desk.session().study().getSites().add(site);
    });
    SpreadTable table = new SpreadTable(desk, () -> sheet, () -> sheet);
    Desks.row(table, "east", "-0.5", "north", "1.5", "mass", "2.4 kg", "side", "1", "class", "Tapped slag");
    Desks.row(table, "east", "0.5", "north", "150 cm", "mass", "not weighed");
    SpreadSquare second = sheet.getSpread().get(1);
    assertEquals(-0.5, sheet.getSpread().get(0).getEast(), 0);
    assertEquals(2.4, sheet.getSpread().get(0).getValue(), 1e-12);
    assertEquals(1.5, second.getNorth(), 0);
    assertEquals(1, second.getSide(), 0);
    assertEquals(sheet.getSpread().get(0).getResidueClass(), second.getResidueClass());
    assertEquals(ValueKind.NOT_WEIGHED, second.getKind());
    assertEquals("mass.negative", Desks.type(table, 1, "mass", "-2 kg"));
    assertEquals("square.side", Desks.type(table, 1, "side", "0"));
    assertTrue(table.finding(0, 0).isEmpty());
    assertEquals("", Desks.type(table, 1, "east", "-50 cm"));
    assertEquals("square.twice", table.finding(1, 0).orElseThrow().code());
  }
}
