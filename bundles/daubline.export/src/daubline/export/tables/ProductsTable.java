package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.PieceData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The metal of each trial, piece by piece. */
public final class ProductsTable extends RecordTable {

  private static final List<String> MASSES = List.of("bloom_mass", "bloom_mass_compacted", "bloom_fragments_mass", "billet_mass", "bar_mass");

  /** The table. */
  public ProductsTable() {
    super("products", "Products", "Metal of each trial, each piece below the piece that it was parted from.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.number("level", "Level", ""), Column.text("piece", "Piece"), Column.words("stage", "Stage"),
        Column.number("mass", "Mass", "kg"), Column.number("density", "Density", "g/cm³"), Column.words("properties", "Other properties"),
        Column.text("note", "Note"));
  }

  @Override
  Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record) {
    return record.pieces().stream().map(piece -> List.of(Cell.text(trial.name()), Cell.fixed(piece.depth(), 0), Cell.text(piece.name()),
        Cell.text(piece.stage()), mass(piece), Values.cell(piece.values().getOrDefault("bloom_density", List.of()),
            Units.find(Quantity.DENSITY, "g/cm³").orElseThrow()), Cell.text(others(results, piece)), Cell.text(piece.note())));
  }

  private static Cell mass(PieceData piece) {
    return MASSES.stream().filter(piece.values()::containsKey).findFirst()
        .map(variable -> Values.cell(piece.values().get(variable), Units.canonical(Quantity.MASS))).orElse(Cell.missing(ValueKind.NOT_WEIGHED));
  }

  private static String others(StudyResults results, PieceData piece) {
    Set<String> shown = Set.of("bloom_density");
    return piece.values().keySet().stream().filter(v -> !MASSES.contains(v) && !shown.contains(v))
        .flatMap(v -> results.snapshot().variables().find(v).stream().map(variable -> text(piece, variable))).collect(Collectors.joining("; "));
  }

  private static String text(PieceData piece, Variable variable) {
    return variable.name() + " " + Printed.withUnit(piece.values().get(variable.id()).get(0).amount(), variable.unit());
  }
}
