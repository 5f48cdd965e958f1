package daubline.engine.design;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * A combination of settings that must not be burnt.
 *
 * @param reason why, such as "would choke before the third hour"
 * @param conditions the parts that must all hold for the combination to be forbidden; empty when {@code outside} decides
 * @param outside what decides instead, such as the process engine; given the coded setting, true when it is forbidden;
 *     null when the conditions decide
 */
public record Rule(String reason, List<Condition> conditions, Predicate<double[]> outside) {

  public Rule {
    conditions = List.copyOf(conditions);
    if (conditions.isEmpty() == (outside == null)) {
      throw new IllegalArgumentException("a rule needs either conditions or a judge of its own: " + reason);
    }
  }

  /** Forbidden when all the conditions hold. */
  public static Rule never(String reason, Condition... conditions) {
    return new Rule(reason, List.of(conditions), null);
  }

  /** Forbidden when the judge, given the coded setting, says so; asked often, so it must be quick. */
  public static Rule judged(String reason, Predicate<double[]> forbids) {
    return new Rule(reason, List.of(), forbids);
  }

  /** Whether the rule forbids a coded setting. */
  public boolean forbids(List<Factor> factors, double[] setting) {
    if (outside != null) {
      return outside.test(setting);
    }
    return conditions.stream().allMatch(c -> {
      int i = Space.indexOf(factors, c.factor());
      return c.holds(factors.get(i), setting[i]);
    });
  }

  /** The rule as a sentence. */
  public String text(List<Factor> factors) {
    String what = conditions.stream().map(c -> c.text(factors.get(Space.indexOf(factors, c.factor()))))
        .collect(Collectors.joining(" and "));
    return what.isEmpty() ? "Not allowed: " + reason : "Never " + what + (reason.isEmpty() ? "" : ": " + reason);
  }
}
