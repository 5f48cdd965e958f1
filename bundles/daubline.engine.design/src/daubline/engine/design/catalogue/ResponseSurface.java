package daubline.engine.design.catalogue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import java.util.ArrayList;
import java.util.List;

/**
 * Designs for bent responses: central composite (Box &amp; Wilson 1951) and Box–Behnken (1960). Coded ±1 is the range of
 * the factor; a star trial beyond it is scaled back, so that no trial leaves the limits.
 */
public final class ResponseSurface {

  /** How far out the star trials lie. */
  public enum Star {
    /** On the faces: no setting beyond the corners. */
    FACE,
    /** Equal certainty in all directions: the fourth root of the number of corners. */
    ROTATABLE,
    /** Corners and stars as two blocks that do not disturb the model. */
    ORTHOGONAL_BLOCKS
  }

  private static final int[][] SIX = {{0, 1, 3}, {1, 2, 4}, {2, 3, 5}, {0, 3, 4}, {1, 4, 5}, {0, 2, 5}};
  private static final int[][] SEVEN =
      {{3, 4, 5}, {0, 5, 6}, {1, 4, 6}, {0, 1, 3}, {2, 3, 6}, {0, 2, 4}, {1, 2, 5}};

  private ResponseSurface() {
  }

  /**
   * The distance of the star trials in units of the corners.
   *
   * @param k factors
   * @param cornerCentres centre trials burnt with the corners
   * @param starCentres centre trials burnt with the stars
   */
  public static double alpha(Star star, int k, int cornerCentres, int starCentres) {
    double corners = Math.pow(2, k);
    return switch (star) {
      case FACE -> 1;
      case ROTATABLE -> Math.pow(corners, 0.25);
      case ORTHOGONAL_BLOCKS -> Math.sqrt(k * (1 + starCentres / (2.0 * k)) / (1 + cornerCentres / corners));
    };
  }

  /** The settings of a central composite design in units of the corners: corners, their centres, stars, their centres. */
  public static double[][] centralComposite(int k, Star star, int cornerCentres, int starCentres) {
    if (k < 2 || k > 8) {
      throw new IllegalArgumentException("a central composite design takes 2 to 8 factors here, not " + k);
    }
    List<double[]> settings = new ArrayList<>();
    for (int[] row : new RegularFraction(k).signs()) {
      settings.add(java.util.stream.IntStream.of(row).asDoubleStream().toArray());
    }
    addCentres(settings, k, cornerCentres);
    double alpha = alpha(star, k, cornerCentres, starCentres);
    for (int j = 0; j < k; j++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        double[] setting = new double[k];
        setting[j] = sign * alpha;
        settings.add(setting);
      }
    }
    addCentres(settings, k, starCentres);
    return settings.toArray(double[][]::new);
  }

  /** A central composite design inside the limits of the factors. */
  public static Design centralComposite(List<Factor> factors, Star star, int cornerCentres, int starCentres) {
    measured(factors);
    double[][] settings = centralComposite(factors.size(), star, cornerCentres, starCentres);
    double alpha = Math.max(1, alpha(star, factors.size(), cornerCentres, starCentres));
    for (double[] setting : settings) {
      for (int j = 0; j < setting.length; j++) {
        setting[j] /= alpha;
      }
    }
    return Design.independent("central composite of " + settings.length + " trials", factors, settings,
        alpha > 1 ? "The corners lie at ±" + daubline.base.Printed.number(1 / alpha, 3) + " of the range, the stars at its ends."
            : "Stars on the faces: every setting is low, middle or high.");
  }

  /** The settings of a Box–Behnken design. @param k 3 to 7 */
  public static double[][] boxBehnken(int k, int centres) {
    if (k < 3 || k > 7) {
      throw new IllegalArgumentException("a Box–Behnken design takes 3 to 7 factors, not " + k);
    }
    List<double[]> settings = new ArrayList<>();
    for (int[] block : k == 6 ? SIX : k == 7 ? SEVEN : pairs(k)) {
      for (int[] row : new RegularFraction(block.length).signs()) {
        double[] setting = new double[k];
        for (int b = 0; b < block.length; b++) {
          setting[block[b]] = row[b];
        }
        settings.add(setting);
      }
    }
    addCentres(settings, k, centres);
    return settings.toArray(double[][]::new);
  }

  /** A Box–Behnken design, which never combines extreme settings of all factors. */
  public static Design boxBehnken(List<Factor> factors, int centres) {
    measured(factors);
    double[][] settings = boxBehnken(factors.size(), centres);
    return Design.independent("Box–Behnken of " + settings.length + " trials", factors, settings,
        "No trial has all factors at their limits together.");
  }

  /** The usual number of centre trials of a Box–Behnken design: 3, or 6 from six factors on. */
  public static int usualCentres(int k) {
    return k < 6 ? 3 : 6;
  }

  private static int[][] pairs(int k) {
    List<int[]> pairs = new ArrayList<>();
    for (int i = 0; i < k; i++) {
      for (int j = i + 1; j < k; j++) {
        pairs.add(new int[] {i, j});
      }
    }
    return pairs.toArray(int[][]::new);
  }

  private static void addCentres(List<double[]> settings, int k, int centres) {
    for (int c = 0; c < centres; c++) {
      settings.add(new double[k]);
    }
  }

  private static void measured(List<Factor> factors) {
    for (Factor f : factors) {
      if (f.isCategory()) {
        throw new IllegalArgumentException("factor " + f.name() + " has categories; a response surface needs measured "
            + "factors, so burn one surface for each category or choose an optimal design");
      }
    }
  }
}
