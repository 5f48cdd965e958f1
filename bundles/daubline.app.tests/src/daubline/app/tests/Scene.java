package daubline.app.tests;

import org.eclipse.nebula.widgets.nattable.NatTable;

/** What a person needs before there is anything to compare: an evidence sheet read from a report, and trials whose remains are recorded; all by hand. */
final class Scene {

  private Scene() {
  }

  /** A sheet with two diameters and the depth of a pit, read from a report. */
  static void evidence() {
    Hands.menu("Trial", "New Evidence Sheet");
    Hands.menu("Trial", "New Citation");
    Hands.field("authors", "Quern, B.");
    Hands.field("year", "2029");
    NatTable claims = Hands.grid("claims");
    Mouse.cell(claims, 0, 0);
    Keys.cells(claims, "Base internal diameter", "285 ± 10 mm", "12", "high", "", "");
    Keys.cells(claims, "Base external diameter", "480 ± 20 mm", "12", "high", "", "");
    Keys.cells(claims, "Pit depth", "30 ± 2 cm", "13", "", "", "");
  }

  /** A recorded trial with both diameters as they were found, one cell under the other. */
  static void trial(String name, String inner, String outer) {
    Hands.menu("Trial", "New Trial");
    Hands.page("page.facts");
    Hands.field("name", name);
    Hands.choose("status", "recorded");
    Hands.page("page.values");
    NatTable values = Hands.grid("values");
    Hands.cell(values, "Base internal diameter", "As found");
    Keys.cells(values, inner, outer);
  }
}
