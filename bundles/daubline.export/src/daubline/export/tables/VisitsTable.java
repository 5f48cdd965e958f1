package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.DecayCurve;
import daubline.analysis.record.TrialRecord;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.stream.Stream;

/** The returns to furnaces left to decay, those that did not happen among them. */
public final class VisitsTable extends RecordTable {

  /** The table. */
  public VisitsTable() {
    super("visits", "Visits to Decaying Furnaces", "When what a trial left was to be seen again, when it was, how high its wall stood, why nobody went, and why the watching ended.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.text("due_on", "Due on"), Column.text("visited_on", "Visited on"),
        Column.number("standing_height", "Standing height", variable(results).unit().symbol()), Column.text("not_visited_because", "Not visited because"),
        Column.text("ended_because", "Watching ended because"), Column.text("note", "Note"));
  }

  private static Variable variable(StudyResults results) {
    return results.snapshot().variables().get(DecayCurve.VARIABLE);
  }

  @Override
  Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record) {
    return record.visits().stream().map(v -> List.of(Cell.text(trial.name()), Cell.text(v.dueOn()), Cell.text(v.visitedOn()),
        v.values().containsKey(DecayCurve.VARIABLE) ? Cell.amount(v.values().get(DecayCurve.VARIABLE), variable(results).unit(), null)
            : Cell.missing(ValueKind.NOT_RECORDED),
        Cell.text(v.notVisitedBecause()), Cell.text(v.endedBecause()), Cell.text(v.note())));
  }
}
