package daubline.engine.process.air;

import org.hipparchus.special.Erf;

/** Carbon that diffuses into solid iron in contact with carburising gas. */
public final class Carburising {

  private static final double D0 = 2.3e-5;
  private static final double HEAT = 148000;

  private Carburising() {
  }

  /** Diffusivity of carbon in austenite, m²/s, at t in K: 2.3e-5 exp(-148 000/RT) (from memory). */
  public static double diffusivity(double t) {
    return D0 * Math.exp(-HEAT / (8.314462618 * t));
  }

  /**
   * Carbon at a depth, mass share: (C - C0)/(Cs - C0) = 1 - erf(x/(2 √(D t))). Source: Fick's second law for a half
   * space with a constant surface.
   */
  public static double carbon(double start, double surface, double depth, double diffusivity, double time) {
    return start + (surface - start) * Erf.erfc(depth / (2 * Math.sqrt(diffusivity * time)));
  }

  /** Time for a carbon content at a depth, s. */
  public static double time(double start, double surface, double wanted, double depth, double diffusivity) {
    double z = Erf.erfcInv((wanted - start) / (surface - start));
    return depth * depth / (4 * z * z * diffusivity);
  }

  /**
   * Mean carbon of a lump that takes up carbon through its surface, mass share; the uptake per area is
   * 2 (Cs - C0) ρ √(D t/π), spread over volume by area, no more than the surface value. Source: integral of the above.
   *
   * @param volumeByArea m; a third of the radius for a compact lump
   */
  public static double meanCarbon(double start, double surface, double diffusivity, double time, double volumeByArea) {
    double share = 2 * Math.sqrt(diffusivity * time / Math.PI) / volumeByArea;
    return start + (surface - start) * Math.min(1, share);
  }
}
