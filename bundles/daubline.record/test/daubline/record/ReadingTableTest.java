package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Confidence;
import daubline.base.DecimalSign;
import daubline.base.HowGot;
import daubline.base.ValueKind;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.Site;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A report is read into claims, over two sheets; data invented. */
class ReadingTableTest {

  @TempDir
  Path folder;

  private static EvidenceSheet sheet(Context context, String name) {
    EvidenceSheet sheet = ModelFactory.eINSTANCE.createEvidenceSheet();
    sheet.setName(name);
    context.getSheets().add(sheet);
    return sheet;
  }

  @Test
  void claimsOfAllSheetsStandTogetherAndNewOnesFollow() throws Exception {
    Desk desk = Desks.desk(folder);
    Citation report = ModelFactory.eINSTANCE.createCitation();
    desk.session().edit("report", () -> desk.session().study().getCitations().add(report));
    ReadingTable table = new ReadingTable(desk, report);
    assertEquals("sheet.none", Desks.type(table, 0, "property", "Pit depth"), "there is no sheet yet");
    Context context = ModelFactory.eINSTANCE.createContext();
    desk.session().edit("site", () -> {
      Site site = ModelFactory.eINSTANCE.createSite();
      site.getContexts().add(context);
      desk.session().study().getSites().add(site);
      sheet(context, "F1");
      sheet(context, "F2");
    });
    String before = desk.session().digest();
    table.refresh();
    assertEquals("value.property", Desks.type(table, 0, "value", "35 cm"), "the property comes first");
    Desks.row(table, "property", "Pit depth", "value", "35 cm", "page", "22", "confidence", "medium", "fraction", "50 %", "verbatim", "some 35cm deep");
    Claim first = context.getSheets().get(0).getClaims().get(0);
    assertEquals(0.35, first.getValue(), 1e-12);
    assertEquals("35", first.getTyped());
    assertEquals(0.5, first.getSamplingFraction(), 1e-12);
    assertEquals(Confidence.MEDIUM, first.getConfidence());
    assertEquals(HowGot.READ_FROM_REPORT, first.getHow());
    assertEquals(report, first.getCitation());
    int row = Desks.row(table, "property", "Base internal diameter", "value", "not preserved", "sheet", "F2");
    assertEquals(ValueKind.NOT_PRESERVED, context.getSheets().get(1).getClaims().get(0).getKind());
    assertEquals("Base internal diameter", Desks.cell(table, row, "property"), "it stays in its row");
    Desks.row(table, "property", "Wall thickness", "value", "≥ 60 mm");
    assertEquals(2, context.getSheets().get(1).getClaims().size(), "it follows the sheet of the one before");
    assertEquals("number.bounds", Desks.type(table, 0, "fraction", "150 %"));
    assertEquals("name.unknown", Desks.type(table, 0, "sheet", "F9"));
    assertEquals("value.empty", Desks.type(table, 0, "value", ""));
    assertTrue(!Desks.type(table, 0, "value", "3s cm").isEmpty());
    while (!desk.session().digest().equals(before)) {
      assertTrue(desk.session().undoLabel().isPresent());
      desk.session().undo();
    }
    desk.session().close();
  }

  /** A reason for no number is typed and shown in the language of the window, and kept in one. */
  @Test
  void reasonsForNoNumberAreTypedInGerman() throws Exception {
    Desk english = Desks.desk(folder);
    Desk german = new Desk(english.session(), () -> DecimalSign.COMMA, new RecordWords(Locale.GERMAN));
    Citation report = ModelFactory.eINSTANCE.createCitation();
    Context context = ModelFactory.eINSTANCE.createContext();
    german.session().edit("site", () -> {
      german.session().study().getCitations().add(report);
      Site site = ModelFactory.eINSTANCE.createSite();
      site.getContexts().add(context);
      german.session().study().getSites().add(site);
      sheet(context, "F1");
    });
    ReadingTable table = new ReadingTable(german, report);
    int depth = Desks.row(table, "property", "Pit depth", "value", "nicht erhalten");
    int tap = Desks.row(table, "property", "Tap opening", "value", "nicht vorhanden");
    Desks.row(table, "property", "Pit diameter", "value", "not looked for");
    assertEquals(List.of(ValueKind.NOT_PRESERVED, ValueKind.ABSENT, ValueKind.NOT_LOOKED_FOR), context.getSheets().get(0).getClaims().stream().map(Claim::getKind).toList());
    assertEquals(List.of("nicht erhalten", "nicht vorhanden"), List.of(Desks.cell(table, depth, "value"), Desks.cell(table, tap, "value")));
    assertEquals("not preserved", Desks.cell(new ReadingTable(english, report), depth, "value"));
    english.session().close();
  }
}
