package daubline.engine.stats;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * Compositions in the plane of their first two principal components of centred log-ratios, in the form that keeps the
 * distances between compositions (form biplot; Aitchison and Greenacre 2002, Applied Statistics 51, 375–392).
 *
 * @param scores two coordinates of each composition; with three parts their distances are the Aitchison distances
 * @param rays two coordinates of each part, of unit length in all components together
 * @param shares share of the total variance along both axes
 */
public record Biplot(double[][] scores, double[][] rays, double[] shares) {

  /**
   * Of three compositions or more, of three parts or more, all parts positive.
   *
   * @throws IllegalArgumentException when there are fewer, or nothing varies
   */
  public static Biplot of(double[][] rows) {
    if (rows.length < 3 || rows[0].length < 3) {
      throw new IllegalArgumentException("A biplot needs three compositions of three parts or more");
    }
    LogRatioSummary summary = LogRatioSummary.of(rows);
    double total = summary.totalVariance();
    if (!(total > 0)) {
      throw new IllegalArgumentException("The compositions are all alike");
    }
    EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(summary.covariance()));
    double[] values = eigen.getEigenvalues();
    int[] order = IntStream.range(0, values.length).boxed().sorted(Comparator.comparing((Integer i) -> -values[i])).limit(2).mapToInt(i -> i).toArray();
    double[][] axes = {turned(eigen.getV(), order[0]), turned(eigen.getV(), order[1])};
    double[] centre = Composition.clr(summary.centre());
    double[][] scores = Arrays.stream(rows).map(row -> project(Composition.clr(row), centre, axes)).toArray(double[][]::new);
    double[][] rays = IntStream.range(0, centre.length).mapToObj(i -> new double[] {axes[0][i], axes[1][i]}).toArray(double[][]::new);
    return new Biplot(scores, rays, new double[] {values[order[0]] / total, values[order[1]] / total});
  }

  /** A component may point either way; its largest entry is made positive, so that the same data give the same picture. */
  private static double[] turned(RealMatrix vectors, int column) {
    double[] axis = vectors.getColumn(column);
    int largest = IntStream.range(0, axis.length).boxed().max(Comparator.comparing(i -> Math.round(Math.abs(axis[i]) * 1e9))).orElseThrow();
    return axis[largest] < 0 ? Arrays.stream(axis).map(v -> -v).toArray() : axis;
  }

  private static double[] project(double[] clr, double[] centre, double[][] axes) {
    double[] point = new double[2];
    for (int i = 0; i < clr.length; i++) {
      point[0] += (clr[i] - centre[i]) * axes[0][i];
      point[1] += (clr[i] - centre[i]) * axes[1][i];
    }
    return point;
  }
}
