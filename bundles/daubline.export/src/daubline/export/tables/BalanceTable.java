package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.balance.TrialBalance;
import daubline.base.Severity;
import daubline.engine.process.balance.ElementBalance;
import daubline.engine.process.balance.ElementBalance.Entry;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** What went into each trial of each element, where it was found again, and what was not: the remainder is never forced to zero. */
public final class BalanceTable extends Spec {

  /** The table. */
  public BalanceTable() {
    super("balance", "Mass Balance", "What went into each fire of iron and of each oxide, what was found again, and the remainder with its standard uncertainty.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("trial", "Trial"), Column.words("element", "Element")));
    parts(results, ElementBalance::sources).forEach(part -> columns.add(Column.number(id("in_", part), "In: " + part, "kg")));
    columns.add(Column.number("in_total", "In: all", "kg"));
    parts(results, ElementBalance::finds).forEach(part -> columns.add(Column.number(id("out_", part), "Found: " + part, "kg")));
    columns.addAll(List.of(Column.number("out_total", "Found: all", "kg"), Column.number("remainder", "Remainder", "kg"),
        Column.number("share", "Remainder ÷ in", "%"), Column.words("closes", "Within 2 u")));
    return columns;
  }

  private static String id(String side, String part) {
    return side + part.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
  }

  /** Names of what the elements of all balances came in with or were found in. */
  private static Set<String> parts(StudyResults results, Function<ElementBalance, List<Entry>> side) {
    return results.snapshot().balances().all().stream().flatMap(b -> b.elements().stream()).flatMap(e -> side.apply(e).stream()).map(Entry::what)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    Set<String> sources = parts(results, ElementBalance::sources);
    Set<String> finds = parts(results, ElementBalance::finds);
    List<List<Cell>> rows = new ArrayList<>();
    for (TrialBalance balance : results.snapshot().balances().all()) {
      for (ElementBalance e : balance.elements()) {
        List<Cell> row = new ArrayList<>(List.of(Cell.text(balance.name()), Cell.text(subscript(e.element()))));
        sources.forEach(part -> row.add(mass(e.sources(), part)));
        row.add(Cell.fixed(e.in(), 3));
        finds.forEach(part -> row.add(mass(e.finds(), part)));
        row.addAll(List.of(Cell.fixed(e.out(), 3), Cell.plusMinus(e.remainder(), e.sigma()), e.in() > 0 ? Cell.fixed(e.remainderShare() * 100, 0) : Cell.EMPTY,
            Cell.text(e.closes() ? "yes" : "no")));
        rows.add(row);
      }
    }
    return rows;
  }

  private static Cell mass(List<Entry> side, String part) {
    return side.stream().anyMatch(s -> s.what().equals(part))
        ? Cell.fixed(side.stream().filter(s -> s.what().equals(part)).mapToDouble(Entry::amount).sum(), 3) : Cell.EMPTY;
  }

  /** A formula with its numbers below the line. */
  static String subscript(String formula) {
    StringBuilder text = new StringBuilder();
    formula.chars().forEach(c -> text.append(Character.isDigit(c) && text.length() > 0 ? (char) ('₀' + c - '0') : (char) c));
    return text.toString();
  }

  @Override
  List<String> notes(StudyResults results) {
    List<String> notes = new ArrayList<>(List.of("Remainder: in less found; negative where more was found than went in. It is left as it is, never shared out.",
        "Within 2 u: whether the remainder lies within twice its standard uncertainty of nothing."));
    Map<String, List<String>> assumed = new LinkedHashMap<>();
    for (TrialBalance balance : results.snapshot().balances().all()) {
      balance.findings().stream().filter(f -> f.severity() == Severity.NOTE && isBurnt(results, balance))
          .forEach(f -> assumed.computeIfAbsent(f.what(), w -> new ArrayList<>()).add(balance.name()));
    }
    assumed.forEach((what, trials) -> notes.add(Character.toUpperCase(what.charAt(0)) + what.substring(1) + " (" + String.join(", ", trials) + ")."));
    return notes;
  }

  private static boolean isBurnt(StudyResults results, TrialBalance balance) {
    return results.snapshot().plans().find(balance.trial()).filter(p -> p.isBurnt()).isPresent();
  }
}
