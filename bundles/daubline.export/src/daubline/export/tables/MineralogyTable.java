package daubline.export.tables;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.base.Variable;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Phases and structure of slag and metal as seen by eye and microscope. */
public final class MineralogyTable extends Spec {

  private static final Set<String> ALSO = Set.of("slag_porosity", "slag_magnetism", "slag_density", "flow_morphology", "slag_surface", "charcoal_impressions");

  /** The table. */
  public MineralogyTable() {
    super("mineralogy", "Mineralogy and Metallography", "Phases and structure of slag and metal, excavated and of the trials.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.words("origin", "Origin"), Column.text("sheet", "Sheet"), Column.words("variable", "Property"), Column.text("unit", "Unit"),
        Column.words("value", "Value"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    results.snapshot().sheets().stream().map(EvidenceData::sheet).forEach(s -> add(rows, results, "excavated", s));
    results.snapshot().trials().stream().map(TrialData::found).forEach(s -> add(rows, results, "trial", s));
    return rows;
  }

  private static void add(List<List<Cell>> rows, StudyResults results, String origin, SheetData sheet) {
    for (Variable variable : results.snapshot().variables().all()) {
      List<Statement> statements = sheet.about(variable.id());
      if (!statements.isEmpty() && (ALSO.contains(variable.id()) || variable.id().startsWith("phase_") || variable.id().startsWith("metal_"))) {
        rows.add(List.of(Cell.text(origin), Cell.text(sheet.name()), Cell.text(variable.name()), Cell.text(variable.unit().symbol()),
            Values.cell(statements, variable.unit())));
      }
    }
  }
}
