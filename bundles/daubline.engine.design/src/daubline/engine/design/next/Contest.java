package daubline.engine.design.next;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Reconstructions before one excavated value: each has left that value in some trials of its own, and the excavated furnace is taken as
 * one more of whichever holds. All scatter alike, normally, about a middle of their own of which nothing else is known. What one more
 * trial after one of them would teach is the expected information about which holds (D. V. Lindley 1956, Annals of Mathematical
 * Statistics 27, 986–1005): it has to be weighed over every outcome that may come, and none is certain to separate.
 *
 * @param evidence the excavated value
 * @param doubt its own standard deviation, zero or more
 * @param scatter the standard deviation between trials of one reconstruction, greater than zero
 * @param claimants the reconstructions, two or more
 */
public record Contest(double evidence, double doubt, double scatter, List<Claimant> claimants) {

  private static final int POINTS = 200;
  private static final double WIDE = 6;
  private static final double TENTH = 0.1;

  /**
   * A reconstruction with what its trials left.
   *
   * @param name its name
   * @param trials how many trials
   * @param mean the mean of what they left
   */
  public record Claimant(String name, int trials, double mean) {
    Claimant with(double outcome) {
      return new Claimant(name, trials + 1, (trials * mean + outcome) / (trials + 1));
    }
  }

  /**
   * What one more trial of a reconstruction would teach.
   *
   * @param bits the expected information, 0 to the logarithm to base 2 of the number of reconstructions
   * @param low an outcome that one in ten falls below
   * @param high an outcome that one in ten exceeds
   * @param afterLow belief in each after the low outcome, summing to 1
   * @param afterHigh belief in each after the high one
   * @param overturns the chance that another than now is believed most afterwards
   */
  public record Lesson(double bits, double low, double high, double[] afterLow, double[] afterHigh, double overturns) {
  }

  public Contest {
    claimants = List.copyOf(claimants);
    if (!(scatter > 0) || !(doubt >= 0) || !Double.isFinite(evidence) || claimants.size() < 2 || claimants.stream().anyMatch(c -> c.trials < 1)) {
      throw new IllegalArgumentException("a contest needs an excavated value, a scatter above zero and two reconstructions with a trial each");
    }
  }

  /** Belief in each, summing to 1, from equal belief, by how probable it makes the excavated value. */
  public double[] beliefs() {
    double[] logs = claimants.stream().mapToDouble(c -> logDensity(evidence, c.mean, squared(scatter) * (1 + 1.0 / c.trials) + squared(doubt))).toArray();
    double most = Arrays.stream(logs).max().orElseThrow();
    double total = Arrays.stream(logs).map(l -> Math.exp(l - most)).sum();
    return Arrays.stream(logs).map(l -> Math.exp(l - most) / total).toArray();
  }

  /** What one more trial after one of them would teach. */
  public Lesson lesson(int which) {
    double[] now = beliefs();
    Claimant tried = claimants.get(which);
    double wide = WIDE * scatter * Math.sqrt(1 + 1.0 / tried.trials);
    double step = 2 * wide / POINTS;
    double[] outcome = IntStream.rangeClosed(0, POINTS).mapToDouble(i -> tried.mean - wide + i * step).toArray();
    double[] weight = Arrays.stream(outcome).map(y -> density(y, which, now) * step).toArray();
    double total = Arrays.stream(weight).sum();
    double bits = 0;
    double overturns = 0;
    for (int i = 0; i <= POINTS; i++) {
      double[] after = after(which, outcome[i]);
      bits += weight[i] / total * divergence(after, now);
      overturns += top(after) == top(now) ? 0 : weight[i] / total;
    }
    double low = quantile(outcome, weight, TENTH * total);
    double high = quantile(outcome, weight, (1 - TENTH) * total);
    return new Lesson(bits, low, high, after(which, low), after(which, high), overturns);
  }

  /** How probable an outcome is: if the reconstruction tried holds, the excavated value says something of it too. */
  private double density(double y, int which, double[] now) {
    Claimant c = claimants.get(which);
    double trial = squared(scatter);
    double middle = trial / c.trials;
    double pull = middle / (middle + trial + squared(doubt));
    double holds = Math.exp(logDensity(y, c.mean + pull * (evidence - c.mean), middle * (1 - pull) + trial));
    return now[which] * holds + (1 - now[which]) * Math.exp(logDensity(y, c.mean, middle + trial));
  }

  private double[] after(int which, double outcome) {
    List<Claimant> then = IntStream.range(0, claimants.size()).mapToObj(i -> i == which ? claimants.get(i).with(outcome) : claimants.get(i)).toList();
    return new Contest(evidence, doubt, scatter, then).beliefs();
  }

  private static double divergence(double[] after, double[] now) {
    return IntStream.range(0, now.length).filter(i -> after[i] > 0 && now[i] > 0).mapToDouble(i -> after[i] * Math.log(after[i] / now[i])).sum() / Math.log(2);
  }

  private static double quantile(double[] outcome, double[] weight, double share) {
    double sum = 0;
    int i = 0;
    while (i < weight.length - 1 && sum + weight[i] < share) {
      sum += weight[i++];
    }
    return outcome[i];
  }

  private static int top(double[] beliefs) {
    return IntStream.range(0, beliefs.length).reduce((a, b) -> beliefs[b] > beliefs[a] ? b : a).orElseThrow();
  }

  private static double logDensity(double x, double mean, double variance) {
    return -0.5 * (Math.log(2 * Math.PI * variance) + squared(x - mean) / variance);
  }

  private static double squared(double x) {
    return x * x;
  }
}
