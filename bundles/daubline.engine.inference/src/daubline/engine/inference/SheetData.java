package daubline.engine.inference;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * What one sheet says, the same form for excavated evidence and for the remains of a trial.
 *
 * @param id id of the sheet
 * @param name its name as printed
 * @param samplingFraction share of the feature that was excavated or recovered, 0 to 1, NaN when not stated
 * @param statements the statements by variable id, in the order of the sheet; contradictory ones side by side
 * @param residues masses by residue class
 * @param analyses chemical analyses
 * @param features the sheets that a group stands for; empty for a sheet of its own
 */
public record SheetData(String id, String name, double samplingFraction, Map<String, List<Statement>> statements,
    List<ClassMass> residues, List<AnalysisData> analyses, List<SheetData> features) {

  /** A sheet of its own. */
  public SheetData(String id, String name, double samplingFraction, Map<String, List<Statement>> statements, List<ClassMass> residues,
      List<AnalysisData> analyses) {
    this(id, name, samplingFraction, statements, residues, analyses, List.of());
  }

  public SheetData {
    Objects.requireNonNull(id);
    Objects.requireNonNull(name);
    statements = Map.copyOf(statements);
    residues = List.copyOf(residues);
    analyses = List.copyOf(analyses);
    features = List.copyOf(features);
  }

  /** The statements about one variable; empty when the sheet says nothing about it. */
  public List<Statement> about(String variable) {
    return statements.getOrDefault(variable, List.of());
  }
}
