package daubline.intake;

import daubline.base.Stage;
import daubline.base.Variable;
import daubline.base.Variables;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Families of headings: variables with the stage before them, and variables alone. */
public final class Families {

  /** The words before a variable, and the stage they mean. */
  static final Map<String, Stage> STAGES = stages();

  private Families() {
  }

  private static Map<String, Stage> stages() {
    Map<String, Stage> stages = new LinkedHashMap<>();
    stages.put("planned", Stage.PLANNED);
    stages.put("built", Stage.AS_BUILT);
    stages.put("fired", Stage.AS_FIRED);
    stages.put("found", Stage.AS_FOUND);
    return stages;
  }

  /** A variable by id or name. */
  public static Optional<Variable> variable(String text, Variables variables) {
    return variables.find(text.strip()).or(() -> variables.all().stream()
        .filter(v -> Heading.key(v.id()).equals(Heading.key(text)) || Heading.key(v.name()).equals(Heading.key(text)))
        .findFirst());
  }

  /** The stage that a heading begins with. */
  static Optional<Stage> stage(String heading) {
    int colon = heading.indexOf(':');
    String word = colon < 0 ? "" : Heading.key(heading.substring(0, colon));
    return Optional.ofNullable(STAGES.get(word.startsWith("as ") ? word.substring(3) : word));
  }

  /** The column of a heading such as {@code planned:wall_thickness}. */
  static Optional<FormColumn> staged(Heading heading, Variables variables) {
    Optional<Stage> stage = stage(heading.name());
    return stage.flatMap(s -> variable(heading.name().substring(heading.name().indexOf(':') + 1), variables)
        .map(v -> staged(s, v)));
  }

  /** The column of a variable at a stage. */
  static FormColumn staged(Stage stage, Variable variable) {
    String word = STAGES.entrySet().stream().filter(e -> e.getValue() == stage).map(Map.Entry::getKey)
        .findFirst().orElseThrow();
    return FormColumn.value(word + ":" + variable.id(), variable, stage.word() + ". " + variable.meaning());
  }
}
