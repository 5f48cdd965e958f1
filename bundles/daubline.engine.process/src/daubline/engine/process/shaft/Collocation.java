package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftEquations.CARBON;
import static daubline.engine.process.shaft.ShaftEquations.KILO;
import static daubline.engine.process.shaft.ShaftEquations.N;
import static daubline.engine.process.shaft.ShaftEquations.SOLID_T;
import static daubline.engine.process.shaft.ShaftEquations.TO_METAL;
import static daubline.engine.process.shaft.ShaftEquations.TO_WUSTITE;
import static daubline.engine.process.shaft.ShaftEquations.WATER;

/**
 * The shaft equations on a mesh by the fourth-order Lobatto formula (Simpson's rule with the middle state from the cubic
 * through both ends), and one Newton step on them. The two numbers of the whole furnace border a banded matrix.
 *
 * <p>Source: J. Kierzenka, L. F. Shampine, ACM Trans. Math. Softw. 27 (2001) 299, for the formula.
 */
final class Collocation {

  private static final int WIDTH = N + 2;
  private static final double NUDGE = 1e-7;
  /** Columns of a Jacobian, those that leave both temperatures alone first, since properties are kept between calls. */
  private static final int[] ORDER = {0, 1, 2, 3, N, N + 1, 4, 5};

  final int intervals;
  final double[] z;
  final double[] u;
  double fuel;
  double metal;
  private final double[] slope;
  private final double[] jacobian;
  private final double[] middle;
  private final double[] middleSlope;
  private final double[] middleJacobian = new double[N * WIDTH];
  private final double[] nudged = new double[N];
  private final double[] work = new double[N];
  private final double[] left = new double[2 * WIDTH];
  private final BandedSystem matrix;
  private final double[] residual;
  private final double[] byFuel;
  private final double[] byMetal;
  private final double[] step;
  private double stepFuel;
  private double stepMetal;
  private ShaftEquations shaft;
  private ShaftHearth hearth;

  Collocation(int intervals) {
    this.intervals = intervals;
    int size = N * (intervals + 1);
    z = new double[intervals + 1];
    u = new double[size];
    slope = new double[size];
    jacobian = new double[size * WIDTH];
    middle = new double[N * intervals];
    middleSlope = new double[N * intervals];
    residual = new double[size];
    byFuel = new double[size];
    byMetal = new double[size];
    step = new double[size];
    matrix = new BandedSystem(size, N + 1, N + 3);
  }

  /** Takes another furnace; states and mesh stay as they are, for a guess to be laid over them. */
  void use(ShaftEquations equations, ShaftHearth foot) {
    shaft = equations;
    hearth = foot;
  }

  /** Largest remainder of all equations at the present state, scaled to order one. */
  double remainder() {
    for (int i = 0; i <= intervals; i++) {
      shaft.slope(u, i * N, fuel, metal, slope, i * N);
    }
    double most = 0;
    for (int i = 0; i < intervals; i++) {
      middle(i);
      shaft.slope(middle, i * N, fuel, metal, middleSlope, i * N);
      for (int k = 0; k < N; k++) {
        residual[2 + i * N + k] = defect(i, k);
      }
    }
    ends();
    for (double r : residual) {
      most = Math.max(most, Math.abs(r));
    }
    most = Math.max(most, Math.abs(fuelRemainder()));
    most = Math.max(most, Math.abs(metalRemainder()));
    return Double.isFinite(most) ? most : Double.POSITIVE_INFINITY;
  }

  private void middle(int i) {
    double h = z[i + 1] - z[i];
    int a = i * N;
    int b = a + N;
    for (int k = 0; k < N; k++) {
      middle[a + k] = (u[a + k] + u[b + k]) / 2 + h / 8 * (slope[a + k] - slope[b + k]);
    }
  }

  private double defect(int i, int k) {
    int a = i * N + k;
    int b = a + N;
    return u[b] - u[a] - (z[i + 1] - z[i]) / 6 * (slope[a] + 4 * middleSlope[a] + slope[b]);
  }

  private void ends() {
    residual[0] = u[CARBON] - hearth.carbon(u, fuel, metal);
    residual[1] = hearth.heatRemainder(u, fuel, metal);
    int top = N * intervals;
    int row = 2 + top;
    residual[row] = u[top + TO_WUSTITE];
    residual[row + 1] = u[top + TO_METAL];
    residual[row + 2] = u[top + WATER] - fuel * waterPerUnit();
    residual[row + 3] = u[top + SOLID_T] - shaft.ambient / KILO;
  }

  private double waterPerUnit() {
    return shaft.fuelUnit * shaft.waterPerFuel / shaft.unit;
  }

  private double fuelRemainder() {
    return u[N * intervals + CARBON] - fuel;
  }

  private double metalRemainder() {
    return metal - hearth.metal(u[TO_METAL], fuel);
  }

  /** Computes a Newton step at the state of the last {@link #remainder}; false when the matrix is singular. */
  boolean prepareStep() {
    matrix.clear();
    for (int i = 0; i <= intervals; i++) {
      differentiate(u, i * N, slope, jacobian, i * N * WIDTH);
    }
    for (int i = 0; i < intervals; i++) {
      assemble(i);
    }
    assembleEnds();
    if (!matrix.factor()) {
      return false;
    }
    matrix.solve(residual);
    matrix.solve(byFuel);
    matrix.solve(byMetal);
    return border();
  }

  private void differentiate(double[] state, int at, double[] base, double[] out, int to) {
    System.arraycopy(state, at, nudged, 0, N);
    for (int c : ORDER) {
      double size = c < N ? nudged[c] : c == N ? fuel : metal;
      double by = NUDGE * (Math.abs(size) + .1);
      if (c < N) {
        nudged[c] += by;
      }
      shaft.slope(nudged, 0, c == N ? fuel + by : fuel, c == N + 1 ? metal + by : metal, work, 0);
      if (c < N) {
        nudged[c] = size;
      }
      for (int k = 0; k < N; k++) {
        out[to + k * WIDTH + c] = (work[k] - base[at + k]) / by;
      }
    }
  }

  private void assemble(int i) {
    double h = z[i + 1] - z[i];
    differentiate(middle, i * N, middleSlope, middleJacobian, 0);
    int a = i * N * WIDTH;
    int b = a + N * WIDTH;
    for (int k = 0; k < N; k++) {
      int row = 2 + i * N + k;
      for (int c = 0; c < WIDTH; c++) {
        double low = 0;
        double high = 0;
        for (int l = 0; l < N; l++) {
          double m = middleJacobian[k * WIDTH + l];
          low += m * jacobian[a + l * WIDTH + c];
          high += m * jacobian[b + l * WIDTH + c];
        }
        double direct = middleJacobian[k * WIDTH + c];
        double first = jacobian[a + k * WIDTH + c];
        double last = jacobian[b + k * WIDTH + c];
        if (c < N) {
          double unit = c == k ? 1 : 0;
          matrix.set(row, i * N + c, -unit - h / 6 * (first + 2 * direct + h / 2 * low));
          matrix.set(row, i * N + N + c, unit - h / 6 * (last + 2 * direct - h / 2 * high));
        } else {
          double d = -h / 6 * (first + last + 4 * direct + h / 2 * (low - high));
          (c == N ? byFuel : byMetal)[row] = d;
        }
      }
    }
  }

  private void assembleEnds() {
    differentiateFoot();
    for (int r = 0; r < 2; r++) {
      for (int c = 0; c < N; c++) {
        matrix.set(r, c, left[r * WIDTH + c]);
      }
      byFuel[r] = left[r * WIDTH + N];
      byMetal[r] = left[r * WIDTH + N + 1];
    }
    int top = N * intervals;
    int[] fixed = {TO_WUSTITE, TO_METAL, WATER, SOLID_T};
    for (int r = 0; r < fixed.length; r++) {
      matrix.set(2 + top + r, top + fixed[r], 1);
      byFuel[2 + top + r] = fixed[r] == WATER ? -waterPerUnit() : 0;
      byMetal[2 + top + r] = 0;
    }
  }

  private void differentiateFoot() {
    System.arraycopy(u, 0, nudged, 0, N);
    double carbon = nudged[CARBON] - hearth.carbon(nudged, fuel, metal);
    double heat = hearth.heatRemainder(nudged, fuel, metal);
    for (int c = 0; c < WIDTH; c++) {
      double size = c < N ? nudged[c] : c == N ? fuel : metal;
      double by = NUDGE * (Math.abs(size) + .1);
      if (c < N) {
        nudged[c] += by;
      }
      double f = c == N ? fuel + by : fuel;
      double m = c == N + 1 ? metal + by : metal;
      left[c] = (nudged[CARBON] - hearth.carbon(nudged, f, m) - carbon) / by;
      left[WIDTH + c] = (hearth.heatRemainder(nudged, f, m) - heat) / by;
      if (c < N) {
        nudged[c] = size;
      }
    }
  }

  /** Eliminates the banded unknowns from the two bordering equations. */
  private boolean border() {
    int top = N * intervals + CARBON;
    boolean free = hearth.kinetic(u[TO_METAL]) < hearth.bound(fuel);
    double byReduced = free ? hearth.kinetic(1) - hearth.kinetic(0) : 0;
    double byFuelBound = free ? 0 : (hearth.bound(fuel + NUDGE) - hearth.bound(fuel)) / NUDGE;
    double a11 = -1 - byFuel[top];
    double a12 = -byMetal[top];
    double b1 = -fuelRemainder() + residual[top];
    double a21 = -byFuelBound + byReduced * byFuel[TO_METAL];
    double a22 = 1 + byReduced * byMetal[TO_METAL];
    double b2 = -metalRemainder() - byReduced * residual[TO_METAL];
    double det = a11 * a22 - a12 * a21;
    stepFuel = (b1 * a22 - b2 * a12) / det;
    stepMetal = (a11 * b2 - a21 * b1) / det;
    for (int i = 0; i < step.length; i++) {
      step[i] = -residual[i] - byFuel[i] * stepFuel - byMetal[i] * stepMetal;
    }
    return Double.isFinite(stepFuel) && Double.isFinite(stepMetal);
  }

  /** Largest change that the prepared step asks for. */
  double stepSize() {
    double most = Math.max(Math.abs(stepFuel), Math.abs(stepMetal));
    for (double s : step) {
      most = Math.max(most, Math.abs(s));
    }
    return most;
  }

  /** Goes a share of the prepared step; a negative share goes back. */
  void advance(double share) {
    for (int i = 0; i < step.length; i++) {
      u[i] += share * step[i];
    }
    fuel += share * stepFuel;
    metal += share * stepMetal;
  }

  /** The hottest solids of the present state, K. */
  double hottestSolid() {
    double hottest = 0;
    for (int i = 0; i <= intervals; i++) {
      hottest = Math.max(hottest, KILO * u[i * N + SOLID_T]);
    }
    return hottest;
  }
}
