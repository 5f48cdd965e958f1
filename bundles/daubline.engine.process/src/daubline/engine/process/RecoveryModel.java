package daubline.engine.process;

import daubline.base.Source;
import daubline.engine.stats.RandomStream;
import java.util.List;

/**
 * Recovery of iron, bloom/(ore × Fe), from published smelts and the team's own, on the logit scale.
 *
 * <p>A smelt differs from its team's mean as much as teams differ from each other (half of the variance each; the data
 * cannot tell). The published smelts give the prior: mean logit -1.05, standard deviation 0.72, seven smelts with a
 * bloom. Own smelts update it as a normal sample with unknown mean and variance. Source of the update: A. Gelman et al.,
 * Bayesian Data Analysis, normal-inverse-χ² (from memory). Leaving one published smelt out, no physics did better.
 *
 * @param mean mean of the predictive distribution, logit
 * @param scale its scale, logit
 * @param freedom its degrees of freedom
 * @param priorWeight share of the mean that still comes from the published smelts, 1 without own smelts
 */
public record RecoveryModel(double mean, double scale, double freedom, double priorWeight) {

  /** Where it comes from. */
  public static final Source SOURCE = Source.derived("logit model of seven smelts with a bloom of practitioners' records "
      + "(D. Markewitz, overviews of experiments, 2004–2017), updated by the team's own smelts");
  /** Bloom/(ore × Fe) of the published smelts with a bloom. */
  public static final List<Double> PUBLISHED = List.of(.4348, .1023, .4463, .2647, .1455, .2660, .2673);

  private static final double PRIOR_SMELTS = 1;

  /** The prediction for the next smelt of a team with these recoveries, each between 0 and 1; may be empty. */
  public static RecoveryModel of(List<Double> own) {
    return of(PUBLISHED, own);
  }

  /**
   * The prediction from other published smelts, for leaving some of them out.
   *
   * @param smelts recoveries of published smelts with a bloom, each between 0 and 1, three at least
   * @param own the team's own
   */
  public static RecoveryModel of(List<Double> smelts, List<Double> own) {
    double[] published = logits(smelts);
    double centre = mean(published);
    double total = squares(published, centre) / (published.length - 1);
    double freedom = published.length - 1;
    // the centre of the published smelts is itself uncertain by a seventh of their variance
    double within = total / 2;
    double n0 = PRIOR_SMELTS / (1 + 2.0 / published.length);
    double[] mine = logits(own.stream().filter(r -> r > 0 && r < 1).toList());
    double n = mine.length;
    double average = n > 0 ? mean(mine) : centre;
    double posterior = (n0 * centre + n * average) / (n0 + n);
    double sum = freedom * within + squares(mine, average) + n0 * n / (n0 + n) * (average - centre) * (average - centre);
    double variance = sum / (freedom + n);
    return new RecoveryModel(posterior, Math.sqrt(variance * (1 + 1 / (n0 + n))), freedom + n, n0 / (n0 + n));
  }

  /** The middle of the prediction. */
  public double middle() {
    return logistic(mean);
  }

  /** A recovery drawn from the prediction. */
  public double draw(RandomStream random) {
    double chi = 2 * random.gamma(freedom / 2);
    return logistic(mean + scale * random.normal() / Math.sqrt(chi / freedom));
  }

  /**
   * Chance that no bloom forms, from the blast per hearth area in m/s: small above 0.5 L/min per cm², growing below.
   * Rests on one published low-blast smelt and on the heat balance of the shaft: weak.
   */
  public static double noBloom(double blast) {
    double litres = 6 * blast;
    return .05 + .95 / (1 + Math.exp((litres - .3) / .07));
  }

  private static double logistic(double x) {
    return 1 / (1 + Math.exp(-x));
  }

  private static double[] logits(List<Double> shares) {
    return shares.stream().mapToDouble(r -> Math.log(r / (1 - r))).toArray();
  }

  private static double mean(double[] x) {
    double sum = 0;
    for (double v : x) {
      sum += v;
    }
    return sum / x.length;
  }

  private static double squares(double[] x, double centre) {
    double sum = 0;
    for (double v : x) {
      sum += (v - centre) * (v - centre);
    }
    return sum;
  }
}
