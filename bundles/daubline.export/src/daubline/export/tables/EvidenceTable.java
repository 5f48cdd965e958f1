package daubline.export.tables;

import daubline.analysis.EvidenceData;
import daubline.analysis.Recovered;
import daubline.analysis.StudyResults;
import daubline.base.RecoveredTotal;
import daubline.base.Trail;
import daubline.base.Variable;
import daubline.engine.inference.Statement;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The claims of every evidence sheet with their citations, contradictory ones one under the other. */
public final class EvidenceTable extends Spec {

  /** The table. */
  public EvidenceTable() {
    super("evidence", "Evidence Sheets", "What is known of each excavated furnace, claim by claim as published.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("site", "Site"), Column.text("period", "Period"), Column.text("sheet", "Evidence sheet"), Column.words("variable", "Property"),
        Column.text("unit", "Unit"), Column.number("value", "Value", ""), Column.words("kind", "Kind"), Column.number("preserved_to", "Preserved to", ""),
        Column.number("recovered", "Share recovered", "%"), Column.words("picked", "Picked"), Column.text("origin", "Source"),
        Column.words("reads", "Reads"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (EvidenceData evidence : results.snapshot().sheets()) {
      for (Variable variable : results.snapshot().variables().all()) {
        evidence.sheet().about(variable.id()).forEach(statement -> rows.add(row(evidence, variable, statement)));
      }
    }
    return rows;
  }

  private static List<Cell> row(EvidenceData evidence, Variable variable, Statement s) {
    return List.of(Cell.text(evidence.site()), Cell.text(evidence.period()), Cell.text(evidence.sheet().name()), Cell.text(variable.name()),
        Cell.text(variable.unit().symbol()), Cell.amount(s.amount(), variable.unit(), s.trail()), Cell.text(s.amount().kind().word()),
        optional(variable.unit().fromCanonical(s.preservationLimit())), optional(total(variable) ? Recovered.of(evidence.sheet(), s, false).share() * 100 : s.samplingFraction() * 100),
        Cell.text(s.picked() ? "yes" : ""), Cell.text(origin(s.trail())), Cell.text(total(variable) && s.amount().isNumber() ? Recovered.of(evidence.sheet(), s, false).text() : ""));
  }

  /** Whether a property is a total of what was recovered, of which there may have been more. */
  private static boolean total(Variable variable) {
    return variable.id().equals(RecoveredTotal.VARIABLE);
  }

  private static Cell optional(double value) {
    return Double.isNaN(value) ? Cell.EMPTY : Cell.number(value);
  }

  private static String origin(Trail trail) {
    return trail.from().stream().filter(t -> t.what().equals("citation")).map(Trail::value).collect(Collectors.joining("; "));
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Claims that contradict each other stand one below the other; a picked one is used where one is needed.",
        "Reads: a total of residue is at least what was recovered where only a share was, where that share is not stated, or where it was read with low confidence.");
  }
}
