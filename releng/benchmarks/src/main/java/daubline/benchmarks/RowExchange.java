package daubline.benchmarks;

import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import daubline.engine.stats.RandomStream;
import java.util.Arrays;

/**
 * The plain exchange over a list of candidates, a peer for the coordinate exchange: each trial in turn is swapped for the
 * candidate that raises |X'X| most, until none does (Fedorov 1972; Cook &amp; Nachtsheim 1980). The inverse is updated by
 * ranks and taken anew after every pass.
 */
final class RowExchange {

  private static final double LEAST_GAIN = 1e-9;

  private final double[][] candidates;
  private final int[] chosen;
  private double[][] inverse;

  private RowExchange(double[][] candidates, int trials, RandomStream random) {
    this.candidates = candidates;
    chosen = new int[trials];
    do {
      Arrays.setAll(chosen, i -> random.below(candidates.length));
    } while (!refresh());
  }

  /** The logarithm of |X'X| of one start. */
  static double run(double[][] candidates, int trials, RandomStream random) {
    RowExchange exchange = new RowExchange(candidates, trials, random);
    for (int pass = 0; pass < 100 && exchange.pass(); pass++) {
      exchange.refresh();
    }
    return Cholesky.of(Matrices.square(exchange.rows())).logDeterminant();
  }

  private double[][] rows() {
    return Arrays.stream(chosen).mapToObj(c -> candidates[c]).toArray(double[][]::new);
  }

  private boolean refresh() {
    Cholesky m = Cholesky.of(Matrices.square(rows()));
    if (!(m.logDeterminant() > -30)) {
      return false;
    }
    inverse = m.inverse();
    return true;
  }

  private boolean pass() {
    boolean better = false;
    for (int i = 0; i < chosen.length; i++) {
      double[] out = candidates[chosen[i]];
      double[] mOut = Matrices.times(inverse, out);
      double dOut = Matrices.dot(out, mOut);
      double most = LEAST_GAIN;
      int best = -1;
      for (int c = 0; c < candidates.length; c++) {
        double[] in = candidates[c];
        double cross = Matrices.dot(in, mOut);
        double gain = (1 + quadratic(in)) * (1 - dOut) + cross * cross - 1;
        if (gain > most) {
          most = gain;
          best = c;
        }
      }
      if (best >= 0) {
        chosen[i] = best;
        update(candidates[best], 1);
        update(out, -1);
        better = true;
      }
    }
    return better;
  }

  private double quadratic(double[] x) {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      if (x[i] != 0) {
        sum += x[i] * Matrices.dot(inverse[i], x);
      }
    }
    return sum;
  }

  /** (M ± xx')⁻¹ by Sherman and Morrison. */
  private void update(double[] x, int sign) {
    double[] mx = Matrices.times(inverse, x);
    double scale = sign / (1 + sign * Matrices.dot(x, mx));
    for (int i = 0; i < mx.length; i++) {
      for (int j = 0; j < mx.length; j++) {
        inverse[i][j] -= scale * mx[i] * mx[j];
      }
    }
  }
}
