package daubline.criteria;

import java.util.Arrays;
import java.util.List;

/**
 * The numbers of a slag sample in the order of the parts asked for, so that pairs of sheets are compared by loops.
 *
 * @param logs logarithm of each part (second index) of each analysis (first index), NaN when not reported
 * @param variances measuring variance of each logarithm
 * @param below whether a part is below its limit
 */
record SlagTable(double[][] logs, double[][] variances, boolean[][] below) {

  static SlagTable of(SlagSample sample, List<String> parts, double relative, double absolute) {
    int n = sample.analyses().size();
    SlagTable table = new SlagTable(new double[n][parts.size()], new double[n][parts.size()], new boolean[n][parts.size()]);
    for (int a = 0; a < n; a++) {
      for (int i = 0; i < parts.size(); i++) {
        table.fill(a, i, sample.analyses().get(a), parts.get(i), relative, absolute);
      }
    }
    return table;
  }

  private void fill(int a, int i, Recast analysis, String part, double relative, double absolute) {
    Double value = analysis.parts().get(part);
    logs[a][i] = value == null ? Double.NaN : Math.log(value);
    if (value != null) {
      double stated = analysis.sigmas().get(part) / value;
      below[a][i] = analysis.below().get(part);
      // the logarithm of a value anywhere below its limit, uniformly, has variance one
      variances[a][i] = below[a][i] ? 1 : Double.isNaN(stated) ? relative * relative + Math.pow(absolute / value, 2) : stated * stated;
    }
  }

  /** A table with the mean of each feature as a row; measuring variances are not needed there. */
  static SlagTable ofMeans(List<SlagTable> features, int parts) {
    double[][] means = new double[features.size()][parts];
    for (int f = 0; f < means.length; f++) {
      SlagTable feature = features.get(f);
      Arrays.setAll(means[f], feature::mean);
    }
    return new SlagTable(means, new double[means.length][parts], new boolean[means.length][parts]);
  }

  boolean isEmpty() {
    return logs.length == 0;
  }

  /** Whether at least half of the analyses report a part. */
  boolean isReported(int part) {
    int count = 0;
    for (double[] row : logs) {
      count += Double.isNaN(row[part]) ? 0 : 1;
    }
    return count > 0 && 2 * count >= logs.length;
  }

  /** The parts that both sides report. */
  int[] shared(SlagTable other, int parts) {
    int[] shared = new int[parts];
    int n = 0;
    for (int i = 0; i < parts; i++) {
      if (isReported(i) && other.isReported(i)) {
        shared[n++] = i;
      }
    }
    return Arrays.copyOf(shared, n);
  }

  /** The analyses that report every one of some parts, and those parts only. */
  SlagTable with(int[] parts) {
    int[] rows = new int[logs.length];
    int n = 0;
    for (int a = 0; a < logs.length; a++) {
      boolean complete = true;
      for (int part : parts) {
        complete &= !Double.isNaN(logs[a][part]);
      }
      if (complete) {
        rows[n++] = a;
      }
    }
    SlagTable chosen = new SlagTable(new double[n][parts.length], new double[n][parts.length], new boolean[n][parts.length]);
    for (int r = 0; r < n; r++) {
      for (int i = 0; i < parts.length; i++) {
        chosen.logs[r][i] = logs[rows[r]][parts[i]];
        chosen.variances[r][i] = variances[rows[r]][parts[i]];
        chosen.below[r][i] = below[rows[r]][parts[i]];
      }
    }
    return chosen;
  }

  double mean(int part) {
    double sum = 0;
    for (double[] row : logs) {
      sum += row[part];
    }
    return sum / logs.length;
  }

  boolean isBelow(int part) {
    boolean all = true;
    for (boolean[] row : below) {
      all &= row[part];
    }
    return all;
  }

  /** Variance of the mean logarithm: that of measuring, and with two or more analyses the scatter between them. */
  double variance(int part) {
    int n = logs.length;
    double sum = 0;
    for (double[] row : variances) {
      sum += row[part];
    }
    double measuring = sum / ((double) n * n);
    return n < 2 ? measuring : Math.max(measuring, covariance(part, part) / n);
  }

  /** Sample covariance of two logarithms; at least two analyses. */
  double covariance(int a, int b) {
    double meanA = mean(a);
    double meanB = mean(b);
    double sum = 0;
    for (double[] row : logs) {
      sum += (row[a] - meanA) * (row[b] - meanB);
    }
    return sum / (logs.length - 1);
  }
}
