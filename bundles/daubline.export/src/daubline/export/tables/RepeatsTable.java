package daubline.export.tables;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.RepeatSpread;
import daubline.analysis.StudyRepeats;
import daubline.analysis.StudyResults;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;

/** How far trials that repeat one another differ, criterion by criterion: the reproducibility of a smelt. */
public final class RepeatsTable extends Spec {

  /** The table. */
  public RepeatsTable() {
    super("repeats", "Spread of Repeats", "Standard deviation of the remains of trials of one recipe, and the tolerance that it would make.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.words("criterion", "Criterion"), Column.text("unit", "Unit"), Column.text("spread", "Spread within recipes"),
        Column.text("low", "5 %"), Column.text("high", "95 %"), Column.number("freedom", "Degrees of freedom", ""), Column.number("recipes", "Recipes", ""),
        Column.text("as_tolerance", "As tolerance"), Column.text("now", "Tolerance now"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<String> trials = results.comparisons().stream().map(Comparison::trial).distinct().toList();
    ComparisonOptions usual = ComparisonOptions.standard();
    ComparisonOptions options = new ComparisonOptions(!trials.isEmpty(), trials, List.of(), usual.draws(), usual.seed(), usual.threads());
    return StudyRepeats.of(results.snapshot(), options).toPrint(results.snapshot().settings()).stream().map(RepeatsTable::row).toList();
  }

  private static List<Cell> row(RepeatSpread r) {
    return List.of(Cell.text(r.criterion()), Cell.text(r.unit().symbol()), printed(r.spread()), printed(r.low()), printed(r.high()),
        Cell.fixed(r.freedom(), 0), Cell.fixed(r.recipes(), 0), printed(r.asTolerance()), printed(r.now()));
  }

  private static Cell printed(double value) {
    return Cell.text(Printed.number(value, 2));
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("5 % and 95 %: interval of the spread itself. As tolerance: widened by Student's factor for so few degrees of freedom; it is used only when the "
        + "user says so, and a spread of zero never.");
  }
}
