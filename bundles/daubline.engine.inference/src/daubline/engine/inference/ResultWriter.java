package daubline.engine.inference;

import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.inference.kernel.Kernel;
import daubline.engine.stats.Quantiles;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Puts figures into words and result records. */
final class ResultWriter {

  private static final double LOW = 0.05;
  private static final double HIGH = 0.95;

  private final List<Criterion> criteria;
  private final ComparisonSettings settings;
  private final double[] weights;

  ResultWriter(List<Criterion> criteria, ComparisonSettings settings, double[] weights) {
    this.criteria = criteria;
    this.settings = settings;
    this.weights = weights;
  }

  Comparison write(SheetData trial, SheetData sheet, PairScore score) {
    List<CriterionResult> results = new ArrayList<>();
    for (int c = 0; c < criteria.size(); c++) {
      results.add(result(c, score));
    }
    double[] drawn = percent(score.pooled(), LOW, 0.5, HIGH);
    double[] band = percent(score.reproduction(), LOW, HIGH);
    return new Comparison(trial.id(), trial.name(), sheet.id(), sheet.name(), results, drawn[1], drawn[0], drawn[2],
        Pool.coverage(score.logs(), weights, score.recoverable()),
        Pool.bound(score.logs(), weights, score.recoverable(), Pool.FLOOR),
        Pool.bound(score.logs(), weights, score.recoverable(), 1), band[0], band[1]);
  }

  private static double[] percent(double[] logs, double... probabilities) {
    double[] quantiles = new double[probabilities.length];
    Arrays.fill(quantiles, Double.NaN);
    if (logs.length > 0) {
      quantiles = Quantiles.of(logs, probabilities);
      for (int i = 0; i < quantiles.length; i++) {
        quantiles[i] = 100 * Math.exp(quantiles[i]);
      }
    }
    return quantiles;
  }

  private CriterionResult result(int c, PairScore score) {
    Criterion criterion = criteria.get(c);
    Explanation words = score.assessments()[c].explain();
    if (!(score.assessments()[c] instanceof Assessment.Tested tested)) {
      return new CriterionResult(criterion.id(), criterion.name(), criterion.group(), Verdict.NOT_TESTED, words.reason(),
          Double.NaN, Double.NaN, Double.NaN, Double.NaN, Double.NaN, weights[c], words.evidence(), words.found(), words.trail());
    }
    Kernel kernel = tested.kernel();
    double p = kernel.compatibility();
    Verdict verdict = p < settings.alpha() ? Verdict.NOT_CONSISTENT : Verdict.CONSISTENT;
    double agreement = Math.exp(score.logs()[c]);
    return new CriterionResult(criterion.id(), criterion.name(), criterion.group(), verdict, reason(words, p, verdict),
        agreement, score.low()[c], score.high()[c], kernel.sigmas(), p, weights[c], words.evidence(), words.found(),
        trail(criterion, agreement, words));
  }

  private String reason(Explanation words, double p, Verdict verdict) {
    String limit = Printed.number(settings.alpha(), 2);
    String chance = p < 0.001 ? "less than 0.001" : Printed.number(p, 2);
    return words.reason() + "; a faithful reproduction would differ this much or more with probability " + chance
        + (verdict == Verdict.CONSISTENT ? ", not below the limit of " + limit : ", below the limit of " + limit);
  }

  private Trail trail(Criterion criterion, double agreement, Explanation words) {
    SettingValues values = settings.of(criterion);
    List<Trail> from = new ArrayList<>(List.of(words.trail()));
    for (Setting setting : criterion.settings()) {
      from.add(Trail.of(setting.name() + " – " + settings.sourceOf(criterion, setting), setting.printed(values.text(setting.key()))));
    }
    return new Trail("Agreement: " + criterion.name(), Printed.number(agreement, 3), "", from);
  }
}
