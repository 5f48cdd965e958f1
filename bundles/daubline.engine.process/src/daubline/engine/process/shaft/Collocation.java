package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftEquations.CARBON;
import static daubline.engine.process.shaft.ShaftEquations.KILO;
import static daubline.engine.process.shaft.ShaftEquations.TO_WUSTITE;

/**
 * The shaft equations on a mesh by the fourth-order Lobatto formula (Simpson's rule with the middle state from the cubic
 * through both ends), and one Newton step on them. The two numbers of the whole furnace border a banded matrix.
 *
 * <p>Source: J. Kierzenka, L. F. Shampine, ACM Trans. Math. Softw. 27 (2001) 299, for the formula.
 */
final class Collocation {

  private static final double NUDGE = 1e-7;

  final int intervals;
  /** Size classes of the ore. */
  final int classes;
  /** Numbers in the state at one height, and with the two of the whole furnace. */
  private final int n;
  private final int width;
  /** Columns of a Jacobian, those that leave both temperatures alone first, since properties are kept between calls. */
  private final int[] order;
  final double[] z;
  final double[] u;
  double fuel;
  double metal;
  private final double[] slope;
  private final double[] jacobian;
  private final double[] middle;
  private final double[] middleSlope;
  private final double[] middleJacobian;
  private final double[] nudged;
  private final double[] work;
  private final double[] left;
  private final BandedSystem matrix;
  private final double[] residual;
  private final double[] byFuel;
  private final double[] byMetal;
  private final double[] step;
  private double stepFuel;
  private double stepMetal;
  private ShaftEquations shaft;
  private ShaftHearth hearth;

  Collocation(int intervals, int classes) {
    this.intervals = intervals;
    this.classes = classes;
    n = 4 + 2 * classes;
    width = n + 2;
    order = new int[width];
    for (int i = 0; i < width; i++) {
      order[i] = i < n - 2 ? i : i < n ? i + 2 : i - 2;
    }
    middleJacobian = new double[n * width];
    nudged = new double[n];
    work = new double[n];
    left = new double[2 * width];
    int size = n * (intervals + 1);
    z = new double[intervals + 1];
    u = new double[size];
    slope = new double[size];
    jacobian = new double[size * width];
    middle = new double[n * intervals];
    middleSlope = new double[n * intervals];
    residual = new double[size];
    byFuel = new double[size];
    byMetal = new double[size];
    step = new double[size];
    matrix = new BandedSystem(size, n + 1, 2 * n - 3);
  }

  /** Takes another furnace; states and mesh stay as they are, for a guess to be laid over them. */
  void use(ShaftEquations equations, ShaftHearth foot) {
    shaft = equations;
    hearth = foot;
  }

  /** Largest remainder of all equations at the present state, scaled to order one. */
  double remainder() {
    for (int i = 0; i <= intervals; i++) {
      shaft.slope(u, i * n, fuel, metal, slope, i * n);
    }
    double most = 0;
    for (int i = 0; i < intervals; i++) {
      middle(i);
      shaft.slope(middle, i * n, fuel, metal, middleSlope, i * n);
      for (int k = 0; k < n; k++) {
        residual[2 + i * n + k] = defect(i, k);
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
    int a = i * n;
    int b = a + n;
    for (int k = 0; k < n; k++) {
      middle[a + k] = (u[a + k] + u[b + k]) / 2 + h / 8 * (slope[a + k] - slope[b + k]);
    }
  }

  private double defect(int i, int k) {
    int a = i * n + k;
    int b = a + n;
    return u[b] - u[a] - (z[i + 1] - z[i]) / 6 * (slope[a] + 4 * middleSlope[a] + slope[b]);
  }

  private void ends() {
    residual[0] = u[CARBON] - hearth.carbon(u, fuel, metal);
    residual[1] = hearth.heatRemainder(u, fuel, metal);
    int top = n * intervals;
    int row = 2 + top;
    for (int k = TO_WUSTITE; k < shaft.water; k++) {
      residual[row++] = u[top + k];
    }
    residual[row] = u[top + shaft.water] - fuel * waterPerUnit();
    residual[row + 1] = u[top + shaft.solidTemperature] - shaft.ambient / KILO;
  }

  private double waterPerUnit() {
    return shaft.fuelUnit * shaft.waterPerFuel / shaft.unit;
  }

  private double fuelRemainder() {
    return u[n * intervals + CARBON] - fuel;
  }

  private double metalRemainder() {
    return metal - hearth.metal(shaft.toMetal(u, 0), fuel);
  }

  /** Computes a Newton step at the state of the last {@link #remainder}; false when the matrix is singular. */
  boolean prepareStep() {
    matrix.clear();
    for (int i = 0; i <= intervals; i++) {
      differentiate(u, i * n, slope, jacobian, i * n * width);
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
    System.arraycopy(state, at, nudged, 0, n);
    for (int c : order) {
      double size = c < n ? nudged[c] : c == n ? fuel : metal;
      double by = NUDGE * (Math.abs(size) + .1);
      if (c < n) {
        nudged[c] += by;
      }
      shaft.slope(nudged, 0, c == n ? fuel + by : fuel, c == n + 1 ? metal + by : metal, work, 0);
      if (c < n) {
        nudged[c] = size;
      }
      for (int k = 0; k < n; k++) {
        out[to + k * width + c] = (work[k] - base[at + k]) / by;
      }
    }
  }

  private void assemble(int i) {
    double h = z[i + 1] - z[i];
    differentiate(middle, i * n, middleSlope, middleJacobian, 0);
    int a = i * n * width;
    int b = a + n * width;
    for (int k = 0; k < n; k++) {
      int row = 2 + i * n + k;
      for (int c = 0; c < width; c++) {
        double low = 0;
        double high = 0;
        int m = k * width;
        int p = a + c;
        int q = b + c;
        // two at a time: the state has an even count of numbers
        for (int l = 0; l < n; l += 2) {
          double even = middleJacobian[m + l];
          double odd = middleJacobian[m + l + 1];
          low = low + even * jacobian[p] + odd * jacobian[p + width];
          high = high + even * jacobian[q] + odd * jacobian[q + width];
          p += 2 * width;
          q += 2 * width;
        }
        double direct = middleJacobian[k * width + c];
        double first = jacobian[a + k * width + c];
        double last = jacobian[b + k * width + c];
        if (c < n) {
          double unit = c == k ? 1 : 0;
          matrix.set(row, i * n + c, -unit - h / 6 * (first + 2 * direct + h / 2 * low));
          matrix.set(row, i * n + n + c, unit - h / 6 * (last + 2 * direct - h / 2 * high));
        } else {
          double d = -h / 6 * (first + last + 4 * direct + h / 2 * (low - high));
          (c == n ? byFuel : byMetal)[row] = d;
        }
      }
    }
  }

  private void assembleEnds() {
    differentiateFoot();
    for (int r = 0; r < 2; r++) {
      for (int c = 0; c < n; c++) {
        matrix.set(r, c, left[r * width + c]);
      }
      byFuel[r] = left[r * width + n];
      byMetal[r] = left[r * width + n + 1];
    }
    int top = n * intervals;
    for (int r = 0; r < n - 2; r++) {
      int fixed = r == n - 3 ? shaft.solidTemperature : TO_WUSTITE + r;
      matrix.set(2 + top + r, top + fixed, 1);
      byFuel[2 + top + r] = fixed == shaft.water ? -waterPerUnit() : 0;
      byMetal[2 + top + r] = 0;
    }
  }

  private void differentiateFoot() {
    System.arraycopy(u, 0, nudged, 0, n);
    double carbon = nudged[CARBON] - hearth.carbon(nudged, fuel, metal);
    double heat = hearth.heatRemainder(nudged, fuel, metal);
    for (int c = 0; c < width; c++) {
      double size = c < n ? nudged[c] : c == n ? fuel : metal;
      double by = NUDGE * (Math.abs(size) + .1);
      if (c < n) {
        nudged[c] += by;
      }
      double f = c == n ? fuel + by : fuel;
      double m = c == n + 1 ? metal + by : metal;
      left[c] = (nudged[CARBON] - hearth.carbon(nudged, f, m) - carbon) / by;
      left[width + c] = (hearth.heatRemainder(nudged, f, m) - heat) / by;
      if (c < n) {
        nudged[c] = size;
      }
    }
  }

  /** Eliminates the banded unknowns from the two bordering equations. */
  private boolean border() {
    int top = n * intervals + CARBON;
    boolean free = hearth.kinetic(shaft.toMetal(u, 0)) < hearth.bound(fuel);
    double byReduced = free ? hearth.kinetic(1) - hearth.kinetic(0) : 0;
    double byFuelBound = free ? 0 : (hearth.bound(fuel + NUDGE) - hearth.bound(fuel)) / NUDGE;
    double a11 = -1 - byFuel[top];
    double a12 = -byMetal[top];
    double b1 = -fuelRemainder() + residual[top];
    double a21 = -byFuelBound + byReduced * shaft.toMetal(byFuel, 0);
    double a22 = 1 + byReduced * shaft.toMetal(byMetal, 0);
    double b2 = -metalRemainder() - byReduced * shaft.toMetal(residual, 0);
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
      hottest = Math.max(hottest, KILO * u[i * n + shaft.solidTemperature]);
    }
    return hottest;
  }
}
