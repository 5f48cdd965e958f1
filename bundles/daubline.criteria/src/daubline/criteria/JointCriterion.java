package daubline.criteria;

import daubline.base.Trail;
import daubline.base.Variables;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Explanation;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.kernel.JointKernel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A criterion on several variables that are parts of one observation; parts that cannot be compared are left out. */
abstract class JointCriterion extends CardCriterion {

  JointCriterion(Card card, List<String> variables, List<Setting> settings) {
    super(card, variables, settings);
  }

  /** Compares one part. */
  abstract Assessment part(String variable, SheetData evidence, SheetData found, SettingValues settings);

  @Override
  public final Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    List<Part> parts = inputs().stream().map(v -> new Part(v, part(v, evidence, found, settings))).toList();
    List<Part> tested = parts.stream().filter(p -> p.assessment() instanceof Assessment.Tested).toList();
    if (!tested.isEmpty()) {
      return Assessment.tested(JointKernel.of(tested.stream().map(p -> ((Assessment.Tested) p.assessment()).kernel()).toList()),
          () -> explain(tested, tested.size() + " of " + parts.size() + " parts compared: "));
    }
    boolean recoverable = parts.stream().anyMatch(p -> ((Assessment.NotTested) p.assessment()).recoverable());
    return recoverable ? Assessment.notTested(() -> explain(parts, "no part can be compared: "))
        : Assessment.notRecoverable(() -> explain(parts, "no part can be compared: "));
  }

  private static Explanation explain(List<Part> parts, String start) {
    List<String> reasons = new ArrayList<>();
    List<String> evidence = new ArrayList<>();
    List<String> found = new ArrayList<>();
    List<Trail> trails = new ArrayList<>();
    for (Part part : parts) {
      Explanation words = part.assessment().explain();
      reasons.add(part.name() + ": " + words.reason());
      evidence.add(part.name() + " " + words.evidence());
      found.add(part.name() + " " + words.found());
      trails.add(new Trail(part.name(), "", "", List.of(words.trail())));
    }
    return new Explanation(start + reasons.stream().distinct().collect(Collectors.joining("; ")), String.join(", ", evidence),
        String.join(", ", found), new Trail("Parts", "", "", trails));
  }

  private record Part(String variable, Assessment assessment) {
    String name() {
      return Variables.standard().find(variable).map(v -> v.name()).orElse(variable);
    }
  }
}
