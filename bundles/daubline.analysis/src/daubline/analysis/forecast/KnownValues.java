package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.model.Lot;
import daubline.model.Reading;
import daubline.model.Reconstruction;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.store.LotMoisture;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What is known of a trial before it is lit, in this order: as built, planned, the choices of its reconstruction, its lots.
 * For a trial that was fired already, values that were only measured in the fire come last and are marked as such.
 */
final class KnownValues {

  private final Variables variables;
  private final Map<String, Reading> readings = new LinkedHashMap<>();
  private final Map<String, String> words = new LinkedHashMap<>();
  private final Map<String, String> places = new LinkedHashMap<>();
  private final List<Trail> used = new ArrayList<>();
  private final Set<String> asked = new LinkedHashSet<>();
  private final int beforeTheFire;

  KnownValues(Trial trial, Variables variables, Overlay overlay) {
    this.variables = variables;
    overlay.values().values().forEach(value -> put(value, "tried"));
    List<StagedValue> staged = new ArrayList<>();
    if (trial.getBuild() != null) {
      staged.addAll(trial.getBuild().getValues());
    }
    staged.addAll(trial.getValues());
    putStage(staged, Stage.AS_BUILT);
    putStage(staged, Stage.PLANNED);
    if (reconstruction(trial) != null) {
      reconstruction(trial).getChoices()
          .forEach(choice -> put(choice, "reconstruction, " + (choice.getBasis() == null ? "no basis" : choice.getBasis().word())));
    }
    for (Lot lot : trial.getLots()) {
      lot.getValues().forEach(value -> put(value, "lot " + lot.getName()));
    }
    beforeTheFire = readings.size();
    putStage(staged, Stage.AS_FIRED);
    LoggedCharges.of(trial).forEach(total -> put(total, "run log"));
  }

  /** The reconstruction that a trial tries, its own or that of its furnace; null when there is none. */
  static Reconstruction reconstruction(Trial trial) {
    return trial.getReconstruction() != null || trial.getBuild() == null ? trial.getReconstruction() : trial.getBuild().getReconstruction();
  }

  private void putStage(List<StagedValue> values, Stage stage) {
    values.stream().filter(v -> v.getStage() == stage).forEach(v -> put(v, stage.word()));
  }

  private void put(Reading reading, String place) {
    if (LotMoisture.amount(reading).isEmpty()) {
      return;
    }
    if (reading.getVariable() != null && Readings.amount(reading).kind() == ValueKind.CATEGORY) {
      words.putIfAbsent(reading.getVariable(), Readings.amount(reading).category());
    } else if (reading.getVariable() != null && Readings.amount(reading).isEstimate() && readings.putIfAbsent(reading.getVariable(), reading) == null) {
      places.put(reading.getVariable(), place);
    }
  }

  /** A number in canonical units with where it was taken from; what is asked for is noted as used. */
  Optional<Amount> number(String variable) {
    Reading reading = readings.get(variable);
    if (reading == null) {
      return Optional.empty();
    }
    asked.add(variable);
    Variable known = variables.get(variable);
    Amount amount = LotMoisture.amount(reading).orElseThrow();
    Trail trail = Trail.entry(known.name() + ", " + places.get(variable), Printed.withUnit(amount, known.unit()),
        reading.getId() == null ? "" : reading.getId());
    if (!used.contains(trail)) {
      used.add(trail);
    }
    return Optional.of(amount);
  }

  /** Takes a number back that something better was found for. */
  void forget(String variable) {
    Reading reading = readings.get(variable);
    if (reading != null && asked.remove(variable)) {
      used.removeIf(t -> t.what().equals(variables.get(variable).name() + ", " + places.get(variable)));
    }
  }

  /** A word of a list, such as the fill of a pit. */
  Optional<String> word(String variable) {
    return Optional.ofNullable(words.get(variable));
  }

  /** Names of the variables asked for that are known only from the fire itself. */
  List<String> fromTheFire() {
    return asked.stream().filter(v -> List.copyOf(readings.keySet()).indexOf(v) >= beforeTheFire).map(v -> variables.get(v).name()).toList();
  }

  /** Everything that was asked for and known, in order. */
  List<Trail> used() {
    return List.copyOf(used);
  }
}
