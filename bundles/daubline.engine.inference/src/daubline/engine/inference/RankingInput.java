package daubline.engine.inference;

/**
 * What the ranking needs of one trial.
 *
 * @param score the figures at the user's weights
 * @param drawn floored log agreement of each criterion and draw as single precision; null where not tested
 * @param uncertain pooled log agreement of each draw with the weights of that draw
 * @param coverage weight tested over weight that could have been tested
 */
record RankingInput(PairScore score, float[][] drawn, double[] uncertain, double coverage) {

  static RankingInput of(PairScorer scorer, SheetData sheet, double[][] weights) {
    PairScore score = scorer.score(sheet);
    float[][] drawn = new float[score.logs().length][];
    for (int c = 0; c < drawn.length; c++) {
      if (score.assessments()[c] instanceof Assessment.Tested tested) {
        drawn[c] = single(scorer.drawn(sheet, c, tested.kernel()));
      }
    }
    RankingInput input = new RankingInput(score, drawn, new double[weights.length],
        Pool.coverage(score.logs(), scorer.weights(), score.recoverable()));
    for (int m = 0; m < weights.length; m++) {
      input.uncertain[m] = input.pooled(weights[m], m);
    }
    return input;
  }

  private static float[] single(double[] values) {
    float[] single = new float[values.length];
    for (int m = 0; m < single.length; m++) {
      single[m] = (float) values[m];
    }
    return single;
  }

  boolean isTested() {
    return score.pooled().length > 0;
  }

  double median() {
    return RankingEngine.median(score.pooled());
  }

  /** Pooled log agreement of every draw under fixed weights. */
  double[] pooled(double[] weights) {
    double[] pooled = new double[uncertain.length];
    for (int m = 0; m < pooled.length; m++) {
      pooled[m] = pooled(weights, m);
    }
    return pooled;
  }

  private double pooled(double[] weights, int m) {
    double sum = 0;
    double tested = 0;
    for (int c = 0; c < drawn.length; c++) {
      if (drawn[c] != null) {
        sum += weights[c] * drawn[c][m];
        tested += weights[c];
      }
    }
    return tested > 0 ? sum / tested : Pool.LOG_FLOOR;
  }
}
