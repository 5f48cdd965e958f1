package daubline.engine.process.slag;

/** How much suspended solids (wüstite, iron, charcoal) thicken a slag. */
public final class Suspension {

  /** Above this share the mixture no longer flows like a liquid; Wright et al., J. Non-Cryst. Solids 282 (2001) 15. */
  public static final double STIFF = .2;

  private Suspension() {
  }

  /** Factor 1 + 2.5 φ for φ below 0.05. Source: A. Einstein 1906 (from memory). */
  public static double einstein(double solids) {
    return 1 + 2.5 * solids;
  }

  /**
   * Factor (1 - 1.35 φ)^-2.5; infinite from φ = 0.74.
   *
   * <p>Source: R. Roscoe, Br. J. Appl. Phys. 3 (1952) 267 (from memory).
   *
   * @param solids volume share of solids, 0 to 1
   */
  public static double roscoe(double solids) {
    double free = 1 - 1.35 * solids;
    return free > 0 ? Math.pow(free, -2.5) : Double.POSITIVE_INFINITY;
  }
}
