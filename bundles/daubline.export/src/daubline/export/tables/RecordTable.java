package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.TrialRecord;
import daubline.export.Cell;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A table of what was written down about each trial. */
abstract class RecordTable extends Spec {

  RecordTable(String id, String title, String caption) {
    super(id, title, caption);
  }

  @Override
  final List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (TrialData trial : results.snapshot().trials()) {
      results.snapshot().record().trial(trial.id()).ifPresent(record -> rows(results, trial, record).forEach(rows::add));
    }
    return rows;
  }

  /** The rows of one trial. */
  abstract Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record);
}
