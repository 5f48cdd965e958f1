package daubline.engine.inference.kernel;

import daubline.engine.stats.DirichletMultinomial;
import daubline.engine.stats.Gaussian;
import daubline.engine.stats.RandomStream;
import java.util.Arrays;

/**
 * Counts over classes against counts over the same classes: the Dirichlet-multinomial probability of the trial's counts,
 * given the evidence's and a prior of one half for each class, over that of the most probable counts of the same number.
 */
public final class CountsKernel implements Kernel {

  private static final double PRIOR = 0.5;
  private static final int SIMULATED = 2000;

  private final double[] alpha;
  private final int[] found;
  private final double top;
  private final double log;
  private final double p;

  /**
   * A kernel.
   *
   * @param evidence pieces of each class, at least two classes
   * @param found pieces of each class of the trial, at least one piece
   */
  public CountsKernel(int[] evidence, int[] found) {
    this.alpha = Arrays.stream(evidence).mapToDouble(n -> n + PRIOR).toArray();
    this.found = found.clone();
    this.top = DirichletMultinomial.log(DirichletMultinomial.mode(Arrays.stream(found).sum(), alpha), alpha);
    this.log = Math.min(0, DirichletMultinomial.log(found, alpha) - top);
    this.p = simulate();
  }

  /** Share of simulated counts as improbable as these or more; the simulation has a seed of its own, so it repeats. */
  private double simulate() {
    RandomStream stream = new RandomStream(RandomStream.key(1, "counts", Arrays.toString(found), Arrays.toString(alpha)));
    int as = 1;
    for (int i = 0; i < SIMULATED; i++) {
      as += DirichletMultinomial.log(draw(stream), alpha) - top <= log + 1e-9 ? 1 : 0;
    }
    return as / (SIMULATED + 1.0);
  }

  private int[] draw(RandomStream stream) {
    double[] shares = stream.dirichlet(alpha);
    int[] counts = new int[alpha.length];
    for (int i = Arrays.stream(found).sum(); i > 0; i--) {
      counts[RandomStream.pick(shares, stream.uniform())]++;
    }
    return counts;
  }

  @Override
  public double log() {
    return log;
  }

  @Override
  public double sigmas() {
    return p >= 1 ? 0 : Gaussian.deviate(p);
  }

  @Override
  public double compatibility() {
    return p;
  }

  /** Pieces are counted without uncertainty. */
  @Override
  public void logs(Draws draws, double[] into) {
    Arrays.fill(into, log);
  }

  @Override
  public void reproduce(Draws draws, double[] into) {
    RandomStream stream = new RandomStream(Double.doubleToLongBits(draws.uniforms(0)[0]));
    for (int m = 0; m < into.length; m++) {
      into[m] = Math.min(0, DirichletMultinomial.log(draw(stream), alpha) - top);
    }
  }
}
