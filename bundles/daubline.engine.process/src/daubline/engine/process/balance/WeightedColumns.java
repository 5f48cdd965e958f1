package daubline.engine.process.balance;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.SingularValueDecomposition;

/** What the columns of a least-squares problem say about its coefficients: their variances and how alike they are. */
final class WeightedColumns {

  private final int[] place;
  private final RealMatrix covariance;

  /** The columns that are free; rows already divided by their standard errors. */
  WeightedColumns(double[][] a, boolean[] free) {
    place = new int[free.length];
    int count = 0;
    for (int j = 0; j < free.length; j++) {
      place[j] = free[j] ? count++ : -1;
    }
    covariance = count == 0 ? null : inverseGram(a, count);
  }

  private RealMatrix inverseGram(double[][] a, int count) {
    RealMatrix kept = new Array2DRowRealMatrix(a.length, count);
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < place.length; j++) {
        if (place[j] >= 0) {
          kept.setEntry(i, place[j], a[i][j]);
        }
      }
    }
    return new SingularValueDecomposition(kept.transposeMultiply(kept)).getSolver().getInverse();
  }

  /** How many columns are free. */
  int count() {
    return covariance == null ? 0 : covariance.getRowDimension();
  }

  /** Variance of a coefficient for unit errors; 0 when it is held. Source: (AᵀA)⁻¹, the usual linear model. */
  double variance(int column) {
    return place[column] < 0 ? 0 : Math.max(0, covariance.getEntry(place[column], place[column]));
  }

  /** Ratio of the largest to the smallest singular value once every column has unit length. */
  static double condition(double[][] a) {
    double[] s = new SingularValueDecomposition(new Array2DRowRealMatrix(unit(a))).getSingularValues();
    double smallest = s[s.length - 1];
    return smallest > 0 ? s[0] / smallest : Double.POSITIVE_INFINITY;
  }

  /** The names of the two columns with the smallest angle between them. */
  static String mostAlike(double[][] a, List<ApportionmentProblem.Source> sources) {
    double[][] u = unit(a);
    double most = -1;
    String names = "the sources";
    for (int j = 0; j < sources.size(); j++) {
      for (int k = j + 1; k < sources.size(); k++) {
        double dot = 0;
        for (double[] row : u) {
          dot += row[j] * row[k];
        }
        if (dot > most) {
          most = dot;
          names = sources.get(j).name() + " and " + sources.get(k).name();
        }
      }
    }
    return names;
  }

  private static double[][] unit(double[][] a) {
    double[][] u = new double[a.length][a[0].length];
    for (int j = 0; j < a[0].length; j++) {
      double norm = 0;
      for (double[] row : a) {
        norm = Math.hypot(norm, row[j]);
      }
      for (int i = 0; i < a.length; i++) {
        u[i][j] = norm > 0 ? a[i][j] / norm : 0;
      }
    }
    return u;
  }
}
