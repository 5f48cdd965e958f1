package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.LogData;
import daubline.analysis.record.TrialRecord;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.stream.Stream;

/** What went otherwise than planned, without names. */
public final class IncidentsTable extends RecordTable {

  /** The table. */
  public IncidentsTable() {
    super("incidents", "Incidents and Deviations", "What went otherwise than planned, and what it does to comparison. Nobody is named; what concerns the health of a person is left out.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.number("elapsed", "After first light", "min"), Column.number("duration", "Lasted", "min"),
        Column.text("what", "What happened"), Column.text("effect", "Effect on comparison"));
  }

  @Override
  Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record) {
    return record.log().stream().filter(LogData::incident).filter(LogData::isPublic).map(i -> List.of(Cell.text(trial.name()), Cell.fixed(i.elapsed() / 60, 0),
        Cell.fixed(i.duration() / 60, 0), Cell.text(i.text()), Cell.text(i.effect())));
  }
}
