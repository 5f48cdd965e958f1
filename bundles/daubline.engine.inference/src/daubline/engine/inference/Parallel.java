package daubline.engine.inference;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.ObjIntConsumer;
import java.util.function.Supplier;

/** Runs numbered tasks on some threads; which thread takes which task changes no result. */
final class Parallel {

  private Parallel() {
  }

  /**
   * Runs every task once.
   *
   * @param worker makes what one thread works with
   * @param task works on the task of a number
   * @throws CancellationException when the progress asks to stop
   */
  static <W> void run(int tasks, int threads, Progress progress, Supplier<W> worker, ObjIntConsumer<W> task) {
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    Runnable loop = () -> {
      W own = worker.get();
      for (int i = next.getAndIncrement(); i < tasks; i = next.getAndIncrement()) {
        if (progress.isCancelled()) {
          throw new CancellationException("The comparison was stopped");
        }
        task.accept(own, i);
        progress.done(done.incrementAndGet(), tasks);
      }
    };
    int used = Math.min(threads, tasks);
    if (used <= 1) {
      loop.run();
    } else {
      runAll(loop, used);
    }
  }

  private static void runAll(Runnable loop, int threads) {
    try (ExecutorService pool = Executors.newFixedThreadPool(threads)) {
      List<Future<?>> futures = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        futures.add(pool.submit(loop));
      }
      for (Future<?> future : futures) {
        await(future);
      }
    }
  }

  private static void await(Future<?> future) {
    try {
      future.get();
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("The comparison was interrupted");
    }
  }
}
