package daubline.engine.design.learn;

import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Strata;
import daubline.engine.design.judge.DesignReview;
import daubline.engine.stats.Cholesky;
import daubline.engine.stats.RandomStream;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * Whether intervals hold what they promise: campaigns of known effects are burnt in the computer and judged as real ones.
 *
 * @param campaigns how many
 * @param coverage for each effect the share of intervals that hold the truth
 * @param alarms for each effect the share of campaigns in which it is called different from zero; with true effects of zero
 *     this is the rate of false alarms
 * @param permutationAlarms the same by permutation at 1 − confidence
 * @param names the effects
 */
public record Calibration(int campaigns, double[] coverage, double[] alarms, double[] permutationAlarms, List<String> names) {

  private record Outcome(boolean[] held, boolean[] alarm, boolean[] permuted, List<String> names) {
  }

  /**
   * Simulates.
   *
   * @param coefficients the true coefficients, one for each column of the model
   * @param strata the true ratio of variances; the variance between trials is one
   * @param confidence of the intervals
   */
  public static Calibration run(Design design, Model model, double[] coefficients, Strata strata, double confidence, int campaigns,
      long seed, Progress progress) {
    Cholesky covariance = Cholesky.of(strata.covariance(design));
    long key = RandomStream.key(seed, "calibration");
    AtomicInteger done = new AtomicInteger();
    List<Outcome> outcomes = IntStream.range(0, campaigns).parallel().mapToObj(c -> {
      progress.check();
      double[] y = covariance.times(new RandomStream(RandomStream.key(key, c)).normals(design.size()));
      for (int i = 0; i < y.length; i++) {
        y[i] += daubline.engine.stats.Matrices.dot(model.row(design.settings().get(i)), coefficients);
      }
      Outcome outcome = judge(design, model, coefficients, y, confidence, seed);
      progress.done(done.incrementAndGet() / (double) campaigns);
      return outcome;
    }).toList();
    List<String> names = outcomes.get(0).names;
    int k = names.size();
    return new Calibration(campaigns, share(outcomes.stream().map(Outcome::held).toList(), k),
        share(outcomes.stream().map(Outcome::alarm).toList(), k), share(outcomes.stream().map(Outcome::permuted).toList(), k), names);
  }

  private static Outcome judge(Design design, Model model, double[] coefficients, double[] y, double confidence, long seed) {
    EffectsReport report = EffectsReport.of(new EffectsRequest(design, model, y, "outcome", "", confidence, seed));
    int k = report.effects().size();
    boolean[] held = new boolean[k];
    boolean[] alarm = new boolean[k];
    boolean[] permuted = new boolean[k];
    for (int e = 0; e < k; e++) {
      Effect effect = report.effects().get(e);
      int column = IntStream.range(0, model.size()).filter(c -> model.name(c).equals(effect.name())).findFirst().orElseThrow();
      double truth = DesignReview.span(model, column) * coefficients[column];
      held[e] = effect.low() <= truth && truth <= effect.high();
      alarm[e] = effect.p() < 1 - confidence;
      // a share of exactly 1 − confidence counts, whatever its last digit
      permuted[e] = effect.permutation().p() <= 1 - confidence + 1e-9;
    }
    return new Outcome(held, alarm, permuted, report.effects().stream().map(Effect::name).toList());
  }

  private static double[] share(List<boolean[]> outcomes, int k) {
    return IntStream.range(0, k).mapToDouble(e -> outcomes.stream().filter(o -> o[e]).count() / (double) outcomes.size()).toArray();
  }
}
