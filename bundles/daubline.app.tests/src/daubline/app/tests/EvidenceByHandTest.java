package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import daubline.base.ValueKind;
import daubline.model.Claim;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.Site;
import daubline.model.Study;
import daubline.ui.grid.Grid;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** From an empty study to an evidence sheet that can be compared, by keys and mouse alone: the work of the perspective Evidence. */
class EvidenceByHandTest {

  private static final double CHORD = 420;
  private static final double CHORD_SIGMA = 2;
  private static final double RISE = 150;
  private static final double RISE_SIGMA = 1.5;

  private static final int LEAST_HEIGHT = 100;

  @AfterEach
  void clear() throws Exception {
    Window.clear();
    Hands.forget("evidence-by-hand");
  }

  @Test
  void aReportIsReadContradictionsArePickedAndChecksEmptied() throws Exception {
    Person.acts(() -> {
      OpenStudy study = Hands.begin("Evidence by Hand");
      byte[] empty = Hands.file(study);
      EvidenceSheet sheet = place(Hands.model(study));
      report(sheet);
      arc(sheet);
      contradiction(study, sheet);
      preservation(study, sheet);
      drawn();
      Hands.undoneAndDoneAgain(study, empty);
    });
  }

  private static EvidenceSheet place(Study model) {
    Hands.menu("Trial", "New Site");
    Hands.field("name", "Sallow Bank");
    Hands.field("region", "Upper Wend");
    Hands.menu("Trial", "New Context");
    Hands.field("name", "Pit 14");
    Hands.field("period", "Iron Age");
    Hands.menu("Trial", "New Evidence Sheet");
    Hands.page("page.facts");
    Hands.field("name", "Furnace A");
    Site site = model.getSites().get(0);
    Context context = site.getContexts().get(0);
    assertEquals(List.of("Sallow Bank", "Pit 14", "Furnace A"), List.of(site.getName(), context.getName(), context.getSheets().get(0).getName()));
    return context.getSheets().get(0);
  }

  /** A range, a lower limit, two that contradict each other, one searched for and not there, one that nobody could see. */
  private static void report(EvidenceSheet sheet) {
    Hands.menu("Trial", "New Citation");
    Hands.field("authors", "Quern, B.; Löss, Ä.");
    Hands.field("year", "2029");
    NatTable claims = Hands.grid("claims");
    Mouse.cell(claims, 0, 0);
    Keys.cells(claims, "Wall thickness", "60–80 mm", "fig. 4", "medium", "", "");
    Keys.cells(claims, "Pit depth", "≥ 35 cm", "24", "", "", "„some 35 cm“");
    Keys.cells(claims, "Base internal diameter", "300 ± 20 mm", "12", "high", "", "");
    Keys.cells(claims, "Base internal diameter", "38 ± 1 cm", "13", "low", "", "");
    Keys.cells(claims, "Tap opening", "absent", "25", "", "", "");
    Keys.cells(claims, "Pit diameter", "not preserved", "25", "", "", "");
    Keys.cells(claims, "Surviving height", "42 ± 2 cm", "25", "", "", "");
    List<ValueKind> kinds = sheet.getClaims().stream().map(Claim::getKind).toList();
    assertEquals(List.of(ValueKind.RANGE, ValueKind.AT_LEAST, ValueKind.PLUS_MINUS, ValueKind.PLUS_MINUS, ValueKind.ABSENT, ValueKind.NOT_PRESERVED, ValueKind.PLUS_MINUS), kinds);
    assertEquals("„some 35 cm“", sheet.getClaims().get(1).getVerbatim());
  }

  /** The diameter is c²/(4h) + h, its uncertainty by its derivatives c/(2h) and 1 − c²/(4h²), reckoned here by hand. */
  private static void arc(EvidenceSheet sheet) {
    Hands.tab("Furnace A");
    Hands.page("page.values");
    Hands.press("fromArc");
    Shell dialog = Person.dialog("Diameter from an Arc");
    Hands.choose(() -> in(dialog, "arcProperty", Combo.class), "Base external diameter");
    Hands.field(() -> in(dialog, "arcFirst", Text.class), "420 ± 2 mm");
    Hands.field(() -> in(dialog, "arcSecond", Text.class), "15 ± 0.15 cm");
    Hands.press(dialog, "Enter Claim");
    Person.gone(dialog);
    Hands.choose("citation", "Citation 1");
    Hands.field("page", "fig. 6");
    Claim claim = of(sheet, "base_external_diameter").get(0);
    assertEquals((CHORD * CHORD / (4 * RISE) + RISE) / 1000, claim.getValue(), 1e-9);
    double byChord = CHORD / (2 * RISE) * CHORD_SIGMA;
    double byRise = (1 - CHORD * CHORD / (4 * RISE * RISE)) * RISE_SIGMA;
    assertEquals(Math.hypot(byChord, byRise) / 1000, claim.getSigma(), 2e-4);
  }

  private static <C> C in(Shell dialog, String id, Class<C> type) {
    return Window.all(dialog).stream().filter(c -> id.equals(c.getData("id"))).map(type::cast).findFirst().orElseThrow();
  }

  private static List<Claim> of(EvidenceSheet sheet, String variable) {
    return sheet.getClaims().stream().filter(c -> variable.equals(c.getVariable())).toList();
  }

  /** Checks names the contradiction, leads to it by Enter, and is content when one is picked with a reason. */
  private static void contradiction(OpenStudy study, EvidenceSheet sheet) {
    Person.await("results", study::isSettled);
    NatTable checks = Hands.grid("checks");
    Hands.rowWith(checks, "2 claims about Base internal diameter");
    Keys.tap(SWT.CR);
    Hands.choose("picked", "yes");
    Hands.field("pickedBecause", "read off the plan, not the sketch");
    Claim picked = of(sheet, "base_internal_diameter").stream().filter(Claim::isPicked).findFirst().orElseThrow();
    assertEquals("read off the plan, not the sketch", picked.getPickedBecause());
    Grid open = Hands.of(checks);
    Person.await("no contradiction any more", () -> study.isSettled() && Hands.rowWith(open, "2 claims") < 0);
  }

  private static void preservation(OpenStudy study, EvidenceSheet sheet) {
    NatTable values = Hands.grid("values");
    Hands.field(() -> Window.find("find", Text.class), "Inlet height");
    Hands.cell(values, "Air inlet height above floor", "Value");
    Keys.cells(values, "17 ± 1 cm");
    Hands.cell(values, "Air inlet height above floor", "Value");
    Hands.field("preservationLimit", "18 cm");
    Hands.field("limitBecause", "robbed above");
    Hands.choose("citation", "Citation 1");
    Hands.field("page", "fig. 6");
    Grid open = Hands.of(Hands.grid("checks"));
    Person.await("nothing left to check", () -> study.isSettled() && open.model().rows() == 0);
    assertEquals(0.18, of(sheet, "inlet_height_above_floor").get(0).getPreservationLimit(), 1e-12);
  }

  private static void drawn() {
    Hands.tab("Figures");
    Person.await("figures", () -> Window.find("figure", Combo.class).getItemCount() > 0);
    Hands.choose("figure", "Furnace Sections");
    FigureCanvas section = Hands.seen("figure-canvas", FigureCanvas.class);
    Person.await("the section", () -> section.getSize().y > LEAST_HEIGHT);
  }
}
