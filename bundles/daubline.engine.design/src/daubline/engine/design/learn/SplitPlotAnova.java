package daubline.engine.design.learn;

import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.design.Term;
import daubline.engine.design.Within;
import daubline.engine.stats.LeastSquares;
import java.util.ArrayList;
import java.util.List;

/**
 * The analysis of variance of a balanced series with furnaces: terms that change with the furnace are judged by the
 * variance between furnaces, the others by the variance between trials of a furnace (Box, Hunter &amp; Hunter 2005,
 * chapter 9). Kept as a check on {@link MixedModel}, with which it agrees when the series is balanced.
 *
 * @param lines one for each term
 * @param furnaceSquares the sum of squares between furnaces beyond the terms
 * @param furnaceFreedom its degrees of freedom
 * @param trialSquares the sum of squares between the trials of a furnace beyond the terms
 * @param trialFreedom its degrees of freedom
 */
public record SplitPlotAnova(List<Line> lines, double furnaceSquares, int furnaceFreedom, double trialSquares, int trialFreedom) {

  /**
   * One term.
   *
   * @param term the term
   * @param betweenFurnaces whether it changes with the furnace only
   * @param squares its sum of squares after the terms before it
   * @param freedom its degrees of freedom
   * @param f the ratio to the error of its own stratum
   * @param p the probability of a ratio as large by chance; NaN without freedom
   */
  public record Line(Term term, boolean betweenFurnaces, double squares, int freedom, double f, double p) {
  }

  private record Step(Term term, double squares, int freedom) {
  }

  /** The analysis. */
  public static SplitPlotAnova of(Design design, Model model, double[] y) {
    double[][] x = model.matrix(design.settings());
    List<Term> between = new ArrayList<>();
    List<Term> within = new ArrayList<>();
    for (Term term : model.terms()) {
      if (!term.equals(Term.MEAN)) {
        (Within.between(x, model.columnsOf(term), design.furnaces()) ? between : within).add(term);
      }
    }
    List<double[]> columns = new ArrayList<>();
    columns.add(column(x, 0));
    LeastSquares.Fit last = fit(columns, y);
    List<Step> steps = new ArrayList<>();
    for (Term term : between) {
      last = step(steps, term, columns, x, model.columnsOf(term), y, last);
    }
    LeastSquares.Fit beforeFurnaces = last;
    if (design.sharesFurnaces()) {
      columns.addAll(Within.indicators(design.furnaces()));
    }
    LeastSquares.Fit withFurnaces = fit(columns, y);
    last = withFurnaces;
    for (Term term : within) {
      last = step(steps, term, columns, x, model.columnsOf(term), y, last);
    }
    double furnaceSquares = beforeFurnaces.residualSquares() - withFurnaces.residualSquares();
    int furnaceFreedom = beforeFurnaces.freedom() - withFurnaces.freedom();
    LeastSquares.Fit end = last;
    List<Line> lines = steps.stream().map(s -> line(s, between.contains(s.term), furnaceSquares, furnaceFreedom, end)).toList();
    return new SplitPlotAnova(lines, furnaceSquares, furnaceFreedom, end.residualSquares(), end.freedom());
  }

  private static LeastSquares.Fit step(List<Step> steps, Term term, List<double[]> columns, double[][] x, int[] added,
      double[] y, LeastSquares.Fit before) {
    for (int c : added) {
      columns.add(column(x, c));
    }
    LeastSquares.Fit after = fit(columns, y);
    steps.add(new Step(term, before.residualSquares() - after.residualSquares(), before.freedom() - after.freedom()));
    return after;
  }

  private static Line line(Step step, boolean between, double furnaceSquares, int furnaceFreedom, LeastSquares.Fit end) {
    double error = between ? furnaceSquares / furnaceFreedom : end.variance();
    int below = between ? furnaceFreedom : end.freedom();
    double f = below > 0 ? step.squares / step.freedom / error : Double.NaN;
    return new Line(step.term, between, step.squares, step.freedom, f, Tails.f(f, step.freedom, below));
  }

  private static double[] column(double[][] x, int c) {
    return java.util.Arrays.stream(x).mapToDouble(r -> r[c]).toArray();
  }

  private static LeastSquares.Fit fit(List<double[]> columns, double[] y) {
    return LeastSquares.fit(daubline.engine.stats.Matrices.transpose(columns.toArray(double[][]::new)), y);
  }
}
