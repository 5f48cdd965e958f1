package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.base.Amount;
import daubline.base.Deviation;
import daubline.base.Stage;
import daubline.base.Variable;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Values of trials by stage: planned, as built, as fired, as found, and how far the build is from the plan. */
public final class StagesTable extends Spec {

  private final List<String> groups;
  private final List<Stage> stages;

  private StagesTable(String id, String title, String caption, List<String> groups, List<Stage> stages) {
    super(id, title, caption);
    this.groups = groups;
    this.stages = stages;
  }

  /** The dimensions of the furnaces. */
  public static StagesTable dimensions() {
    return new StagesTable("dimensions", "Furnace Dimensions", "Dimensions of each furnace as planned, as built, as fired and as found after the fire.",
        List.of("Furnace", "Air inlet"), List.of(Stage.values()));
  }

  /** The conditions of the trials. */
  public static StagesTable conditions() {
    return new StagesTable("conditions", "Conditions of the Trials", "What each trial was planned and fired with.",
        List.of("Clay and lining", "Air", "Ore", "Fuel", "Additions", "Process", "Day and people"), List.of(Stage.PLANNED, Stage.AS_BUILT, Stage.AS_FIRED));
  }

  @Override
  List<Column> columns(StudyResults results) {
    List<Column> columns = new ArrayList<>(List.of(Column.text("trial", "Trial"), Column.words("variable", "Property"), Column.text("unit", "Unit")));
    for (Stage stage : stages) {
      String word = stage.word();
      columns.add(Column.number(stage.name().toLowerCase(Locale.ROOT), Character.toUpperCase(word.charAt(0)) + word.substring(1), ""));
    }
    columns.add(Column.number("deviation", "Deviation from plan", ""));
    return columns;
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (TrialData trial : results.snapshot().trials()) {
      for (Variable variable : results.snapshot().variables().all()) {
        if (groups.contains(variable.group()) && stages.stream().anyMatch(stage -> !trial.at(stage, variable.id()).isEmpty())) {
          rows.add(row(trial, variable));
        }
      }
    }
    return rows;
  }

  private List<Cell> row(TrialData trial, Variable variable) {
    List<Cell> row = new ArrayList<>(List.of(Cell.text(trial.name()), Cell.text(variable.name()), Cell.text(variable.unit().symbol())));
    stages.forEach(stage -> row.add(Values.cell(trial.at(stage, variable.id()), variable.unit())));
    row.add(deviation(trial, variable));
    return row;
  }

  /** As built, or where it is nothing to build as fired, less planned. */
  private static Cell deviation(TrialData trial, Variable variable) {
    Amount planned = Values.number(trial.at(Stage.PLANNED, variable.id()));
    Amount built = Values.number(trial.at(Stage.AS_BUILT, variable.id()));
    Amount done = built.isNumber() ? built : Values.number(trial.at(Stage.AS_FIRED, variable.id()));
    return Deviation.of(planned, done).map(d -> Cell.number(variable.unit().differenceFromCanonical(d.value()))).orElse(Cell.EMPTY);
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Several values in one cell contradict each other and nobody has picked one.",
        "Deviation: as built, otherwise as fired, less planned.");
  }
}
