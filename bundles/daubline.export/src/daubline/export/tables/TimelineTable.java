package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.LogData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Printed;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The course of each fire: phases, taps, views and notes; charges have a table of their own. */
public final class TimelineTable extends RecordTable {

  private static final Set<String> NOT_HERE = Set.of("charge", "relief", "temperature");

  /** The table. */
  public TimelineTable() {
    super("time-line", "Time Line", "The course of each fire from its run log; charges, reliefs and temperatures are left to their own files.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.number("elapsed", "After first light", "min"), Column.text("at", "Wall time"),
        Column.words("kind", "Kind"), Column.text("entry", "Entry"), Column.words("values", "Values"), Column.words("marks", "Marks"));
  }

  @Override
  Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record) {
    return record.log().stream().filter(e -> !NOT_HERE.contains(e.kind()) && e.isPublic()).map(e -> List.of(Cell.text(trial.name()), Cell.fixed(e.elapsed() / 60, 0),
        Cell.text(e.at()), Cell.text(e.kind()), Cell.text(e.text()), Cell.text(values(results, e)), Cell.text(marks(e))));
  }

  private static String values(StudyResults results, LogData entry) {
    return entry.values().entrySet().stream().flatMap(v -> results.snapshot().variables().find(v.getKey()).stream()
        .map(variable -> variable.name() + " " + Printed.withUnit(v.getValue().get(0).amount(), variable.unit()))).collect(Collectors.joining("; "));
  }

  private static String marks(LogData entry) {
    return Stream.of(entry.about() ? "about" : "", entry.late() ? "written later" : "", entry.inferred() ? "inferred" : "").filter(m -> !m.isEmpty())
        .collect(Collectors.joining(", "));
  }
}
