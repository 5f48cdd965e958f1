package daubline.criteria;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.inference.Pool;
import daubline.engine.inference.kernel.CompositionKernel;
import daubline.engine.inference.kernel.Draws;
import daubline.engine.inference.kernel.IntervalKernel;
import daubline.engine.inference.kernel.Kernel;
import daubline.engine.inference.kernel.SharesKernel;
import daubline.engine.inference.kernel.WordKernel;
import daubline.engine.stats.RandomStream;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What must hold for every evidence and every trial, over seeded cases. Source: the definitions in the Javadoc. */
class AxiomsTest {

  private static final List<String> PARTS = List.of("a", "b", "c", "d", "e", "f", "g", "h");
  private static final int CASES = 20_000;
  private static final double INF = Double.POSITIVE_INFINITY;

  private static RandomStream random(String name) {
    return new RandomStream(RandomStream.key(99, name));
  }

  private record Evidence(double low, double high, double scale) {
    static Evidence draw(RandomStream r) {
      double low = 10 * r.normal();
      double width = r.below(4) == 0 ? 0 : 5 * r.uniform();
      int kind = r.below(4);
      return new Evidence(kind == 1 ? -INF : low, kind == 2 ? INF : kind == 1 ? low : low + width, 0.05 + 3 * r.uniform());
    }

    IntervalKernel at(double x, double sigma) {
      return new IntervalKernel(low, high, scale, x, sigma, 0);
    }

    double top() {
      return Double.isInfinite(high) ? 1e9 : Double.isInfinite(low) ? -1e9 : (low + high) / 2;
    }
  }

  @Test
  void numbersAreBoundedAndMonotone() {
    RandomStream r = random("monotone");
    for (int i = 0; i < CASES; i++) {
      Evidence e = Evidence.draw(r);
      double x = 20 * r.normal();
      double nearer = x + r.uniform() * (Math.max(-50, Math.min(50, e.top())) - x);
      double far = e.at(x, 0).log();
      double near = e.at(nearer, 0).log();
      assertTrue(far <= 0 && near <= 0);
      assertTrue(near >= far - 1e-9, () -> e + " at " + x + " and " + nearer);
      assertEquals(0, e.at(e.top(), 0).log(), 1e-9);
    }
  }

  @Test
  void unitsChangeNothing() {
    RandomStream r = random("units");
    for (int i = 0; i < CASES; i++) {
      Evidence e = Evidence.draw(r);
      double x = 20 * r.normal();
      double sigma = r.uniform();
      double f = Math.exp(3 * r.normal());
      Kernel a = e.at(x, sigma);
      Kernel b = new IntervalKernel(e.low * f, e.high * f, e.scale * f, x * f, sigma * f, 0);
      assertEquals(a.log(), b.log(), 1e-8 * (1 + Math.abs(a.log())));
      assertEquals(a.sigmas(), b.sigmas(), 1e-8 * (1 + Math.abs(a.sigmas())));
      assertEquals(a.compatibility(), b.compatibility(), 1e-8);
    }
  }

  /** Sloppier measuring never earns a better expected agreement at the best value. */
  @Test
  void uncertaintyOfTheTrialEarnsNothing() {
    RandomStream r = random("sloppy");
    double[] logs = new double[200];
    for (int i = 0; i < 10_000; i++) {
      double scale = 0.1 + r.uniform();
      double sigma = 0.05 + r.uniform();
      double before = 1;
      for (double factor : new double[] {0.5, 1, 2}) {
        new IntervalKernel(5, 5, scale, 5, sigma * factor, 0).logs(new Draws(logs.length, i, 1), logs);
        double mean = Arrays.stream(logs).map(Math::exp).average().orElseThrow();
        assertTrue(mean <= before + 1e-12);
        before = mean;
      }
    }
  }

  @Test
  void compositionsIgnoreScaleOrderAndPerturbation() {
    RandomStream r = random("compositions");
    for (int i = 0; i < 10_000; i++) {
      int n = 2 + r.below(7);
      double[] d = r.normals(n);
      double[] sd = new double[n];
      Arrays.setAll(sd, k -> 0.02 + 0.3 * r.uniform());
      double expected = log(d, sd);
      assertTrue(expected <= 0);
      double shift = 5 * r.normal();
      assertEquals(expected, log(Arrays.stream(d).map(v -> v + shift).toArray(), sd), 1e-6 * (1 - expected));
      assertEquals(expected, log(reversed(d), reversed(sd)), 1e-6 * (1 - expected));
      assertEquals(0, log(new double[n], sd), 0);
    }
  }

  private static double log(double[] difference, double[] sd) {
    return new CompositionKernel(PARTS.subList(0, sd.length), difference, CompositionKernel.diagonal(sd), new double[sd.length], new boolean[sd.length]).log();
  }

  private static double[] reversed(double[] x) {
    double[] back = new double[x.length];
    Arrays.setAll(back, k -> x[x.length - 1 - k]);
    return back;
  }

  @Test
  void sharesAreOneOnlyWhenEqualAndIgnoreTheMassOfTheHeap() {
    RandomStream r = random("shares");
    for (int i = 0; i < 10_000; i++) {
      double[] p = r.dirichlet(new double[] {1, 1, 1, 1});
      double[] q = r.dirichlet(new double[] {1, 1, 1, 1});
      double heap = 1 + 100 * r.uniform();
      double log = new SharesKernel(p, q, new double[4], 20).log();
      assertEquals(log, new SharesKernel(p, Arrays.stream(q).map(v -> v * heap).toArray(), new double[4], 20).log(), 1e-9);
      assertEquals(0, new SharesKernel(p, p, new double[4], 20).log(), 1e-12);
      assertTrue(log < 0);
    }
  }

  @Test
  void wordsAreBounded() {
    RandomStream r = random("words");
    for (int i = 0; i < 10_000; i++) {
      double[] pi = r.dirichlet(new double[] {1, 1, 1});
      double[] q = r.dirichlet(new double[] {1, 1, 1});
      Kernel kernel = new WordKernel(pi, q, r.below(2) == 0 ? WordKernel.distinct(3) : WordKernel.ordered(3, 0.5 + r.uniform()));
      assertTrue(kernel.log() <= 0 && kernel.compatibility() >= 0 && kernel.compatibility() <= 1);
    }
  }

  private static double[] logs(RandomStream r, int n) {
    double[] logs = new double[n];
    Arrays.setAll(logs, k -> r.below(4) == 0 ? Double.NaN : -5 * r.uniform());
    return logs;
  }

  @Test
  void poolIsBoundedAndIgnoresTheScaleOfWeights() {
    RandomStream r = random("pool");
    for (int i = 0; i < CASES; i++) {
      double[] logs = logs(r, 8);
      double[] w = r.uniforms(8);
      double s = Pool.score(logs, w);
      double f = Math.exp(4 * r.normal());
      assertTrue(Double.isNaN(s) || s >= 0 && s <= 100);
      assertEquals(s, Pool.score(logs, Arrays.stream(w).map(v -> f * v).toArray()), 1e-9);
    }
  }

  /** What is not tested changes no agreement; it lowers the coverage, and the bounds hold the agreement. */
  @Test
  void missingIsNeutral() {
    RandomStream r = random("missing");
    boolean[] recoverable = new boolean[8];
    Arrays.fill(recoverable, true);
    for (int i = 0; i < CASES; i++) {
      double[] logs = logs(r, 8);
      double[] w = r.uniforms(8);
      double[] without = logs.clone();
      int dropped = r.below(8);
      without[dropped] = Double.NaN;
      double[] rest = logs.clone();
      double[] restWeights = w.clone();
      restWeights[dropped] = 0;
      assertEquals(Pool.score(rest, restWeights), Pool.score(without, w), 1e-9);
      assertTrue(Pool.coverage(without, w, recoverable) <= Pool.coverage(logs, w, recoverable));
      double s = Pool.score(without, w);
      if (!Double.isNaN(s)) {
        assertTrue(Pool.bound(without, w, recoverable, Pool.FLOOR) <= s + 1e-9 && Pool.bound(without, w, recoverable, 1) >= s - 1e-9);
      }
    }
  }

  /** One criterion split in two with half the weight each gives the same agreement; one with no weight changes nothing. */
  @Test
  void splittingAndWeightlessCriteriaChangeNothing() {
    RandomStream r = random("split");
    for (int i = 0; i < CASES; i++) {
      double[] logs = logs(r, 6);
      double[] w = r.uniforms(6);
      double[] split = Arrays.copyOf(logs, 7);
      double[] halves = Arrays.copyOf(w, 7);
      split[6] = logs[0];
      halves[0] = halves[6] = w[0] / 2;
      assertEquals(Pool.score(logs, w), Pool.score(split, halves), 1e-9);
      double[] added = Arrays.copyOf(logs, 7);
      added[6] = -3;
      assertEquals(Pool.score(logs, w), Pool.score(added, Arrays.copyOf(w, 7)), 1e-9);
    }
  }
}
