package daubline.intake;

import java.util.List;

/** All forms; a test asserts that every target has one. */
final class Forms {

  private static final List<Form> ALL = List.of(new TrialsForm(), new ClaimsForm(), new ResiduesForm(), new AnalysesForm(),
      new LogForm(), new LotsForm(),
      new CitationsForm());

  private Forms() {
  }

  static List<Form> all() {
    return ALL;
  }

  static Form of(Target target) {
    return ALL.stream().filter(f -> f.target() == target).findFirst().orElseThrow();
  }
}
