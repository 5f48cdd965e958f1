package daubline.record;

import java.util.List;
import java.util.Optional;

/**
 * The approach of a drying body to constant mass, m(t) = m∞ + A·exp(−k·t), fitted by least squares to repeated weighings.
 * For each rate k the other two follow by linear regression; the rates that fit within the error of the weighings give the
 * range of what is foreseen. The exponential is the falling-rate period of drying (common practice, no source); damp air,
 * rain or another place of drying break it, and then the curve says so only by fitting badly.
 *
 * @param dry mass when dry, kg
 * @param low lower end of its 95 % range, kg
 * @param high upper end of its 95 % range, kg
 * @param rate share of the water that is left which goes in an hour, 1/h
 * @param hours hours from the first weighing until the mass is within 1 % of the dry mass
 * @param hoursLow lower end of their 95 % range
 * @param hoursHigh upper end of their 95 % range
 */
public record DryingCurve(double dry, double low, double high, double rate, double hours, double hoursLow, double hoursHigh) {

  /** As near to the dry mass as counts for dry: common practice, no source. */
  public static final double NEAR = 0.01;

  /** Fewest weighings that say anything: three unknowns and one to judge by. */
  public static final int FEWEST = 4;

  private static final int STEPS = 1600;
  private static final double SLOWEST = 0.02;
  private static final double FASTEST = 50;
  /** Square of the normal quantile for 95 %. */
  private static final double CHI = 3.841;

  /**
   * A weighing.
   *
   * @param hours since the first
   * @param mass kg
   * @param sigma standard uncertainty of the scale, kg; NaN when not stated
   */
  public record Weighing(double hours, double mass, double sigma) {
  }

  /** A fit at one rate; the lever turns squares that may be added into how far the dry mass may move. */
  private record Line(double rate, double dry, double water, double squares, double lever) {
  }

  /**
   * Fits the weighings, in their order.
   *
   * @return empty when they are fewer than four, do not fall, or do not yet bend so that the end could be foreseen
   */
  public static Optional<DryingCurve> fit(List<Weighing> weighings) {
    double span = weighings.isEmpty() ? 0 : weighings.get(weighings.size() - 1).hours();
    if (weighings.stream().map(Weighing::hours).distinct().count() < FEWEST || !(span > 0)) {
      return Optional.empty();
    }
    Line[] lines = new Line[STEPS + 1];
    Line best = null;
    for (int i = 0; i <= STEPS; i++) {
      lines[i] = line(weighings, SLOWEST / span * Math.pow(FASTEST / SLOWEST, (double) i / STEPS));
      best = best == null || lines[i].squares() < best.squares() ? lines[i] : best;
    }
    double sigma = sigma(weighings, best);
    double allowed = best.squares() + CHI * sigma * sigma;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double early = Double.POSITIVE_INFINITY;
    double late = Double.NEGATIVE_INFINITY;
    for (Line line : lines) {
      double reach = line.lever() * Math.sqrt(Math.max(0, allowed - line.squares()));
      for (double dry : line.squares() <= allowed ? new double[] {line.dry() - reach, line.dry() + reach} : new double[0]) {
        low = Math.min(low, dry);
        high = Math.max(high, dry);
        double hours = hours(line.rate(), dry, water(weighings, line.rate(), dry));
        early = Math.min(early, hours);
        late = Math.max(late, hours);
      }
    }
    boolean open = lines[0].squares() <= allowed || low <= 0 || best.water() <= 2 * sigma || !(late < Double.POSITIVE_INFINITY);
    return open ? Optional.empty() : Optional.of(new DryingCurve(best.dry(), low, high, best.rate(), hours(best.rate(), best.dry(), best.water()), early, late));
  }

  /** Dry mass and water at the first weighing for a rate: linear regression on exp(−k·t). */
  private static Line line(List<Weighing> weighings, double rate) {
    double n = weighings.size();
    double meanX = weighings.stream().mapToDouble(w -> Math.exp(-rate * w.hours())).sum() / n;
    double meanY = weighings.stream().mapToDouble(Weighing::mass).sum() / n;
    double xx = 0;
    double xy = 0;
    for (Weighing w : weighings) {
      double x = Math.exp(-rate * w.hours()) - meanX;
      xx += x * x;
      xy += x * (w.mass() - meanY);
    }
    double water = xy / xx;
    double dry = meanY - water * meanX;
    double squares = 0;
    for (Weighing w : weighings) {
      double miss = w.mass() - dry - water * Math.exp(-rate * w.hours());
      squares += miss * miss;
    }
    return new Line(rate, dry, water, squares, Math.sqrt(1 / n + meanX * meanX / xx));
  }

  /** The water at the first weighing that fits best to a rate and a dry mass. */
  private static double water(List<Weighing> weighings, double rate, double dry) {
    double xx = weighings.stream().mapToDouble(w -> Math.exp(-2 * rate * w.hours())).sum();
    return weighings.stream().mapToDouble(w -> (w.mass() - dry) * Math.exp(-rate * w.hours())).sum() / xx;
  }

  /** The error of a weighing: what the scatter shows, and not less than what is stated or a thousandth of the mass. */
  private static double sigma(List<Weighing> weighings, Line best) {
    int free = weighings.size() - 3;
    double scatter = Math.sqrt(best.squares() / free);
    double scale = weighings.stream().mapToDouble(Weighing::sigma).filter(s -> s > 0).average().orElse(weighings.get(0).mass() / 1000);
    return Math.max(scatter, scale);
  }

  private static double hours(double rate, double dry, double water) {
    return dry <= 0 ? Double.POSITIVE_INFINITY : water > NEAR * dry ? Math.log(water / (NEAR * dry)) / rate : 0;
  }
}
