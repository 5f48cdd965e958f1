package daubline.engine.process.air;

import daubline.engine.process.thermo.Equilibria;
import org.hipparchus.special.Erf;

/** Carbon that diffuses into solid iron in contact with carburising gas. */
public final class Carburising {

  private static final double D0 = 2.3e-5;
  private static final double HEAT = 148000;

  private Carburising() {
  }

  /** Below this temperature austenite is not stable with graphite, K: 738 °C. Source: iron–carbon diagram (from memory). */
  public static final double AUSTENITE = 738 + 273.15;
  private static final double NITROGEN_PER_OXYGEN = .7905 / .2095;
  private static final double MOST_CARBON = .06;

  /**
   * Activity of carbon that a furnace gas can hold, 1 for graphite and never more, since charcoal lies beside the iron:
   * p(CO)²/(p(CO2) K). Source: Boudouard equilibrium, in the gas that dry air gives with carbon.
   *
   * @param coShare CO/(CO + CO2)
   * @param t K
   */
  public static double activity(double coShare, double t) {
    double carbon = 2 / (2 - coShare);
    double pressure = carbon / (carbon + NITROGEN_PER_OXYGEN);
    return Math.min(1, pressure * coShare * coShare / (1 - coShare) / Equilibria.boudouardShort(t));
  }

  /**
   * Carbon of austenite at an activity, mass share: log10 a = 2300/T - 2.21 + 0.15 C + log10 C with C in per cent.
   *
   * <p>Source: S. Gunnarson, Härterei-Tech. Mitt. 22 (1967) 293 (from memory); at a = 1 it follows the solubility of
   * graphite after F. Neumann 1965 within 6 %.
   *
   * @param activity 0 to 1
   * @param t K, above {@link #AUSTENITE}
   */
  public static double surface(double activity, double t) {
    double low = 0;
    double high = MOST_CARBON;
    for (int i = 0; i < 50; i++) {
      double c = (low + high) / 2;
      if (Math.pow(10, 2300 / t - 2.21 + 15 * c) * 100 * c < activity) {
        low = c;
      } else {
        high = c;
      }
    }
    return low;
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
