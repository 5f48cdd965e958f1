package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Verdict;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every trial against every evidence sheet: agreement and coverage, the best agreement of each sheet first. */
public final class RankingTable extends Spec {

  /** The table. */
  public RankingTable() {
    super("ranking", "Agreement and Coverage", "Agreement of the remains of each trial with each evidence sheet, and the share of the "
        + "criteria by weight that could be tested (coverage).");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("sheet", "Evidence sheet"), Column.text("trial", "Trial"), Column.number("agreement", "Agreement", "0–100"),
        Column.number("low", "5 %", "0–100"), Column.number("high", "95 %", "0–100"), Column.number("coverage", "Coverage", "%"),
        Column.number("consistent", "Consistent", "criteria"), Column.number("not_consistent", "Not consistent", "criteria"),
        Column.number("not_tested", "Not tested", "criteria"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    return ordered(results).stream().map(RankingTable::row).toList();
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Agreement and coverage belong together: a high agreement at low coverage says little.",
        "Consistent with the evidence does not mean that the furnace was so; other recipes may agree as well.");
  }

  private static List<Comparison> ordered(StudyResults results) {
    List<String> sheets = results.comparisons().stream().map(Comparison::sheet).distinct().toList();
    List<Comparison> rows = new ArrayList<>(results.comparisons());
    rows.sort(Comparator.<Comparison>comparingInt(c -> sheets.indexOf(c.sheet()))
        .thenComparing(c -> Double.isNaN(c.agreement()) ? -1 : c.agreement(), Comparator.reverseOrder())
        .thenComparing(Comparison::trialName).thenComparing(Comparison::trial));
    return rows;
  }

  private static List<Cell> row(Comparison c) {
    return List.of(Cell.text(c.sheetName()), Cell.text(c.trialName()), agreement(c.agreement()), agreement(c.low()),
        agreement(c.high()), Cell.fixed(c.coverage() * 100, 0), count(c, Verdict.CONSISTENT), count(c, Verdict.NOT_CONSISTENT),
        count(c, Verdict.NOT_TESTED));
  }

  /** Empty when nothing was tested: that is no missing record. */
  private static Cell agreement(double value) {
    return Double.isNaN(value) ? Cell.EMPTY : Cell.fixed(value, 0);
  }

  private static Cell count(Comparison c, Verdict verdict) {
    return Cell.fixed(c.count(verdict), 0);
  }
}
