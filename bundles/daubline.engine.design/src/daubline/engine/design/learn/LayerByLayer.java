package daubline.engine.design.learn;

import daubline.engine.design.Design;
import daubline.engine.design.Within;
import daubline.engine.stats.LeastSquares;
import daubline.engine.stats.Matrices;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Effects one stratum after the other, as in the analysis of variance of a split plot (Yates 1935; from memory): what changes within
 * furnaces and days is compared within them only, with the scatter within; what changes between them from their means. Nothing is borrowed
 * from the other stratum, so that the intervals within hold however few furnaces there are.
 */
final class LayerByLayer {

  /** With fewer comparisons between groups nothing is said of what changes with them. */
  private static final int LEAST = 2;

  private final Design design;
  private final double[][] x;
  private final int[] kept;
  private final double[] y;
  private final Layers layers;
  private final double[] coefficients;
  private final double[][] covariance;
  private final double[] freedom;
  private double within;

  private LayerByLayer(Design design, double[][] x, int[] kept, double[] y, Layers layers) {
    this.design = design;
    this.x = x;
    this.kept = kept;
    this.y = y;
    this.layers = layers;
    coefficients = new double[kept.length];
    covariance = new double[kept.length][kept.length];
    Arrays.stream(covariance).forEach(row -> Arrays.fill(row, Double.NaN));
    freedom = new double[kept.length];
  }

  /** The estimates; empty where what changes with the trial cannot be told apart within furnaces and days alone. */
  static Optional<Estimates> of(Design design, double[][] x, int[] kept, double[] y, Layers layers) {
    LayerByLayer work = new LayerByLayer(design, x, kept, y, layers);
    return work.inside().map(work::outside);
  }

  private Estimates outside(double[] left) {
    double[] rest = layers.furnaces() ? between("furnace", design.furnaces(), left) : left;
    if (layers.days()) {
      between("day", design.days(), rest);
    }
    return new Estimates(EffectsReport.Method.LAYER_BY_LAYER, layers, kept, coefficients, covariance, freedom, within, Double.NaN, Double.NaN);
  }

  private int[] columns(String stratum) {
    return IntStream.range(0, kept.length).filter(c -> layers.freedom().stratum().get(c).equals(stratum)).toArray();
  }

  /** What changes with the trial, beside a column for each group; what is left of the outcomes, or nothing when columns depend on groups. */
  private Optional<double[]> inside() {
    int[] trial = columns("trial");
    List<double[]> all = new ArrayList<>();
    layers.groups(design).forEach(groups -> all.addAll(Within.indicators(groups)));
    Arrays.stream(trial).forEach(c -> all.add(Arrays.stream(x).mapToDouble(row -> row[c]).toArray()));
    double[][] full = Matrices.transpose(all.toArray(double[][]::new));
    int[] used = LeastSquares.independent(full);
    LeastSquares.Fit fit = LeastSquares.fit(pick(full, used), y);
    within = fit.variance();
    int first = all.size() - trial.length;
    int[] place = Arrays.stream(trial).map(c -> Arrays.binarySearch(used, first + Arrays.binarySearch(trial, c))).toArray();
    if (IntStream.of(place).anyMatch(k -> k < 0) || fit.freedom() < 1) {
      return Optional.empty();
    }
    double[] rest = y.clone();
    for (int a = 0; a < trial.length; a++) {
      put(trial, place, a, fit);
      for (int i = 0; i < rest.length; i++) {
        rest[i] -= x[i][trial[a]] * coefficients[trial[a]];
      }
    }
    return Optional.of(rest);
  }

  private void put(int[] trial, int[] place, int a, LeastSquares.Fit fit) {
    coefficients[trial[a]] = fit.coefficients()[place[a]];
    freedom[trial[a]] = fit.freedom();
    for (int b = 0; b < trial.length; b++) {
      covariance[trial[a]][trial[b]] = within * fit.inverse()[place[a]][place[b]];
    }
  }

  /** What changes with a group, from the means of what was left; what is left of it then. */
  private double[] between(String stratum, int[] groups, double[] left) {
    int[] columns = columns(stratum);
    Set<Integer> ids = new LinkedHashSet<>();
    Arrays.stream(groups).forEach(ids::add);
    double[][] means = ids.stream().map(id -> Arrays.stream(columns).mapToDouble(c -> mean(groups, id, i -> x[i][c])).toArray()).toArray(double[][]::new);
    double[] outcomes = ids.stream().mapToDouble(id -> mean(groups, id, i -> left[i])).toArray();
    if (columns.length == 0 || LeastSquares.independent(means).length < columns.length) {
      return left;
    }
    LeastSquares.Fit fit = LeastSquares.fit(means, outcomes);
    double[] rest = left.clone();
    for (int a = 0; a < columns.length; a++) {
      coefficients[columns[a]] = fit.coefficients()[a];
      freedom[columns[a]] = fit.freedom() >= LEAST ? fit.freedom() : 0;
      for (int b = 0; b < columns.length; b++) {
        covariance[columns[a]][columns[b]] = fit.freedom() >= LEAST ? fit.variance() * fit.inverse()[a][b] : Double.NaN;
      }
      for (int i = 0; i < rest.length; i++) {
        rest[i] -= x[i][columns[a]] * coefficients[columns[a]];
      }
    }
    return rest;
  }

  private static double mean(int[] groups, int id, java.util.function.IntToDoubleFunction of) {
    return IntStream.range(0, groups.length).filter(i -> groups[i] == id).mapToDouble(of).average().orElse(0);
  }

  private static double[][] pick(double[][] m, int[] columns) {
    return Arrays.stream(m).map(row -> Arrays.stream(columns).mapToDouble(c -> row[c]).toArray()).toArray(double[][]::new);
  }
}
