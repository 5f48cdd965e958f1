package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftParameter.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShaftTest {

  private static final double ZERO_C = 273.15;

  private static ShaftInputs furnace(double d, double h, double litres, double leak, double zone, double charcoal,
      double moisture, double ratio, double oreWet, double iron, double silica) {
    return ShaftInputs.usual().with(DIAMETER, d).with(STACK, h).with(AIR, litres / 6e4).with(LEAK, leak)
        .with(ZONE_CO, zone).with(CHARCOAL_SIZE, charcoal).with(CHARCOAL_MOISTURE, moisture).with(ORE_RATIO, ratio)
        .with(ORE_MOISTURE, oreWet).with(ORE_IRON, iron).with(ORE_SILICA, silica);
  }

  private static ShaftInputs reference(int n) {
    return switch (n) {
      case 1 -> ShaftInputs.usual();
      case 2 -> furnace(.2, .465, 650, .3, .9, .03, .06, .95, .1, .61, .07).with(WALL_LOSS, 5);
      case 3 -> furnace(.29, .66, 1000, .45, .8, .025, .06, 1.12, .05, .53, .12).with(REDUCIBILITY, 1.5)
          .with(REACTIVITY, 1e-4).with(WALL_LOSS, 8);
      case 4 -> furnace(.3, .3, 130, .1, .7, .025, .06, .4, .05, .59, .09).with(ORE_SIZE, .005).with(WALL_LOSS, 5);
      case 5 -> furnace(.25, .9, 600, .2, .85, .025, .03, .9, 0, .58, .09).with(ORE_SIZE, .015).with(WALL_LOSS, 4)
          .with(HOT_ZONE, 0).with(REOXIDISED, 0);
      default -> furnace(.3, .8, 450, .25, .95, .025, .06, .6, .05, .58, .12).with(ORE_SIZE, .002)
          .with(REDUCIBILITY, 2).with(HOT_ZONE, .3).with(REOXIDISED, .05);
    };
  }

  /**
   * Six furnaces solved with SciPy solve_bvp at tolerance 1e-8 and again by shooting with Radau: charcoal and ore kg/h,
   * share of the CO limit, top CO share, minutes of residence; °C of zone gas, inlet solids, hottest solids, mouth.
   */
  @ParameterizedTest
  @CsvSource({"1, 9.65169, 8.59508, 1.09842, .969296, 38.52, 1506.16, 1181.15, 1224.93, 572.385",
      "2, 8.3663, 8.30123, 1.02538, .973677, 26.2235, 1422.48, 1165.6, 1177.86, 599.526",
      "3, 9.58971, 10.6274, .763956, .878631, 68.8682, 1602.42, 1248.75, 1282.57, 451.458",
      "4, 1.88383, .745598, 1.15441, .923782, 168.001, 1477.87, 1092.91, 1097.29, 433.97",
      "5, 8.38514, 7.32023, 1.11332, .984916, 76.6908, 1538.89, 1211.34, 1315.18, 610.371",
      "6, 5.37514, 3.19113, .951568, .861401, 154.861, 1422.35, 1310.66, 1318.01, 505.24"})
  void referenceFlowsAndTemperatures(int n, double charcoal, double ore, double limit, double top, double minutes,
      double zone, double inlet, double hottest, double mouth) {
    ShaftSolution s = new ShaftSolver(120).solve(reference(n));
    assertTrue(s.converged(), String.valueOf(s.refusal()));
    assertEquals(charcoal, s.rates().charcoal() * 3600, 1e-4 * charcoal);
    assertEquals(ore, s.rates().ore() * 3600, 1e-4 * ore);
    assertEquals(limit, s.rates().ofCarbonMonoxideLimit(), 2e-4 * limit);
    assertEquals(top, s.hearth().topCoShare(), 1e-4);
    assertEquals(minutes, s.rates().residence() / 60, 2e-4 * minutes);
    assertEquals(zone, s.hearth().zoneGas() - ZERO_C, .1);
    assertEquals(inlet, s.hearth().inletSolid() - ZERO_C, .1);
    assertEquals(hottest, s.hearth().hottestSolid() - ZERO_C, .4);
    assertEquals(mouth, s.hearth().mouthGas() - ZERO_C, .1);
  }

  /** The same six: reduction, bound, metal share, consolidation, slag kg/h, FeO and SiO2 of the slag, hours to rise. */
  @ParameterizedTest
  @CsvSource({"1, .603514, .313081, .653401, .374507, .952711, 5.5868, .683562, .158056, 2.525, 1.327",
      "2, .411656, .164258, .727243, .260658, .754091, 5.64749, .768975, .118408, 1.578, .828",
      "3, .944119, .662874, .527692, .527692, .995076, 6.07746, .536296, .223704, 4.832, 2.261",
      "4, .963035, .840017, .122431, .122431, .108873, .818062, .586521, .241168, 1.169, 1.289",
      "5, .531515, .13485, .64751, .13485, .99866, 6.3383, .746813, .12702, 3.134, .908",
      "6, 1, 1, .46728, .46728, .998803, 2.02381, .599385, .248983, 4.463, 1.861"})
  void referenceReductionAndSlag(int n, double x1, double x2, double bound, double metal, double consolidation,
      double slag, double feo, double silica, double wall, double hearth) {
    ShaftSolution s = new ShaftSolver(120).solve(reference(n));
    assertEquals(x1, s.profile().getFirst().toWustite(), 2e-4);
    assertEquals(x2, s.profile().getFirst().toMetal(), 2e-4);
    assertEquals(bound, s.hearth().bound(), 1e-4);
    assertEquals(metal, s.hearth().metalShare(), 1e-4);
    assertEquals(consolidation, s.hearth().consolidation(), 2e-3);
    assertEquals(slag, s.rates().slag() * 3600, 2e-4 * slag);
    assertEquals(feo, s.hearth().slagFeo(), 1e-4);
    assertEquals(silica, s.hearth().slagSilica(), 1e-4);
    assertEquals(wall, s.hearth().wallLoss() / 1000, .01 * wall);
    assertEquals(hearth, s.hearth().hearthLoss() / 1000, .002 * hearth);
  }

  /** The usual mesh keeps within half a percent of one ten times finer on all six. */
  @Test
  void usualMeshIsFineEnough() {
    for (int n = 1; n <= 6; n++) {
      ShaftSolution coarse = new ShaftSolver().solve(reference(n));
      ShaftSolution fine = new ShaftSolver(400).solve(reference(n));
      assertEquals(1, coarse.rates().charcoal() / fine.rates().charcoal(), 5e-4);
      assertEquals(1, (coarse.hearth().mouthGas() - ZERO_C) / (fine.hearth().mouthGas() - ZERO_C), 5e-3);
      assertEquals(1, (coarse.hearth().inletSolid() - ZERO_C) / (fine.hearth().inletSolid() - ZERO_C), 5e-3);
      assertEquals(fine.hearth().metalShare(), coarse.hearth().metalShare(), 1e-3);
    }
  }

  /** Invariants of every furnace that is not refused; refusals only for want of air. */
  @Test
  void invariantsOverRandomFurnaces() {
    List<ShaftSolution> all = IntStream.range(0, COUNT).parallel()
        .mapToObj(i -> new ShaftSolver().solve(RandomFurnaces.draw(i))).toList();
    long refused = 0;
    for (ShaftSolution s : all) {
      if (!s.converged()) {
        refused++;
        assertTrue(s.refusal().get().contains("too little air"), s.refusal().get());
        continue;
      }
      assertTrue(Math.abs(s.balance().carbon()) < 1e-4 && Math.abs(s.balance().oxygen()) < 1e-9
          && Math.abs(s.balance().iron()) < 1e-9, s.balance().toString());
      assertEquals(0, s.balance().energy(), .01);
      assertTrue(s.hearth().metalShare() <= s.hearth().bound() + 1e-4 && s.hearth().metalShare() <= 1);
      for (ShaftSolution.Level level : s.profile()) {
        assertTrue(level.gas() > 280 && level.gas() < 2500 && level.solid() > 280, level.toString());
        assertTrue(level.toMetal() > -.01 && level.toMetal() < 1.01 && level.coShare() < 1.001, level.toString());
      }
    }
    assertTrue(refused <= .02 * COUNT, refused + " refused");
  }

  private static final int COUNT = 400;

  /** A furnace that hardly any air reaches is refused as dead, with the air in the reason, whichever way it is come to. */
  @Test
  void aDeadFurnaceIsRefusedAndTheReasonNamesTheAir() {
    ShaftInputs dead = ShaftInputs.usual().with(DIAMETER, .5).with(STACK, .8).with(AIR, 60 / 6e4).with(WALL_LOSS, 9);
    ShaftSolver solver = new ShaftSolver();
    ShaftSolution fromNothing = solver.solve(dead);
    assertTrue(fromNothing.refusal().orElse("").contains("too little air"), fromNothing.toString());
    ShaftInputs alive = dead.with(AIR, 900 / 6e4);
    ShaftSolution from = solver.solve(alive);
    assertTrue(from.converged() && from.hearth().hottestSolid() > 1300, String.valueOf(from.refusal()));
    ShaftSolution near = solver.solveNear(from, dead);
    assertTrue(near.refusal().orElse("").contains("too little air"), near.toString());
  }

  @Test
  void aNeighbourIsSolvedAsFromNothing() {
    ShaftSolver solver = new ShaftSolver();
    ShaftSolution first = solver.solve(reference(1));
    ShaftInputs wanted = reference(1).with(AIR, 350 / 6e4);
    ShaftSolution near = solver.solveNear(first, wanted);
    ShaftSolution anew = new ShaftSolver().solve(wanted);
    assertEquals(anew.rates().charcoal(), near.rates().charcoal(), 1e-5 * anew.rates().charcoal());
    assertEquals(anew.hearth().hottestSolid(), near.hearth().hottestSolid(), .1);
  }

  /** Practitioners use ore below 10 mm and the shaft reduces finer ore further; a taller stack reduces more. */
  @Test
  void signsOfOreSizeHeightAndLowAir() {
    assertTrue(metal(ShaftInputs.usual().with(ORE_SIZE, .003)) > metal(ShaftInputs.usual()));
    assertTrue(metal(ShaftInputs.usual().with(STACK, .8)) > metal(ShaftInputs.usual()));
    ShaftSolution weak = new ShaftSolver().solve(ShaftInputs.usual().with(AIR, 120 / 6e4));
    assertTrue(!weak.converged() || weak.hearth().bloomShare() < .05);
  }

  private static double metal(ShaftInputs in) {
    return new ShaftSolver().solve(in).hearth().metalShare();
  }

  @Test
  void sameAnswerWhateverWasSolvedBefore() {
    ShaftSolver used = new ShaftSolver();
    used.solve(reference(6));
    assertEquals(new ShaftSolver().solve(reference(2)), used.solve(reference(2)));
  }

  @Test
  void impossibleNumbersAreRefusedWithTheReason() {
    ShaftSolution s = new ShaftSolver().solve(ShaftInputs.usual().with(DIAMETER, -1));
    assertFalse(s.converged());
    assertTrue(s.refusal().get().contains("inside diameter"));
  }
}
