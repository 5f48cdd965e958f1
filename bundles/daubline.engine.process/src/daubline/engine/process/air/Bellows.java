package daubline.engine.process.air;

/**
 * Hand-worked bellows.
 *
 * @param strokeVolume air of one stroke, m³
 * @param rate strokes of all bags together, 1/s
 * @param delivered share of the stroke that reaches the furnace, 0 to 1; 0.5–0.9 (from memory)
 */
public record Bellows(double strokeVolume, double rate, double delivered) {

  /** Steady mechanical power of a fit person over hours, W (common practice, no source). */
  public static final double PERSON_POWER = 75;
  /** Share of muscle power that ends up in the air (common practice, no source). */
  public static final double EFFICIENCY = .3;

  /** Air delivered, m³/s. Source: Q = V n η, by definition. */
  public double flow() {
    return strokeVolume * rate * delivered;
  }

  /** Strokes per second needed for a flow in m³/s. */
  public static double rateFor(double flow, double strokeVolume, double delivered) {
    return flow / (strokeVolume * delivered);
  }

  /** Muscle power for a flow in m³/s against a pressure in Pa, W: the whole stroke is compressed, leaks too. */
  public double power(double pressure) {
    return strokeVolume * rate * pressure / EFFICIENCY;
  }

  /**
   * People that the bellows keep busy, relief included.
   *
   * @param pressure back pressure, Pa
   * @param workShare share of the time that one person can pump, such as 0.5 for turn and turn about
   */
  public double people(double pressure, double workShare) {
    return power(pressure) / PERSON_POWER / workShare;
  }
}
