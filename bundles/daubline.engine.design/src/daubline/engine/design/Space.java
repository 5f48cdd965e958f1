package daubline.engine.design;

import daubline.base.Finding;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.List;

/**
 * The settings that may be burnt: factors, and rules for what must not be combined.
 *
 * @param factors at least one, ids all different
 * @param rules the forbidden combinations
 */
public record Space(List<Factor> factors, List<Rule> rules) {

  private static final int DRAWS = 4096;
  private static final int MOST_CANDIDATES = 20_000;

  public Space {
    factors = List.copyOf(factors);
    rules = List.copyOf(rules);
    if (factors.isEmpty()) {
      throw new IllegalArgumentException("a design needs at least one factor");
    }
    if (factors.stream().map(Factor::id).distinct().count() < factors.size()) {
      throw new IllegalArgumentException("two factors have the same id: " + factors.stream().map(Factor::id).toList());
    }
    for (Rule rule : rules) {
      for (Condition condition : rule.conditions()) {
        indexOf(factors, condition.factor());
      }
    }
  }

  /** A space without rules. */
  public static Space of(Factor... factors) {
    return new Space(List.of(factors), List.of());
  }

  static int indexOf(List<Factor> factors, String id) {
    for (int i = 0; i < factors.size(); i++) {
      if (factors.get(i).id().equals(id)) {
        return i;
      }
    }
    throw new IllegalArgumentException("a rule names the factor “" + id + "”, which is not among the factors");
  }

  /** Whether a coded setting may be burnt. */
  public boolean allows(double[] setting) {
    for (Rule rule : rules) {
      if (rule.forbids(factors, setting)) {
        return false;
      }
    }
    return true;
  }

  /** A coded setting drawn evenly, without regard to the rules. */
  public double[] draw(RandomStream random) {
    double[] setting = new double[factors.size()];
    for (int j = 0; j < setting.length; j++) {
      double[] codes = factors.get(j).codes();
      setting[j] = codes.length > 0 ? codes[random.below(codes.length)] : 2 * random.uniform() - 1;
    }
    return setting;
  }

  /**
   * Allowed settings that fill the region, over which predictions are averaged: every combination of the levels when
   * they are few, with eleven even steps for a factor without levels; 4096 drawn ones otherwise.
   */
  public List<double[]> region() {
    List<double[]> all = grid(11, 3000);
    if (!all.isEmpty()) {
      return all.stream().filter(this::allows).toList();
    }
    RandomStream random = new RandomStream(RandomStream.key(0, "region"));
    List<double[]> drawn = new ArrayList<>();
    for (int tries = 0; tries < 20 * DRAWS && drawn.size() < DRAWS; tries++) {
      double[] setting = draw(random);
      if (allows(setting)) {
        drawn.add(setting);
      }
    }
    return drawn;
  }

  /** Allowed combinations of levels, with so many even steps for factors without levels. Empty when far too many. */
  public List<double[]> candidates(int steps) {
    return grid(steps, MOST_CANDIDATES).stream().filter(this::allows).toList();
  }

  private List<double[]> grid(int steps, int most) {
    double size = 1;
    for (Factor f : factors) {
      size *= f.codes().length > 0 ? f.codes().length : steps;
    }
    List<double[]> all = new ArrayList<>();
    if (size <= most) {
      fill(all, new double[factors.size()], 0, steps);
    }
    return all;
  }

  private void fill(List<double[]> all, double[] setting, int j, int steps) {
    if (j == setting.length) {
      all.add(setting.clone());
      return;
    }
    for (double code : steps(factors.get(j), steps)) {
      setting[j] = code;
      fill(all, setting, j + 1, steps);
    }
  }

  /** The codes of a factor, or so many even steps when it has no levels. */
  public static double[] steps(Factor factor, int steps) {
    double[] codes = factor.codes();
    if (codes.length > 0) {
      return codes;
    }
    double[] even = new double[steps];
    for (int i = 0; i < steps; i++) {
      even[i] = steps == 1 ? 0 : -1 + 2.0 * i / (steps - 1);
    }
    return even;
  }

  /** What is wrong with the rules: a rule that forbids everything, or together too much. */
  public List<Finding> findings() {
    List<Finding> found = new ArrayList<>();
    List<double[]> tried = grid(5, MOST_CANDIDATES);
    if (!tried.isEmpty() && tried.stream().noneMatch(this::allows)) {
      found.add(Finding.error("design.nothing-allowed", "the rules of the series", "the rules together forbid every "
          + "combination of settings", "loosen one of: " + rules.stream().map(r -> r.text(factors)).toList()));
    }
    return found;
  }
}
