package daubline.intake;

import daubline.base.Finding;
import daubline.base.IronBasis;
import daubline.base.Printed;
import daubline.base.Variables;
import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.intake.raw.RawRow;
import daubline.model.Study;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Recognises what a laboratory's table says, column by column and row by row. The table that comes out holds the guesses, so
 * that a preview shows what they would do; the findings refuse it as long as one of them is not confirmed.
 */
final class LabReading {

  /** A printed total and the sum of components differ by rounding alone up to this, mass fraction. */
  private static final double ROUNDING = 0.005;
  private static final int NAMED = 4;
  private static final Pattern LIMITS = Pattern.compile("(lower )?(limits? of (detection|determination|quantification)|detection limits?|lods?|dl|mdl|llod|lld|loq|nwg|nachweisgrenzen?|bestimmungsgrenzen?)( \\(.*\\))?");
  private static final Pattern SUMMARY = Pattern.compile("(mean|average|avg|median|mittel|mittelwert|mw|sd|s d|std|std dev|stdev|standard deviation|"
      + "standardabweichung|stabw|rsd|rsd %|1s|2s|1 sigma|2 sigma|min|max|minimum|maximum|n)( \\(.*\\))?");

  private final Study study;
  private final Variables variables;
  private final Form form;
  private final IntakeOptions options;
  private final List<Recognised> recognised = new ArrayList<>();
  private Table table;

  LabReading(Study study, Variables variables, Form form, IntakeOptions options, List<Recognised> layout) {
    this.study = study;
    this.variables = variables;
    this.form = form;
    this.options = options;
    recognised.addAll(layout);
  }

  /** What was recognised, the layout first. */
  List<Recognised> recognised() {
    return List.copyOf(recognised);
  }

  /** The table with everything that is read, stated or guessed. */
  Table of(Table found) {
    table = found;
    if (found.isRefused()) {
      return found;
    }
    columns();
    LabUnits units = new LabUnits(table, options, recognised);
    List<Bound> columns = units.columns();
    Map<Integer, Map<String, String>> cells = stated();
    table = with(columns, table.rows(), cells, units.oxides(), Map.of());
    List<RawRow> rows = analyses();
    LabHomes homes = new LabHomes(study, table, options, recognised);
    homes.place(rows, cells);
    LabReplicates replicates = new LabReplicates(table, options, homes::isHome, recognised);
    replicates.mark(rows, cells);
    new LabIron(table, options, recognised).mark(rows, cells);
    rows.forEach(this::total);
    List<RawRow> left = rows.stream().filter(r -> !replicates.passedOver().contains(r)).toList();
    return with(columns, left, cells, units.oxides(), replicates.joined());
  }

  private Table with(List<Bound> columns, List<RawRow> rows, Map<Integer, Map<String, String>> cells, Map<Integer, String> oxides, Map<Integer, List<RawRow>> joined) {
    return table.with(columns, rows, new RowFacts(table.facts().turned(), table.facts().unitRow(), cells, oxides, joined));
  }

  private void columns() {
    List<String> choices = LabColumns.choices(form, variables);
    for (Bound column : table.columns()) {
      boolean known = recognised.stream().anyMatch(r -> r.aspect() == Aspect.COLUMN && r.where().equals(column.heading()));
      if (!Labs.isComponent(column) && !known) {
        boolean stated = options.family("column").containsKey(column.heading());
        recognised.add(new Recognised(Aspect.COLUMN, column.heading(), column.column().id(), stated ? "stated" : "by its heading",
            stated ? State.STATED : State.READ, "column:" + column.heading(), choices));
      }
    }
    for (String heading : table.unread()) {
      recognised.add(new Recognised(Aspect.COLUMN, heading, "-", "not read", options.family("column").containsKey(heading) ? State.STATED : State.USUAL,
          "column:" + heading, choices));
    }
  }

  /** The texts of single rows that a person states. */
  private Map<Integer, Map<String, String>> stated() {
    Map<Integer, Map<String, String>> cells = new TreeMap<>();
    options.family("row").forEach((key, text) -> {
      String[] parts = key.split(":", 2);
      boolean known = parts.length == 2 && parts[0].matches("\\d{1,6}") && (parts[1].equals("role") || form.column(Heading.of(parts[1]), variables).isPresent());
      if (!known) {
        table.findings().add(Finding.error("option.text", "row:" + key, "this names no row and column", "write it as row:5:iron_basis, the number of the row first"));
      } else if (!parts[1].equals("role")) {
        cells.computeIfAbsent(Integer.valueOf(parts[0]), n -> new TreeMap<>()).put(Heading.key(parts[1]).replace(' ', '_'), text.equals("-") ? "" : text);
      }
    });
    return cells;
  }

  /** The rows that are analyses; those that look like limits or means are said and passed over. */
  private List<RawRow> analyses() {
    List<RawRow> rows = new ArrayList<>();
    for (RawRow row : table.rows()) {
      String name = Heading.key(Labs.text(table, row, "name"));
      boolean limits = LIMITS.matcher(name).matches();
      boolean summary = SUMMARY.matcher(name).matches();
      Optional<String> stated = Optional.ofNullable(options.family("row").get(row.number() + ":role"));
      boolean over = stated.map(s -> !s.equals("analysis")).orElse(limits || summary);
      if (limits || summary || stated.isPresent()) {
        State state = stated.isPresent() ? State.STATED : limits ? State.READ : Labs.isConfirmed(options, Aspect.ROLE) ? State.STATED : State.GUESSED;
        recognised.add(new Recognised(Aspect.ROLE, Labs.shown(table, row), over ? "passed over" : "analysis", limits ? "limits of detection, no analysis"
            : summary ? "worked out from other rows, as its name says" : "stated", state, "row:" + row.number() + ":role", List.of("analysis", "passed over")));
      }
      if (!over) {
        rows.add(row);
      }
    }
    return rows;
  }

  /** What the components of a row add up to, beside the total that it prints. */
  private void total(RawRow row) {
    if (Labs.isLong(table)) {
      return;
    }
    boolean withMetal = IronBasis.WITH_METAL.word().equals(Labs.text(table, row, "iron_basis"));
    boolean oxide = Labs.components(table).stream().anyMatch(b -> List.of("FeO", "Fe2O3").contains(b.column().id()) && Labs.share(table, row, b).isPresent());
    List<Double> shares = Labs.components(table).stream().filter(b -> withMetal || !oxide || !b.column().id().equals("Fe"))
        .map(b -> Labs.share(table, row, b).map(s -> s * table.facts().factor(b))).flatMap(Optional::stream).toList();
    if (shares.isEmpty()) {
      return;
    }
    double sum = shares.stream().mapToDouble(s -> s).sum();
    Optional<Double> printed = Labs.column(table, "total").flatMap(b -> Labs.share(table, row, b));
    boolean differs = printed.isPresent() && Math.abs(printed.get() - sum) > ROUNDING;
    String why = printed.map(p -> "the table prints " + percent(p) + (differs ? "; look for what was left out, or given twice" : "")).orElse("the table prints no total");
    recognised.add(Recognised.shown(Aspect.TOTAL, Labs.shown(table, row), percent(sum), why));
    if (differs) {
      table.findings().add(Finding.warning("total.differs", table.place() + ", " + Labs.shown(table, row), "the components add up to " + percent(sum)
          + ", the table prints " + percent(printed.get()), "look for what was left out, given twice or in another unit; both are kept as printed"));
    }
  }

  private static String percent(double share) {
    return Printed.fixed(share * 100, 2) + " %";
  }

  /** One finding for each aspect in which something has to be confirmed or said. */
  static List<Finding> open(String place, List<Recognised> recognised) {
    Map<Aspect, List<Recognised>> by = recognised.stream().filter(Recognised::isOpen)
        .collect(Collectors.groupingBy(Recognised::aspect, LinkedHashMap::new, Collectors.toList()));
    List<Finding> findings = new ArrayList<>();
    by.forEach((aspect, some) -> {
      String named = some.stream().limit(NAMED).map(r -> (r.where().equals("*") ? "" : r.where() + ": ") + (r.found().isEmpty() ? "?" : r.found()))
          .collect(Collectors.joining("; ")) + (some.size() > NAMED ? "; and " + (some.size() - NAMED) + " more" : "");
      boolean guessed = some.stream().allMatch(r -> r.state() == State.GUESSED);
      findings.add(Finding.error("confirm." + aspect.word(), place, "not sure about " + aspect.word() + ": " + named,
          "say it by " + some.get(0).setting() + "=…" + (guessed ? ", or take what is shown by confirm=" + aspect.word() : "")));
    });
    return findings;
  }
}
