package daubline.export;

import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Every trial against every evidence sheet: agreement and coverage, the best agreement of each sheet first. */
final class RankingTable implements TableSpec {

  @Override
  public String id() {
    return "ranking";
  }

  @Override
  public String title() {
    return "Agreement and Coverage";
  }

  @Override
  public Table build(StudyResults results) {
    List<Column> columns = List.of(Column.text("sheet", "Evidence sheet"), Column.text("trial", "Trial"),
        Column.number("agreement", "Agreement", "0–100"), Column.number("low", "5 %", "0–100"), Column.number("high", "95 %", "0–100"),
        Column.number("coverage", "Coverage", "%"), Column.number("consistent", "Consistent", ""),
        Column.number("not_consistent", "Not consistent", ""), Column.number("not_tested", "Not tested", ""));
    return new Table(id(), title(), "Agreement of the remains of each trial with each evidence sheet, and the share of the "
        + "criteria by weight that could be tested (coverage).", columns, ordered(results).stream().map(RankingTable::row).toList(),
        List.of("Agreement and coverage belong together: a high agreement at low coverage says little.",
            "Consistent with the evidence does not mean that the furnace was so; other recipes may agree as well."));
  }

  private static List<Comparison> ordered(StudyResults results) {
    List<String> sheets = results.snapshot().sheets().stream().map(s -> s.sheet().id()).toList();
    List<Comparison> rows = new ArrayList<>(results.comparisons());
    rows.sort(Comparator.<Comparison>comparingInt(c -> sheets.indexOf(c.sheet()))
        .thenComparing(c -> Double.isNaN(c.agreement()) ? -1 : c.agreement(), Comparator.reverseOrder())
        .thenComparing(Comparison::trialName).thenComparing(Comparison::trial));
    return rows;
  }

  private static List<Cell> row(Comparison c) {
    return List.of(Cell.text(c.sheetName()), Cell.text(c.trialName()), Cell.fixed(c.agreement(), 0), Cell.fixed(c.low(), 0),
        Cell.fixed(c.high(), 0), Cell.fixed(c.coverage() * 100, 0), count(c, Verdict.CONSISTENT), count(c, Verdict.NOT_CONSISTENT),
        count(c, Verdict.NOT_TESTED));
  }

  private static Cell count(Comparison c, Verdict verdict) {
    return Cell.fixed(c.count(verdict), 0);
  }
}
