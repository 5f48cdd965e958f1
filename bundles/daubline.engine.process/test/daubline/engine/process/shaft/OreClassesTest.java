package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftParameter.*;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.thermo.Equilibria;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ore in size classes and a moist blast. Reference values: the same equations written again and solved by SciPy solve_bvp at
 * tolerance 1e-8, releng/benchmarks/peers/shaft_classes.py.
 */
class OreClassesTest {

  private static final OreSizes THREE = OreSizes.of(new double[] {3, 5, 2}, new double[] {.002, .006, .012}, .006);

  /** Charcoal kg/h, °C of zone gas, inlet solids and mouth, top CO share, H2 at foot and mouth, FeO and iron of each class. */
  @ParameterizedTest
  @CsvSource({"three, 0, 9.61379, 1521.55, 1192.65, 580.05, .953523, 0, 0, .9977, .622664, .355774, .955691, .25216, .069369",
      "one, .02, 9.74822, 1428.21, 1124.51, 532.90, .952808, .012039, .014977, .590472, 0, 0, .324346, 0, 0",
      "three, .02, 9.73752, 1445.63, 1132.16, 538.41, .934020, .012036, .014957, .995735, .601876, .340897, .998108, .341729, .101384"})
  void referenceFurnaces(String ore, double vapour, double charcoal, double zone, double inlet, double mouth, double top, double footHydrogen,
      double topHydrogen, double a1, double b1, double c1, double a2, double b2, double c2) {
    ShaftInputs in = ShaftInputs.usual().with(ore.equals("one") ? OreSizes.ONE : THREE).with(VAPOUR, vapour);
    ShaftSolution s = new ShaftSolver(120).solve(in);
    assertTrue(s.converged(), String.valueOf(s.refusal()));
    assertEquals(charcoal, s.rates().charcoal() * 3600, 1e-4 * charcoal);
    assertEquals(zone, s.hearth().zoneGas() - 273.15, .1);
    assertEquals(inlet, s.hearth().inletSolid() - 273.15, .1);
    assertEquals(mouth, s.hearth().mouthGas() - 273.15, .1);
    assertEquals(top, s.hearth().topCoShare(), 1e-4);
    assertEquals(footHydrogen, s.profile().getFirst().hydrogen(), 2e-5);
    assertEquals(topHydrogen, s.hearth().topHydrogen(), 2e-5);
    double[] first = {a1, b1, c1};
    double[] second = {a2, b2, c2};
    for (int i = 0; i < s.classes().size(); i++) {
      assertEquals(first[i], s.classes().get(i).toWustite(), 2e-4);
      assertEquals(second[i], s.classes().get(i).toMetal(), 2e-4);
    }
  }

  /** Cutting an ore of one size in two heaps changes nothing; the sum of the classes is what the gas sees. */
  @Test
  void twoHeapsOfOneSizeAreOneOre() {
    ShaftSolution one = new ShaftSolver().solve(ShaftInputs.usual());
    ShaftSolution two = new ShaftSolver().solve(ShaftInputs.usual().with(OreSizes.of(new double[] {1, 3}, new double[] {.006, .006}, .006)));
    assertEquals(one.rates().charcoal(), two.rates().charcoal(), 1e-9 * one.rates().charcoal());
    assertEquals(one.hearth().mouthGas(), two.hearth().mouthGas(), 1e-6);
    assertEquals(one.classes().getFirst().toMetal(), two.classes().getLast().toMetal(), 1e-8);
    ShaftSolution three = new ShaftSolver().solve(ShaftInputs.usual().with(THREE));
    double mean = three.classes().stream().mapToDouble(c -> c.share() * c.toMetal()).sum();
    assertEquals(three.profile().getFirst().toMetal(), mean, 1e-12);
    assertTrue(three.classes().get(0).reduced() > three.classes().get(1).reduced() && three.classes().get(1).reduced() > three.classes().get(2).reduced());
  }

  /** Dry air by a hair's breadth is dry air; the solver keeps nothing of the furnace before, whatever its classes. */
  @Test
  void hardlyMoistIsDryAndTheSolverForgets() {
    ShaftSolver solver = new ShaftSolver();
    ShaftSolution dry = solver.solve(ShaftInputs.usual());
    ShaftSolution hardly = solver.solve(ShaftInputs.usual().with(VAPOUR, 1e-9));
    assertEquals(dry.hearth().zoneGas(), hardly.hearth().zoneGas(), 1e-4);
    solver.solve(ShaftInputs.usual().with(THREE));
    ShaftSolution again = solver.solve(ShaftInputs.usual());
    assertEquals(dry.rates(), again.rates());
    assertEquals(dry.hearth(), again.hearth());
  }

  /** Properties of random furnaces with three classes and moist air: settled or refused for want of air, balances, order of the classes; on one thread as on many. */
  @Test
  void invariantsHoldWithClassesAndMoistAir() {
    List<ShaftSolution> all = IntStream.range(0, 300).parallel().mapToObj(OreClassesTest::random).toList();
    int solved = 0;
    int unsettled = 0;
    for (int i = 0; i < all.size(); i++) {
      ShaftSolution s = all.get(i);
      if (!s.converged()) {
        unsettled += s.refusal().orElseThrow().contains("too little air") ? 0 : 1;
        continue;
      }
      solved++;
      ShaftSolution.Balance b = s.balance();
      assertTrue(Math.abs(b.carbon()) < 1e-3 && Math.abs(b.oxygen()) < 1e-3 && Math.abs(b.iron()) < 1e-3 && Math.abs(b.hydrogen()) < 1e-3, i + " " + b);
      assertEquals(0, b.energy(), .01, "furnace " + i);
      for (ShaftSolution.Level l : s.profile()) {
        // water of the charge rings by some ten-thousandths about its drying front
        assertTrue(l.hydrogen() > -1e-9 && l.steam() > -1e-3 && l.monoxide() > 0 && l.dioxide() > -1e-3, i + " " + l);
        assertEquals(1, l.hydrogen() + l.steam() + l.nitrogen() + l.monoxide() + l.dioxide(), 1e-12);
      }
      assertTrue(s.classes().get(0).reduced() >= s.classes().get(1).reduced() - 1e-3 && s.classes().get(1).reduced() >= s.classes().get(2).reduced() - 1e-3,
          i + " " + s.classes());
    }
    assertTrue(solved > 285 && unsettled <= 4, solved + " solved, " + unsettled + " that have air do not settle");
    for (int i = 0; i < 20; i++) {
      assertEquals(all.get(i).hearth(), random(i).hearth());
      assertEquals(all.get(i).classes(), random(i).classes());
    }
  }

  private static ShaftSolution random(int i) {
    return new ShaftSolver().solve(RandomFurnaces.draw(i).with(THREE).with(VAPOUR, .03 * (i % 7) / 6));
  }

  /** Moist air cools the flame: steam takes its heat from the charcoal, 131 kJ/mol (heats of formation, as in ThermoTest). */
  @Test
  void moistAirCoolsTheZoneAndBurnsMoreCharcoal() {
    ShaftSolution dry = new ShaftSolver().solve(ShaftInputs.usual());
    ShaftSolution moist = new ShaftSolver().solve(ShaftInputs.usual().with(VAPOUR, .02));
    assertTrue(moist.hearth().zoneGas() < dry.hearth().zoneGas() - 40);
    assertTrue(moist.rates().charcoal() > dry.rates().charcoal());
  }

  /** The short law of the shift against the Gibbs energies of the NIST functions. */
  @Test
  void theShiftFollowsTheTables() {
    for (double t = 600; t <= 1900; t += 100) {
      assertEquals(1, WaterGas.constant(t) / Equilibria.waterGasShift(t), .02, t + " K");
    }
  }

  @Test
  void classesThatCannotBeAreRefusedInWords() {
    assertThrows(IllegalArgumentException.class, () -> OreSizes.of(new double[0], new double[0], .006));
    assertThrows(IllegalArgumentException.class, () -> OreSizes.of(new double[] {1, 0}, new double[] {.006, .002}, .006));
    assertThrows(IllegalArgumentException.class, () -> OreSizes.of(new double[] {1}, new double[] {Double.NaN}, .006));
  }
}
