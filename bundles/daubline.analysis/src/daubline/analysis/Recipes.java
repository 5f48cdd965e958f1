package daubline.analysis;

import daubline.base.Amount;
import daubline.base.Stage;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.engine.inference.Recipe;
import daubline.engine.inference.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What was chosen for each trial: every variable that can be planned, as built, or as planned, or as fired. */
final class Recipes {

  private static final List<Stage> ORDER = List.of(Stage.AS_BUILT, Stage.PLANNED, Stage.AS_FIRED);

  private Recipes() {
  }

  static List<Recipe> of(StudySnapshot snapshot) {
    List<Variable> chosen = snapshot.variables().all().stream()
        .filter(v -> v.isAt(Variable.Place.PLANNED) && v.type() != ValueType.TEXT).toList();
    return snapshot.trials().stream().map(t -> recipe(t, chosen)).toList();
  }

  private static Recipe recipe(TrialData trial, List<Variable> chosen) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    Map<String, String> words = new LinkedHashMap<>();
    for (Variable variable : chosen) {
      stated(trial, variable.id()).ifPresent(amount -> {
        if (amount.isNumber()) {
          numbers.put(variable.id(), amount.value());
        } else {
          words.put(variable.id(), amount.category().isEmpty() ? amount.kind().word() : amount.category());
        }
      });
    }
    return new Recipe(trial.id(), numbers, words);
  }

  /** The picked statement of the first stage that says something, or its first. */
  private static Optional<Amount> stated(TrialData trial, String variable) {
    for (Stage stage : ORDER) {
      List<Statement> said = trial.at(stage, variable).stream().filter(s -> !s.amount().isMissing()).toList();
      if (!said.isEmpty()) {
        return Stream.concat(said.stream().filter(Statement::picked), said.stream()).findFirst().map(Statement::amount);
      }
    }
    return Optional.empty();
  }
}
