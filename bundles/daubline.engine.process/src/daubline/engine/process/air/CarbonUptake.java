package daubline.engine.process.air;

/**
 * Carbon of a round piece of iron while the carbon of its surface changes. Source: Fick's second law in a sphere, as a sum
 * of modes (J. Crank, The Mathematics of Diffusion); what the modes left out hold follows the surface at once.
 */
public final class CarbonUptake {

  private static final int MODES = 12;

  private final double radius;
  private final double[] held = new double[MODES];
  private double surface;

  /** A piece without carbon; radius in m. */
  public CarbonUptake(double radius) {
    this.radius = radius;
  }

  /**
   * Keeps the piece in one place for a while.
   *
   * @param surface carbon of its surface, mass share
   * @param diffusivity m²/s
   * @param time s
   */
  public void hold(double surface, double diffusivity, double time) {
    this.surface = surface;
    for (int n = 1; n <= MODES; n++) {
      double decay = Math.exp(-n * n * Math.PI * Math.PI * diffusivity * time / (radius * radius));
      held[n - 1] = surface + (held[n - 1] - surface) * decay;
    }
  }

  /** Its mean carbon now, mass share. */
  public double mean() {
    double sum = 0;
    double weights = 0;
    for (int n = 1; n <= MODES; n++) {
      double weight = 6 / (n * n * Math.PI * Math.PI);
      sum += weight * held[n - 1];
      weights += weight;
    }
    return sum + (1 - weights) * surface;
  }
}
