package daubline.engine.design.advise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Progress;
import daubline.engine.design.Randomiser;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.search.Budget;
import daubline.engine.design.stock.Timetable;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Centre trials, repeats and shared days that were asked for are in every design offered. */
class ExtrasTest {

  private static final List<Factor> FACTORS = List.of(Factor.measured("h", "height", "mm", 600, 900).changing(Change.EACH_FURNACE),
      Factor.measured("b", "blast", "L/min", 400, 800), Factor.category("o", "ore", "bog", "rock"));

  private static DesignAdvisor.Advice ask(Budget budget, Extras extras, int perDay) {
    return DesignAdvisor.recommend(new DesignAdvisor.Request(new Space(FACTORS, List.of()), Question.WHICH_MATTER, budget, new Strata(1, perDay > 1 ? 0.5 : 0), extras,
        perDay, List.of(), true, 10, 1), Progress.NONE);
  }

  private static List<DesignAdvisor.Option> made(DesignAdvisor.Advice advice) {
    return java.util.stream.Stream.concat(java.util.stream.Stream.of(advice.recommended()), advice.rejected().stream()).filter(o -> o.design() != null).toList();
  }

  @Test
  void theyStandInTheFurnacesWithinTheBudget() {
    List<DesignAdvisor.Option> made = made(ask(Budget.trials(14, 3), new Extras(2, 2), 1));
    assertTrue(made.size() >= 2, made.size() + " designs");
    for (DesignAdvisor.Option option : made) {
      Design d = option.design();
      assertTrue(d.size() <= 14, option.name());
      assertTrue(Arrays.stream(d.furnaces()).boxed().collect(Collectors.groupingBy(f -> f, Collectors.counting())).values().stream().allMatch(n -> n <= 3), option.name());
      assertTrue(d.settings().stream().filter(s -> s[1] == 0).count() >= 2, option.name() + ": two trials with the blast in the middle");
      long different = d.settings().stream().map(Arrays::toString).distinct().count();
      assertTrue(different <= d.size() - 2, option.name() + ": " + different + " different settings of " + d.size());
      // what was built stays as it was built
      d.runs().stream().collect(Collectors.groupingBy(Run::furnace)).values().forEach(runs -> assertEquals(1, runs.stream().map(r -> r.setting()[0]).distinct().count()));
    }
    // repeats leave something to judge the error by
    assertTrue(made.get(0).review().effects().stream().allMatch(e -> e.freedom() > 0), made.get(0).name());
  }

  @Test
  void whatDoesNotFitIsRefused() {
    assertTrue(assertThrows(IllegalArgumentException.class, () -> ask(Budget.trials(6, 2), new Extras(4, 2), 1)).getMessage().contains("ask for fewer"));
    Design ores = Design.independent("ores", List.of(Factor.category("o", "ore", "bog", "rock")), new double[][] {{0}, {1}});
    assertTrue(assertThrows(IllegalArgumentException.class, () -> new Extras(1, 0).add(ores, model(ores), new Space(ores.factors(), List.of()), Strata.NONE,
        Budget.trials(9, 1))).getMessage().contains("ask for repeats"));
  }

  private static daubline.engine.design.Model model(Design design) {
    return daubline.engine.design.Model.main(design.factors());
  }

  /** Two burns on a day: never twice the same furnace, days one after the other, and the timetable keeps the pairs together. */
  @Test
  void furnacesThatShareADayAreBurntTogether() {
    for (DesignAdvisor.Option option : made(ask(Budget.trials(12, 3), Extras.NONE, 2))) {
      Randomiser.Plan plan = Randomiser.order(option.design(), 7);
      int[] days = plan.design().days();
      int[] furnaces = plan.design().furnaces();
      assertTrue(Arrays.stream(days).distinct().count() < days.length, option.name() + ": days are shared");
      assertEquals(Randomiser.ALGORITHM_OF_DAYS, plan.algorithm());
      Set<Integer> seen = new HashSet<>();
      for (int i = 0; i < days.length; i++) {
        assertTrue(i > 0 && days[i] == days[i - 1] || seen.add(days[i]), option.name() + ": a day comes in one piece");
        assertTrue(i == 0 || days[i] != days[i - 1] || furnaces[i] != furnaces[i - 1], option.name() + ": no furnace twice a day");
      }
      int[] from = plan.from().clone();
      Arrays.sort(from);
      assertTrue(Arrays.equals(from, IntStream.range(0, from.length).toArray()), "every trial once");
      Timetable table = Timetable.of(furnaces, days, new Timetable.Work(8, 2, 2, 5, 1, 4, 1, 1, 2), d -> d % 7 > 4);
      int[] start = new int[days.length];
      table.bars().stream().filter(b -> b.trial() >= 0).forEach(b -> start[b.trial()] = b.start());
      for (int i = 1; i < days.length; i++) {
        assertEquals(days[i] == days[i - 1], start[i] == start[i - 1], option.name() + " place " + i);
      }
    }
  }
}
