package daubline.intake;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.OxideFactors;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.intake.Recognised.Aspect;
import daubline.intake.Recognised.State;
import daubline.intake.raw.RawRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Recognises the formula and the unit of each column of components, and the limits and reasons in its cells. */
final class LabUnits {

  /** More per cent than a whole can have, even with a total beside it that is a little high. */
  private static final double TOO_MUCH = 115;
  /** Less than this adds up to a whole only as a fraction. */
  private static final double WHOLE = 1.15;
  private static final List<String> CHOICES = List.of("%", "mg/kg", "g/kg", "fraction");

  private final Table table;
  private final IntakeOptions options;
  private final List<Recognised> recognised;
  private final Map<Integer, String> oxides = new HashMap<>();

  LabUnits(Table table, IntakeOptions options, List<Recognised> recognised) {
    this.table = table;
    this.options = options;
    this.recognised = recognised;
  }

  /** The oxides that elements are asked for as, by place of the column. */
  Map<Integer, String> oxides() {
    return oxides;
  }

  /** The columns with the units that are read or guessed. */
  List<Bound> columns() {
    double sum = largestSum();
    List<Bound> columns = new ArrayList<>();
    for (Bound column : table.columns()) {
      boolean component = Labs.isComponent(column);
      if (component) {
        formula(column);
      }
      boolean measured = component || List.of("total", "value").contains(column.column().id());
      columns.add(measured ? unit(column, sum) : column);
      if (component) {
        limits(column);
      }
    }
    return columns;
  }

  private void formula(Bound column) {
    String symbol = column.column().id();
    List<String> choices = new ArrayList<>(List.of(symbol));
    choices.addAll(Formulas.isOxide(symbol) ? List.of() : OxideFactors.of(symbol));
    Optional<String> asked = Optional.ofNullable(options.family("convert").get(column.heading())).or(() ->
        Optional.ofNullable(options.family("convert").get(symbol))).filter(choices::contains).filter(o -> !o.equals(symbol));
    asked.ifPresent(oxide -> {
      oxides.put(column.index(), oxide);
      Labs.components(table).stream().filter(b -> b.column().id().equals(oxide)).findFirst().ifPresent(b -> table.findings().add(Finding.error("column.twice",
          table.place() + ", column " + column.heading(), oxide + " stands in the column “" + b.heading() + "” already", "leave “" + column.heading() + "” as " + symbol
          + ", or leave one of them unread by column:" + b.heading() + "=-")));
    });
    String kind = symbol.equals("LOI") ? "loss on ignition" : Formulas.isOxide(symbol) ? "oxide" : "element";
    String why = asked.map(oxide -> symbol + " × " + Printed.fixed(OxideFactors.factor(symbol, oxide).orElseThrow(), 4) + ", " + OxideFactors.SOURCE
        + "; what is printed is kept").orElse(kind + (choices.size() > 1 ? ", kept as printed" : ""));
    recognised.add(new Recognised(Aspect.FORMULA, column.heading(), asked.orElse(symbol), why, asked.isPresent() ? State.STATED : State.READ,
        choices.size() > 1 ? "convert:" + column.heading() : "", choices));
  }

  private Bound unit(Bound column, double sum) {
    Map<String, String> stated = options.family("unit");
    String setting = "unit:" + column.heading();
    String found = symbol(column.unit());
    boolean said = stated.containsKey(column.heading()) || stated.containsKey(column.column().id());
    if (said || !column.said().isEmpty()) {
      recognised.add(new Recognised(Aspect.UNIT, column.heading(), found, column.said().equals("*") ? "stated for all columns" : said ? "stated"
          : "“" + column.said() + "” stands in the heading or in the row of units", said || column.said().equals("*") ? State.STATED : State.READ, setting, CHOICES));
      return column;
    }
    boolean element = Labs.isComponent(column) && !Formulas.isOxide(column.column().id());
    Guess guess = switch (column.column().id()) {
      case "value" -> ofValues(column);
      case "total" -> ofTotal(sum);
      default -> element ? ofElement(column) : ofOxides(sum);
    };
    State state = guess.sure() ? State.USUAL : Labs.isConfirmed(options, Aspect.UNIT) ? State.STATED : State.GUESSED;
    recognised.add(new Recognised(Aspect.UNIT, column.heading(), guess.unit(), guess.why(), state, setting, CHOICES));
    return new Bound(column.index(), column.heading(), column.column(), Units.find(Quantity.FRACTION, guess.unit()).orElseThrow(), column.said());
  }

  private record Guess(String unit, boolean sure, String why) {
  }

  /** A total has the unit of what it adds up. */
  private Guess ofTotal(double sum) {
    List<String> units = Labs.components(table).stream().filter(b -> Formulas.isOxide(b.column().id()) && !b.said().isEmpty()).map(b -> symbol(b.unit())).distinct().toList();
    return units.size() == 1 ? new Guess(units.get(0), true, "no unit is given; the oxides beside it are in " + units.get(0)) : ofOxides(sum);
  }

  private static Guess ofOxides(double sum) {
    String adds = "no unit is given; the oxides of a row add up to at most " + Printed.number(sum, 4);
    if (sum > TOO_MUCH) {
      return new Guess("mg/kg", false, adds + ", which is no percentage");
    }
    return sum > WHOLE ? new Guess("%", true, adds + ": per cent, as is usual")
        : new Guess("fraction", false, adds + ": a fraction, or traces in per cent");
  }

  private Guess ofElement(Bound column) {
    double largest = table.rows().stream().map(r -> Labs.number(table, r, column)).flatMap(Optional::stream).mapToDouble(n -> n).max().orElse(0);
    return largest > 100 ? new Guess("mg/kg", false, "no unit is given; the largest is " + Printed.number(largest) + ", which is no percentage")
        : new Guess(column.column().id().equals("Fe") ? "%" : "mg/kg", false, "no unit is given, and elements are printed in several");
  }

  private Guess ofValues(Bound column) {
    double largest = table.rows().stream().map(r -> Labs.number(table, r, column)).flatMap(Optional::stream).mapToDouble(n -> n).max().orElse(0);
    boolean percent = largest > 5 && largest <= TOO_MUCH;
    return new Guess("%", percent, "no unit is given; the largest is " + Printed.number(largest));
  }

  private double largestSum() {
    List<Bound> oxides = Labs.components(table).stream().filter(b -> Formulas.isOxide(b.column().id()) && b.said().isEmpty()).toList();
    return table.rows().stream().mapToDouble(r -> sum(r, oxides)).max().orElse(0);
  }

  private double sum(RawRow row, List<Bound> columns) {
    return columns.stream().map(b -> Labs.number(table, row, b)).flatMap(Optional::stream).mapToDouble(n -> n).sum();
  }

  private static String symbol(Unit unit) {
    return unit.symbol().isEmpty() ? "fraction" : unit.symbol();
  }

  /** Which cells hold no number, and what they hold instead. */
  private void limits(Bound column) {
    Map<String, Integer> kinds = new LinkedHashMap<>();
    for (RawRow row : table.rows()) {
      Labs.plain(table, row, column).filter(a -> !a.isEstimate()).ifPresent(a -> kinds.merge(word(a, row.cell(column.index()).text()), 1, Integer::sum));
    }
    if (!kinds.isEmpty()) {
      List<String> said = kinds.entrySet().stream().map(e -> e.getValue() + " × " + e.getKey()).toList();
      recognised.add(Recognised.shown(Aspect.LIMIT, column.heading(), String.join(", ", said), "kept as they are; none of them is zero"));
    }
  }

  private static String word(Amount amount, String typed) {
    return amount.kind() == ValueKind.BELOW_LIMIT ? "below limit " + typed : amount.kind().word() + (typed.equals(amount.kind().word()) ? "" : " (" + typed + ")");
  }
}
