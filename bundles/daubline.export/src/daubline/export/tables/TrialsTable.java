package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.TrialRecord;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.Optional;

/** Every trial, failed and left out ones too. */
public final class TrialsTable extends Spec {

  /** The table. */
  public TrialsTable() {
    super("trials", "Trials", "All trials of the study in their order, failed ones included.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.text("series", "Series"), Column.text("date", "Date"), Column.words("kind", "Kind"),
        Column.words("status", "Status"), Column.text("furnace", "Furnace"), Column.text("reconstruction", "Reconstruction"),
        Column.text("repeat_of", "Repeat of"), Column.words("compared", "Compared"), Column.text("conclusion", "Conclusion"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    return results.snapshot().trials().stream().map(trial -> row(results, trial)).toList();
  }

  private static List<Cell> row(StudyResults results, TrialData trial) {
    Optional<TrialRecord> record = results.snapshot().record().trial(trial.id());
    String repeated = results.snapshot().trial(trial.repeatOf()).map(TrialData::name).orElse("");
    return List.of(Cell.text(trial.name()), Cell.text(trial.series()), Cell.text(record.map(TrialRecord::on).orElse("")),
        Cell.text(trial.kind().word()), Cell.text(trial.status().word()), Cell.text(record.map(TrialRecord::build).orElse("")),
        Cell.text(record.map(TrialRecord::reconstruction).orElse("")), Cell.text(repeated), Cell.text(compared(results, trial)),
        Cell.text(record.map(TrialRecord::conclusion).orElse("")));
  }

  private static String compared(StudyResults results, TrialData trial) {
    if (results.comparisons().stream().anyMatch(c -> c.trial().equals(trial.id()))) {
      return "yes";
    }
    return trial.excluded() ? "no: " + trial.excludedBecause() : "no: " + (trial.isCompared(true) ? trial.kind().word() : trial.status().word());
  }

  @Override
  List<String> notes(StudyResults results) {
    long compared = results.snapshot().trials().stream().filter(t -> compared(results, t).equals("yes")).count();
    return List.of("Repeats, failures and trials left out stand here too: " + results.snapshot().trials().size() + " trials, of which " + compared
        + " were compared.");
  }
}
