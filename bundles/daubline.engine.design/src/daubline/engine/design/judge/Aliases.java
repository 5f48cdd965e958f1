package daubline.engine.design.judge;

import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Which interactions of two bend which estimates, and how columns run together. */
public final class Aliases {

  /** Shares smaller than this are rounding. */
  private static final double LEAST = 1e-6;

  private Aliases() {
  }

  /**
   * The alias matrix M⁻¹XᵀV⁻¹Z of the interactions Z that the model leaves out; shares of zero are left out.
   *
   * @param kept the columns of the model that can be told apart
   * @param precision V⁻¹
   */
  public static List<DesignReview.Alias> of(Design design, Model model, int[] kept, double[][] precision) {
    Model full = Model.interactions(design.factors());
    double[][] x = model.matrix(design.settings());
    double[][] z = full.matrix(design.settings());
    double[][] columns = Arrays.stream(x).map(r -> Arrays.stream(kept).mapToDouble(c -> r[c]).toArray()).toArray(double[][]::new);
    Cholesky m = Cholesky.of(Matrices.quadratic(columns, precision));
    List<DesignReview.Alias> aliases = new ArrayList<>();
    for (int c = 0; c < full.size(); c++) {
      if (model.terms().contains(full.terms().get(full.termOf(c)))) {
        continue;
      }
      int column = c;
      double[] out = Arrays.stream(z).mapToDouble(r -> r[column]).toArray();
      double[] shares = m.solve(Matrices.times(Matrices.transpose(columns), Matrices.times(precision, out)));
      for (int k = 0; k < kept.length; k++) {
        if (kept[k] > 0 && Math.abs(shares[k]) > LEAST) {
          aliases.add(new DesignReview.Alias(model.name(kept[k]), full.name(c), shares[k]));
        }
      }
    }
    return aliases;
  }

  static DesignReview.Correlations correlations(Design design) {
    Model full = Model.interactions(design.factors());
    double[][] columns = Matrices.transpose(full.matrix(design.settings()));
    int p = columns.length - 1;
    double[][] values = new double[p][p];
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < p; j++) {
        values[i][j] = correlation(columns[i + 1], columns[j + 1]);
      }
    }
    return new DesignReview.Correlations(IntStream.range(1, p + 1).mapToObj(full::name).toList(), values);
  }

  private static double correlation(double[] a, double[] b) {
    double ma = Arrays.stream(a).average().orElse(0);
    double mb = Arrays.stream(b).average().orElse(0);
    double ab = 0;
    double aa = 0;
    double bb = 0;
    for (int i = 0; i < a.length; i++) {
      ab += (a[i] - ma) * (b[i] - mb);
      aa += (a[i] - ma) * (a[i] - ma);
      bb += (b[i] - mb) * (b[i] - mb);
    }
    return aa > 1e-12 && bb > 1e-12 ? ab / Math.sqrt(aa * bb) : Double.NaN;
  }
}
