package daubline.engine.inference;

import daubline.base.Trail;

/**
 * What a criterion read on both sides, in words.
 *
 * @param reason one sentence: the difference, or what was missing on which side
 * @param evidence the evidence as text with unit
 * @param found the trial's as-found value as text with unit
 * @param trail where both came from and how they were converted
 */
public record Explanation(String reason, String evidence, String found, Trail trail) {
}
