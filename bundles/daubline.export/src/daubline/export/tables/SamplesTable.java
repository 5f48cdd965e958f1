package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.TrialRecord;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.stream.Stream;

/** The samples register. */
public final class SamplesTable extends RecordTable {

  /** The table. */
  public SamplesTable() {
    super("samples", "Samples", "Samples taken, what is asked of them and where they are.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.text("id", "Id"), Column.text("sample", "Sample"), Column.words("material", "Material"),
        Column.text("piece", "Piece"), Column.text("question", "Question"), Column.text("taken_on", "Taken on"), Column.text("stored_at", "Stored at"),
        Column.text("holder", "Holder"));
  }

  @Override
  Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record) {
    return record.samples().stream().map(s -> List.of(Cell.text(trial.name()), Cell.text(s.id()), Cell.text(s.name()), Cell.text(s.material().word()),
        Cell.text(s.piece()), Cell.text(s.question()), Cell.text(s.takenOn()), Cell.text(s.storedAt()), Cell.text(s.holder())));
  }
}
