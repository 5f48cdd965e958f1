package daubline.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import daubline.engine.inference.ComparisonEngine;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Progress;
import daubline.engine.inference.ScoreTable;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CancellationException;

/**
 * Time, processor time and memory of comparing many trials with many sheets on one thread and on all; ends with an error when
 * the threads change a single bit, or when cancelling takes long. Peers of the same sizes and arithmetic: peers/scoring.py and
 * peers/scoring.R. Usage: ScoreTimes TRIALS SHEETS CRITERIA DRAWS
 */
public final class ScoreTimes {

  private static final OperatingSystemMXBean SYSTEM = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private ScoreTimes() {
  }

  /** Prints the figures. */
  public static void main(String[] arguments) {
    int[] size = Arrays.stream(arguments).mapToInt(Integer::parseInt).toArray();
    InventedSheets all = InventedSheets.of(size[0], size[1], size[2]);
    InventedSheets few = InventedSheets.of(20, 20, size[2]);
    for (int warm = 0; warm < 5; warm++) {
      run(few, size[3], 1, Progress.NONE);
    }
    int cores = Runtime.getRuntime().availableProcessors();
    ScoreTable once = timed(all, size, 1);
    ScoreTable again = timed(all, size, cores);
    boolean same = Arrays.deepEquals(once.agreement(), again.agreement()) && Arrays.deepEquals(once.low(), again.low())
        && Arrays.deepEquals(once.high(), again.high()) && Arrays.deepEquals(once.coverage(), again.coverage());
    System.out.printf("results on 1 and %d threads: %s%n", cores, same ? "identical to the last bit" : "DIFFERENT");
    cancelled(all, size[3], cores);
    if (!same) {
      System.exit(1);
    }
  }

  private static ScoreTable run(InventedSheets all, int draws, int threads, Progress progress) {
    return new ComparisonEngine(all.criteria(), ComparisonSettings.standard().with(draws, 1, threads)).scores(all.trials(), all.sheets(), progress);
  }

  private static ScoreTable timed(InventedSheets all, int[] size, int threads) {
    System.gc();
    ManagementFactory.getMemoryPoolMXBeans().forEach(MemoryPoolMXBean::resetPeakUsage);
    long processor = SYSTEM.getProcessCpuTime();
    long begin = System.nanoTime();
    ScoreTable table = run(all, size[3], threads, Progress.NONE);
    double seconds = (System.nanoTime() - begin) / 1e9;
    double used = (SYSTEM.getProcessCpuTime() - processor) / 1e9;
    double draws = (double) size[0] * size[1] * size[2] * size[3];
    System.out.printf(Locale.ROOT, "Daubline %d x %d x %d x %d on %d threads: %.3f s, %.3f s of processor, %.2f ns per draw, peak heap %.0f MB, load %.1f%n", size[0],
        size[1], size[2], size[3], threads, seconds, used, seconds * 1e9 / draws, peak() / 1e6, SYSTEM.getSystemLoadAverage());
    return table;
  }

  private static long peak() {
    return ManagementFactory.getMemoryPoolMXBeans().stream().filter(p -> p.getType() == MemoryType.HEAP).mapToLong(p -> p.getPeakUsage().getUsed()).sum();
  }

  /** Asks to stop after the first trials; how long until it has stopped. */
  private static void cancelled(InventedSheets all, int draws, int threads) {
    long[] asked = {0};
    Progress stop = new Progress() {
      @Override
      public void done(int part, int whole) {
        asked[0] = asked[0] == 0 ? System.nanoTime() : asked[0];
      }

      @Override
      public boolean isCancelled() {
        return asked[0] != 0;
      }
    };
    try {
      run(all, draws, threads, stop);
      System.out.println("cancelling: there was nothing left to stop");
    } catch (CancellationException e) {
      System.out.printf(Locale.ROOT, "cancelling: stopped %.1f ms after it was asked%n", (System.nanoTime() - asked[0]) / 1e6);
    }
  }
}
