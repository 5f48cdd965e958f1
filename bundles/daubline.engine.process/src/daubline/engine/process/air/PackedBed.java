package daubline.engine.process.air;

import daubline.engine.process.thermo.Constants;
import java.util.function.DoubleUnaryOperator;

/**
 * A bed of pieces and the pressure that gas loses in it.
 *
 * @param size volume-to-surface mean diameter of the pieces, m
 * @param sphericity 0 to 1
 * @param voidage share of the volume between the pieces, 0 to 1
 */
public record PackedBed(double size, double sphericity, double voidage) {

  private static final double GAS_MASS = .029;

  /**
   * Pressure gradient, Pa/m: 150 μ U (1-ε)²/(φ² d² ε³) + 1.75 ρ U² (1-ε)/(φ d ε³).
   *
   * <p>Source: S. Ergun, Chem. Eng. Prog. 48 (1952) 89.
   *
   * @param speed superficial speed, m/s
   * @param density kg/m³
   * @param viscosity Pa·s
   */
  public double gradient(double speed, double density, double viscosity) {
    double d = sphericity * size;
    double solid = 1 - voidage;
    double cube = voidage * voidage * voidage;
    return 150 * viscosity * speed * solid * solid / (d * d * cube) + 1.75 * density * speed * speed * solid / (d * cube);
  }

  /**
   * Pressure lost over a stack whose temperature changes with height, Pa; gas properties are taken where it is.
   *
   * @param massFlux gas mass flow by cross section, kg/(s m²)
   * @param height m
   * @param temperature gas temperature in K at a height in m
   */
  public double drop(double massFlux, double height, DoubleUnaryOperator temperature) {
    int n = 40;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double t = temperature.applyAsDouble(height * (i + .5) / n);
      double density = Constants.ATM * GAS_MASS / (Constants.R * t);
      sum += gradient(massFlux / density, density, viscosity(t)) * height / n;
    }
    return sum;
  }

  /** Viscosity of furnace gas, Pa·s, at t in K: 1.8e-5 (T/293)^0.7, the usual power law for air (from memory). */
  public static double viscosity(double t) {
    return 1.8e-5 * Math.pow(t / 293.15, .7);
  }

  /**
   * Volume-to-surface mean size of a graded charcoal: 1/Σ(w/d). Fines weigh heavily, as they do in the bed.
   *
   * @param sizes middle size of each sieve class, m
   * @param shares mass share of each class
   */
  public static double meanSize(double[] sizes, double[] shares) {
    double sum = 0;
    double all = 0;
    for (int i = 0; i < sizes.length; i++) {
      sum += shares[i] / sizes[i];
      all += shares[i];
    }
    return all / sum;
  }
}
