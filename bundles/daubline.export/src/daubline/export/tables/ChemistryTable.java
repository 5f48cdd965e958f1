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
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Bulk chemistry: each analysis as measured, and below it normalised to 100 %. The analytical total is always that of
 * the measurement. The order of oxides is the customary one (common practice, no source).
 */
public final class ChemistryTable extends Spec {

  private static final List<String> ORDER = List.of("SiO2", "TiO2", "Al2O3", "FeO", "Fe2O3", "Fe", "MnO", "MgO", "CaO", "Na2O", "K2O", "P2O5", "SO3", "BaO",
      "V2O5", "LOI");
  private static final Unit PERCENT = Units.find(Quantity.FRACTION, "%").orElseThrow();

  /** The table. */
  public ChemistryTable() {
    super("chemistry", "Bulk Chemistry", "Bulk composition as measured and, in the row below, normalised to 100 %.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("of", "Of"), Column.text("analysis", "Analysis"), Column.text("material", "Material"),
        Column.text("specimen", "Specimen"), Column.text("iron_basis", "Iron"), Column.text("form", "Form")));
    symbols(results).forEach(s -> columns.add(Column.number(s.toLowerCase(Locale.ROOT), subscript(s), "wt%")));
    columns.add(Column.number("sum", "Sum of components", "wt%"));
    columns.add(Column.number("total", "Analytical total", "wt%"));
    return columns;
  }

  private static List<String> symbols(StudyResults results) {
    Set<String> symbols = new LinkedHashSet<>();
    MethodsTable.analyses(results).forEach(a -> symbols.addAll(a.data().components().keySet()));
    return symbols.stream().sorted(Comparator.comparingInt(s -> ORDER.contains(s) ? ORDER.indexOf(s) : ORDER.size())).toList();
  }

  private static String subscript(String symbol) {
    StringBuilder text = new StringBuilder();
    symbol.chars().forEach(c -> text.append(Character.isDigit(c) && text.length() > 0 ? (char) ('₀' + c - '0') : (char) c));
    return text.toString();
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<String> symbols = symbols(results);
    List<List<Cell>> rows = new ArrayList<>();
    MethodsTable.analyses(results).forEach(a -> {
      double sum = a.data().components().values().stream().filter(ChemistryTable::isCounted).mapToDouble(Amount::value).sum();
      if (!a.data().components().isEmpty()) {
        rows.add(row(a, symbols, "measured", 1, sum));
        if (sum > 0) {
          rows.add(row(a, symbols, "normalised", 1 / sum, 1));
        }
      }
    });
    return rows;
  }

  private static List<Cell> row(AnalysisRecord a, List<String> symbols, String form, double factor, double sum) {
    List<Cell> row = new ArrayList<>(List.of(Cell.text(a.owner()), Cell.text(a.name()), Cell.text(a.data().material().word()),
        Cell.text(a.data().specimen()), Cell.text(a.data().ironBasis().word()), Cell.text(form)));
    for (String symbol : symbols) {
      Amount amount = a.data().components().get(symbol);
      row.add(amount == null ? Cell.missing(ValueKind.NOT_RECORDED) : component(scaled(amount, factor)).from(a.data().trail()));
    }
    row.add(Cell.fixed(sum * 100, 2));
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

  private static boolean isCounted(Amount amount) {
    return amount.isNumber() && amount.kind() != ValueKind.BELOW_LIMIT;
  }

  private static Amount scaled(Amount a, double factor) {
    return factor == 1 || !a.isNumber() ? a : new Amount(a.kind(), a.value() * factor, a.low() * factor, a.high() * factor, a.sigma() * factor, a.category());
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Analytical total: as the laboratory states it, before normalising; – where it states none.",
        "Sum of components: without values below their limit of detection.",
        "Normalised: each component over the sum of components; the original total stands beside it.");
  }
}
