package daubline.engine.process.balance;

import daubline.base.Finding;
import daubline.engine.stats.Nnls;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the oxides of a slag came from: amounts of ore, lining, ash and flux that give its unreduced oxides best.
 *
 * <p>Minimises Σ ((A x - s)/σ)² over x ≥ 0, iron left out. Source: weighted non-negative least squares (Lawson and
 * Hanson 1974); the triangle of ore, lining and ash after R. G. Thomas, T. P. Young, Geol. Soc. London Spec. Publ. 165
 * (1999) 155 (content from the abstract). The amounts are kg per kg of slag and are not forced to sum to anything.
 *
 * @param amounts kg of each source per kg of slag, in the order of the sources
 * @param sigmas standard uncertainty of each amount from the slag's analytical error; 0 when held at zero
 * @param residuals slag less fit, share by oxide, in the order of {@link ApportionmentProblem#oxides}
 * @param reducedChi2 sum of squared weighted residuals by degree of freedom; NaN when there is none left
 * @param condition condition number of the weighted columns, each scaled to unit length
 * @param slagIron iron of the slag, kg per kg of slag
 * @param sourceIron iron that the sources brought, kg per kg of slag
 * @param findings what to beware of
 */
public record Apportionment(List<Double> amounts, List<Double> sigmas, List<Double> residuals, double reducedChi2,
    double condition, double slagIron, double sourceIron, List<Finding> findings) {

  /** Beyond this the columns are too alike to be told apart. Source: Belsley, Kuh and Welsch 1980 (from memory). */
  public static final double COLLINEAR = 30;

  /** Solves one problem. */
  public static Apportionment of(ApportionmentProblem problem) {
    double[][] a = problem.weightedMatrix();
    double[] b = problem.weightedSlag();
    Nnls.Fit fit = Nnls.solve(a, b);
    WeightedColumns columns = new WeightedColumns(a, fit.free());
    int freedom = b.length - columns.count();
    List<Double> amounts = new ArrayList<>();
    List<Double> sigmas = new ArrayList<>();
    double iron = 0;
    for (int j = 0; j < fit.x().length; j++) {
      amounts.add(fit.x()[j]);
      sigmas.add(Math.sqrt(columns.variance(j)));
      iron += fit.x()[j] * problem.sources().get(j).analysis().iron();
    }
    double condition = WeightedColumns.condition(a);
    return new Apportionment(List.copyOf(amounts), List.copyOf(sigmas), problem.residuals(fit.x()),
        freedom > 0 ? fit.residual2() / freedom : Double.NaN, condition, problem.slag().iron(), iron,
        findings(problem, fit, a, condition, freedom, iron));
  }

  private static List<Finding> findings(ApportionmentProblem problem, Nnls.Fit fit, double[][] a, double condition,
      int freedom, double iron) {
    List<Finding> findings = new ArrayList<>();
    if (condition > COLLINEAR) {
      findings.add(Finding.warning("apportion.collinear", "source apportionment",
          WeightedColumns.mostAlike(a, problem.sources()) + " are too alike in these oxides to be told apart "
              + "(condition number " + Math.round(condition) + ")",
          "add an oxide or trace element in which they differ, or join them into one source"));
    }
    for (int j = 0; j < fit.x().length; j++) {
      if (fit.x()[j] == 0) {
        findings.add(Finding.note("apportion.zero", "source apportionment", problem.sources().get(j).name()
            + " is held at nothing: a negative amount would fit better", "check its analysis and whether it took part"));
      }
    }
    if (freedom > 0 && fit.residual2() / freedom > 4) {
      findings.add(Finding.warning("apportion.misfit", "source apportionment",
          "the sources do not explain the slag within its analytical error",
          "a source is missing, or an analysis does not stand for what was used"));
    }
    if (iron < problem.slag().iron()) {
      findings.add(Finding.warning("apportion.iron", "source apportionment",
          "the slag holds more iron than these sources bring, which leaves no metal",
          "the ore analysed is poorer than the ore smelted, or scale or metal was added"));
    }
    return List.copyOf(findings);
  }

  /** Iron that must have become metal or been lost, kg per kg of slag; negative when the balance cannot hold. */
  public double metalPerSlag() {
    return sourceIron - slagIron;
  }

  /** Share of the iron of all sources that did not stay in the slag. */
  public double ironNotInSlag() {
    return metalPerSlag() / sourceIron;
  }
}
