package daubline.engine.inference;

/**
 * Agreement and coverage of many trials with many sheets, without words; for one pair in words there is {@link Comparison}.
 * The first index is the trial, the second the sheet, in the order given.
 *
 * @param agreement median agreement 0 to 100, NaN when nothing was tested
 * @param low 5 % point of the agreement, NaN when nothing was tested
 * @param high 95 % point of the agreement, NaN when nothing was tested
 * @param coverage weight tested over weight that could have been tested
 */
public record ScoreTable(double[][] agreement, double[][] low, double[][] high, double[][] coverage) {

  static ScoreTable empty(int trials, int sheets) {
    return new ScoreTable(new double[trials][sheets], new double[trials][sheets], new double[trials][sheets], new double[trials][sheets]);
  }
}
