package daubline.engine.inference;

/**
 * The figures of one trial against one sheet, by criterion and pooled.
 *
 * @param assessments the answer of each criterion
 * @param logs logarithm of each point agreement, NaN when not tested
 * @param recoverable whether the evidence could have been recovered
 * @param low 5 % point of each agreement over the draws, NaN when not tested
 * @param high 95 % point of each agreement over the draws, NaN when not tested
 * @param mean mean of each floored log agreement over the draws, NaN when not tested
 * @param variance variance of each floored log agreement over the draws, NaN when not tested
 * @param pooled pooled log agreement of each draw; empty when nothing was tested
 * @param reproduction pooled log agreement of each drawn true reproduction; empty when nothing was tested
 */
record PairScore(Assessment[] assessments, double[] logs, boolean[] recoverable, double[] low, double[] high,
    double[] mean, double[] variance, double[] pooled, double[] reproduction) {
}
