package daubline.engine.process;

import daubline.engine.stats.Propagation;
import daubline.engine.stats.RandomStream;
import daubline.engine.stats.Uncertain;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The diameter of a circle of which only an arc survives, with its uncertainty to first order (JCGM 100:2008, 5.1.2) and
 * by Monte Carlo (JCGM 101:2008), which also says whether first order will do (clause 8). A nearly flat arc says
 * little: small errors of the rise then make large and lopsided errors of the diameter.
 *
 * @param diameter the formula at the best estimates, metres
 * @param sigma its combined standard uncertainty to first order, metres
 * @param parts what each of the two inputs adds to it by itself: sensitivity times uncertainty, metres
 * @param low lower end of the interval that holds 95 % of the Monte Carlo trials, metres
 * @param high its upper end, metres; infinite when more than one trial in forty has no arc left, and so no upper limit
 * @param isFirstOrder whether diameter ± sigma describes the same interval to one significant digit of sigma
 */
public record ArcDiameter(double diameter, double sigma, double[] parts, double low, double high, boolean isFirstOrder) {

  private static final int TRIALS = 200_000;
  /** Coverage factor of 95 % of a normal distribution. */
  private static final double NORMAL_95 = 1.959964;
  private static final double FULL_CIRCLE = 360;

  /** What was measured on the arc; lengths in metres, angles in degrees. */
  public enum Way {
    /** Straight line between the ends of the arc, and the greatest distance of the arc from it. */
    CHORD_AND_RISE("D = h + c²/(4h)", "c", "h", in -> in[0] > 0 && in[1] > 0 ? in[1] + in[0] * in[0] / (4 * in[1]) : Double.POSITIVE_INFINITY),
    /** Straight line between the ends of the arc, and the angle between the radii to them. */
    CHORD_AND_ANGLE("D = c / sin(θ/2)", "c", "θ", in -> in[0] > 0 && isAngle(in[1]) ? in[0] / Math.sin(Math.toRadians(in[1] / 2)) : Double.POSITIVE_INFINITY),
    /** Length along the arc, and the angle between the radii to its ends. */
    LENGTH_AND_ANGLE("D = 2s/θ, θ in radians", "s", "θ", in -> in[0] > 0 && isAngle(in[1]) ? 2 * in[0] / Math.toRadians(in[1]) : Double.POSITIVE_INFINITY);

    private final String formula;
    private final String first;
    private final String second;
    private final ToDoubleFunction<double[]> model;

    Way(String formula, String first, String second, ToDoubleFunction<double[]> model) {
      this.formula = formula;
      this.first = first;
      this.second = second;
      this.model = model;
    }

    /** The formula as it is printed. */
    public String formula() {
      return formula;
    }

    /** The symbol of the first input, a length. */
    public String first() {
      return first;
    }

    /** The symbol of the second input. */
    public String second() {
      return second;
    }

    /** Whether the second input is an angle. */
    public boolean isByAngle() {
      return this != CHORD_AND_RISE;
    }

    private static boolean isAngle(double degrees) {
      return degrees > 0 && degrees < FULL_CIRCLE;
    }
  }

  /**
   * The diameter.
   *
   * @param first chord or length of the arc in metres, its mean greater than zero
   * @param second rise in metres, or angle in degrees below 360, its mean greater than zero
   * @param key of the random numbers
   * @throws IllegalArgumentException when the best estimates are no arc of a circle
   */
  public static ArcDiameter of(Way way, Uncertain first, Uncertain second, long key) {
    double best = way.model.applyAsDouble(new double[] {first.mean(), second.mean()});
    if (!(best > 0) || Double.isInfinite(best)) {
      throw new IllegalArgumentException("These are no arc of a circle: " + first.mean() + ", " + second.mean());
    }
    Propagation law = Propagation.of(way.model, List.of(first, second), new double[][] {{1, 0}, {0, 1}});
    double[] parts = {Math.abs(law.sensitivities()[0]) * first.sigma(), Math.abs(law.sensitivities()[1]) * second.sigma()};
    double[] ends = law.sigma() > 0 || first.sigma() > 0 || second.sigma() > 0 ? ends(way, first, second, key) : new double[] {best, best};
    return new ArcDiameter(best, law.sigma(), parts, ends[0], ends[1], agrees(best, law.sigma(), ends));
  }

  private static double[] ends(Way way, Uncertain first, Uncertain second, long key) {
    RandomStream random = new RandomStream(RandomStream.key(key, "arc", way.name()));
    double[] drawn = new double[TRIALS];
    double[] in = new double[2];
    for (int i = 0; i < TRIALS; i++) {
      in[0] = first.draw().applyAsDouble(random);
      in[1] = second.draw().applyAsDouble(random);
      drawn[i] = way.model.applyAsDouble(in);
    }
    Arrays.sort(drawn);
    return new double[] {drawn[TRIALS / 40], drawn[TRIALS - 1 - TRIALS / 40]};
  }

  /** Both ends of the two intervals agree within half a unit of the first significant digit of sigma (JCGM 101:2008, 7.9.2 and 8.1). */
  private static boolean agrees(double best, double sigma, double[] ends) {
    if (!(sigma > 0)) {
      return ends[0] == ends[1];
    }
    double tolerance = 0.5 * Math.pow(10, Math.floor(Math.log10(sigma)));
    return Math.abs(best - NORMAL_95 * sigma - ends[0]) <= tolerance && Math.abs(best + NORMAL_95 * sigma - ends[1]) <= tolerance;
  }
}
