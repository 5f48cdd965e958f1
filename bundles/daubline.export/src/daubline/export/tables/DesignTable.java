package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.analysis.record.SeriesData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Quantity;
import daubline.base.Stage;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The design of each series: factors, levels, what each trial was given, and the seed of the order. */
public final class DesignTable extends Spec {

  /** The table. */
  public DesignTable() {
    super("design", "Design and Order", "Factors of each series with their levels, and what each trial was planned and fired with, in the order of firing.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("series", "Series"), Column.text("seed", "Seed of the order"), Column.text("trial", "Trial"), Column.text("date", "Date"),
        Column.words("factor", "Factor"), Column.text("unit", "Unit"), Column.text("levels", "Levels"), Column.words("hard", "Hard to change"),
        Column.number("planned", "Planned", ""), Column.number("done", "As built or fired", ""));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (SeriesData series : results.snapshot().record().series()) {
      for (String id : series.trials()) {
        results.snapshot().trial(id).ifPresent(trial -> series.factors().forEach(factor -> rows.add(row(results, series, trial, factor))));
      }
    }
    return rows;
  }

  private static List<Cell> row(StudyResults results, SeriesData series, TrialData trial, SeriesData.FactorData factor) {
    Optional<Variable> variable = results.snapshot().variables().find(factor.variable());
    Unit unit = variable.map(Variable::unit).orElse(Units.canonical(Quantity.NUMBER));
    Stage done = trial.at(Stage.AS_FIRED, factor.variable()).isEmpty() ? Stage.AS_BUILT : Stage.AS_FIRED;
    return List.of(Cell.text(series.name()), Cell.text(series.seed()), Cell.text(trial.name()),
        Cell.text(results.snapshot().record().trial(trial.id()).map(TrialRecord::on).orElse("")),
        Cell.text(variable.map(Variable::name).orElse(factor.variable())), Cell.text(unit.symbol()), Cell.text(factor.levels()),
        Cell.text(factor.hardToChange() ? "yes" : "no"), Values.cell(trial.at(Stage.PLANNED, factor.variable()), unit),
        Values.cell(trial.at(done, factor.variable()), unit));
  }
}
