package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftEquations.CARBON;
import static daubline.engine.process.shaft.ShaftEquations.TO_METAL;
import static daubline.engine.process.shaft.ShaftEquations.TO_WUSTITE;

import java.util.Arrays;

/** A first guess for the shaft: temperatures as curves of the usual shape, reduction marched down through them. */
final class ShaftGuess {

  private ShaftGuess() {
  }

  /** Mesh with short steps at both ends: z/H = s - 0.7 sin(2πs)/(2π). */
  static void mesh(double height, double[] z) {
    int n = z.length - 1;
    for (int i = 0; i <= n; i++) {
      double s = (double) i / n;
      z[i] = height * (s - .7 * Math.sin(2 * Math.PI * s) / (2 * Math.PI));
    }
  }

  static void fill(ShaftEquations shaft, ShaftHearth hearth, Collocation c) {
    int n = shaft.n;
    double height = c.z[c.intervals];
    double zone = shaft.in.get(ShaftParameter.ZONE_CO);
    double start = 1 / (2 - zone);
    double ambient = shaft.ambient / ShaftEquations.KILO;
    c.fuel = start + .95 * (1 - start);
    c.metal = .3;
    for (int i = 0; i <= c.intervals; i++) {
      double z = c.z[i];
      int at = i * n;
      double core = 1.45 - .65 * z / height;
      c.u[at + CARBON] = start + (c.fuel - start) * (1 - Math.exp(-z / .04));
      c.u[at + shaft.gasTemperature] = core + .3 * Math.exp(-z / .03);
      c.u[at + shaft.solidTemperature] = ambient + (core - .03 - ambient) * (1 - Math.exp((z - height) / (.12 * height)));
      c.u[at + shaft.water] = c.fuel * shaft.fuelUnit * shaft.waterPerFuel / shaft.unit
          * ShaftEquations.logistic((z / height - .9) / .02);
    }
    reduce(shaft, c);
    c.metal = hearth.metal(shaft.toMetal(c.u, 0), c.fuel);
  }

  /** Marches the ore down, bounded so that no degree of reduction passes one. */
  private static void reduce(ShaftEquations shaft, Collocation c) {
    int n = shaft.n;
    double[] slope = new double[n];
    int degrees = 2 * shaft.classes;
    Arrays.fill(c.u, c.intervals * n + TO_WUSTITE, c.intervals * n + TO_WUSTITE + degrees, 0);
    for (int i = c.intervals - 1; i >= 0; i--) {
      int at = i * n;
      System.arraycopy(c.u, at + n + TO_WUSTITE, c.u, at + TO_WUSTITE, degrees);
      for (int step = TO_WUSTITE; step <= TO_METAL; step++) {
        shaft.slope(c.u, at, c.fuel, .3, slope, 0);
        for (int k = step; k < step + degrees; k += 2) {
          double above = c.u[at + n + k];
          double gain = -slope[k] * (c.z[i + 1] - c.z[i]) / Math.max(1e-3, 1 - above);
          c.u[at + k] = (above + gain) / (1 + gain);
        }
      }
    }
  }
}
