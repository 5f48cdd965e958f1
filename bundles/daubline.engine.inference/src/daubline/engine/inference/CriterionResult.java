package daubline.engine.inference;

import daubline.base.Trail;

/**
 * What one criterion says of one trial and one evidence sheet.
 *
 * @param criterion id of the criterion
 * @param name its name as printed
 * @param group the group it is weighed in
 * @param verdict consistent, not consistent or not tested
 * @param reason why, in one sentence; for not tested what was missing on which side
 * @param agreement point agreement 0 to 1, NaN when not tested
 * @param low 5 % point of the agreement over the draws, NaN when not tested
 * @param high 95 % point of the agreement over the draws, NaN when not tested
 * @param sigmas difference in combined standard uncertainties, signed where it has a sign, NaN when not tested
 * @param compatibility two-sided probability of a difference this large or larger if the trial were a true reproduction,
 *     0 to 1, NaN when not tested
 * @param weight share of this criterion in all weights, 0 to 1
 * @param evidence the evidence as text with unit
 * @param found the trial's as-found value as text with unit
 * @param trail where both came from
 */
public record CriterionResult(String criterion, String name, Group group, Verdict verdict, String reason,
    double agreement, double low, double high, double sigmas, double compatibility, double weight,
    String evidence, String found, Trail trail) {

  /** Whether both sides could be compared. */
  public boolean isTested() {
    return verdict != Verdict.NOT_TESTED;
  }
}
