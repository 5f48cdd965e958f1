package daubline.engine.process.air;

import java.util.function.DoubleUnaryOperator;

/** A furnace without bellows: what its own hot column pulls. */
public final class Draught {

  private static final double GRAVITY = 9.80665;

  private Draught() {
  }

  /**
   * Draught of a column, Pa: g ∫ (ρ outside - ρ inside) dz. Source: hydrostatics.
   *
   * @param height from air inlet to mouth, m
   * @param temperature gas temperature in K at a height in m
   * @param ambient K
   */
  public static double pressure(double height, DoubleUnaryOperator temperature, double ambient) {
    int n = 40;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      sum += Blast.density(ambient) - Blast.density(temperature.applyAsDouble(height * (i + .5) / n));
    }
    return GRAVITY * height / n * sum;
  }

  /**
   * Air that the draught drives through bed and inlets, m³/s at 20 °C, where pull equals loss.
   *
   * @param bed the charge
   * @param diameter inside diameter, m
   * @param height from air inlet to mouth, m
   * @param inletArea area of all inlets, m²
   * @param temperature gas temperature in K at a height in m
   * @param ambient K
   */
  public static double flow(PackedBed bed, double diameter, double height, double inletArea,
      DoubleUnaryOperator temperature, double ambient) {
    double pull = pressure(height, temperature, ambient);
    double area = Math.PI * diameter * diameter / 4;
    double low = 0;
    double high = 1;
    for (int i = 0; i < 60; i++) {
      double flow = (low + high) / 2;
      double mass = flow * Blast.density(293.15);
      double loss = bed.drop(mass / area, height, temperature) + Blast.inletPressure(flow / inletArea, ambient);
      if (loss < pull) {
        low = flow;
      } else {
        high = flow;
      }
    }
    return low;
  }
}
