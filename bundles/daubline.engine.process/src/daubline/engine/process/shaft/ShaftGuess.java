package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftEquations.CARBON;
import static daubline.engine.process.shaft.ShaftEquations.GAS_T;
import static daubline.engine.process.shaft.ShaftEquations.N;
import static daubline.engine.process.shaft.ShaftEquations.SOLID_T;
import static daubline.engine.process.shaft.ShaftEquations.TO_METAL;
import static daubline.engine.process.shaft.ShaftEquations.TO_WUSTITE;
import static daubline.engine.process.shaft.ShaftEquations.WATER;

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
    double height = c.z[c.intervals];
    double zone = shaft.in.get(ShaftParameter.ZONE_CO);
    double start = 1 / (2 - zone);
    double ambient = shaft.ambient / ShaftEquations.KILO;
    c.fuel = start + .95 * (1 - start);
    c.metal = .3;
    for (int i = 0; i <= c.intervals; i++) {
      double z = c.z[i];
      int at = i * N;
      double core = 1.45 - .65 * z / height;
      c.u[at + CARBON] = start + (c.fuel - start) * (1 - Math.exp(-z / .04));
      c.u[at + GAS_T] = core + .3 * Math.exp(-z / .03);
      c.u[at + SOLID_T] = ambient + (core - .03 - ambient) * (1 - Math.exp((z - height) / (.12 * height)));
      c.u[at + WATER] = c.fuel * shaft.fuelUnit * shaft.waterPerFuel / shaft.unit
          * ShaftEquations.logistic((z / height - .9) / .02);
    }
    reduce(shaft, c);
    c.metal = hearth.metal(c.u[TO_METAL], c.fuel);
  }

  /** Marches the ore down, bounded so that no degree of reduction passes one. */
  private static void reduce(ShaftEquations shaft, Collocation c) {
    double[] slope = new double[N];
    c.u[c.intervals * N + TO_WUSTITE] = 0;
    c.u[c.intervals * N + TO_METAL] = 0;
    for (int i = c.intervals - 1; i >= 0; i--) {
      int at = i * N;
      for (int k : new int[] {TO_WUSTITE, TO_METAL}) {
        double above = c.u[at + N + k];
        c.u[at + k] = above;
        c.u[at + TO_METAL] = c.u[at + N + TO_METAL];
        shaft.slope(c.u, at, c.fuel, .3, slope, 0);
        double gain = -slope[k] * (c.z[i + 1] - c.z[i]) / Math.max(1e-3, 1 - above);
        c.u[at + k] = (above + gain) / (1 + gain);
      }
    }
  }
}
