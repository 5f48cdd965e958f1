package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.record.AnalysisRecord;
import daubline.analysis.record.StudyRecord;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.stream.Stream;

/** How each analysis was made; without it nobody can judge the numbers. */
public final class MethodsTable extends Spec {

  /** The table. */
  public MethodsTable() {
    super("analysis-methods", "Methods of Analysis", "Method, instrument, standards and areas of each analysis.");
  }

  /** All analyses of a study: excavated and of lots first, then of the trials. */
  static Stream<AnalysisRecord> analyses(StudyResults results) {
    StudyRecord record = results.snapshot().record();
    return Stream.concat(record.evidence().stream(), record.trials().stream().flatMap(t -> t.analyses().stream()));
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("of", "Of"), Column.text("analysis", "Analysis"), Column.text("sample", "Sample"), Column.text("replicate", "Replicate of"), Column.words("material", "Material"),
        Column.words("iron_basis", "Iron"), Column.text("method", "Method"), Column.text("instrument", "Instrument"), Column.number("areas", "Areas", ""),
        Column.text("standards", "Standards"), Column.text("laboratory", "Laboratory"), Column.text("date", "Date"), Column.words("converted", "Converted on request"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    return analyses(results).map(a -> List.of(Cell.text(a.owner()), Cell.text(a.name()), Cell.text(a.sample()), Cell.text(a.replicate()), Cell.text(a.data().material().word()),
        Cell.text(a.data().ironBasis().word()), Cell.text(a.method()), Cell.text(a.instrument()), a.areas() < 0 ? Cell.EMPTY : Cell.fixed(a.areas(), 0),
        Cell.text(a.standards()), Cell.text(a.laboratory()), Cell.text(a.on()), Cell.text(a.converted()))).toList();
  }
}
