package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.Locale;

/** What the integrity checks found and nobody has settled. */
public final class ChecksTable extends Spec {

  /** The table. */
  public ChecksTable() {
    super("checks", "Open Checks", "What the integrity checks found in the study as it stands.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.words("severity", "Severity"), Column.text("where", "Where"), Column.words("what", "What"), Column.words("remedy", "Remedy"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    return results.checks().stream().map(f -> List.of(Cell.text(f.severity().name().toLowerCase(Locale.ROOT)), Cell.text(f.where()), Cell.text(f.what()),
        Cell.text(f.remedy()))).toList();
  }
}
