package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftEquations.CARBON;
import static daubline.engine.process.shaft.ShaftEquations.KILO;
import static daubline.engine.process.shaft.ShaftEquations.TO_METAL;
import static daubline.engine.process.shaft.ShaftEquations.TO_WUSTITE;

/**
 * The same equations as {@link ShaftSolver} the plain way, a peer for its speed: equal steps, the solids marched down and the
 * gas marched up by Euler's rule, again and again with shortened corrections until nothing moves. It stands in the package
 * of the equations because they are nobody else's business.
 */
public final class FixedStepShaft {

  private static final double SHARE = .5;
  private static final double STILL = 1e-7;
  private static final int MOST_SWEEPS = 20_000;

  /** Numbers in the state with ore of one size. */
  private static final int N = 6;
  private static final int WATER = 3;
  private static final int GAS_T = 4;
  private static final int SOLID_T = 5;

  private final ShaftEquations shaft;
  private final ShaftHearth hearth;
  private final int steps;
  private final double height;
  private final double dz;
  private final double[] u;
  private final double[] before;
  private final double[] slope = new double[N];
  private double fuel;
  private double metal;
  private int sweeps;

  private FixedStepShaft(ShaftInputs inputs, int steps) {
    shaft = new ShaftEquations(inputs);
    hearth = new ShaftHearth(shaft);
    this.steps = steps;
    height = inputs.get(ShaftParameter.STACK);
    dz = height / steps;
    Collocation guess = new Collocation(steps, 1);
    for (int i = 0; i <= steps; i++) {
      guess.z[i] = i * dz;
    }
    ShaftGuess.fill(shaft, hearth, guess);
    u = guess.u;
    before = new double[u.length];
    fuel = guess.fuel;
    metal = guess.metal;
  }

  /**
   * What it found.
   *
   * @param charcoal burnt, wet, kg/s; NaN when it did not come to rest
   * @param metal share of the iron that becomes metal
   * @param sweeps down and up together
   */
  public record Found(double charcoal, double metal, int sweeps) {
  }

  /** Solves one furnace with so many steps. */
  public static Found solve(ShaftInputs inputs, int steps) {
    FixedStepShaft s = new FixedStepShaft(inputs, steps);
    boolean still = s.run();
    double moisture = inputs.get(ShaftParameter.CHARCOAL_MOISTURE);
    return new Found(still ? s.fuel * s.shaft.fuelUnit / (1 - moisture) : Double.NaN, s.metal, s.sweeps);
  }

  private boolean run() {
    for (sweeps = 0; sweeps < MOST_SWEEPS; sweeps++) {
      System.arraycopy(u, 0, before, 0, u.length);
      double oldFuel = fuel;
      down();
      foot();
      up();
      metal += SHARE * (hearth.metal(u[TO_METAL], fuel) - metal);
      fuel += SHARE * (u[steps * N + CARBON] - fuel);
      double moved = Math.abs(fuel - oldFuel);
      for (int i = 0; i < u.length; i++) {
        moved = Math.max(moved, Math.abs(u[i] - before[i]));
      }
      if (!(moved < 10)) {
        return false;
      }
      if (moved < STILL) {
        return true;
      }
    }
    return false;
  }

  /** Ore, water and solid temperature from the mouth to the foot. */
  private void down() {
    int top = steps * N;
    u[top + TO_WUSTITE] = 0;
    u[top + TO_METAL] = 0;
    u[top + WATER] = fuel * shaft.fuelUnit * shaft.waterPerFuel / shaft.unit;
    u[top + SOLID_T] = shaft.ambient / KILO;
    for (int i = steps; i > 0; i--) {
      int at = i * N;
      shaft.slope(u, at, fuel, metal, slope, 0);
      for (int k : new int[] {TO_WUSTITE, TO_METAL, WATER, SOLID_T}) {
        double next = u[at + k] - dz * slope[k];
        next = k == TO_WUSTITE || k == TO_METAL ? Math.clamp(next, 0, 1) : Math.max(0, next);
        u[at - N + k] += SHARE * (next - u[at - N + k]);
      }
    }
  }

  /** Carbon of the zone, and the gas temperature at which its heat balances. */
  private void foot() {
    u[CARBON] += SHARE * (hearth.carbon(u, fuel, metal) - u[CARBON]);
    double now = u[GAS_T];
    double low = .3;
    double high = 3;
    for (int i = 0; i < 60; i++) {
      u[GAS_T] = (low + high) / 2;
      if (hearth.heatRemainder(u, fuel, metal) > 0) {
        low = u[GAS_T];
      } else {
        high = u[GAS_T];
      }
    }
    u[GAS_T] = now + SHARE * (u[GAS_T] - now);
  }

  /** Gas carbon and gas temperature from the foot to the mouth. */
  private void up() {
    for (int i = 0; i < steps; i++) {
      int at = i * N;
      shaft.slope(u, at, fuel, metal, slope, 0);
      for (int k : new int[] {CARBON, GAS_T}) {
        double next = u[at + k] + dz * slope[k];
        u[at + N + k] += SHARE * (next - u[at + N + k]);
      }
    }
  }
}
