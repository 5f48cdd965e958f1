package daubline.engine.design.next;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.learn.BoxMeyer;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FollowUpTest {

  /** Injection moulding, Box, Hunter & Hunter 1978; Meyer, Steinberg & Box 1996: block, A … H, shrinkage. */
  static final double[][] MOULDING = {{-1, -1, -1, -1, 1, 1, 1, -1, 1, 14}, {-1, 1, -1, -1, -1, -1, 1, 1, 1, 16.8},
    {-1, -1, 1, -1, -1, 1, -1, 1, 1, 15}, {-1, 1, 1, -1, 1, -1, -1, -1, 1, 15.4}, {-1, -1, -1, 1, 1, -1, -1, 1, 1, 27.6},
    {-1, 1, -1, 1, -1, 1, -1, -1, 1, 24}, {-1, -1, 1, 1, -1, -1, 1, -1, 1, 27.4}, {-1, 1, 1, 1, 1, 1, 1, 1, 1, 22.6},
    {-1, 1, 1, 1, -1, -1, -1, 1, -1, 22.3}, {-1, -1, 1, 1, 1, 1, -1, -1, -1, 17.1}, {-1, 1, -1, 1, 1, -1, 1, -1, -1, 21.5},
    {-1, -1, -1, 1, -1, 1, 1, 1, -1, 17.5}, {-1, 1, 1, -1, -1, 1, 1, -1, -1, 15.9}, {-1, -1, 1, -1, 1, -1, 1, 1, -1, 21.9},
    {-1, 1, -1, -1, 1, 1, -1, 1, -1, 16.7}, {-1, -1, -1, -1, -1, -1, -1, -1, -1, 20.3}, {1, -1, 1, 1, 1, -1, -1, -1, 1, 29.4},
    {1, -1, 1, -1, -1, -1, 1, 1, 1, 19.7}, {1, 1, 1, -1, -1, 1, -1, -1, 1, 13.6}, {1, 1, 1, 1, 1, 1, 1, 1, 1, 24.7}};
  private static final BoxMeyer.Prior PRIOR = new BoxMeyer.Prior(0.25, 2, 5, 3);

  static double[][] part(int trials, int from, int to) {
    return Arrays.stream(MOULDING).limit(trials).map(r -> Arrays.copyOfRange(r, from, to)).toArray(double[][]::new);
  }

  static double[] outcomes(int trials) {
    return Arrays.stream(MOULDING).limit(trials).mapToDouble(r -> r[9]).toArray();
  }

  @Test
  void activityProbabilitiesOfTheMouldingScreen() {
    // Source: Meyer, Steinberg & Box 1996 and R BsMD on the same inputs.
    BoxMeyer before = BoxMeyer.of(part(16, 1, 9), new double[0][], outcomes(16), PRIOR);
    assertEquals(.7636, before.active()[0], 2e-4);
    assertEquals(.7642, before.active()[2], 2e-4);
    assertEquals(.7637, before.active()[4], 2e-4);
    assertEquals(.7640, before.active()[7], 2e-4);
    for (int m = 0; m < 4; m++) {
      assertEquals(.2357, before.models().get(m).probability(), 2e-4);
      assertEquals(3, before.models().get(m).factors().length);
    }
    assertArrayEquals(new int[] {0, 2, 4, 7}, before.models().get(4).factors());
    assertEquals(.0566, before.models().get(4).probability(), 2e-4);
    BoxMeyer after = BoxMeyer.of(part(20, 1, 9), part(20, 0, 1), outcomes(20), PRIOR);
    assertEquals(.4770, after.active()[0], 5e-4);
    assertEquals(1, after.active()[2], 5e-4);
    assertEquals(.9978, after.active()[4], 5e-4);
    assertEquals(.9072, after.active()[7], 5e-4);
  }

  @Test
  void followUpTrialsOfTheMouldingScreen() {
    // Source: Meyer, Steinberg & Box 1996, four trials to add, candidates all settings of A, C, E, H (R BsMD): 85.680 for
    // (9, 9, 12, 15), 84.848 for (9, 12, 14, 15), 83.639 for (9, 11, 12, 15), then 77.094 and 77.069; inputs of four digits.
    double[][] x = part(16, 1, 9);
    double[][] block = part(16, 0, 1);
    BoxMeyer beliefs = BoxMeyer.of(x, new double[0][], outcomes(16), PRIOR);
    double[][] candidates = new double[16][8];
    double[][] second = new double[16][1];
    for (int c = 0; c < 16; c++) {
      second[c][0] = 1;
      int[] active = {0, 2, 4, 7};
      for (int f = 0; f < 4; f++) {
        candidates[c][active[f]] = (c >> f & 1) == 1 ? 1 : -1;
      }
    }
    List<ModelDiscrimination.FollowUp> best = ModelDiscrimination.search(x, block, outcomes(16), beliefs, PRIOR, 5, candidates, second, 4, 7);
    assertArrayEquals(new int[] {8, 8, 11, 14}, best.get(0).candidates());
    assertEquals(85.680, best.get(0).separation(), 0.05);
    assertArrayEquals(new int[] {8, 11, 13, 14}, best.get(1).candidates());
    assertEquals(84.848, best.get(1).separation(), 0.05);
    // R numbers the candidates otherwise, so that the other three are compared by what they separate. Its exchange search lists five
    // sets; looking at all finds two more, of 82.2 and 79.7, between its third and fourth.
    for (double published : new double[] {83.639, 77.094, 77.069}) {
      assertTrue(best.stream().anyMatch(f -> Math.abs(f.separation() - published) < 0.02), published + "");
    }
    assertEquals(83.639, best.get(2).separation(), 0.05);
  }

  @Test
  void theMouldingScreenAsksForTheTrialsThatSettledIt() {
    // The same screen through the suggestion people see: the published best set (9, 9, 12, 15) of settings of A, C, E, H.
    List<Factor> factors = IntStream.range(0, 8).mapToObj(i -> Factor.measured("ABCDEFGH".substring(i, i + 1), "ABCDEFGH".substring(i, i + 1), "", -1, 1)).toList();
    Design screen = Design.independent("moulding", factors, part(16, 1, 9));
    BoxMeyer beliefs = BoxMeyer.of(part(16, 1, 9), new double[0][], outcomes(16), PRIOR);
    NextTrial.Suggestion s = ScreenFollowUp.of(screen, outcomes(16), beliefs, PRIOR, x -> true, "12 kg ore").orElseThrow();
    assertEquals(NextTrial.Aim.SCREEN, s.aim());
    assertEquals(85.680, s.gain(), 0.05);
    assertEquals(4, s.text().split("; then ").length);
    assertTrue(s.text().contains("A -1, ") && s.separates().contains("A with C with E (24 %)") && s.certainty().contains("99 % as much"), s.toString());
    assertTrue(ScreenFollowUp.of(screen, outcomes(16), beliefs, PRIOR, x -> false, "").isEmpty(), "nothing allowed, nothing suggested");
    NextTrial.Suggestion ruled = ScreenFollowUp.of(screen, outcomes(16), beliefs, PRIOR, x -> x[0] < 0 || x[2] < 0, "").orElseThrow();
    assertTrue(ruled.gain() < s.gain() && ruled.setting()[0] + ruled.setting()[2] < 2);
  }

  private static final double[][] X = {{.1, .2}, {.4, .9}, {.7, .3}, {.9, .8}, {.3, .5}};
  private static final double[] Y = {.5, -.2, 1.1, .3, .7};

  @Test
  void gaussianProcessArithmetic() {
    // Source: computed by hand and by R DiceKriging: Matérn 5/2, lengths (.4, .6), variance 1, noise .01, at (.5, .5).
    GaussianProcess simple = new GaussianProcess(X, Y, new double[] {.4, .6}, 1, .01, false);
    assertEquals(.8077257485, simple.at(new double[] {.5, .5}).mean(), 1e-9);
    assertEquals(.1157901628, simple.at(new double[] {.5, .5}).variance(), 1e-9);
    assertEquals(-4.703196911, simple.logLikelihood(), 1e-8);
    GaussianProcess ordinary = new GaussianProcess(X, Y, new double[] {.4, .6}, 1, .01, true);
    assertEquals(.3154757412, ordinary.mean(), 1e-9);
    assertEquals(.785937934, ordinary.at(new double[] {.5, .5}).mean(), 1e-8);
    assertEquals(.1180184137, ordinary.at(new double[] {.5, .5}).variance(), 1e-9);
    double mixed = new GaussianProcess.Prediction(.785937934, .1157901628).improvement(1.1);
    assertEquals(.0327607490, mixed, 1e-8);
  }

  @Test
  void expectedImprovement() {
    // Source: Jones, Schonlau & Welch 1998, formula (15); values by R.
    assertEquals(.3989422804, new GaussianProcess.Prediction(0, 1).improvement(0), 1e-10);
    assertEquals(1.072689396, new GaussianProcess.Prediction(1, 4).improvement(.5), 1e-8);
    assertEquals(0, new GaussianProcess.Prediction(1, 0).improvement(2));
  }

  @Test
  void fittedProcessPredictsWhatItHasNotSeen() {
    double[][] x = new double[25][];
    double[] y = new double[25];
    for (int i = 0; i < 25; i++) {
      x[i] = new double[] {-1 + i % 5 / 2.0, -1 + i / 5 / 2.0};
      y[i] = surface(x[i]);
    }
    GaussianProcess fitted = GaussianProcess.fit(x, y, 1);
    for (double[] s : new double[][] {{.25, .25}, {-.7, .3}, {.6, -.8}}) {
      GaussianProcess.Prediction p = fitted.at(s);
      assertTrue(Math.abs(p.mean() - surface(s)) < 3 * Math.sqrt(p.variance()) + 0.05, p + " " + surface(s));
    }
  }

  private static double surface(double[] s) {
    return 10 + 3 * s[0] - 2 * s[1] * s[1] + Math.sin(2 * s[0] * s[1]);
  }
}
