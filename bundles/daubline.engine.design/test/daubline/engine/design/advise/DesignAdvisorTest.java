package daubline.engine.design.advise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Change;
import daubline.engine.design.Condition;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Progress;
import daubline.engine.design.Rule;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.search.Budget;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DesignAdvisorTest {

  private static List<Factor> measured(int k) {
    return IntStream.range(0, k).mapToObj(i -> Factor.measured("f" + i, "factor " + (i + 1), "", 0, 10)).toList();
  }

  private static DesignAdvisor.Advice ask(Space space, Question question, Budget budget) {
    return DesignAdvisor.recommend(new DesignAdvisor.Request(space, question, budget, Strata.USUAL, 10, 1), Progress.NONE);
  }

  @Test
  void sixFactorsInSixteenTrialsAreScreenedByTheKnownFraction() {
    DesignAdvisor.Advice advice = ask(new Space(measured(6), List.of()), Question.WHICH_MATTER, Budget.trials(16, 1));
    assertEquals("two-level fraction", advice.recommended().name());
    assertTrue(advice.recommended().design().name().contains("resolution IV"));
    assertTrue(advice.rejected().stream().noneMatch(o -> o.verdict().isEmpty()), "every rejected design says why");
    assertEquals(Catalogue.all().size(), advice.rejected().size());
    assertTrue(advice.rejected().stream().anyMatch(o -> o.name().equals("full factorial") && o.verdict().contains("it needs 64 trials")));
  }

  @Test
  void bentResponsesOfThreeFactorsGetASurface() {
    DesignAdvisor.Advice advice = ask(new Space(measured(3), List.of()), Question.BEST_SETTING, Budget.trials(18, 1));
    assertTrue(Double.isFinite(advice.recommended().score()));
    assertTrue(advice.rejected().stream().filter(o -> o.name().equals("two-level fraction")).findFirst().orElseThrow().verdict()
        .contains("cannot tell apart"));
  }

  @Test
  void nineSmeltsWithHeightGetSeveralFurnaces() {
    List<Factor> factors = List.of(Factor.measured("h", "height", "m", .6, 1.2).changing(Change.EACH_FURNACE),
        Factor.measured("b", "blast", "L/min", 200, 600), Factor.category("o", "ore", "bog", "rock", "sand"));
    DesignAdvisor.Advice advice = ask(new Space(factors, List.of()), Question.WHICH_MATTER, Budget.trials(9, 2));
    Design design = advice.recommended().design();
    assertEquals(9, design.size());
    assertTrue(design.furnaceCount() >= 5);
    assertTrue(advice.recommended().review().effects().stream().allMatch(e -> e.estimable() && Double.isFinite(e.smallest())));
    assertFalse(advice.reasons().isEmpty());
  }

  @Test
  void forbiddenCornersRuleOutTheClosedDesigns() {
    Space space = new Space(measured(3), List.of(Rule.never("chokes", Condition.atLeast("f0", 9), Condition.atLeast("f1", 9))));
    DesignAdvisor.Advice advice = ask(space, Question.HOW_MUCH, Budget.trials(12, 1));
    assertTrue(advice.recommended().design().settings().stream().allMatch(space::allows));
    assertTrue(advice.rejected().stream().anyMatch(o -> o.verdict().contains("rules forbid")));
  }

  @Test
  void anImpossibleQuestionIsRefusedWithAWayOut() {
    String message = assertThrows(IllegalArgumentException.class, () -> ask(new Space(measured(6), List.of()), Question.BEST_SETTING,
        Budget.trials(9, 1))).getMessage();
    assertTrue(message.contains("28 unknowns") && message.contains("drop a factor"), message);
  }

  @Test
  void sameSeedSameAdvice() {
    Space space = new Space(measured(4), List.of());
    DesignAdvisor.Advice a = ask(space, Question.HOW_MUCH, Budget.trials(14, 1));
    DesignAdvisor.Advice b = ask(space, Question.HOW_MUCH, Budget.trials(14, 1));
    assertEquals(a.recommended().name(), b.recommended().name());
    assertTrue(java.util.Arrays.deepEquals(a.recommended().design().settings().toArray(), b.recommended().design().settings().toArray()));
  }

  @Test
  void aBudgetThatLeavesNothingToJudgeFurnacesByIsSaidAndUsed() {
    // three columns that change with the furnace and four furnaces: with the mean nothing is left between furnaces
    List<Factor> factors = List.of(Factor.category("t", "type", "shaft", "short shaft", "domed").changing(Change.EACH_FURNACE),
        Factor.category("s", "slag", "tapping", "pit").changing(Change.EACH_FURNACE), Factor.measured("b", "blast", "L/min", 500, 800));
    Space space = new Space(factors, List.of());
    Budget budget = new Budget(8, 2, (furnaces, trials) -> furnaces <= 4);
    assertThrows(IllegalArgumentException.class, () -> ask(space, Question.WHICH_MATTER, budget));
    DesignAdvisor.Advice advice = DesignAdvisor.recommend(new DesignAdvisor.Request(space, Question.WHICH_MATTER, budget, Strata.USUAL, Extras.NONE, 1, List.of(), true, 10, 1), Progress.NONE);
    assertEquals(8, advice.recommended().design().size());
    assertEquals(4, advice.recommended().design().furnaceCount());
    var effects = advice.recommended().review().effects();
    assertTrue(effects.stream().allMatch(e -> e.estimable()));
    assertTrue(Double.isFinite(effects.get(3).smallest()), "blast is judged inside the furnaces");
    assertTrue(advice.reasons().stream().anyMatch(r -> r.contains("an estimate and no interval") && r.contains("slag") && !r.contains("blast,")), advice.reasons().toString());
  }

  @Test
  void whatWasBurntCountsAndIsAddedTo() {
    // the half fraction I = +ABC was burnt; four more for all interactions of two are the other half (complete enumeration, det 8^7)
    List<Factor> factors = measured(3);
    List<Run> done = List.of(Run.alone(0, 1, -1, -1), Run.alone(1, -1, 1, -1), Run.alone(2, -1, -1, 1), Run.alone(3, 1, 1, 1)).stream()
        .map(r -> new Run(r.setting(), r.furnace(), r.day(), true)).toList();
    DesignAdvisor.Advice advice = DesignAdvisor.recommend(new DesignAdvisor.Request(new Space(factors, List.of()), Question.HOW_MUCH, Budget.trials(4, 1), Strata.USUAL,
        Extras.NONE, 1, done, false, 20, 1), Progress.NONE);
    Design design = advice.recommended().design();
    assertEquals(8, design.size());
    for (Run run : design.runs().subList(4, 8)) {
      assertEquals(-1, run.setting()[0] * run.setting()[1] * run.setting()[2], 1e-12);
      assertTrue(run.furnace() >= 4, "new trials have furnaces of their own");
    }
    assertEquals(4, advice.recommended().review().lost().size(), "only what is still to be burnt can be lost");
    assertTrue(advice.reasons().contains("4 trials burnt already count; what follows adds to them."), advice.reasons().toString());
    assertTrue(advice.rejected().stream().allMatch(o -> o.verdict().contains("starts anew")));
  }
}
