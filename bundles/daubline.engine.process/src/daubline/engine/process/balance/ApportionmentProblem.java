package daubline.engine.process.balance;

import java.util.ArrayList;
import java.util.List;

/**
 * A slag and the sources that may have made it.
 *
 * @param slag the slag analysis
 * @param sources what may have gone in, with their analyses
 * @param oxides the oxides to use, none of iron
 * @param relativeError analytical error of the slag as a share of each value
 * @param floorError analytical error added to it, as a mass share
 */
public record ApportionmentProblem(Analysis slag, List<Source> sources, List<Oxide> oxides, double relativeError,
    double floorError) {

  /** Usual error of an analysis: 2 % of the value and 0.05 wt% (common practice, no source). */
  public static final double USUAL_RELATIVE = .02;
  /** See {@link #USUAL_RELATIVE}. */
  public static final double USUAL_FLOOR = .0005;

  /**
   * Checks that there is something to solve.
   *
   * @throws IllegalArgumentException when there is no source, an oxide of iron, or fewer oxides than sources
   */
  public ApportionmentProblem {
    sources = List.copyOf(sources);
    oxides = List.copyOf(oxides);
    if (sources.isEmpty() || oxides.size() < sources.size()) {
      throw new IllegalArgumentException("apportioning " + sources.size() + " sources needs at least as many oxides "
          + "other than iron, analysed in slag and sources; there are " + oxides.size());
    }
    if (oxides.stream().anyMatch(Oxide::isIron)) {
      throw new IllegalArgumentException("iron is reduced, so it cannot trace a source");
    }
    if (!(floorError > 0) || !(relativeError >= 0)) {
      throw new IllegalArgumentException("analytical errors must be positive");
    }
  }

  /**
   * A possible source.
   *
   * @param name what it is, in the user's words
   * @param analysis its analysis
   * @param relativeSpread standard deviation of each oxide between pieces, as a share of its value
   */
  public record Source(String name, Analysis analysis, double relativeSpread) {
  }

  /** A problem with the usual errors and every oxide that slag and at least one source report. */
  public static ApportionmentProblem usual(Analysis slag, List<Source> sources) {
    List<Oxide> oxides = new ArrayList<>();
    for (Oxide oxide : Oxide.values()) {
      if (!oxide.isIron() && slag.has(oxide) && sources.stream().anyMatch(s -> s.analysis().has(oxide))) {
        oxides.add(oxide);
      }
    }
    return new ApportionmentProblem(slag, sources, oxides, USUAL_RELATIVE, USUAL_FLOOR);
  }

  /** Standard error of one oxide of the slag, mass share. */
  public double error(Oxide oxide) {
    return relativeError * slag.share(oxide) + floorError;
  }

  double[][] weightedMatrix() {
    double[][] a = new double[oxides.size()][sources.size()];
    for (int i = 0; i < a.length; i++) {
      Oxide oxide = oxides.get(i);
      for (int j = 0; j < sources.size(); j++) {
        a[i][j] = sources.get(j).analysis().share(oxide) / error(oxide);
      }
    }
    return a;
  }

  double[] weightedSlag() {
    return oxides.stream().mapToDouble(o -> slag.share(o) / error(o)).toArray();
  }

  List<Double> residuals(double[] amounts) {
    List<Double> residuals = new ArrayList<>();
    for (Oxide oxide : oxides) {
      double rest = slag.share(oxide);
      for (int j = 0; j < amounts.length; j++) {
        rest -= amounts[j] * sources.get(j).analysis().share(oxide);
      }
      residuals.add(rest);
    }
    return List.copyOf(residuals);
  }
}
