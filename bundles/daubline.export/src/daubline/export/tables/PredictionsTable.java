package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Amount;
import daubline.base.Quantity;
import daubline.base.Stage;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.engine.inference.Statement;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What was stated before each fire beside what came of it. */
public final class PredictionsTable extends RecordTable {

  /** The table. */
  public PredictionsTable() {
    super("predictions", "Predictions and Outcomes", "What was stated before each fire, and what was found after it.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.words("variable", "Property"), Column.text("unit", "Unit"), Column.text("stated_on", "Stated on"),
        Column.words("locked", "Locked"), Column.text("version", "Version"), Column.words("by", "By"), Column.number("predicted", "Predicted", ""), Column.number("outcome", "Outcome", ""),
        Column.number("difference", "Difference", "u"));
  }

  @Override
  Stream<List<Cell>> rows(StudyResults results, TrialData trial, TrialRecord record) {
    return record.predictions().stream().map(p -> row(results, trial, p));
  }

  private static List<Cell> row(StudyResults results, TrialData trial, TrialRecord.PredictionData p) {
    Optional<Variable> variable = results.snapshot().variables().find(p.variable());
    Unit unit = variable.map(Variable::unit).orElse(Units.canonical(Quantity.NUMBER));
    List<Statement> found = trial.at(Stage.AS_FOUND, p.variable());
    List<Statement> outcome = found.isEmpty() ? trial.at(Stage.AS_FIRED, p.variable()) : found;
    return List.of(Cell.text(trial.name()), Cell.text(variable.map(Variable::name).orElse(p.variable())), Cell.text(unit.symbol()),
        Cell.text(p.statedOn()), Cell.text(p.locked() ? "yes" : "no"), Cell.text(String.valueOf(p.version())), Cell.text(p.engine().isEmpty() ? "the team" : p.engine()),
        Cell.amount(p.statement().amount(), unit, p.statement().trail()), Values.cell(outcome, unit), difference(p.statement().amount(), Values.number(outcome)));
  }

  private static Cell difference(Amount predicted, Amount outcome) {
    double sigma = Math.hypot(Values.sigma(predicted), Values.sigma(outcome));
    return predicted.isNumber() && outcome.isNumber() && sigma > 0 ? Cell.fixed((outcome.value() - predicted.value()) / sigma, 1) : Cell.EMPTY;
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Version: 2 and above were stated after version 1 had been locked, which is when its plan was frozen or its fire began.", "Difference: outcome less prediction in combined standard uncertainties u; empty where neither states one.");
  }
}
