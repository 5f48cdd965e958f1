package daubline.intake;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.intake.Recognised.Aspect;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Small questions about a laboratory's table that several recognitions ask. */
final class Labs {

  private Labs() {
  }

  /** Whether a person confirms all guesses of a kind as they are shown. */
  static boolean isConfirmed(IntakeOptions options, Aspect aspect) {
    return options.get("confirm").map(c -> Arrays.stream(c.split(",")).anyMatch(w -> w.strip().equals(aspect.word()))).orElse(false);
  }

  /** A column of components: an oxide, an element or loss on ignition. */
  static boolean isComponent(Bound column) {
    return Formulas.isNamed(column.column().id());
  }

  /** The components among columns. */
  static List<Bound> components(Table table) {
    return table.columns().stream().filter(Labs::isComponent).toList();
  }

  static Optional<Bound> column(Table table, String id) {
    return table.columns().stream().filter(b -> b.column().id().equals(id)).findFirst();
  }

  /** Whether each row is one component. */
  static boolean isLong(Table table) {
    return column(table, "component").isPresent();
  }

  /** The amount of a cell in the numbers as they stand, without its unit; empty when it cannot be read or is empty. */
  static Optional<Amount> plain(Table table, RawRow row, Bound column) {
    RawCell cell = row.cell(column.index());
    if (cell.isEmpty() || cell.form() == RawCell.Form.ERROR || cell.form() == RawCell.Form.DATE) {
      return Optional.empty();
    }
    var typed = column.column().variable().read(cell.text(), Units.find(Quantity.FRACTION, "fraction").orElseThrow(),
        cell.isNumber() ? DecimalSign.POINT : table.decimal());
    return typed.isRead() ? Optional.of(typed.amount()) : Optional.empty();
  }

  /** The number of a cell as it stands, when it is one that may be reckoned with. */
  static Optional<Double> number(Table table, RawRow row, Bound column) {
    return plain(table, row, column).filter(Amount::isEstimate).map(Amount::value);
  }

  /** The mass fraction of a cell by the unit of its column, when it is one that may be reckoned with. */
  static Optional<Double> share(Table table, RawRow row, Bound column) {
    boolean percent = row.cell(column.index()).form() == RawCell.Form.PERCENT;
    return number(table, row, column).map(n -> percent ? n / 100 : column.unit().toCanonical(n));
  }

  /** The text of a row in a column of the form: said by a person, in the file, or for all rows. */
  static String text(Table table, RawRow row, String column) {
    String stated = table.facts().cells().getOrDefault(row.number(), java.util.Map.of()).get(column);
    String inFile = column(table, column).map(b -> row.cell(b.index()).text()).orElse("");
    return stated != null ? stated : inFile.isEmpty() ? table.fixed().getOrDefault(column, "") : inFile;
  }

  /** A row as it is shown: its place and its name. */
  static String shown(Table table, RawRow row) {
    String name = text(table, row, "name");
    return name.isEmpty() ? table.row(row.number()) : table.row(row.number()) + ", " + name;
  }
}
