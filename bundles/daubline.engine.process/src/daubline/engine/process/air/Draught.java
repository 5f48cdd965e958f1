package daubline.engine.process.air;

import daubline.engine.process.thermo.Combustion;
import daubline.engine.process.thermo.Constants;
import java.util.function.DoubleUnaryOperator;

/**
 * A furnace without bellows: what its own hot column pulls, against what charge and openings resist.
 *
 * @param bed the charge
 * @param diameter inside diameter, m
 * @param height from air inlet to mouth, m
 * @param inletArea area of all openings, m²
 * @param ambient K
 */
public record Draught(PackedBed bed, double diameter, double height, double inletArea, double ambient) {

  private static final double GRAVITY = 9.80665;
  private static final int SLICES = 40;
  private static final int HALVINGS = 60;
  private static final double MOST = 1;

  /**
   * Draught of a column, Pa: g ∫ (ρ outside - ρ inside) dz. Source: hydrostatics.
   *
   * @param height from air inlet to mouth, m
   * @param temperature gas temperature in K at a height in m
   * @param ambient K
   */
  public static double pressure(double height, DoubleUnaryOperator temperature, double ambient) {
    double sum = 0;
    for (int i = 0; i < SLICES; i++) {
      sum += Blast.density(ambient) - Blast.density(temperature.applyAsDouble(height * (i + .5) / SLICES));
    }
    return GRAVITY * height / SLICES * sum;
  }

  /**
   * Air that the draught drives through openings and bed, m³/s at 20 °C, where pull equals loss. The gas in the bed
   * carries the carbon that it burnt.
   *
   * @param temperature gas temperature in K at a height in m
   * @param through share of the air that passes the bed, 0 to 1
   * @param pull factor on the draught, 1 for still air
   */
  public double flow(DoubleUnaryOperator temperature, double through, double pull) {
    double driving = pull * pressure(height, temperature, ambient);
    double area = Math.PI * diameter * diameter / 4;
    double gasPerAir = Blast.density(Constants.BLOWER_T) + Combustion.carbonPerAir(1);
    double low = 0;
    double high = MOST;
    for (int i = 0; i < HALVINGS; i++) {
      double flow = (low + high) / 2;
      double loss = bed.drop(flow * through * gasPerAir / area, height, temperature) + Blast.inletPressure(flow / inletArea, ambient);
      if (loss < driving) {
        low = flow;
      } else {
        high = flow;
      }
    }
    return low;
  }
}
