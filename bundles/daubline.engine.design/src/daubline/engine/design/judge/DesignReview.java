package daubline.engine.design.judge;

import daubline.base.Finding;
import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.Term;
import daubline.engine.stats.LeastSquares;
import daubline.engine.stats.Matrices;
import daubline.engine.stats.Quantiles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a design can show and what it cannot, before anything is burnt. All sizes are in standard deviations between
 * trials unless said otherwise.
 *
 * @param effects one for each column of the model but the mean
 * @param freedom the degrees of freedom of the errors
 * @param aliases for each column of the model the interactions of two outside it that bend its estimate
 * @param correlations between main effects and interactions of two
 * @param prediction the variance of a prediction over the allowed settings
 * @param leverage for each trial to be burnt how far its own outcome decides its prediction, 0 to 1
 * @param lost what the loss of each single trial to be burnt would cost; of each trial when all were burnt
 * @param findings what the reader must know, in words
 */
public record DesignReview(List<EffectReview> effects, Freedom freedom, List<Alias> aliases, Correlations correlations,
    Prediction prediction, double[] leverage, List<LostRun> lost, List<Finding> findings) {

  /** The rate of false alarms used. */
  public static final double ALPHA = 0.05;
  /** The chance with which the smallest detectable effect is seen. */
  public static final double POWER = 0.8;

  /**
   * How well one effect can be seen.
   *
   * @param name the name of the column
   * @param term its term
   * @param estimable whether the trials can tell it from the columns before it
   * @param stratum what it changes with: "trial", "furnace" or "day"
   * @param standardError of the change from low to high, or of the coefficient for squares and categories above two
   * @param freedom degrees of freedom of its error
   * @param smallest the smallest effect seen four times in five
   * @param powerAtOne the chance to see an effect of one
   * @param powerAtTwo the chance to see an effect of two
   */
  public record EffectReview(String name, Term term, boolean estimable, String stratum, double standardError, int freedom,
      double smallest, double powerAtOne, double powerAtTwo) {
  }

  /**
   * An interaction that bends an estimate.
   *
   * @param column the column of the model
   * @param interaction the interaction that is not in the model
   * @param share how much of it the estimate takes up, ±1 for all of it
   */
  public record Alias(String column, String interaction, double share) {
  }

  /**
   * Correlations of columns.
   *
   * @param names main effects, then interactions of two
   * @param values by row, NaN where a column does not vary
   */
  public record Correlations(List<String> names, double[][] values) {
  }

  /**
   * The variance of a prediction, in units of the variance between trials.
   *
   * @param average over the allowed settings
   * @param median of them
   * @param ninety what nine settings in ten stay below
   * @param worst the largest
   */
  public record Prediction(double average, double median, double ninety, double worst) {
  }

  /**
   * What the loss of one trial costs.
   *
   * @param trial its place among the trials to be burnt, from 0
   * @param information the share of the information that remains, as the p-th root of the determinants' ratio
   * @param widening how many times wider the worst interval becomes
   * @param worst the effect that suffers most
   * @param lost the effects that could no longer be told apart
   */
  public record LostRun(int trial, double information, double widening, String worst, List<String> lost) {
  }

  /** The review of a design. */
  public static DesignReview of(Design design, Model model, Space space, Strata strata) {
    return new Review(design, model, space, strata).make();
  }

  /** How far an effect reaches per unit of its coefficient: 2 from low to high, 1 for squares and many categories. */
  public static double span(Model model, int column) {
    Term term = model.terms().get(model.termOf(column));
    boolean twoEnds = term.factors().stream().distinct().count() == term.order()
        && term.factors().stream().allMatch(f -> model.factors().get(f).names().size() <= 2);
    return twoEnds && term.order() > 0 ? 2 : 1;
  }

  /** Works one review out. */
  private static final class Review {
    private final Design design;
    private final Model model;
    private final Space space;
    private final Strata strata;
    private final double[][] x;
    private final int[] kept;
    private final double[][] precision;
    private final double[][] inverse;
    private final Freedom freedom;

    Review(Design design, Model model, Space space, Strata strata) {
      this.design = design;
      this.model = model;
      this.space = space;
      this.strata = strata;
      x = model.matrix(design.settings());
      kept = LeastSquares.independent(x);
      precision = strata.precision(design.furnaces(), design.days());
      inverse = Information.inverse(x, kept, precision);
      freedom = Freedom.of(design, x, strata.day() > 0);
    }

    DesignReview make() {
      List<EffectReview> effects = new ArrayList<>();
      for (int c = 1; c < model.size(); c++) {
        effects.add(effect(c));
      }
      List<Alias> aliases = Aliases.of(design, model, kept, precision);
      List<LostRun> lost = new ArrayList<>();
      int[] ahead = ahead();
      for (int i = 0; i < ahead.length; i++) {
        lost.add(lose(ahead[i], i));
      }
      return new DesignReview(effects, freedom, aliases, Aliases.correlations(design), prediction(), leverage(), lost,
          Warnings.of(design, model, effects, freedom, aliases, lost, strata));
    }

    private EffectReview effect(int c) {
      boolean estimable = Arrays.stream(kept).anyMatch(k -> k == c);
      double error = estimable ? span(model, c) * Math.sqrt(inverse[c][c]) : Double.NaN;
      int below = freedom.ofColumn()[c];
      double smallest = estimable ? error * Power.smallest(POWER, below, ALPHA) : Double.POSITIVE_INFINITY;
      return new EffectReview(model.name(c), model.terms().get(model.termOf(c)), estimable, freedom.stratum().get(c), error,
          below, smallest, estimable ? Power.of(1 / error, below, ALPHA) : 0, estimable ? Power.of(2 / error, below, ALPHA) : 0);
    }

    private Prediction prediction() {
      List<double[]> region = space.region();
      double[] variances = region.stream().mapToDouble(s -> variance(model.row(s))).toArray();
      if (kept.length < model.size() || variances.length == 0) {
        return new Prediction(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
      }
      double[] q = Quantiles.of(variances, 0.5, 0.9, 1);
      return new Prediction(Arrays.stream(variances).average().orElse(0), q[0], q[1], q[2]);
    }

    private double variance(double[] row) {
      double sum = 0;
      for (int i : kept) {
        for (int j : kept) {
          sum += row[i] * inverse[i][j] * row[j];
        }
      }
      return sum;
    }

    private double[] leverage() {
      return Arrays.stream(ahead()).mapToDouble(this::leverage).toArray();
    }

    private double leverage(int trial) {
      double[] weighted = new double[model.size()];
      for (int k = 0; k < x.length; k++) {
        for (int c : kept) {
          weighted[c] += precision[trial][k] * x[k][c];
        }
      }
      double leverage = 0;
      for (int a : kept) {
        for (int b : kept) {
          leverage += x[trial][a] * inverse[a][b] * weighted[b];
        }
      }
      return leverage;
    }

    /** The trials that can still be lost: those not burnt, or all when every one was. */
    private int[] ahead() {
      int[] open = IntStream.range(0, design.size()).filter(i -> !design.runs().get(i).done()).toArray();
      return open.length > 0 ? open : IntStream.range(0, design.size()).toArray();
    }

    private LostRun lose(int trial, int place) {
      Design rest = design.without(trial);
      double[][] fewer = model.matrix(rest.settings());
      int[] still = fewer.length == 0 ? new int[0] : LeastSquares.independent(fewer);
      double[][] restPrecision = strata.precision(rest.furnaces(), rest.days());
      double[][] restInverse = Information.inverse(fewer, still, restPrecision);
      List<String> lost = new ArrayList<>();
      double widening = 1;
      String worst = "";
      for (int c : kept) {
        if (Arrays.stream(still).noneMatch(s -> s == c)) {
          lost.add(model.name(c));
        } else if (c > 0 && Math.sqrt(restInverse[c][c] / inverse[c][c]) > widening + 1e-9) {
          widening = Math.sqrt(restInverse[c][c] / inverse[c][c]);
          worst = model.name(c);
        }
      }
      double information = lost.isEmpty() ? Math.exp((Information.logDeterminant(fewer, still, restPrecision)
          - Information.logDeterminant(x, kept, precision)) / kept.length) : 0;
      return new LostRun(place, information, lost.isEmpty() ? widening : Double.POSITIVE_INFINITY, worst, List.copyOf(lost));
    }
  }

  /** The information of the columns that can be told apart. */
  static final class Information {

    private Information() {
    }

    static double[][] part(double[][] x, int[] kept, double[][] precision) {
      double[][] columns = Arrays.stream(x).map(r -> Arrays.stream(kept).mapToDouble(c -> r[c]).toArray()).toArray(double[][]::new);
      return Matrices.quadratic(columns, precision);
    }

    static double logDeterminant(double[][] x, int[] kept, double[][] precision) {
      return daubline.engine.stats.Cholesky.of(part(x, kept, precision)).logDeterminant();
    }

    /** The inverse, spread back over all columns; zero where a column cannot be told apart. */
    static double[][] inverse(double[][] x, int[] kept, double[][] precision) {
      int p = x.length == 0 ? 0 : x[0].length;
      double[][] all = new double[p][p];
      if (kept.length > 0) {
        double[][] inverse = daubline.engine.stats.Cholesky.of(part(x, kept, precision)).inverse();
        for (int i = 0; i < kept.length; i++) {
          for (int j = 0; j < kept.length; j++) {
            all[kept[i]][kept[j]] = inverse[i][j];
          }
        }
      }
      return all;
    }
  }
}
