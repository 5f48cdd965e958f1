package daubline.intake;

import daubline.base.DateOrder;
import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Plausibility;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Repeated;
import daubline.base.Typed;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One row of a recognised table: its cells by the columns of the form, and the findings about them. */
final class Row {

  private final Table table;
  private final RawRow raw;
  private final List<Finding> findings = new ArrayList<>();

  Row(Table table, RawRow raw) {
    this.table = table;
    this.raw = raw;
  }

  int number() {
    return raw.number();
  }

  List<Finding> findings() {
    return findings;
  }

  boolean isFaulty() {
    return findings.stream().anyMatch(Finding::isError);
  }

  /** All texts of the row, to tell whether two rows are wholly alike. */
  List<String> texts() {
    return table.columns().stream().map(b -> raw.cell(b.index()).text()).toList();
  }

  /** The headings of the columns that are read, as they stand in the file. */
  List<String> headings() {
    return table.columns().stream().map(Bound::heading).map(h -> Heading.of(h).name()).toList();
  }

  /** Where the row stands. */
  String place() {
    return table.place() + ", " + table.row(raw.number());
  }

  private String place(String column) {
    return bound(column).map(this::place).orElseGet(this::place);
  }

  String place(Bound column) {
    return table.cell(raw.number(), column);
  }

  void report(Finding finding) {
    if (!findings.contains(finding)) {
      findings.add(finding);
    }
  }

  void error(String code, String column, String what, String remedy) {
    report(Finding.error(code, place(column), what, remedy));
  }

  void warning(String code, String column, String what, String remedy) {
    report(Finding.warning(code, place(column), what, remedy));
  }

  void note(String code, String column, String what, String remedy) {
    report(Finding.note(code, place(column), what, remedy));
  }

  private Optional<Bound> bound(String column) {
    return table.columns().stream().filter(b -> b.column().id().equals(column)).findFirst();
  }

  private RawCell cell(String column) {
    String stated = table.facts().cells().getOrDefault(raw.number(), Map.of()).get(column);
    if (stated != null) {
      return RawCell.text(stated);
    }
    RawCell cell = bound(column).map(b -> raw.cell(b.index())).orElse(RawCell.EMPTY);
    if (cell.form() == RawCell.Form.ERROR) {
      error("cell.error", column, "the cell holds an error: " + cell.text(),
          "mend it in the spreadsheet program, save, and import again");
      return RawCell.EMPTY;
    }
    return cell.isEmpty() && table.fixed().containsKey(column) ? RawCell.text(table.fixed().get(column)) : cell;
  }

  /** The text of a cell; empty when nothing stands there. */
  String text(String column) {
    return cell(column).text();
  }

  boolean has(String column) {
    return !text(column).isEmpty();
  }

  /** The text of a cell that must not be empty; an error is noted when it is. */
  String must(String column) {
    String text = text(column);
    if (text.isEmpty() && !isFaulty()) {
      error("cell.empty", column, "“" + column + "” is empty", "fill it in; without it the row cannot be placed");
    }
    return text;
  }

  /** A text or null: null says nothing. */
  String orNull(String column) {
    String text = text(column);
    return text.isEmpty() ? null : text;
  }

  List<String> names(String column) {
    return Arrays.stream(text(column).split(";")).map(String::strip).filter(t -> !t.isEmpty()).toList();
  }

  /** One of an enumeration's words; null when the cell is empty or its word unknown. */
  <E extends Enum<E>> E word(String column, Class<E> type, Function<E, String> word) {
    String text = text(column);
    if (text.isEmpty()) {
      return null;
    }
    List<E> all = List.of(type.getEnumConstants());
    String key = Heading.key(text);
    Optional<E> found = all.stream().filter(e -> Heading.key(word.apply(e)).equals(key)
        || Heading.key(e.name()).equals(key)).findFirst();
    if (found.isEmpty()) {
      List<String> words = all.stream().map(word).toList();
      error("word.unknown", column, "“" + text + "” is not in the list", Nearest.remedy(text, words, "choose one of: "
          + String.join(", ", words)));
    }
    return found.orElse(null);
  }

  Boolean yesNo(String column) {
    String text = Heading.key(text(column));
    return switch (text) {
      case "" -> null;
      case "yes", "y", "x", "true", "1" -> Boolean.TRUE;
      case "no", "n", "false", "0" -> Boolean.FALSE;
      default -> {
        error("word.unknown", column, "“" + text(column) + "” is neither yes nor no", "write yes or no");
        yield null;
      }
    };
  }

  Integer whole(String column) {
    Double number = number(column, 0, Integer.MAX_VALUE);
    if (number != null && number != Math.rint(number)) {
      error("number.whole", column, "“" + text(column) + "” is no whole number", "write a count without decimals");
      return null;
    }
    return number == null ? null : number.intValue();
  }

  /** A number between bounds; null when the cell is empty or holds none. */
  Double number(String column, double low, double high) {
    RawCell cell = cell(column);
    if (cell.isEmpty() || isDate(cell, column)) {
      return null;
    }
    DecimalSign sign = cell.isNumber() ? DecimalSign.POINT : table.decimal();
    Optional<Double> number = Numbers.parse(cell.text(), sign);
    if (number.isEmpty()) {
      report(Numbers.complaint(cell.text(), sign).at(place(column)));
      return null;
    }
    if (number.get() < low || number.get() > high) {
      error(number.get() < 0 ? "value.negative" : "number.bounds", column, "“" + cell.text() + "” is outside what can be",
          "it lies between "
          + Printed.number(low) + " and " + Printed.number(high));
      return null;
    }
    return number.get();
  }

  /** A share of the whole, written as 0.5 or 50 %. */
  Double share(String column) {
    RawCell cell = cell(column);
    boolean percent = cell.form() == RawCell.Form.PERCENT || cell.text().endsWith("%");
    if (cell.isEmpty()) {
      return null;
    }
    DecimalSign sign = cell.isNumber() ? DecimalSign.POINT : table.decimal();
    Optional<Double> number = Numbers.parse(cell.text().replace("%", ""), sign).map(n -> percent ? n / 100 : n);
    if (number.isEmpty() || number.get() <= 0 || number.get() > 1) {
      error("number.bounds", column, "“" + cell.text() + "” is no share of the whole", "write it as 0" + sign.sign()
          + "5 or 50 %, above 0 and up to 1");
      return null;
    }
    return number.get();
  }

  /** A date in ISO form, to the year or month where no more is known; null when the cell is empty. */
  String date(String column) {
    String text = text(column);
    if (text.isEmpty() || text.matches("\\d{4}(-\\d{2}){0,2}(T.*)?")) {
      return text.isEmpty() ? null : text;
    }
    Optional<LocalDate> date = table.dates().read(text);
    if (date.isEmpty()) {
      error("date.form", column, "“" + text + "” is no date", "write it as 2031-08-16, 2031-08 or 2031");
    }
    return date.map(LocalDate::toString).orElse(null);
  }

  private boolean isDate(RawCell cell, String column) {
    boolean date = cell.form() == RawCell.Form.DATE || DateOrder.isDate(cell.text());
    if (date) {
      error("cell.date", column, "the cell holds the date " + cell.text() + " where a number is expected",
          "spreadsheet programs turn entries such as 3-5 or 1.12 into dates; type it again as text or number");
    }
    return date;
  }

  /** The columns of values in which something stands. */
  List<Bound> values() {
    return table.columns().stream().filter(b -> b.column().content() == FormColumn.Content.VALUE
        && b.column().variable() != null)
        .filter(b -> !raw.cell(b.index()).isEmpty() || joined().stream().anyMatch(r -> !r.raw.cell(b.index()).isEmpty())).toList();
  }

  /** The other rows of which this one gives the mean. */
  private List<Row> joined() {
    return table.facts().joined().getOrDefault(raw.number(), List.of()).stream().map(r -> new Row(table, r)).toList();
  }

  /** The value of a column over this row and those joined with it; empty with an error when no mean can be told. */
  Optional<ReadValue> joinedValue(Bound column) {
    List<Row> rows = new ArrayList<>(joined());
    if (rows.isEmpty()) {
      return value(column);
    }
    rows.add(0, this);
    List<ReadValue> values = rows.stream().filter(r -> !r.raw.cell(column.index()).isEmpty()).map(r -> r.value(column)).flatMap(Optional::stream).toList();
    rows.stream().flatMap(r -> r.findings.stream()).toList().forEach(this::report);
    Optional<Amount> mean = values.isEmpty() ? Optional.empty() : Repeated.mean(values.stream().map(ReadValue::amount).toList());
    String all = values.stream().map(ReadValue::typed).collect(Collectors.joining("; "));
    if (mean.isEmpty() && !values.isEmpty()) {
      report(Finding.error("replicates.mixed", place(column), "no mean can be told of “" + all + "”",
          "keep the replicates as analyses of their own, by replicates=kept"));
    }
    return mean.map(m -> new ReadValue(m, values.size() == 1 || m.isMissing() ? values.get(0).typed() : "mean of " + all, values.get(0).unit()));
  }

  /** The oxide that an element's column is asked for as. */
  Optional<String> oxide(Bound column) {
    return Optional.ofNullable(table.facts().oxides().get(column.index()));
  }

  /** The value of a column; empty when the cell is empty or cannot be read, which is noted. */
  Optional<ReadValue> value(Bound column) {
    return value(column.column().id(), column.column().variable(), column.unit());
  }

  /** The value of a named column. */
  Optional<ReadValue> value(String column) {
    return bound(column).filter(b -> has(column)).flatMap(this::value);
  }

  /** The value of a cell as one of a variable that another cell names. */
  Optional<ReadValue> value(String column, Variable variable, Unit unit) {
    return has(column) ? read(cell(column), column, variable, unit) : Optional.empty();
  }

  /** A text put together from several cells, read as the value of a variable. */
  Optional<ReadValue> value(String column, String composed, Variable variable, Unit unit) {
    RawCell cell = cell(column);
    boolean same = cell.text().equals(composed);
    return read(same ? cell : new RawCell(composed, cell.form()), column, variable, unit);
  }

  private Optional<ReadValue> read(RawCell cell, String column, Variable variable, Unit unit) {
    boolean number = variable.type() == ValueType.NUMBER;
    if (number && isDate(cell, column)) {
      return Optional.empty();
    }
    Unit typedIn = cell.form() == RawCell.Form.PERCENT && variable.quantity() == Quantity.FRACTION ? PERCENT : unit == null
        ? variable.unit() : unit;
    String typed = cell.form() == RawCell.Form.PERCENT && typedIn != PERCENT ? fraction(cell.text()) : cell.text();
    Typed read = variable.read(typed, typedIn, cell.isNumber() ? DecimalSign.POINT : table.decimal());
    if (!read.isRead()) {
      report(read.finding().at(place(column)).about("", variable.id()));
      return Optional.empty();
    }
    Amount amount = read.amount();
    Plausibility.check(variable, amount, typedIn).ifPresent(f -> report(f.at(place(column))));
    return Optional.of(new ReadValue(amount, typed, amount.isNumber() ? typedIn.symbol() : null));
  }

  private static final Unit PERCENT = Units.find(Quantity.FRACTION, "%").orElseThrow();

  private static String fraction(String percent) {
    return new java.math.BigDecimal(percent).movePointLeft(2).stripTrailingZeros().toPlainString();
  }

  /** The texts of some columns joined, for a key. */
  String key(String... columns) {
    return Arrays.stream(columns).map(this::text).map(t -> t.toLowerCase(Locale.ROOT)).collect(Collectors.joining("|"));
  }
}
