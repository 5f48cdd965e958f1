package daubline.engine.inference;

import java.util.List;

/**
 * One trial against one evidence sheet: agreement and coverage, always together, with the reasons.
 *
 * @param trial id of the trial
 * @param trialName its name as printed
 * @param sheet id of the evidence sheet
 * @param sheetName its name as printed
 * @param criteria every criterion in the order of the list
 * @param agreement median agreement 0 to 100, NaN when nothing was tested
 * @param low 5 % point of the agreement, NaN when nothing was tested
 * @param high 95 % point of the agreement, NaN when nothing was tested
 * @param coverage weight tested over weight of all criteria that could have been tested, 0 to 1; evidence that nobody
 *     could have recovered does not count
 * @param boundLow agreement if everything untested disagreed
 * @param boundHigh agreement if everything untested agreed fully
 * @param bandLow 5 % point of what a true reproduction would score, NaN when nothing was tested
 * @param bandHigh 95 % point of what a true reproduction would score, NaN when nothing was tested
 */
public record Comparison(String trial, String trialName, String sheet, String sheetName, List<CriterionResult> criteria,
    double agreement, double low, double high, double coverage, double boundLow, double boundHigh,
    double bandLow, double bandHigh) {

  public Comparison {
    criteria = List.copyOf(criteria);
  }

  /** Whether any criterion could be tested. */
  public boolean isTested() {
    return criteria.stream().anyMatch(CriterionResult::isTested);
  }

  /** How many criteria have this verdict. */
  public long count(Verdict verdict) {
    return criteria.stream().filter(c -> c.verdict() == verdict).count();
  }
}
