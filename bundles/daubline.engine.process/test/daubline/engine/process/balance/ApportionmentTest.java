package daubline.engine.process.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.balance.ApportionmentProblem.Source;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Synthetic mixing with known truth; perturbed values computed with R 4.2.2, package nnls. */
class ApportionmentTest {

  private static final Oxide[] OXIDES = {Oxide.SIO2, Oxide.AL2O3, Oxide.FEO, Oxide.CAO, Oxide.MGO, Oxide.K2O,
      Oxide.MNO, Oxide.TIO2, Oxide.P2O5};
  private static final double[][] SOURCES = {{12, 4, 78, 1.5, .5, .4, 1.5, .2, .6},
      {68, 18, 5, 1, 1, 3.5, .1, .8, .1}, {8, 2, 2, 45, 8, 15, 3, .1, 6}};
  private static final double[] TRUTH = {.95, .28, .05};
  private static final double METAL = .30;
  /** Rounded as in the synthetic set. */
  private static final double IRON_IN_FEO = .7773;

  private static Analysis analysis(double[] percent) {
    EnumMap<Oxide, Double> map = new EnumMap<>(Oxide.class);
    for (int i = 0; i < OXIDES.length; i++) {
      map.put(OXIDES[i], percent[i] / 100);
    }
    return new Analysis(map);
  }

  private static List<Source> sources(double spread) {
    return List.of(new Source("ore", analysis(SOURCES[0]), spread), new Source("lining", analysis(SOURCES[1]), spread),
        new Source("ash", analysis(SOURCES[2]), spread));
  }

  private static double[] closedSlag() {
    double[] slag = new double[OXIDES.length];
    double sum = 0;
    for (int i = 0; i < slag.length; i++) {
      for (int j = 0; j < 3; j++) {
        slag[i] += TRUTH[j] * SOURCES[j][i];
      }
      slag[i] -= OXIDES[i] == Oxide.FEO ? METAL * 100 / IRON_IN_FEO : 0;
      sum += slag[i];
    }
    for (int i = 0; i < slag.length; i++) {
      slag[i] *= 100 / sum;
    }
    return slag;
  }

  @Test
  void noiseFreeMixtureIsFoundAgain() {
    Apportionment fit = Apportionment.of(ApportionmentProblem.usual(analysis(closedSlag()), sources(.05)));
    assertEquals(1.092897898, fit.amounts().get(0), 1e-9);
    assertEquals(.3221172751, fit.amounts().get(1), 1e-9);
    assertEquals(.05752094197, fit.amounts().get(2), 1e-7);
    assertEquals(.3451256518, fit.metalPerSlag(), 1e-4);
    assertTrue(fit.reducedChi2() < 1e-18);
    assertTrue(fit.findings().isEmpty(), fit.findings().toString());
  }

  /** The slag perturbed; solved over all nine rows with the metal as a fourth column, as in R. */
  @Test
  void perturbedMixtureAgreesWithR() {
    double[] factor = {1.02, .98, 1.01, .97, 1.05, .99, 1.03, .95, 1.04};
    double[] slag = closedSlag();
    double[][] a = new double[9][4];
    double[] b = new double[9];
    for (int i = 0; i < 9; i++) {
      double sigma = .02 * slag[i] + .05;
      for (int j = 0; j < 3; j++) {
        a[i][j] = SOURCES[j][i] / sigma;
      }
      a[i][3] = OXIDES[i] == Oxide.FEO ? -100 / IRON_IN_FEO / sigma : 0;
      b[i] = slag[i] * factor[i] / sigma;
    }
    var fit = daubline.engine.stats.Nnls.solve(a, b);
    double[] expected = {1.131567279, .3176617326, .05490906508, .3650478459};
    for (int j = 0; j < 4; j++) {
      assertEquals(expected[j], fit.x()[j], 1e-8, "source " + j);
    }
    assertEquals(3.360714186, fit.residual2(), 1e-8);
  }

  @Test
  void alikeSourcesAreFlagged() {
    double[] nearly = SOURCES[0].clone();
    nearly[0] *= 1.01;
    List<Source> alike = new ArrayList<>(sources(.05));
    alike.add(new Source("second ore", analysis(nearly), .05));
    Apportionment fit = Apportionment.of(ApportionmentProblem.usual(analysis(closedSlag()), alike));
    assertTrue(fit.findings().stream().anyMatch(f -> f.code().equals("apportion.collinear")
        && f.what().contains("ore and second ore")), fit.findings().toString());
  }

  /** Siegerland slag against Siegerland siderite (Neumann): Mn/Fe below that of the ore cannot be. */
  @Test
  void sourceMismatchShows() {
    Analysis slag = Analysis.ofPercent(Oxide.FEO, 52.94, Oxide.MNO, 7.55, Oxide.SIO2, 28.2, Oxide.AL2O3, 4.35);
    Analysis ore = Analysis.ofPercent(Oxide.FE2O3, 61, Oxide.MNO, 22, Oxide.SIO2, 3, Oxide.AL2O3, 1);
    Analysis clay = Analysis.ofPercent(Oxide.SIO2, 68, Oxide.AL2O3, 18, Oxide.FE2O3, 5);
    Apportionment fit = Apportionment.of(ApportionmentProblem.usual(slag,
        List.of(new Source("ore", ore, .1), new Source("lining", clay, .1))));
    assertTrue(fit.metalPerSlag() < 0);
    assertTrue(fit.findings().stream().anyMatch(f -> f.code().equals("apportion.iron")));
  }

  @Test
  void spreadCoversTheTruthAndRepeats() {
    ApportionmentProblem problem = ApportionmentProblem.usual(analysis(closedSlag()), sources(.05));
    ApportionmentSpread spread = ApportionmentSpread.of(problem, 4000, 5);
    assertEquals(spread, ApportionmentSpread.of(problem, 4000, 5));
    assertEquals(1.093, spread.median().get(0), .04);
    assertTrue(spread.low().get(1) < .322 && spread.high().get(1) > .322);
    assertTrue(spread.metal().get(2) > spread.metal().get(0));
    assertTrue(spread.atZero().get(0) < .01);
  }

  /**
   * First order holds for the well-told sources of the mixing set; an ash that the slag hardly holds is cut off at zero in many
   * draws, which no symmetric interval can show (JCGM 101:2008, clause 8).
   */
  @Test
  void firstOrderIsCheckedAgainstDraws() {
    ApportionmentProblem told = ApportionmentProblem.usual(analysis(closedSlag()), sources(.02));
    assertEquals(List.of(), FirstOrderCheck.of(told, ApportionmentSpread.of(told, 20_000, 6), 20_000));
    double[] slag = closedSlag();
    for (int i = 0; i < slag.length; i++) {
      slag[i] -= .055 * SOURCES[2][i];
    }
    ApportionmentProblem little = ApportionmentProblem.usual(analysis(slag), sources(.05));
    var notes = FirstOrderCheck.of(little, ApportionmentSpread.of(little, 20_000, 6), 20_000);
    assertTrue(notes.stream().anyMatch(n -> n.code().equals("apportion.first-order") && n.what().contains("ash")), notes.toString());
  }
}
