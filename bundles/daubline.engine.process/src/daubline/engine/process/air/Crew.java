package daubline.engine.process.air;

import java.util.function.DoubleUnaryOperator;

/**
 * People who blow in turns.
 *
 * @param atOnce people at the bellows at one time
 * @param turn length of one turn before relief, s
 * @param all people who take turns, those resting among them; at least as many as at once
 * @param duration how long the fire is to be blown, s
 */
public record Crew(double atOnce, double turn, double all, double duration) {

  /** A turn where nobody said how long it is, s (common practice, no source). */
  public static final double USUAL_TURN = 15 * 60;
  private static final double HORSE_POWER = 745.7;
  private static final double SHORTEST = 4 * 60;
  private static final double LONGEST = 480 * 60;
  private static final double MOST_FLOW = 1;

  public Crew {
    if (!(atOnce > 0 && turn > 0 && all >= atOnce && duration > 0)) {
      throw new IllegalArgumentException("people at once, turn and duration must be above nothing, and no fewer people take turns than stand there at once: "
          + atOnce + ", " + turn + " s, " + all + ", " + duration + " s");
    }
  }

  /**
   * Power that one fit person keeps up for so long, W: 0.35 - 0.092 log10(minutes) horse power, 4 to 480 minutes; held at
   * the ends.
   *
   * <p>Source: D. R. Wilkie, Ergonomics 3 (1960) 1 (from memory); eight hours give the 75 W of common practice.
   */
  public static double kept(double seconds) {
    double minutes = Math.clamp(seconds, SHORTEST, LONGEST) / 60;
    return HORSE_POWER * (.35 - .092 * Math.log10(minutes));
  }

  /** Power of all who stand at the bellows, W: what a turn allows, and on the mean of work and rest what the day allows. */
  public double power() {
    return atOnce * Math.min(kept(turn), kept(duration) * all / atOnce);
  }

  /** People who must take turns so that a power in W is held for so long: as many as the day asks for, and no fewer than one turn does. */
  public static double needed(double power, double turn, double duration) {
    return Math.max(power / kept(turn), power / kept(duration));
  }

  /**
   * Air that this crew keeps up, m³/s at the furnace.
   *
   * @param delivered share of a stroke that reaches the furnace; what leaks is pumped too
   * @param pressure back pressure in Pa at a flow in m³/s, rising with it
   */
  public double flow(double delivered, DoubleUnaryOperator pressure) {
    double low = 0;
    double high = MOST_FLOW;
    for (int i = 0; i < 60; i++) {
      double middle = (low + high) / 2;
      if (new Bellows(middle / delivered, 1, delivered).power(pressure.applyAsDouble(middle)) < power()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
