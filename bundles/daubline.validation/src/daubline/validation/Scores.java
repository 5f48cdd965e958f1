package daubline.validation;

import daubline.engine.stats.Quantiles;
import java.util.Arrays;
import java.util.List;

/**
 * How well predictions did on what was left out. All in the unit of the values.
 *
 * @param n how many were predicted
 * @param rms root mean square of middle less observed
 * @param crps mean continuous ranked probability score, of draws; smaller is better
 * @param coverage share that lies in the 5 to 95 % interval
 * @param width mean width of that interval: coverage by width alone is no merit
 */
record Scores(int n, double rms, double crps, double coverage, double width) {

  /** One thing predicted: draws of the prediction, and what was observed. */
  record Case(double[] draws, double observed) {

    double middle() {
      return Quantiles.of(draws, .5)[0];
    }

    double[] interval() {
      return Quantiles.of(draws, .05, .95);
    }

    /** CRPS of a sample: E|X - y| - E|X - X'|/2. Source: T. Gneiting, A. E. Raftery, J. Am. Stat. Assoc. 102 (2007) 359. */
    double crps() {
      double[] x = draws.clone();
      Arrays.sort(x);
      double near = 0;
      double apart = 0;
      for (int i = 0; i < x.length; i++) {
        near += Math.abs(x[i] - observed);
        apart += (2.0 * i + 1 - x.length) * x[i];
      }
      return near / x.length - apart / x.length / x.length;
    }
  }

  static Scores of(List<Case> cases) {
    double squares = cases.stream().mapToDouble(c -> Math.pow(c.middle() - c.observed(), 2)).average().orElse(Double.NaN);
    double crps = cases.stream().mapToDouble(Case::crps).average().orElse(Double.NaN);
    double covered = cases.stream().filter(c -> c.interval()[0] <= c.observed() && c.observed() <= c.interval()[1]).count();
    double width = cases.stream().mapToDouble(c -> c.interval()[1] - c.interval()[0]).average().orElse(Double.NaN);
    return new Scores(cases.size(), Math.sqrt(squares), crps, covered / cases.size(), width);
  }
}
