package daubline.engine.design.learn;

import daubline.engine.design.Design;
import daubline.engine.design.Model;

/**
 * What effects are asked for.
 *
 * @param design the trials as burnt
 * @param model the effects asked for
 * @param outcomes the outcome of each trial; NaN for a trial that failed or was not measured
 * @param outcome the name of the outcome
 * @param unit the symbol of its unit, may be empty
 * @param confidence of the intervals, such as 0.95
 * @param seed of the simulated critical values and drawn permutations
 */
public record EffectsRequest(Design design, Model model, double[] outcomes, String outcome, String unit, double confidence,
    long seed) {

  /** Checks the sizes. @throws IllegalArgumentException saying what does not fit */
  public EffectsRequest {
    outcomes = outcomes.clone();
    if (outcomes.length != design.size()) {
      throw new IllegalArgumentException(outcomes.length + " outcomes of " + outcome + " for " + design.size() + " trials");
    }
    if (!(confidence > 0.5 && confidence < 1)) {
      throw new IllegalArgumentException("the confidence must lie between 0.5 and 1, not at " + confidence);
    }
    if (!model.factors().equals(design.factors())) {
      throw new IllegalArgumentException("the model and the design have different factors");
    }
  }
}
