package daubline.engine.design.next;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Bayes' rule for normal outcomes, by hand (Gelman et al. 2013, Bayesian Data Analysis, section 2.5: normal mean, known variance). */
class BeliefsTest {

  private static final Design DONE = Design.independent("two", List.of(Factor.measured("b", "blast", "", 0, 1)), new double[][] {{-1}, {1}});

  @Test
  void exactRivalsShareBeliefByTheirLikelihoods() {
    // outcomes 1 and 2, scatter 1; A predicts 1 and 2 (missed 0), B predicts 0 and 0 (missed 1 and 2): ratio e^{5/2}
    List<Rival> after = Beliefs.after(List.of(new Rival("A", 1, s -> 1.5 + s[0] / 2, 0), new Rival("B", 1, s -> 0, 0)), DONE, new double[] {1, 2}, 1);
    assertEquals(Math.exp(2.5), after.get(0).probability() / after.get(1).probability(), 1e-12);
    assertEquals(0, after.get(1).prediction().applyAsDouble(new double[] {0}), 0, "an exact prediction does not move");
  }

  @Test
  void whatARivalMissesEverywhereAlikeIsLearnt() {
    // own deviation 2, scatter 1, two trials missed by 3 and 1: precision 1/4 + 2, mean (3 + 1) / 2.25, deviation √(1/2.25)
    Rival after = Beliefs.after(List.of(new Rival("A", 1, s -> 10, 2)), DONE, new double[] {13, 11}, 1).get(0);
    assertEquals(10 + 4 / 2.25, after.prediction().applyAsDouble(new double[] {0}), 1e-12);
    assertEquals(Math.sqrt(1 / 2.25), after.deviation(), 1e-12);
  }

  /** The marginal likelihood against the covariance written out: variance 1 + v, covariance v. */
  @Test
  void theLikelihoodIsThatOfTheWholeCovariance() {
    double v = 4;
    double[] y = {2.5, -1};
    List<Rival> after = Beliefs.after(List.of(new Rival("A", 1, s -> 0, 2), new Rival("B", 1, s -> 0, 0)), DONE, y, 1);
    double determinant = (1 + v) * (1 + v) - v * v;
    double a = -0.5 * (Math.log(determinant) + ((1 + v) * (y[0] * y[0] + y[1] * y[1]) - 2 * v * y[0] * y[1]) / determinant);
    double b = -0.5 * (y[0] * y[0] + y[1] * y[1]);
    assertEquals(a - b, Math.log(after.get(0).probability() / after.get(1).probability()), 1e-12);
  }

  @Test
  void nothingKnownMovesNothing() {
    List<Rival> rivals = List.of(new Rival("A", 1, s -> 0, 2));
    assertSame(rivals, Beliefs.after(rivals, DONE, new double[] {Double.NaN, Double.NaN}, 1));
  }
}
