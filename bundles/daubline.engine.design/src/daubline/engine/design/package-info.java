/**
 * Designs of trial series, what they can show, and what the burnt trials have shown. The façades are
 * {@link daubline.engine.design.advise.DesignAdvisor}, {@link daubline.engine.design.judge.DesignReview},
 * {@link daubline.engine.design.learn.EffectsReport}, {@link daubline.engine.design.next.NextTrial} and
 * {@link daubline.engine.design.stock.Capacity}.
 */
package daubline.engine.design;
