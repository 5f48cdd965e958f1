package daubline.analysis;

import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One trial as the engines and tables see it.
 *
 * @param id its id
 * @param name its name as printed
 * @param series the name of its series
 * @param kind pilot, experiment, repeat or demonstration
 * @param status where it stands
 * @param repeatOf id of the trial it repeats, or empty
 * @param excluded whether a person took it out of comparison
 * @param excludedBecause the reason given
 * @param values the values by stage and variable; as found is in the remains sheet
 * @param found the remains sheet, with the trial's id; without statements when nothing was recorded
 */
public record TrialData(String id, String name, String series, TrialKind kind, TrialStatus status, String repeatOf,
    boolean excluded, String excludedBecause, Map<Stage, Map<String, List<Statement>>> values, SheetData found) {

  public TrialData {
    Objects.requireNonNull(id);
    values = Map.copyOf(values);
  }

  /** The statements about one variable at one stage. */
  public List<Statement> at(Stage stage, String variable) {
    return stage == Stage.AS_FOUND ? found.about(variable) : values.getOrDefault(stage, Map.of()).getOrDefault(variable, List.of());
  }

  /** Whether it takes part in comparison when demonstrations are left out. */
  public boolean isCompared(boolean withDemonstrations) {
    return !excluded && status.isBurnt() && (withDemonstrations || kind != TrialKind.DEMONSTRATION);
  }
}
