package daubline.engine.process.shaft;

/** What is remembered on a walk from one furnace to another: the last two states that converged, from which the next is guessed. */
final class ShaftWalk {

  private final Collocation c;
  private State last;
  private State before;

  private record State(double at, double[] u, double fuel, double metal) {
  }

  /** Begins at the present state. */
  ShaftWalk(Collocation c) {
    this.c = c;
    keep(0);
  }

  /** How far the walk has come, 0 to 1. */
  double done() {
    return last.at;
  }

  /** Keeps the present state, which converged. */
  void keep(double at) {
    before = last;
    last = new State(at, c.u.clone(), c.fuel, c.metal);
  }

  /** Lays a guess for a place further on: the straight line through the last two states, or the last where there is one only. */
  void guess(double at) {
    double q = before == null ? 0 : (at - last.at) / (last.at - before.at);
    State from = before == null ? last : before;
    for (int i = 0; i < c.u.length; i++) {
      c.u[i] = last.u[i] + q * (last.u[i] - from.u[i]);
    }
    c.fuel = last.fuel + q * (last.fuel - from.fuel);
    c.metal = last.metal + q * (last.metal - from.metal);
  }
}
