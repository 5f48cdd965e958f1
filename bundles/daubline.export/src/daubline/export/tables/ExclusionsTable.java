package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Exclusion;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.stream.Collectors;

/** Which trials the evidence rules out, and the shortest list of criteria that does it. */
public final class ExclusionsTable extends Spec {

  /** The table. */
  public ExclusionsTable() {
    super("exclusions", "What the Evidence Rules Out", "For each evidence sheet and trial the shortest list of criteria whose verdicts rule the trial out as a "
        + "reproduction, where there is one.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("sheet", "Evidence sheet"), Column.text("trial", "Trial"), Column.words("ruled_out", "Ruled out"),
        Column.words("by", "Shortest list"), Column.words("chance", "Chance in a faithful repeat"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    double alpha = results.snapshot().settings().alpha();
    return results.comparisons().stream().filter(Comparison::isTested).map(c -> row(c, Exclusion.of(c, alpha))).toList();
  }

  private static List<Cell> row(Comparison c, Exclusion exclusion) {
    return List.of(Cell.text(c.sheetName()), Cell.text(c.trialName()), Cell.text(exclusion.isRuledOut() ? "yes" : "no"),
        Cell.text(exclusion.criteria().stream().map(CriterionResult::name).collect(Collectors.joining(", "))),
        Cell.text(exclusion.probability() < 0.001 ? "below 0.001" : Printed.number(exclusion.probability(), 2)));
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("A list counts when as many criteria would disagree as much in fewer than " + Printed.number(results.snapshot().settings().alpha())
        + " of faithful repeats, allowing for the number of lists tried; the criteria are taken as independent.",
        "What is not ruled out is not thereby shown to have been so.");
  }
}
