package daubline.engine.process.shaft;

/**
 * Solves the shaft. Newton's method with shortened steps from a first guess, or from a neighbouring solution; where that
 * fails, the furnace is reached through a row of furnaces that lead to it from a usual one. What still does not converge
 * is refused with the reason.
 *
 * <p>One solver serves one thread; it keeps its work space between calls and its answers do not depend on earlier calls.
 */
public final class ShaftSolver {

  /** Intervals of the usual mesh: 0.5 % against a mesh ten times finer on the reference cases. */
  public static final int USUAL_INTERVALS = 40;
  private static final int MOST_STEPS = 25;
  private static final double CLOSE = 1e-5;
  private static final double SMALL = 1e-6;
  private static final double LONGEST = .25;
  private static final double SHORTEST = 1.0 / 64;

  private final Collocation c;
  private int steps;

  /** A solver with the usual mesh. */
  public ShaftSolver() {
    this(USUAL_INTERVALS);
  }

  /** A solver with a mesh of so many intervals, at least 10. */
  public ShaftSolver(int intervals) {
    c = new Collocation(Math.max(10, intervals));
  }

  /** Solves one furnace. Never throws for a physical reason: a refusal is a result. */
  public ShaftSolution solve(ShaftInputs inputs) {
    var fault = inputs.fault();
    if (fault.isPresent()) {
      return ShaftSolution.refused(inputs, fault.get());
    }
    steps = 0;
    ShaftEquations shaft = new ShaftEquations(inputs);
    ShaftHearth hearth = new ShaftHearth(shaft);
    lay(shaft, hearth);
    ShaftGuess.fill(shaft, hearth, c);
    if (converge() || reach(inputs)) {
      return new ShaftOutputs(shaft, hearth, c).solution(steps);
    }
    return ShaftSolution.refused(inputs, ShaftOutputs.reason(shaft, c));
  }

  /**
   * Solves a furnace of the same height as the one solved just before, from that solution; from the start where this fails
   * or where there was none.
   */
  public ShaftSolution solveNear(ShaftSolution before, ShaftInputs inputs) {
    if (before.converged() && inputs.fault().isEmpty()) {
      steps = 0;
      ShaftEquations shaft = new ShaftEquations(inputs);
      ShaftHearth hearth = new ShaftHearth(shaft);
      lay(shaft, hearth);
      if (converge()) {
        return new ShaftOutputs(shaft, hearth, c).solution(steps);
      }
    }
    return solve(inputs);
  }

  private void lay(ShaftEquations shaft, ShaftHearth hearth) {
    c.use(shaft, hearth);
    ShaftGuess.mesh(shaft.in.get(ShaftParameter.STACK), c.z);
  }

  /** Walks from a usual furnace to the wanted one, with steps that shrink on failure and grow on success. */
  private boolean reach(ShaftInputs wanted) {
    ShaftInputs from = ShaftInputs.usual();
    ShaftEquations shaft = new ShaftEquations(from);
    ShaftHearth hearth = new ShaftHearth(shaft);
    lay(shaft, hearth);
    ShaftGuess.fill(shaft, hearth, c);
    if (!converge()) {
      return false;
    }
    double[] kept = c.u.clone();
    double fuel = c.fuel;
    double metal = c.metal;
    double done = 0;
    double stride = .25;
    while (done < 1 && stride > 1e-3) {
      double next = Math.min(1, done + stride);
      ShaftEquations between = new ShaftEquations(from.towards(wanted, next));
      lay(between, new ShaftHearth(between));
      if (converge()) {
        done = next;
        stride *= 1.6;
        System.arraycopy(c.u, 0, kept, 0, kept.length);
        fuel = c.fuel;
        metal = c.metal;
      } else {
        stride /= 3;
        System.arraycopy(kept, 0, c.u, 0, kept.length);
        c.fuel = fuel;
        c.metal = metal;
      }
    }
    return done >= 1;
  }

  private boolean converge() {
    double remainder = c.remainder();
    for (int i = 0; i < MOST_STEPS && Double.isFinite(remainder); i++) {
      steps++;
      if (!c.prepareStep()) {
        return false;
      }
      double size = c.stepSize();
      double share = Math.min(1, LONGEST / size);
      c.advance(share);
      double next = c.remainder();
      // where the ore is wholly reduced its rate has a corner at which steps dither: a small remainder is then enough
      if (share == 1 && size < CLOSE && next < 1e-4 || next < SMALL) {
        return true;
      }
      while (!(next < remainder) && share > SHORTEST && size > 1e-3) {
        c.advance(-share / 2);
        share /= 2;
        next = c.remainder();
      }
      remainder = next;
    }
    return false;
  }
}
