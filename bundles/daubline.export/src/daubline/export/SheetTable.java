package daubline.export;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudyResults;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Variable;
import daubline.engine.inference.Statement;
import java.util.ArrayList;
import java.util.List;

/** The claims of every evidence sheet with their citations, contradictory ones one under the other. */
final class SheetTable implements TableSpec {

  @Override
  public String id() {
    return "evidence";
  }

  @Override
  public String title() {
    return "Evidence Sheets";
  }

  @Override
  public Table build(StudyResults results) {
    List<Column> columns = List.of(Column.text("site", "Site"), Column.text("sheet", "Evidence sheet"), Column.text("variable", "Property"),
        Column.text("value", "Value"), Column.text("kind", "Kind"), Column.text("origin", "Where from"));
    List<List<Cell>> rows = new ArrayList<>();
    for (EvidenceData evidence : results.snapshot().sheets()) {
      for (Variable variable : results.snapshot().variables().all()) {
        evidence.sheet().about(variable.id()).forEach(statement -> rows.add(row(evidence, variable, statement)));
      }
    }
    return new Table(id(), title(), "What is known of each excavated furnace, claim by claim as published.", columns, rows, List.of());
  }

  private static List<Cell> row(EvidenceData evidence, Variable variable, Statement statement) {
    return List.of(Cell.text(evidence.site()), Cell.text(evidence.sheet().name()), Cell.text(variable.name()),
        Cell.text(Printed.withUnit(statement.amount(), variable.unit())).from(statement.trail()), Cell.text(statement.amount().kind().word()),
        Cell.text(origin(statement.trail())));
  }

  private static String origin(Trail trail) {
    return trail.from().stream().filter(t -> t.what().equals("citation") || t.what().endsWith("by")).map(Trail::value)
        .reduce((a, b) -> a + "; " + b).orElse("");
  }
}
