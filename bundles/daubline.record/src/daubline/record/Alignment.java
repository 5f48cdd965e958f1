package daubline.record;

import daubline.model.LogEntry;
import daubline.model.LoggerFile;
import daubline.model.Trial;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where a logger's rows stand in the time since the fire was lit. The offset that a sync mark gives is kept beside the
 * file, which stays as delivered; taking the offset away brings the logger's own clock back.
 */
public final class Alignment {

  private Alignment() {
  }

  /** When the fire was lit, by any entry of the log that has clock time and elapsed time. */
  public static Optional<LocalDateTime> lit(Trial trial) {
    return trial.getLog().stream().filter(e -> e.getElapsed() != null && LogClock.local(e.getAt()).isPresent())
        .map(e -> LogClock.local(e.getAt()).orElseThrow().minusNanos(Math.round(e.getElapsed() * 1e9))).findFirst();
  }

  /** Seconds since the fire was lit at the logger's first row, by its own clock and the offset in use; empty when nobody knows. */
  public static OptionalDouble firstRow(Trial trial, LoggerFile file) {
    OptionalDouble own = ownClock(trial, file);
    return own.isEmpty() ? own : OptionalDouble.of(own.getAsDouble() + (file.getOffset() == null ? 0 : file.getOffset()));
  }

  private static OptionalDouble ownClock(Trial trial, LoggerFile file) {
    Optional<LocalDateTime> lit = lit(trial);
    Optional<LocalDateTime> start = LogClock.local(file.getStartAt());
    return lit.isEmpty() || start.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Duration.between(lit.get(), start.get()).toMillis() / 1000.0);
  }

  /**
   * Aligns a logger by a mark: what the logger shows at one of its rows happened when an entry of the log says.
   *
   * @param row seconds of the logger's row since its first row
   * @param entry the entry of the same moment, with its elapsed time
   */
  public static void sync(Desk desk, Trial trial, LoggerFile file, double row, LogEntry entry) {
    double clock = ownClock(trial, file).orElse(0);
    double offset = Math.round((entry.getElapsed() - row - clock) * 1000) / 1000.0;
    desk.edit("change.sync", Columns.text(file.getName()), () -> {
      file.setOffset(offset);
      file.setSyncMark(desk.words().of("sync.mark", new LogClock(desk, trial).print(entry), Columns.text(entry.getText()).isEmpty() ? Columns.text(entry.getKind()) : entry.getText()));
    });
  }

  /** Takes the offset away; the logger's own clock counts again. */
  public static void release(Desk desk, LoggerFile file) {
    desk.edit("change.unsync", Columns.text(file.getName()), () -> {
      file.setOffset(null);
      file.setSyncMark(null);
    });
  }
}
