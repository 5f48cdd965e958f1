package daubline.engine.design.next;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Condition;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Rule;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class NextTrialTest {

  private static final List<Factor> FACTORS = List.of(Factor.measured("b", "blast", "L/min", 200, 600),
      Factor.measured("c", "charge ratio", "", 0.5, 1.5));
  private static final Space SPACE = new Space(FACTORS, List.of());

  private static NextTrial ask(Design done, Model model, Space space, double[] agreement, List<Rival> rivals) {
    return NextTrial.suggest(new NextTrial.Request(done, model, space, Strata.NONE, agreement, rivals, 1, "12 kg ore, 30 kg charcoal", 3),
        Progress.NONE);
  }

  private static double[] none(int n) {
    return IntStream.range(0, n).mapToDouble(i -> Double.NaN).toArray();
  }

  @Test
  void threeCornersAskForTheFourth() {
    Design done = Design.independent("three", FACTORS, new double[][] {{-1, -1}, {1, -1}, {-1, 1}});
    NextTrial.Suggestion s = ask(done, Model.main(FACTORS), SPACE, none(3), List.of()).suggestions().get(0);
    assertEquals(NextTrial.Aim.AUGMENT, s.aim());
    assertArrayEquals(new double[] {1, 1}, s.setting());
    // with M⁻¹ of the three corners, x'M⁻¹x at (1,1) is 3: the plane through three corners takes (−1, 1, 1) of them
    assertEquals(3, s.gain(), 1e-9);
    assertTrue(s.text().contains("blast 600") && s.cost().startsWith("12 kg ore"), s.text());
  }

  @Test
  void tooFewTrialsForTheModelAreSaid() {
    Design done = Design.independent("two", FACTORS, new double[][] {{-1, -1}, {1, -1}});
    NextTrial next = ask(done, Model.interactions(FACTORS), SPACE, none(2), List.of());
    assertTrue(next.suggestions().get(0).separates().contains("first of 2 trials"), next.suggestions().get(0).separates());
    assertEquals(List.of("next.rivals", "next.too-few"), next.findings().stream().map(f -> f.code()).toList());
  }

  @Test
  void rivalsAreSeparatedWhereTheirPredictionsAreFarthestApart() {
    // both agree at the low blast; the gap grows to 4 standard deviations at the high one. Equal belief, equal variance:
    // separation = ½ · 2 · ¼ · 16 = 4
    Design done = Design.independent("four", FACTORS, new double[][] {{-1, -1}, {1, -1}, {-1, 1}, {0, 1}});
    List<Rival> rivals = List.of(new Rival("tall shaft", 1, s -> 5 + s[0], 0), new Rival("low shaft", 1, s -> 4 - s[0] - 1 + 0 * s[1], 0));
    NextTrial.Suggestion s = ask(done, Model.main(FACTORS), SPACE, none(4), rivals).suggestions().get(1);
    assertEquals(NextTrial.Aim.DISCRIMINATE, s.aim());
    assertEquals(1, s.setting()[0]);
    assertEquals(4, s.gain(), 1e-12);
    assertEquals(4, s.ties().size(), "every charge ratio does as well");
    assertTrue(s.separates().contains("low shaft (predicts 2), tall shaft (predicts 6)"), s.separates());
    assertTrue(s.certainty().contains("98 %"), s.certainty());
  }

  @Test
  void improvementClimbsTheSurfaceAndKeepsTheRules() {
    double[][] grid = new double[16][];
    double[] agreement = new double[16];
    for (int i = 0; i < 16; i++) {
      grid[i] = new double[] {-1 + i % 4 * 2 / 3.0, -1 + i / 4 * 2 / 3.0};
      agreement[i] = 80 - 30 * Math.pow(grid[i][0] - 0.5, 2) - 20 * Math.pow(grid[i][1], 2);
    }
    Design done = Design.independent("grid", FACTORS, grid);
    NextTrial.Suggestion s = ask(done, Model.quadratic(FACTORS), SPACE, agreement, List.of()).suggestions().get(1);
    assertEquals(NextTrial.Aim.IMPROVE, s.aim());
    assertArrayEquals(new double[] {0.5, 0}, s.setting(), 1e-12);
    Space ruled = new Space(FACTORS, List.of(Rule.never("too hot", Condition.atLeast("b", 450))));
    NextTrial.Suggestion inside = ask(done, Model.quadratic(FACTORS), ruled, agreement, List.of()).suggestions().get(1);
    assertTrue(ruled.allows(inside.setting()));
  }
}
