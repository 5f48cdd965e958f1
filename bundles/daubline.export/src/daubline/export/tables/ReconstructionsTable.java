package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.evidence.Difference;
import daubline.analysis.record.ReconstructionData;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;

/** What each reconstruction chose, and what each choice rests on. */
public final class ReconstructionsTable extends Spec {

  /** The table. */
  public ReconstructionsTable() {
    super("reconstructions", "Reconstructions", "What was chosen for each reconstruction, what the choice rests on, and why.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("reconstruction", "Reconstruction"), Column.words("property", "Property"), Column.words("value", "Value"),
        Column.words("basis", "Basis"), Column.text("because", "Because"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    return results.snapshot().record().hypotheses().stream().flatMap(r -> r.choices().stream().map(c -> row(results, r, c))).toList();
  }

  private static List<Cell> row(StudyResults results, ReconstructionData r, ReconstructionData.Chosen c) {
    return List.of(Cell.text(r.name()), Cell.text(results.snapshot().variables().find(c.variable()).map(v -> v.name()).orElse(c.variable())),
        Cell.text(Difference.printed(c, results.snapshot().variables())), Cell.text(c.basis() == null ? "" : c.basis().word()), Cell.text(c.because()));
  }
}
