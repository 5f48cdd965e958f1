package daubline.intake;

import daubline.base.Quantity;
import daubline.base.Units;
import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import daubline.intake.raw.RawSheet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** How a laboratory lays out its tables: samples in rows or in columns, units in a row of their own. */
final class LabShape {

  /** Fewer formulas below each other than this do not make a table with its samples in columns. */
  private static final int FEWEST = 3;
  private static final String ROWS = "rows";
  private static final String COLUMNS = "columns";

  private final IntakeOptions options;

  LabShape(IntakeOptions options) {
    this.options = options;
  }

  /** Units that stand in a row of their own, by column; the number of the row is 0 when there is none. */
  record UnitRow(int number, Map<Integer, String> units) {
    static final UnitRow NONE = new UnitRow(0, Map.of());
  }

  /** Whether samples stand in columns: stated, or formulas stand below each other, each once, and not beside each other; never where each row is a component. */
  boolean isTurned(RawSheet sheet) {
    Optional<String> stated = options.get("samples");
    if (stated.isPresent()) {
      return stated.get().equals(COLUMNS);
    }
    boolean isLong = options.family("column").containsValue("component")
        || sheet.rows().stream().flatMap(r -> r.cells().stream()).anyMatch(c -> Heading.key(c.text()).equals("component"));
    if (isLong) {
      return false;
    }
    int across = sheet.rows().stream().mapToInt(r -> formulas(r.cells())).max().orElse(0);
    return across < FEWEST && formulasDown(sheet) >= FEWEST;
  }

  private static int formulasDown(RawSheet sheet) {
    int best = 0;
    for (int c = 0; c < width(sheet); c++) {
      int column = c;
      best = Math.max(best, formulas(sheet.rows().stream().map(r -> r.cell(column)).toList()));
    }
    return best;
  }

  /** How many formulas stand in cells; 0 when one of them stands there twice, as where each row is one component. */
  private static int formulas(List<RawCell> cells) {
    Set<String> seen = new HashSet<>();
    for (RawCell cell : cells) {
      Optional<String> symbol = cell.form() == RawCell.Form.TEXT ? Formulas.symbol(Heading.of(cell.text()).name()) : Optional.empty();
      if (symbol.isPresent() && !seen.add(symbol.get() + Formulas.iron(Heading.of(cell.text()).name()))) {
        return 0;
      }
    }
    return seen.size();
  }

  /** The sheet with its columns as rows; the number of a row is then that of its column. */
  static RawSheet turned(RawSheet sheet) {
    List<RawRow> rows = new ArrayList<>();
    for (int c = 0; c < width(sheet); c++) {
      List<RawCell> cells = new ArrayList<>();
      for (RawRow row : sheet.rows()) {
        // a row of the file keeps its place also where rows before it are missing
        while (cells.size() < row.number() - 1) {
          cells.add(RawCell.EMPTY);
        }
        cells.add(row.cell(c));
      }
      rows.add(new RawRow(c + 1, cells));
    }
    return new RawSheet(sheet.name(), rows, sheet.findings());
  }

  private static int width(RawSheet sheet) {
    return sheet.rows().stream().mapToInt(r -> r.cells().size()).max().orElse(0);
  }

  /** The row next to the headings that holds nothing but units under formulas: the one below, or else the one above. */
  UnitRow units(RawSheet sheet, RawRow header) {
    Optional<String> stated = options.get("units");
    if (stated.isPresent()) {
      return stated.get().equals("none") ? UnitRow.NONE : sheet.rows().stream().filter(r -> String.valueOf(r.number()).equals(stated.get()))
          .findFirst().map(r -> new UnitRow(r.number(), units(r))).orElse(UnitRow.NONE);
    }
    Optional<RawRow> below = sheet.rows().stream().filter(r -> r.number() > header.number() && !r.isEmpty()).findFirst();
    Optional<RawRow> above = sheet.rows().stream().filter(r -> r.number() < header.number() && !r.isEmpty()).reduce((a, b) -> b);
    return below.filter(r -> holdsUnits(header, r)).or(() -> above.filter(r -> holdsUnits(header, r)))
        .map(r -> new UnitRow(r.number(), units(r))).orElse(UnitRow.NONE);
  }

  private static boolean holdsUnits(RawRow header, RawRow row) {
    int units = 0;
    for (int i = 0; i < row.cells().size(); i++) {
      boolean formula = Formulas.symbol(Heading.of(header.cell(i).text()).name()).isPresent();
      boolean unit = unit(row.cell(i)).isPresent();
      if (formula && !unit && !row.cell(i).isEmpty()) {
        return false;
      }
      units += formula && unit ? 1 : 0;
    }
    return units > 0;
  }

  private static Map<Integer, String> units(RawRow row) {
    Map<Integer, String> units = new HashMap<>();
    for (int i = 0; i < row.cells().size(); i++) {
      int place = i;
      unit(row.cell(i)).ifPresent(u -> units.put(place, u));
    }
    return units;
  }

  private static Optional<String> unit(RawCell cell) {
    String text = cell.text().replaceAll("^[(\\[]|[)\\]]$", "").strip();
    boolean unit = cell.form() == RawCell.Form.TEXT && !text.matches("\\d*") && Units.find(Quantity.FRACTION, text).isPresent();
    return unit ? Optional.of(text) : Optional.empty();
  }

  /** What is said about the layout. */
  List<Recognised> said(boolean turned, UnitRow units, RawRow header) {
    List<Recognised> said = new ArrayList<>();
    boolean stated = options.get("samples").isPresent();
    said.add(new Recognised(Aspect.LAYOUT, "samples", turned ? COLUMNS : ROWS, turned
        ? "formulas stand below each other in column " + header.number() : "formulas stand beside each other in row " + header.number(),
        stated ? State.STATED : State.READ, "samples", List.of(ROWS, COLUMNS)));
    if (units.number() > 0) {
      said.add(new Recognised(Aspect.LAYOUT, "units", String.valueOf(units.number()), (turned ? "column " : "row ") + units.number()
          + " holds nothing but units under the formulas", options.get("units").isPresent() ? State.STATED : State.READ, "units",
          List.of(String.valueOf(units.number()), "none")));
    }
    return said;
  }
}
