package daubline.engine.process.thermo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.thermo.Equilibria.Step;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ThermoTest {

  /** Rows of the tables of the NIST Chemistry WebBook: FeO and Fe (Chase 1998); graphite row of JANAF (from memory). */
  @ParameterizedTest
  @CsvSource({"FEO, 1000, 59.36, 38.76, 126.4, .06", "FEO, 1600, 64.03, 75.87, 155.4, .06",
      "FE, 700, 34.60, 11.94, 52.13, .02", "FE, 1000, 54.35, 24.00, 66.69, .05", "C, 1000, 21.61, 11.795, 24.457, .01"})
  void tableRows(Species species, double t, double cp, double rise, double entropy, double tolerance) {
    assertEquals(cp, species.heat().cp(t), tolerance);
    assertEquals(rise, (species.enthalpy(t) - species.enthalpy(298.15)) / 1000, tolerance);
    assertEquals(entropy, species.heat().entropy(t), tolerance);
  }

  /** Standard enthalpies and entropies, NIST WebBook; alumina and lime also CODATA key values 50.92 and 38.1. */
  @ParameterizedTest
  @CsvSource({"CO, -110.53, 197.66", "CO2, -393.52, 213.79", "O2, 0, 205.15", "N2, 0, 191.61", "H2, 0, 130.68",
      "FE, 0, 27.3", "FE2O3, -825.50, 87.28", "FE3O4, -1120.89, 145.2", "SIO2, -910.86, 41.46", "C, 0, 5.74",
      "AL2O3, -1675.69, 50.92", "CAO, -635.09, 38.19"})
  void standardState(Species species, double enthalpy, double entropy) {
    assertEquals(enthalpy, species.enthalpy(298.15) / 1000, .06);
    assertEquals(entropy, species.heat().entropy(298.15), .12);
  }

  /** Enthalpy is the integral of the heat capacity and entropy that of cp/T: pieces join and no constant is mistyped. */
  @ParameterizedTest
  @EnumSource(Species.class)
  void enthalpyAndEntropyFollowFromHeatCapacity(Species species) {
    HeatFunction heat = species.heat();
    for (double t = Math.max(heat.low(), 300) + 5; t < Math.min(heat.high(), 3000) - 10; t += 37) {
      double slope = (heat.enthalpy(t + .01) - heat.enthalpy(t - .01)) / .02;
      boolean atJoint = Math.abs(slope - heat.cp(t)) > .05 * heat.cp(t);
      assertTrue(!atJoint, species + " at " + t + ": " + slope + " against " + heat.cp(t));
      double ds = (heat.entropy(t + .01) - heat.entropy(t - .01)) / .02;
      assertEquals(heat.cp(t) / t, ds, .02 * heat.cp(t) / t, species + " entropy at " + t);
    }
  }

  /** Heats of burning per kilogram of carbon: 9.20 MJ to CO, 32.76 MJ to CO2 (NIST enthalpies of formation). */
  @Test
  void heatsOfBurning() {
    assertEquals(9.20e6, -Species.CO.enthalpy(298.15) / Constants.M_C, 1e4);
    assertEquals(32.76e6, -Species.CO2.enthalpy(298.15) / Constants.M_C, 1e4);
    double boudouard = 2 * Species.CO.enthalpy(298.15) - Species.CO2.enthalpy(298.15) - Species.C.enthalpy(298.15);
    assertEquals(172.5, boudouard / 1000, .1);
    double hot = 2 * Species.CO.enthalpy(1273.15) - Species.CO2.enthalpy(1273.15) - Species.C.enthalpy(1273.15);
    assertEquals(167.8, hot / 1000, .2);
  }

  /** CO shares of Boudouard at 1 bar from NIST and NASA functions, beside the textbook log form within 0.7 points. */
  @ParameterizedTest
  @CsvSource({"600, .256, .252, .392", "700, .617, .612, .785", "800, .889, .886, .955", "900, .973, .973, .990",
      "1000, .993, .993, .998"})
  void boudouard(double celsius, double pure, double textbook, double airBlown) {
    double t = celsius + 273.15;
    assertEquals(pure, Equilibria.boudouardCoShare(t, 1), .001);
    assertEquals(airBlown, Equilibria.boudouardCoShare(t, .347), .001);
    double k = Equilibria.boudouardShort(t);
    assertEquals(textbook, 2 / (1 + Math.sqrt(1 + 4 / k)), .001);
  }

  /** Wüstite–iron boundary: fit with Takahashi et al. 1986; Gaskell's line from memory one point apart. */
  @ParameterizedTest
  @CsvSource({"700, .590", "800, .641", "900, .681", "1000, .712", "1100, .738", "1200, .759"})
  void wustiteBoundary(double celsius, double share) {
    double t = celsius + 273.15;
    assertEquals(share, Step.WUSTITE_TO_IRON.coShare(t), .001);
    double line = Math.exp(-(-18700 + 22.5 * t) / (Constants.R * t));
    assertEquals(1 / (1 + line), Step.WUSTITE_TO_IRON.coShare(t), .01);
  }

  /** The trap: tabulated FeO asks for 83 % at 900 °C. The furnace's wüstite must not be computed from it. */
  @Test
  void stoichiometricWustiteIsWrong() {
    double t = 1173.15;
    double g = Species.FE.gibbs(t) + Species.CO2.gibbs(t) - Species.FEO.gibbs(t) - Species.CO.gibbs(t);
    double share = 1 / (1 + Math.exp(-g / (Constants.R * t)));
    assertEquals(.83, share, .005);
    assertTrue(share - Step.WUSTITE_TO_IRON.coShare(t) > .14);
  }

  /** Baur and Glaessner measured 34.5 % CO at 690 °C (Findlay, The Phase Rule, p. 151); fit and datum differ. */
  @Test
  void magnetiteBoundary() {
    assertEquals(.399, Step.MAGNETITE_TO_WUSTITE.coShare(963.15), .001);
    assertEquals(.345, Step.MAGNETITE_TO_WUSTITE.coShare(963.15), .06);
    assertTrue(Step.HAEMATITE_TO_MAGNETITE.coShare(1100) < .001);
  }

  /** Crossings of Boudouard at 1 atm with the two boundaries, about 700 and 650 °C (Findlay, The Phase Rule). */
  @Test
  void crossings() {
    assertEquals(700, crossing(Step.WUSTITE_TO_IRON), 20);
    assertEquals(650, crossing(Step.MAGNETITE_TO_WUSTITE), 20);
  }

  private static double crossing(Step step) {
    double t = 500;
    while (Equilibria.boudouardCoShare(t + 273.15, 1) < step.coShare(t + 273.15)) {
      t += .5;
    }
    return t;
  }

  /** Water-gas shift is 1 near 820–830 °C in the handbooks (common practice, no source). */
  @Test
  void waterGas() {
    assertEquals(1, Equilibria.waterGasShift(825 + 273.15), .08);
    assertTrue(Equilibria.hydrogenShare(Step.WUSTITE_TO_IRON, 1273) < Step.WUSTITE_TO_IRON.coShare(1273));
  }

  /** Flame temperatures computed from the same NIST and NASA constants by another program. */
  @ParameterizedTest
  @CsvSource({"25, 1221", "500, 1292", "800, 1354", "1000, 1398", "1200, 1444"})
  void flameToCarbonMonoxide(double carbon, double flame) {
    assertEquals(flame, Combustion.dry(1).flameTemperature(298.15, carbon + 273.15, 0) - 273.15, 3);
  }

  @Test
  void flameToCarbonDioxide() {
    assertEquals(2187, Combustion.dry(0).flameTemperature(298.15, 298.15, 0) - 273.15, 5);
  }

  @Test
  void waterAndLossesCoolTheFlame() {
    double dry = Combustion.dry(1).flameTemperature(293, 1273, 0);
    Air humid = Air.ofVolume(1, 293.15, Constants.ATM, .8);
    double moistAir = new Combustion(humid, 1, 0, 1).flameTemperature(293, 1273, 0);
    double moistFuel = new Combustion(Air.DRY_PER_OXYGEN, 1, .05, 1).flameTemperature(293, 1273, 0);
    assertTrue(moistAir < dry - 20 && moistAir > dry - 150, "moist air " + (dry - moistAir));
    assertTrue(moistFuel < dry - 50);
    assertTrue(Combustion.dry(1).flameTemperature(293, 1273, .2) < dry - 200);
  }

  @Test
  void combustionKeepsEveryElement() {
    Combustion burn = new Combustion(Air.ofVolume(2, 300, 98000, .6), .8, .07, .9);
    Combustion.Gas gas = burn.gas();
    double waterIn = burn.air().water() + burn.fuelWater() * burn.carbon();
    assertEquals(burn.carbon(), gas.co() + gas.co2(), 1e-12);
    assertEquals(2 * burn.air().oxygen() + waterIn, gas.co() + 2 * gas.co2() + gas.water(), 1e-10);
    assertEquals(waterIn, gas.water() + gas.hydrogen(), 1e-12);
  }

  /** 4.78 and 9.56 m³ of air at 20 °C per kilogram of carbon: stoichiometry. */
  @Test
  void airPerCarbon() {
    assertEquals(.2092, Combustion.carbonPerAir(1), 1e-4);
    assertEquals(.1046, Combustion.carbonPerAir(0), 1e-4);
    assertEquals(4.78, 1 / Combustion.carbonPerAir(1), .01);
  }

  /** 2339 Pa at 20 °C, 1228 Pa at 10 °C: steam tables (IAPWS, from memory). */
  @Test
  void vapourPressure() {
    assertEquals(2339, Air.vapourPressure(20), 8);
    assertEquals(1228, Air.vapourPressure(10), 5);
  }
}
