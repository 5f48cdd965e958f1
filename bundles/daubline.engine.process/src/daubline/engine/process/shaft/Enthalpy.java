package daubline.engine.process.shaft;

import static daubline.engine.process.thermo.Constants.T0;

/**
 * Enthalpy of the streams of the shaft, J/mol, as short polynomials: h = Hf + a (T-T0) + b (T²-T0²)/2 - c (1/T-1/T0).
 *
 * <p>Source: fitted to the NIST and NASA functions of {@code Species} (gases within 2 %); heats of formation of the iron
 * oxides per mole of iron are set so that the reduction heats are those of real wüstite, -18.6 kJ for the last step.
 */
enum Enthalpy {
  CO(-110527.1, 27.218, 5.5931e-3, 0),
  CO2(-393522.4, 43.904, 1.05835e-2, -9.9322e5),
  N2(0, 26.804, 5.5398e-3, 0),
  O2(0, 28.1, 6.0e-3, 0),
  H2(0, 26.857, 4.2216e-3, 0),
  STEAM(-241826.4, 29.245, 1.18942e-2, 0),
  CARBON(0, 15.510, 6.3884e-3, -8.9487e5),
  WATER(-285830, 75.3, 0, 0),
  /** Half a mole of Fe2O3. */
  HAEMATITE(-406520, 71.3, 0, 0),
  FEO(-264390, 56.8, 0, 0),
  IRON(0, 37.5, 0, 0);

  private final double formation;
  private final double a;
  private final double b;
  private final double c;

  Enthalpy(double formation, double a, double b, double c) {
    this.formation = formation;
    this.a = a;
    this.b = b;
    this.c = c;
  }

  double at(double t) {
    return formation + a * (t - T0) + b * (t * t - T0 * T0) / 2 - c * (1 / t - 1 / T0);
  }

  double cp(double t) {
    return a + b * t + c / (t * t);
  }
}
