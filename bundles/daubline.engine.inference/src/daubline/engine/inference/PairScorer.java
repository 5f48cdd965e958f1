package daubline.engine.inference;

import daubline.engine.inference.kernel.Draws;
import daubline.engine.inference.kernel.Kernel;
import daubline.engine.stats.Quantiles;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Scores one trial against one sheet after the other; one for each thread. */
final class PairScorer {

  private static final String REPRODUCTION = "faithful reproduction";

  private final List<Criterion> criteria;
  private final ComparisonSettings settings;
  private final List<SettingValues> values = new ArrayList<>();
  private final double[] weights;
  private final Draws[] reproductions;
  private final double[] one;
  private final double[] sum;
  private Draws[] draws = {};
  private SheetData trial;

  PairScorer(List<Criterion> criteria, ComparisonSettings settings) {
    this.criteria = criteria;
    this.settings = settings;
    this.weights = settings.weights().shares(criteria);
    this.one = new double[settings.draws()];
    this.sum = new double[settings.draws()];
    criteria.forEach(c -> values.add(settings.of(c)));
    this.reproductions = draws(REPRODUCTION);
  }

  double[] weights() {
    return weights;
  }

  private Draws[] draws(String name) {
    Draws.Shared shared = new Draws.Shared(RandomStream.key(settings.seed(), "trial", name));
    return criteria.stream().map(c -> Draws.of(settings.draws(), c.id(), shared)).toArray(Draws[]::new);
  }

  /** Takes up another trial; its random numbers depend on its id and the seed alone. */
  void take(SheetData next) {
    values.forEach(v -> v.forget(trial));
    trial = next;
    draws = draws(next.id());
  }

  Assessment assess(SheetData sheet, int criterion) {
    return criteria.get(criterion).assess(sheet, trial, values.get(criterion));
  }

  /** Log agreements of one criterion for every draw, floored; the array is used again by the next call. */
  double[] drawn(SheetData sheet, int criterion, Kernel kernel) {
    kernel.logs(draws[criterion].against(() -> sheetKey(sheet, criterion)), one);
    return floored();
  }

  private double[] reproduced(SheetData sheet, int criterion, Kernel kernel) {
    kernel.reproduce(reproductions[criterion].against(() -> sheetKey(sheet, criterion)), one);
    return floored();
  }

  private long sheetKey(SheetData sheet, int criterion) {
    return RandomStream.key(settings.seed(), "sheet", sheet.id(), criteria.get(criterion).id());
  }

  private double[] floored() {
    for (int m = 0; m < one.length; m++) {
      // also where an agreement is no number at all
      one[m] = one[m] >= Pool.LOG_FLOOR ? one[m] : Pool.LOG_FLOOR;
    }
    return one;
  }

  PairScore score(SheetData sheet) {
    int n = criteria.size();
    Assessment[] assessments = new Assessment[n];
    boolean[] recoverable = new boolean[n];
    double[][] figures = new double[5][n];
    double[] pooled = new double[settings.draws()];
    double[] reproduction = new double[settings.draws()];
    double tested = 0;
    for (int c = 0; c < n; c++) {
      assessments[c] = assess(sheet, c);
      recoverable[c] = !(assessments[c] instanceof Assessment.NotTested not) || not.recoverable();
      if (assessments[c] instanceof Assessment.Tested answer) {
        figures(figures, c, answer.kernel(), drawn(sheet, c, answer.kernel()));
        add(pooled, one, weights[c]);
        add(reproduction, reproduced(sheet, c, answer.kernel()), weights[c]);
        tested += weights[c];
      } else {
        fillMissing(figures, c);
      }
    }
    return new PairScore(assessments, figures[0], recoverable, figures[1], figures[2], figures[3], figures[4],
        scaled(pooled, tested), shifted(scaled(reproduction, tested), pooled, figures[0]));
  }

  /**
   * The agreement printed is a median over the trial's uncertainty, which lies below the agreement at the values as
   * recorded; what a true reproduction would score is lowered alike, so that both can be compared.
   */
  private double[] shifted(double[] reproduction, double[] pooled, double[] logs) {
    if (reproduction.length > 0) {
      double shift = Quantiles.of(pooled, 0.5)[0] - Math.log(Pool.score(logs, weights) / 100);
      for (int m = 0; m < reproduction.length; m++) {
        reproduction[m] = Math.min(0, reproduction[m] + shift);
      }
    }
    return reproduction;
  }

  /** 5 %, 50 % and 95 % point of the pooled agreement, 0 to 100, and the coverage; allocates next to nothing. */
  double[] pooled(SheetData sheet) {
    Arrays.fill(sum, 0);
    double tested = 0;
    double all = 0;
    for (int c = 0; c < weights.length; c++) {
      int criterion = c;
      Assessment answer = assess(sheet, c);
      if (answer instanceof Assessment.Tested known) {
        known.kernel().addTo(draws[c].against(() -> sheetKey(sheet, criterion)), weights[c], Pool.LOG_FLOOR, sum, one);
        tested += weights[c];
        all += weights[c];
      } else {
        all += ((Assessment.NotTested) answer).recoverable() ? weights[c] : 0;
      }
    }
    if (tested <= 0) {
      return new double[] {Double.NaN, Double.NaN, Double.NaN, 0};
    }
    double[] ends = Quantiles.within(sum, 0.05, 0.5, 0.95);
    return new double[] {percent(ends[0] / tested), percent(ends[1] / tested), percent(ends[2] / tested), tested / all};
  }

  private static double percent(double log) {
    return 100 * Math.exp(log);
  }

  private static void fillMissing(double[][] figures, int c) {
    for (double[] figure : figures) {
      figure[c] = Double.NaN;
    }
  }

  private static void figures(double[][] figures, int c, Kernel kernel, double[] drawn) {
    double[] ends = Quantiles.of(drawn, 0.05, 0.95);
    figures[0][c] = kernel.log();
    figures[1][c] = Math.exp(ends[0]);
    figures[2][c] = Math.exp(ends[1]);
    double mean = 0;
    for (double log : drawn) {
      mean += log / drawn.length;
    }
    double variance = 0;
    for (double log : drawn) {
      variance += (log - mean) * (log - mean) / (drawn.length - 1);
    }
    figures[3][c] = mean;
    figures[4][c] = variance;
  }

  static void add(double[] sum, double[] logs, double weight) {
    for (int m = 0; m < sum.length; m++) {
      sum[m] += weight * logs[m];
    }
  }

  private static double[] scaled(double[] sum, double tested) {
    if (tested <= 0) {
      return new double[0];
    }
    for (int m = 0; m < sum.length; m++) {
      sum[m] /= tested;
    }
    return sum;
  }
}
