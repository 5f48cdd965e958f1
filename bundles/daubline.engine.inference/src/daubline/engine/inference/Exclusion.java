package daubline.engine.inference;

import java.util.Comparator;
import java.util.List;

/**
 * The shortest list of criteria whose verdicts rule a trial out. Of many criteria some disagree by chance, so a list of k
 * counts only when k or more of all n tested would disagree as much in fewer than α/n of true reproductions (binomial tail,
 * Bonferroni over the length of the list).
 *
 * @param criteria the criteria of the list, the strongest first; empty when the trial is not ruled out
 * @param probability chance of such a list in a true reproduction, after correction, at most 1; of the best list when none
 *     rules it out; NaN when nothing was tested
 */
public record Exclusion(List<CriterionResult> criteria, double probability) {

  public Exclusion {
    criteria = List.copyOf(criteria);
  }

  /** Whether the evidence rules the trial out as a reproduction. */
  public boolean isRuledOut() {
    return !criteria.isEmpty();
  }

  /** The shortest list for one comparison; the criteria are taken as independent. */
  public static Exclusion of(Comparison comparison, double alpha) {
    List<CriterionResult> tested = comparison.criteria().stream().filter(CriterionResult::isTested)
        .sorted(Comparator.comparingDouble(CriterionResult::compatibility).thenComparing(CriterionResult::criterion)).toList();
    double best = Double.NaN;
    for (int k = 1; k <= tested.size(); k++) {
      double chance = Math.min(1, tested.size() * atLeast(k, tested.size(), tested.get(k - 1).compatibility()));
      best = Double.isNaN(best) ? chance : Math.min(best, chance);
      if (chance < alpha) {
        return new Exclusion(tested.subList(0, k), chance);
      }
    }
    return new Exclusion(List.of(), best);
  }

  /** Probability of k or more of n when each happens with probability p. */
  static double atLeast(int k, int n, double p) {
    double term = Math.pow(1 - p, n);
    if (term == 0) {
      return 1;
    }
    double below = 0;
    for (int i = 0; i < k; i++) {
      below += term;
      term *= p / (1 - p) * (n - i) / (i + 1);
    }
    // the sum of the rest is exact for small p, where one minus the rest would lose all digits
    double above = 0;
    for (int i = k; i <= n; i++) {
      above += term;
      term *= p / (1 - p) * (n - i) / (i + 1);
    }
    return Math.min(1, below > 0.5 ? above : 1 - below);
  }
}
