package daubline.intake.logger;

/**
 * A time without rows.
 *
 * @param from the last time before it, s since the first row
 * @param until the first time after it, s since the first row
 */
public record Gap(double from, double until) {

  /** How long it lasts, s. */
  public double length() {
    return until - from;
  }
}
