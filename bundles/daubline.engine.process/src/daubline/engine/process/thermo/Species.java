package daubline.engine.process.thermo;

import daubline.engine.process.thermo.HeatFunction.Nasa9;
import daubline.engine.process.thermo.HeatFunction.Shomate;

/**
 * Substances of the furnace with their heat functions.
 *
 * <p>Source: NIST Chemistry WebBook (Shomate constants after Chase 1998); graphite from NASA/TP-2002-211556. Alumina
 * and lime are from the same WebBook, written from memory and checked against their standard entropies.
 */
public enum Species {
  /** Carbon monoxide, gas. */
  CO(new HeatFunction(
      new Shomate(298, 1300, 25.56759, 6.09613, 4.054656, -2.671301, 0.131021, -118.0089, 227.3665),
      new Shomate(1300, 6000, 35.1507, 1.300095, -0.205921, 0.01355, -3.28278, -127.8375, 231.712))),
  /** Carbon dioxide, gas. */
  CO2(new HeatFunction(
      new Shomate(298, 1200, 24.99735, 55.18696, -33.69137, 7.948387, -0.136638, -403.6075, 228.2431),
      new Shomate(1200, 6000, 58.16639, 2.720074, -0.492289, 0.038844, -6.447293, -425.9186, 263.6125))),
  /** Oxygen, gas; the piece below 700 K from memory. */
  O2(new HeatFunction(
      new Shomate(100, 700, 31.32234, -20.23531, 57.86644, -36.50624, -0.007374, -8.903471, 246.7945),
      new Shomate(700, 2000, 30.03235, 8.772972, -3.988133, 0.788313, -0.741599, -11.32468, 236.1663),
      new Shomate(2000, 6000, 20.91111, 10.72071, -2.020498, 0.146449, 9.245722, 5.337651, 237.6185))),
  /** Nitrogen, gas. */
  N2(new HeatFunction(
      new Shomate(100, 500, 28.98641, 1.853978, -9.647459, 16.63537, 0.000117, -8.671914, 226.4168),
      new Shomate(500, 2000, 19.50583, 19.88705, -8.598535, 1.369784, 0.527601, -4.935202, 212.39),
      new Shomate(2000, 6000, 35.51872, 1.128728, -0.196103, 0.014662, -4.55376, -18.97091, 224.981))),
  /** Hydrogen, gas. */
  H2(new HeatFunction(
      new Shomate(298, 1000, 33.066178, -11.363417, 11.432816, -2.772874, -0.158558, -9.980797, 172.707974),
      new Shomate(1000, 2500, 18.563083, 12.257357, -2.859786, 0.268238, 1.97799, -1.147438, 156.288133))),
  /** Water vapour; the table starts at 500 K and is carried on below. */
  H2O(new HeatFunction(
      new Shomate(500, 1700, 30.092, 6.832514, 6.793435, -2.53448, 0.082139, -250.881, 223.3967),
      new Shomate(1700, 6000, 41.96426, 8.622053, -1.49978, 0.098119, -11.15764, -272.1797, 219.7809))),
  /** Iron, alpha and delta. */
  FE(new HeatFunction(
      new Shomate(298, 700, 18.42868, 24.64301, -8.91372, 9.664706, -0.012643, -6.573022, 42.51488),
      new Shomate(700, 1042, -57767.65, 137919.7, -122773.2, 38682.42, 3993.08, 24078.67, -87364.01),
      new Shomate(1042, 1100, -325.8859, 28.92876, 0, 0, 411.9629, 745.8231, 241.8766),
      new Shomate(1100, 1809, -776.7387, 919.4005, -383.7184, 57.08148, 242.1369, 697.6234, -558.3674))),
  /** Iron, gamma. */
  FE_GAMMA(new HeatFunction(
      new Shomate(298, 1809, 23.97449, 8.36775, 0.000277, -8.6e-05, -5e-06, 0.268027, 62.06336))),
  /** Iron monoxide of exact composition FeO. It does not exist: never use it for the wüstite boundary. */
  FEO(new HeatFunction(
      new Shomate(298, 1650, 45.7512, 18.78553, -5.952201, 0.852779, -0.081265, -286.7429, 110.312))),
  /** Iron monoxide, liquid. */
  FEO_LIQUID(new HeatFunction(
      new Shomate(1650, 5000, 68.1992, -4.501232e-10, 1.195227e-10, -1.064302e-11, -3.09268e-10, -281.4326, 137.8377))),
  /** Magnetite. */
  FE3O4(new HeatFunction(
      new Shomate(298, 900, 104.2096, 178.5108, 10.6151, 1.132534, -0.994202, -1163.336, 212.0585),
      new Shomate(900, 3000, 200.832, 1.586435e-07, -6.661682e-08, 9.452452e-09, 3.18602e-08, -1174.135, 388.079))),
  /** Haematite. */
  FE2O3(new HeatFunction(
      new Shomate(298, 950, 93.43834, 108.3577, -50.86447, 25.58683, -1.61133, -863.2094, 161.0719),
      new Shomate(950, 1050, 150.624, 0, 0, 0, 0, -875.6066, 252.8814),
      new Shomate(1050, 2500, 110.9362, 32.04714, -9.192333, 0.901506, 5.433677, -843.1471, 228.3548))),
  /** Quartz, alpha below and beta above 847 K. */
  SIO2(new HeatFunction(
      new Shomate(298, 847, -6.076591, 251.6755, -324.7964, 168.5604, 0.002548, -917.6893, -27.96962),
      new Shomate(847, 1996, 58.7534, 10.27925, -0.131384, 0.02521, 0.025601, -929.3292, 105.8092))),
  /** Graphite, by the NASA form. */
  C(new HeatFunction(
      new Nasa9(200, 600, 113285.676, -1980.421677, 13.65384188, -0.0463609644, 0.0001021333011,
          -1.082893179e-07, 4.47225886e-11, 8943.85976, -72.9582474),
      new Nasa9(600, 2000, 335600.441, -2596.528368, 6.94884191, -0.00348483609, 1.844192445e-06,
          -5.05520596e-10, 5.75063901e-14, 13984.12456, -44.7718304),
      new Nasa9(2000, 6000, 202310.5106, -1138.235908, 3.7002795, -0.0001833807727, 6.34368325e-08,
          -7.06858948e-12, 3.33543598e-16, 5848.13485, -23.50925275))),
  /** Alumina, corundum. */
  AL2O3(new HeatFunction(
      new Shomate(298, 2327, 102.4290, 38.74980, -15.91090, 2.628181, -3.007551, -1717.930, 146.9970))),
  /** Lime. */
  CAO(new HeatFunction(
      new Shomate(298, 3200, 49.95403, 4.887916, -0.352056, 0.046187, -0.825097, -652.9718, 92.56096)));

  private final HeatFunction heat;

  Species(HeatFunction heat) {
    this.heat = heat;
  }

  /** Heat capacity, enthalpy, entropy and Gibbs energy over temperature. */
  public HeatFunction heat() {
    return heat;
  }

  /** Enthalpy counted from the elements at 298.15 K, J/mol, at t in K. */
  public double enthalpy(double t) {
    return heat.enthalpy(t);
  }

  /** Gibbs energy, J/mol, at t in K and 1 bar. */
  public double gibbs(double t) {
    return heat.gibbs(t);
  }
}
