package daubline.intake.logger;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Quantity;
import daubline.base.SensorState;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.base.DateOrder;
import daubline.intake.Families;
import daubline.intake.FileSigns;
import daubline.intake.Heading;
import daubline.intake.IntakeOptions;
import daubline.intake.Nearest;
import daubline.intake.raw.RawCell;
import daubline.intake.raw.RawRow;
import daubline.intake.raw.RawSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds out how a logger's file is laid out: where data begin, which column holds times and in what form, what the
 * others measure.
 */
final class LayoutFinder {

  private static final int SAMPLED = 400;
  private static final String LEFT_OUT = "-";

  private final String place;
  private final RawSheet sheet;
  private final Variables variables;
  private final IntakeOptions options;
  private final List<Finding> findings;
  private List<RawRow> data;
  private RawRow headings;
  private DecimalSign decimal;

  LayoutFinder(String place, RawSheet sheet, Variables variables, IntakeOptions options, List<Finding> findings) {
    this.place = place;
    this.sheet = sheet;
    this.variables = variables;
    this.options = options;
    this.findings = findings;
  }

  /** The layout; empty with an error noted when no data can be found. */
  Optional<LoggerLayout> find(char delimiter) {
    if (!findData()) {
      findings.add(Finding.error("logger.data", place, "no rows of numbers follow one another",
          "state the delimiter, or the row of the headings by header=…"));
      return Optional.empty();
    }
    List<RawRow> sample = sample();
    decimal = new FileSigns(place, options, findings).decimalOf(sample.stream().flatMap(r -> r.cells().stream())
        .filter(c -> !c.isNumber() && !isClock(c.text())).map(RawCell::text)
        .filter(t -> t.matches("[-+\u2212]?[\\d.,]+([eE][-+]?\\d+)?")).toList());
    int width = sample.stream().mapToInt(r -> r.cells().size()).max().orElse(0);
    int time = timeColumn(width);
    Optional<TimeForm> form = time == 0 ? options.get("interval").map(s -> TimeForm.every(Double.parseDouble(s)))
        : timeForm(time);
    if (form.isEmpty()) {
      findings.add(Finding.error("time.none", place, time == 0 ? "no column holds times" : "the column of times, number "
          + time + ", cannot be read",
          "name it by time=…, or say how many seconds lie between rows by interval=…"));
      return Optional.empty();
    }
    List<ChannelLayout> channels = IntStream.rangeClosed(1, width).filter(c -> c != time
        && !isDateColumn(c)).mapToObj(this::channel).flatMap(Optional::stream).toList();
    return Optional.of(new LoggerLayout(delimiter, decimal, data.get(0).number() - 1, time, form.get(), channels));
  }

  private boolean findData() {
    List<RawRow> rows = sheet.rows().stream().filter(r -> !r.isEmpty()).toList();
    int first = options.header().isPresent()
        ? (int) rows.stream().filter(r -> r.number() <= options.header().getAsInt()).count()
        : IntStream.range(0, Math.max(0, rows.size() - 1)).filter(i -> isData(rows.get(i)) && isData(rows.get(i + 1)))
        .findFirst().orElse(rows.size());
    data = rows.subList(Math.min(first, rows.size()), rows.size());
    headings = first == 0 ? new RawRow(0, List.of()) : rows.get(Math.min(first, rows.size()) - 1);
    return !data.isEmpty();
  }

  private static boolean isData(RawRow row) {
    long filled = row.cells().stream().filter(c -> !c.isEmpty()).count();
    long data = row.cells().stream().filter(c -> !c.isEmpty() && isDatum(c)).count();
    return filled >= 2 && data * 3 >= filled * 2;
  }

  private static boolean isDatum(RawCell cell) {
    String text = cell.text();
    return cell.isNumber() || cell.form() == RawCell.Form.DATE || Numbers.parse(text, DecimalSign.POINT).isPresent()
        || Numbers.parse(text, DecimalSign.COMMA).isPresent()
        || isClock(text) || DateOrder.isDate(text) || SensorState.find(text).isPresent() || isDated(text);
  }

  private static boolean isClock(String text) {
    return text.indexOf(':') > 0 && TimeForm.CLOCK.seconds(text, DecimalSign.POINT).isPresent();
  }

  private static boolean isDated(String text) {
    int split = text.indexOf('T') > 0 ? text.indexOf('T') : text.indexOf(' ');
    return split > 0 && DateOrder.isDate(text.substring(0, split)) && text.indexOf(':', split) > 0;
  }

  private List<RawRow> sample() {
    int step = Math.max(1, data.size() / SAMPLED);
    return IntStream.range(0, data.size()).filter(i -> i % step == 0).mapToObj(data::get).toList();
  }

  private String heading(int column) {
    return headings.cell(column - 1).text();
  }

  private List<String> texts(int column) {
    return sample().stream().map(r -> r.cell(column - 1)).map(RawCell::text).filter(t -> !t.isEmpty()).toList();
  }

  private boolean isDateColumn(int column) {
    List<String> texts = texts(column);
    return !texts.isEmpty() && texts.stream().allMatch(DateOrder::isDate);
  }

  private int timeColumn(int width) {
    Optional<String> stated = options.get("time");
    if (stated.isPresent()) {
      return IntStream.rangeClosed(1, width).filter(c -> stated.get().equals(heading(c))
          || stated.get().equals(String.valueOf(c))).findFirst().orElseGet(() -> {
        findings.add(Finding.error("column.unknown", place, "there is no column “" + stated.get() + "”",
            Nearest.remedy(stated.get(), headings.cells().stream().map(RawCell::text).toList(),
            "name a heading or a number from 1 to " + width)));
        return 0;
      });
    }
    return options.get("interval").isPresent() ? 0 : IntStream.rangeClosed(1, width).filter(c -> holdsTimes(c)).findFirst()
        .orElse(0);
  }

  private boolean holdsTimes(int column) {
    List<String> texts = texts(column);
    boolean written = !texts.isEmpty() && texts.stream().filter(t -> isClock(t)
        || isDated(t)).count() * 10 >= texts.size() * 9L;
    boolean named = Heading.of(heading(column)).key().matches("(time|elapsed|elapsed "
        + "time|seconds|sec|minutes|hours|zeit|temps|t|timestamp|unix.*)");
    return written || named && isRising(texts);
  }

  private boolean isRising(List<String> texts) {
    double before = Double.NEGATIVE_INFINITY;
    for (String text : texts) {
      Optional<Double> number = Numbers.parse(text, decimal);
      if (number.isEmpty() || number.get() <= before) {
        return false;
      }
      before = number.get();
    }
    return texts.size() > 1;
  }

  private Optional<TimeForm> timeForm(int column) {
    List<String> texts = texts(column);
    if (texts.stream().filter(LayoutFinder::isDated).count() * 2 > texts.size()) {
      List<String> dates = texts.stream().filter(LayoutFinder::isDated).map(t -> t.split("[T ]")[0]).toList();
      return Optional.of(TimeForm.dated(new FileSigns(place, options, findings).datesOf(dates)));
    }
    if (texts.stream().filter(LayoutFinder::isClock).count() * 2 > texts.size()) {
      return Optional.of(TimeForm.CLOCK);
    }
    return isRising(texts) ? Optional.of(countForm(column, texts)) : Optional.empty();
  }

  private TimeForm countForm(int column, List<String> texts) {
    if (Numbers.parse(texts.get(0), decimal).filter(n -> n > 1e8).isPresent()) {
      return TimeForm.UNIX;
    }
    Heading heading = Heading.of(heading(column));
    String unit = said("unit", heading.text(), heading.unit().isEmpty() ? heading.name() : heading.unit());
    Optional<Unit> known = Units.find(Quantity.TIME, unit);
    if (known.isEmpty()) {
      findings.add(Finding.warning("time.unit", place + ", column " + column,
          "the times count up without a unit; they are taken as seconds",
          "state it by unit:" + heading.text() + "=min if they are not"));
    }
    return TimeForm.count(known.orElseGet(() -> Units.canonical(Quantity.TIME)));
  }

  private Optional<ChannelLayout> channel(int column) {
    String text = heading(column).isEmpty() ? "column " + column : heading(column);
    String named = said("column", text, text);
    if (named.equals(LEFT_OUT) || texts(column).isEmpty()) {
      findings.add(Finding.note("column.unread", place + ", column " + column, "“" + text + "” is not read",
          "the raw file keeps it"));
      return Optional.empty();
    }
    Heading heading = Heading.of(text);
    Optional<Variable> variable = Families.variable(Heading.of(named).name(), variables);
    String unitText = said("unit", text, heading.unit());
    if (variable.isEmpty()) {
      sayUnmapped(column, text, named);
      return Optional.of(new ChannelLayout(column, heading.name(), "", unitText, Optional.empty()));
    }
    return Optional.of(new ChannelLayout(column, heading.name(), variable.get().id(), unitText.isEmpty()
        ? variable.get().unit().symbol() : unitText,
        Optional.of(unit(column, unitText, text, variable.get()))));
  }

  /** What was said about a column, by its heading as it stands or by its name without the unit. */
  private String said(String family, String heading, String otherwise) {
    Map<String, String> all = options.family(family);
    return all.getOrDefault(heading, all.getOrDefault(Heading.of(heading).name(), otherwise));
  }

  private Unit unit(int column, String unitText, String heading, Variable variable) {
    Optional<Unit> unit = unitText.isEmpty() ? Optional.of(variable.unit()) : Units.find(variable.quantity(), unitText);
    if (unitText.isEmpty()) {
      findings.add(Finding.warning("unit.assumed", place + ", column " + column, "“" + heading
          + "” names no unit; it is taken as " + variable.unit().symbol(),
          "state it by unit:" + heading + "=… if it is another"));
    } else if (unit.isEmpty()) {
      List<String> known = new ArrayList<>(Units.of(variable.quantity()).stream().map(Unit::symbol).toList());
      findings.add(Finding.error("unit.unknown", place + ", column " + column, "“" + unitText + "” is no unit of "
          + variable.name(),
          "use one of: " + String.join(", ", known) + "; state it by unit:" + heading + "=…"));
    }
    return unit.orElse(variable.unit());
  }

  private void sayUnmapped(int column, String text, String named) {
    List<String> ids = variables.at(Variable.Place.LOG).stream().map(Variable::id).toList();
    findings.add(Finding.warning("channel.unmapped", place + ", column " + column, "“" + text
        + "” is no variable of the catalogue; it is kept under its own name",
        Nearest.remedy(named, ids, "say what it measures by column:" + text + "=…, such as " + String.join(", ",
        ids.subList(0, Math.min(4, ids.size()))))));
  }
}
