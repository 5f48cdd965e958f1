package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;

/** What each criterion says, with its reason. */
public final class ComparisonTable extends Spec {

  /** The table. */
  public ComparisonTable() {
    super("comparison", "Comparison by Criterion", "Evidence and the remains of each trial criterion by criterion, with the verdict and its reason.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("sheet", "Evidence sheet"), Column.text("trial", "Trial"), Column.words("criterion", "Criterion"),
        Column.words("evidence", "Evidence"), Column.words("found", "As found"), Column.words("verdict", "Verdict"),
        Column.number("agreement", "Agreement", "0–100"), Column.number("sigmas", "Difference", "u"), Column.number("weight", "Weight", "%"),
        Column.words("reason", "Reason"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Comparison c : results.comparisons()) {
      c.criteria().forEach(criterion -> rows.add(row(c, criterion)));
    }
    return rows;
  }

  private static List<Cell> row(Comparison c, CriterionResult r) {
    return List.of(Cell.text(c.sheetName()), Cell.text(c.trialName()), Cell.text(r.name()), Cell.text(r.evidence()), Cell.text(r.found()),
        Cell.text(r.verdict().word()).from(r.trail()), optional(r.agreement() * 100, 0).from(r.trail()), optional(r.sigmas(), 1), Cell.fixed(r.weight() * 100, 1),
        Cell.text(r.reason()));
  }

  private static Cell optional(double value, int decimals) {
    return Double.isNaN(value) ? Cell.EMPTY : Cell.fixed(value, decimals);
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Difference: as found less evidence in combined standard uncertainties u.", "Not tested counts neither for nor against a trial.");
  }
}
