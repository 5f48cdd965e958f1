package daubline.engine.process.shaft;

/**
 * Solves the shaft. Newton's method with shortened steps from a first guess, or from a neighbouring solution; where that
 * fails, the furnace is reached through a row of furnaces that lead to it from a usual one. What dies on the way or still
 * does not converge is refused with the reason.
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
  /** Below 600 °C charcoal gasifies 400 times slower than at 850 °C and the model's burning zone is none; K. */
  private static final double DEAD = 873.15;
  private static final double LEAST_STRIDE = 1e-3;
  /** Newton steps after which a furnace is given up, and one that has hardly any air, where giving up is the likely end. */
  private static final int MOST_WALKED = 1000;
  private static final int MOST_WALKED_WEAK = 600;

  private final int intervals;
  private Collocation c;
  private int steps;

  /** A solver with the usual mesh. */
  public ShaftSolver() {
    this(USUAL_INTERVALS);
  }

  /** A solver with a mesh of so many intervals, at least 10. */
  public ShaftSolver(int intervals) {
    this.intervals = Math.max(10, intervals);
    c = new Collocation(this.intervals, 1);
  }

  /** Solves one furnace. Never throws for a physical reason: a refusal is a result. */
  public ShaftSolution solve(ShaftInputs inputs) {
    var fault = inputs.fault();
    if (fault.isPresent()) {
      return ShaftSolution.refused(inputs, fault.get());
    }
    steps = 0;
    if (c.classes != inputs.sizes().count()) {
      c = new Collocation(intervals, inputs.sizes().count());
    }
    ShaftEquations shaft = new ShaftEquations(inputs);
    ShaftHearth hearth = new ShaftHearth(shaft);
    lay(shaft, hearth);
    ShaftGuess.fill(shaft, hearth, c);
    if ((converge() || reach(inputs)) && !isDead()) {
      return new ShaftOutputs(shaft, hearth, c).solution(steps);
    }
    return ShaftSolution.refused(inputs, ShaftOutputs.reason(inputs, isDead()));
  }

  /**
   * Solves a furnace of the same height and size classes of ore as the one solved just before, by a walk from that solution; from the start where
   * this fails or where there was none.
   */
  public ShaftSolution solveNear(ShaftSolution before, ShaftInputs inputs) {
    if (before.converged() && inputs.fault().isEmpty() && before.inputs().sizes().equals(inputs.sizes())) {
      steps = 0;
      boolean there = walk(before.inputs(), inputs, 1);
      if (isDead()) {
        return ShaftSolution.refused(inputs, ShaftOutputs.reason(inputs, true));
      }
      if (there) {
        ShaftEquations shaft = new ShaftEquations(inputs);
        return new ShaftOutputs(shaft, new ShaftHearth(shaft), c).solution(steps);
      }
    }
    return solve(inputs);
  }

  private void lay(ShaftEquations shaft, ShaftHearth hearth) {
    c.use(shaft, hearth);
    ShaftGuess.mesh(shaft.in.get(ShaftParameter.STACK), c.z);
  }

  /** Walks to the wanted furnace from a usual one. */
  private boolean reach(ShaftInputs wanted) {
    ShaftInputs from = ShaftInputs.usual().with(wanted.sizes());
    ShaftEquations shaft = new ShaftEquations(from);
    ShaftHearth hearth = new ShaftHearth(shaft);
    lay(shaft, hearth);
    ShaftGuess.fill(shaft, hearth, c);
    return converge() && walk(from, wanted, LONGEST);
  }

  /** Walks from the furnace just solved to the wanted one, with steps that shrink on failure and grow on success. */
  private boolean walk(ShaftInputs from, ShaftInputs wanted, double first) {
    ShaftWalk walk = new ShaftWalk(c);
    double stride = first;
    int most = ShaftOutputs.isWeak(wanted) ? MOST_WALKED_WEAK : MOST_WALKED;
    while (walk.done() < 1 && stride > LEAST_STRIDE && steps < most && !isDead()) {
      double next = Math.min(1, walk.done() + stride);
      ShaftEquations between = new ShaftEquations(next < 1 ? from.towards(wanted, next) : wanted);
      lay(between, new ShaftHearth(between));
      walk.guess(next);
      if (converge()) {
        walk.keep(next);
        stride *= 1.6;
      } else {
        stride /= 2;
        walk.guess(walk.done());
      }
    }
    return walk.done() >= 1;
  }

  /** Whether the charge is too cold everywhere for charcoal to gasify; what is still further on the way is colder. */
  private boolean isDead() {
    return c.hottestSolid() < DEAD;
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
