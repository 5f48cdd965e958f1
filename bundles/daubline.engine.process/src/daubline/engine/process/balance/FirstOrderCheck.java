package daubline.engine.process.balance;

import daubline.base.Finding;
import daubline.base.Printed;
import daubline.engine.stats.Distribution;
import daubline.engine.stats.Gaussian;
import daubline.engine.stats.Nnls;
import daubline.engine.stats.Propagation;
import daubline.engine.stats.Uncertain;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Whether first-order uncertainty (JCGM 100:2008, 5.1.2) would hold for an apportionment, against the drawn one: both ends of
 * the 5 to 95 % interval must agree to half a unit of the first digit of the uncertainty (JCGM 101:2008, clause 8). It fails where
 * an amount is held at zero, or where sources are so alike that the amounts are far from normal.
 */
public final class FirstOrderCheck {

  private static final double COVERAGE = 0.90;
  /** Three standard errors of a drawn 5 % point of a normal distribution: 3·√(0.05·0.95)/φ(1.645). */
  private static final double THREE_ERRORS = 6.3;

  private final ApportionmentProblem problem;
  private final List<Uncertain> inputs = new ArrayList<>();

  private FirstOrderCheck(ApportionmentProblem problem) {
    this.problem = problem;
    problem.oxides().forEach(o -> inputs.add(Uncertain.normal(problem.slag().share(o), problem.error(o))));
    problem.sources().forEach(s -> s.analysis().shares().values().forEach(v -> inputs.add(Uncertain.normal(v, v * s.relativeSpread()))));
  }

  /**
   * A note for each source whose first-order uncertainty is not valid.
   *
   * @param draws how many draws made the spread; what so few cannot tell is not held against first order
   */
  public static List<Finding> of(ApportionmentProblem problem, ApportionmentSpread spread, int draws) {
    FirstOrderCheck check = new FirstOrderCheck(problem);
    List<Finding> notes = new ArrayList<>();
    for (int j = 0; j < problem.sources().size(); j++) {
      Propagation first = check.firstOrder(j);
      double half = Gaussian.quantile((1 + COVERAGE) / 2) * first.sigma();
      double low = spread.low().get(j);
      double high = spread.high().get(j);
      double tolerance = Math.max(Distribution.tolerance(first.sigma(), 1), THREE_ERRORS * first.sigma() / Math.sqrt(draws));
      if (Math.abs(first.value() - half - low) > tolerance || Math.abs(first.value() + half - high) > tolerance) {
        notes.add(Finding.note("apportion.first-order", "source apportionment", "first-order uncertainty is not valid for " + problem.sources().get(j).name() + ": it gives "
            + Printed.number(first.value() - half, 3) + " to " + Printed.number(first.value() + half, 3) + ", drawing gives " + Printed.number(low, 3) + " to "
            + Printed.number(high, 3) + " kg per kg of slag", "use the drawn interval (JCGM 101:2008, clause 8)"));
      }
    }
    return notes;
  }

  private Propagation firstOrder(int source) {
    double[][] independent = new double[inputs.size()][inputs.size()];
    for (int i = 0; i < independent.length; i++) {
      independent[i][i] = 1;
    }
    return Propagation.of(x -> amount(x, source), inputs, independent);
  }

  /** Amount of one source for other analyses, in the order of the inputs. */
  private double amount(double[] x, int source) {
    int next = 0;
    Map<Oxide, Double> slag = new EnumMap<>(problem.slag().shares());
    for (Oxide oxide : problem.oxides()) {
      slag.put(oxide, Math.clamp(x[next++], 0, 1));
    }
    List<ApportionmentProblem.Source> sources = new ArrayList<>();
    for (ApportionmentProblem.Source s : problem.sources()) {
      Map<Oxide, Double> shares = new EnumMap<>(Oxide.class);
      for (Oxide oxide : s.analysis().shares().keySet()) {
        shares.put(oxide, Math.clamp(x[next++], 0, 1));
      }
      sources.add(new ApportionmentProblem.Source(s.name(), new Analysis(shares), s.relativeSpread()));
    }
    ApportionmentProblem other = new ApportionmentProblem(new Analysis(slag), sources, problem.oxides(), problem.relativeError(), problem.floorError());
    return Nnls.solve(other.weightedMatrix(), other.weightedSlag()).x()[source];
  }
}
