package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.evidence.Difference;
import daubline.analysis.record.ReconstructionData;
import daubline.base.Variables;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;

/** In what the reconstructions that are not retired differ, two by two. */
public final class DifferencesTable extends Spec {

  /** The table. */
  public DifferencesTable() {
    super("reconstruction-differences", "Differences between Reconstructions", "In what each two reconstructions that are not retired differ; what they share is left out.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("first", "First"), Column.text("second", "Second"), Column.words("property", "Property"), Column.words("in_first", "In the first"),
        Column.words("first_basis", "It rests on"), Column.words("in_second", "In the second"), Column.words("second_basis", "It rests on there"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<ReconstructionData> all = results.snapshot().record().hypotheses().stream().filter(r -> !r.retired()).toList();
    Variables variables = results.snapshot().variables();
    List<List<Cell>> rows = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      for (int j = i + 1; j < all.size(); j++) {
        ReconstructionData a = all.get(i);
        ReconstructionData b = all.get(j);
        Difference.between(a, b, variables).forEach(d -> rows.add(List.of(Cell.text(a.name()), Cell.text(b.name()), Cell.text(d.property()),
            Cell.text(d.value(true, variables)), Cell.text(d.basis(true)), Cell.text(d.value(false, variables)), Cell.text(d.basis(false)))));
      }
    }
    return rows;
  }
}
