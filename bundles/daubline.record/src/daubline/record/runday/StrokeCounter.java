package daubline.record.runday;

import java.util.ArrayDeque;
import java.util.Deque;

/** Counts bellows strokes by a key that is tapped along with them. */
public final class StrokeCounter {

  private static final int KEPT = 9;
  private static final double LONGEST_PAUSE = 10;

  private final Deque<Double> taps = new ArrayDeque<>();

  /**
   * One stroke.
   *
   * @param seconds any clock that goes forward, s; a pause of more than ten seconds begins a new count
   */
  public void tap(double seconds) {
    if (!taps.isEmpty() && seconds - taps.peekLast() > LONGEST_PAUSE) {
      taps.clear();
    }
    taps.addLast(seconds);
    if (taps.size() > KEPT) {
      taps.removeFirst();
    }
  }

  /** Strokes a minute over the last eight strokes at most; NaN before the second. */
  public double perMinute() {
    return taps.size() < 2 ? Double.NaN : 60 * (taps.size() - 1) / (taps.peekLast() - taps.peekFirst());
  }
}
