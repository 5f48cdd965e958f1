package daubline.record.runday;

import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * The time of the day of the fire: the wall clock is read once, and from then on a clock that only goes forward counts.
 * Neither summer time nor a wall clock that is put right can bring entries out of order.
 */
public final class RunClock {

  private final LongSupplier nanos;
  private final OffsetDateTime anchor;
  private final long anchorNanos;

  /**
   * A clock.
   *
   * @param nanos a source of nanoseconds that never goes back
   * @param wall the wall clock with its offset, read once
   */
  public RunClock(LongSupplier nanos, Supplier<OffsetDateTime> wall) {
    this.nanos = nanos;
    this.anchorNanos = nanos.getAsLong();
    this.anchor = wall.get();
  }

  /** The clock of this machine. */
  public static RunClock ofMachine() {
    return new RunClock(System::nanoTime, OffsetDateTime::now);
  }

  /** The time now, to the second below, with the offset of the place. */
  public OffsetDateTime now() {
    return anchor.plusNanos(nanos.getAsLong() - anchorNanos).truncatedTo(ChronoUnit.SECONDS);
  }

  /** Seconds from a time until now. */
  public double since(OffsetDateTime time) {
    return Duration.between(time, anchor.plusNanos(nanos.getAsLong() - anchorNanos)).toMillis() / 1000.0;
  }
}
