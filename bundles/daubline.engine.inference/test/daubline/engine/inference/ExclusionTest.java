package daubline.engine.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Trail;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ExclusionTest {

  static Comparison comparison(double... compatibilities) {
    List<CriterionResult> results = new ArrayList<>();
    for (int i = 0; i < compatibilities.length; i++) {
      results.add(new CriterionResult("c" + i, "c" + i, Group.GEOMETRY, compatibilities[i] < 0.05 ? Verdict.NOT_CONSISTENT : Verdict.CONSISTENT,
          "", 1, 1, 1, 0, compatibilities[i], 1.0 / compatibilities.length, "", "", Trail.of("", "")));
    }
    return new Comparison("t", "t", "e", "e", results, 50, 40, 60, 1, 50, 50, 40, 90);
  }

  /** Binomial tails: P(≥ 1 of 3 at .1) = .271, P(≥ 2 of 3 at .1) = .028, P(≥ 2 of 20 at .001) by exact fractions. */
  @Test
  void binomialTails() {
    assertEquals(0.271, Exclusion.atLeast(1, 3, 0.1), 1e-12);
    assertEquals(0.028, Exclusion.atLeast(2, 3, 0.1), 1e-12);
    assertEquals(1.877344731773e-04, Exclusion.atLeast(2, 20, 0.001), 1e-14);
    assertEquals(1, Exclusion.atLeast(2, 3, 1), 1e-12);
  }

  @Test
  void oneStrongContradictionIsEnough() {
    Exclusion exclusion = Exclusion.of(comparison(0.5, 1e-6, 0.03, 0.9), 0.05);
    assertEquals(List.of("c1"), exclusion.criteria().stream().map(CriterionResult::criterion).toList());
  }

  /** One of ten at 0.03 is chance; three of ten at 0.01 are not. */
  @Test
  void weakOnesNeedCompany() {
    assertFalse(Exclusion.of(comparison(0.03, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1), 0.05).isRuledOut());
    Exclusion three = Exclusion.of(comparison(0.01, 0.0101, 0.0102, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1), 0.05);
    assertEquals(2, three.criteria().size());
  }

  @Test
  void nothingTestedRulesNothingOut() {
    assertTrue(Double.isNaN(Exclusion.of(comparison(), 0.05).probability()));
  }

  /** Uniform compatibilities, as of true reproductions, are ruled out no more often than α. */
  @Test
  void keepsItsErrorRate() {
    RandomStream random = new RandomStream(RandomStream.key(2, "exclusion"));
    int out = 0;
    for (int i = 0; i < 20_000; i++) {
      out += Exclusion.of(comparison(random.uniforms(12)), 0.05).isRuledOut() ? 1 : 0;
    }
    assertTrue(out < 0.05 * 20_000, "ruled out " + out);
  }
}
