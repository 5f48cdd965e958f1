package daubline.engine.design;

import java.util.Comparator;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/** Runs the random starts of a search on all cores; the outcome does not depend on how many there are. */
public final class Starts {

  private Starts() {
  }

  private record Numbered<T>(int index, T value) {
  }

  /**
   * The best outcome of starts 0 … count − 1, the earliest among equals.
   *
   * @param better the smaller one is better
   * @throws CancellationException when progress asks to stop
   */
  public static <T> T best(int count, IntFunction<T> start, Comparator<T> better, Progress progress) {
    AtomicInteger done = new AtomicInteger();
    return IntStream.range(0, count).parallel().mapToObj(i -> {
      progress.check();
      Numbered<T> outcome = new Numbered<>(i, start.apply(i));
      progress.done(done.incrementAndGet() / (double) count);
      return outcome;
    }).min(Comparator.<Numbered<T>, T>comparing(Numbered::value, better).thenComparingInt(Numbered::index))
        .orElseThrow(() -> new IllegalArgumentException("a search needs at least one start")).value();
  }
}
