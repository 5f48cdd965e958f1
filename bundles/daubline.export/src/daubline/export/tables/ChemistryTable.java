package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.record.AnalysisRecord;
import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import daubline.export.TableOptions;
import daubline.export.TableSpec;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Bulk chemistry: each analysis as measured, below it with iron converted where that is asked for, and below that normalised to
 * 100 %. The analytical total is always that of the measurement. The order of oxides is the customary one (common practice, no
 * source) unless another is chosen.
 */
public final class ChemistryTable implements TableSpec {

  private static final List<String> ORDER = List.of("SiO2", "TiO2", "Al2O3", "FeO", "Fe2O3", "Fe", "MnO", "MgO", "CaO", "Na2O", "K2O", "P2O5", "SO3", "BaO",
      "V2O5", "LOI");
  private static final Unit PERCENT = Units.find(Quantity.FRACTION, "%").orElseThrow();

  @Override
  public String id() {
    return "chemistry";
  }

  @Override
  public String title() {
    return "Bulk Chemistry";
  }

  @Override
  public Table build(StudyResults results, TableOptions options) {
    List<String> symbols = symbols(results, options);
    List<List<Cell>> rows = new ArrayList<>();
    MethodsTable.analyses(results).filter(a -> !a.data().components().isEmpty()).forEach(a -> add(rows, a, symbols, options.iron()));
    boolean converts = options.iron() != TableOptions.Iron.AS_PRINTED;
    return new Table(id(), title(), "Bulk composition as measured" + (converts ? ", then with " + options.iron().word() : "")
        + " and, in the row below, normalised to 100 %.", columns(symbols), rows, notes(options.iron()));
  }

  private static List<Column> columns(List<String> symbols) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("of", "Of"), Column.text("analysis", "Analysis"), Column.words("material", "Material"),
        Column.text("specimen", "Specimen"), Column.words("iron_basis", "Iron"), Column.words("form", "Form")));
    symbols.forEach(s -> columns.add(Column.number(s.toLowerCase(Locale.ROOT), BalanceTable.subscript(s), "wt%")));
    columns.add(Column.number("sum", "Sum of components", "wt%"));
    columns.add(Column.number("total", "Analytical total", "wt%"));
    return columns;
  }

  private static List<String> symbols(StudyResults results, TableOptions options) {
    Set<String> symbols = new LinkedHashSet<>();
    MethodsTable.analyses(results).forEach(a -> {
      symbols.addAll(a.data().components().keySet());
      symbols.addAll(IronForm.convert(a.data().components(), a.data().ironBasis(), options.iron()).keySet());
    });
    List<String> first = options.oxides().stream().map(o -> o.toLowerCase(Locale.ROOT)).toList();
    return symbols.stream().sorted(Comparator.comparingInt((String s) -> place(first, s.toLowerCase(Locale.ROOT))).thenComparingInt(s -> place(ORDER, s))).toList();
  }

  private static int place(List<String> order, String symbol) {
    return order.contains(symbol) ? order.indexOf(symbol) : order.size();
  }

  private static void add(List<List<Cell>> rows, AnalysisRecord a, List<String> symbols, TableOptions.Iron iron) {
    Map<String, Amount> measured = a.data().components();
    Map<String, Amount> converted = IronForm.convert(measured, a.data().ironBasis(), iron);
    String basis = a.data().ironBasis().word();
    rows.add(row(a, symbols, basis, "measured", measured, 1));
    boolean changed = !converted.equals(measured);
    if (changed) {
      basis = iron.word();
      rows.add(row(a, symbols, basis, "iron converted", converted, 1));
    }
    double sum = sum(converted);
    if (sum > 0) {
      rows.add(row(a, symbols, basis, "normalised", converted, 1 / sum));
    }
  }

  private static List<Cell> row(AnalysisRecord a, List<String> symbols, String basis, String form, Map<String, Amount> components, double factor) {
    List<Cell> row = new ArrayList<>(List.of(Cell.text(a.owner()), Cell.text(a.name()), Cell.text(a.data().material().word()),
        Cell.text(a.data().specimen()), Cell.text(basis), Cell.text(form)));
    for (String symbol : symbols) {
      Amount amount = components.get(symbol);
      boolean isReplaced = !components.equals(a.data().components()) && IronForm.FORMULAS.contains(symbol);
      Cell none = isReplaced ? Cell.EMPTY : Cell.missing(ValueKind.NOT_RECORDED);
      row.add(amount == null ? none : component(IronForm.scaled(amount, factor)).from(a.data().trail()));
    }
    row.add(Cell.fixed(sum(components) * factor * 100, 2));
    row.add(Cell.fixed(a.data().total() * 100, 2));
    return row;
  }

  /** Two decimals where no uncertainty says otherwise; limits as printed, without a space. */
  private static Cell component(Amount amount) {
    return switch (amount.kind()) {
      case EXACT -> Cell.fixed(amount.value() * 100, 2);
      case BELOW_LIMIT -> Cell.amount(amount, PERCENT, null).reading("<" + Printed.number(amount.value() * 100));
      default -> Cell.amount(amount, PERCENT, null);
    };
  }

  private static double sum(Map<String, Amount> components) {
    return components.values().stream().filter(a -> a.isNumber() && a.kind() != ValueKind.BELOW_LIMIT).mapToDouble(Amount::value).sum();
  }

  private static List<String> notes(TableOptions.Iron iron) {
    List<String> notes = new ArrayList<>(List.of("Analytical total: as the laboratory states it, before normalising; – where it states none.",
        "Sum of components: without values below their limit of detection.",
        "Normalised: each component over the sum of components; the original total stands beside it."));
    if (iron != TableOptions.Iron.AS_PRINTED) {
      notes.add("Iron converted: " + IronForm.formula(iron) + "; the row above holds what the laboratory printed.");
    }
    return notes;
  }
}
