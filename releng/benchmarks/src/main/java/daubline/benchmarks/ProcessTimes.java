package daubline.benchmarks;

import com.sun.management.ThreadMXBean;
import daubline.analysis.forecast.TrialPlan;
import daubline.analysis.forecast.TrialPlans;
import daubline.engine.process.shaft.FixedStepShaft;
import daubline.engine.process.shaft.ShaftInputs;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.process.shaft.ShaftSolver;
import daubline.engine.stats.Nnls;
import daubline.engine.stats.RandomStream;
import daubline.session.StudySession;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;

/**
 * Processor time and allocation of the process engine on one thread, after warming up: the shaft of the usual furnace and
 * of its neighbours, and non-negative least squares of the size of a slag apportionment. Processor time, not time on the
 * clock, so that a busy machine disturbs little. Peers: a plain fixed-step solver of the same equations, and
 * releng/benchmarks/peers/shaft.py, shaft_batch.py and nnls.R. Also the middle course of a trial as the window reckons it.
 */
public final class ProcessTimes {

  private static final int PROBLEMS = 10_000;
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private ProcessTimes() {
  }

  /** Prints the figures, and writes the furnaces for the peers into the folder given. */
  public static void main(String[] arguments) throws Exception {
    ShaftSolution fine = new ShaftSolver(400).solve(ShaftInputs.usual());
    ShaftSolution usual = new ShaftSolver().solve(ShaftInputs.usual());
    System.out.printf(Locale.ROOT, "usual furnace: charcoal %.5f kg/h, mouth %.2f C; against a mesh of 400: charcoal %.1e, metal %.1e relative%n",
        usual.rates().charcoal() * 3600, usual.hearth().mouthGas() - 273.15, usual.rates().charcoal() / fine.rates().charcoal() - 1,
        usual.hearth().metalShare() / fine.hearth().metalShare() - 1);
    ShaftSolver solver = new ShaftSolver();
    report("shaft, usual furnace", 300, i -> solver.solve(ShaftInputs.usual()));
    report("shaft, furnaces about it", 300, i -> solver.solve(FurnaceSets.near(i)));
    report("shaft, plausible furnaces, dead ones among them", 300, i -> solver.solve(FurnaceSets.plausible(i)));
    fixedSteps(fine);
    ensemble();
    Path folder = Path.of(arguments[0]);
    FurnaceSets.report("furnaces about the usual one", IntStream.range(0, 500).mapToObj(FurnaceSets::near).toList(), folder.resolve("furnaces-near.csv"));
    FurnaceSets.report("plausible furnaces", IntStream.range(0, 2000).mapToObj(FurnaceSets::plausible).toList(), folder.resolve("furnaces-plausible.csv"));
    double[][][] a = new double[PROBLEMS][8][3];
    double[][] b = new double[PROBLEMS][8];
    for (int p = 0; p < PROBLEMS; p++) {
      RandomStream random = new RandomStream(RandomStream.key(9, p));
      for (int r = 0; r < 8; r++) {
        for (int c = 0; c < 3; c++) {
          a[p][r][c] = random.uniform();
        }
        b[p][r] = random.uniform();
      }
    }
    report("NNLS of 8 oxides and 3 sources", PROBLEMS, i -> Nnls.solve(a[i], b[i]));
    centralCase();
  }

  /** The plain solver with ever smaller steps, until it agrees with the fine mesh to half a per cent. */
  private static void fixedSteps(ShaftSolution fine) {
    for (int steps = 100; steps <= 3200; steps *= 2) {
      int n = steps;
      FixedStepShaft.Found found = FixedStepShaft.solve(ShaftInputs.usual(), n);
      double off = Math.max(Math.abs(found.charcoal() / fine.rates().charcoal() - 1), Math.abs(found.metal() / fine.hearth().metalShare() - 1));
      report(String.format(Locale.ROOT, "fixed-step solver, %d steps, %d sweeps, off by %.1e", n, found.sweeps(), off), 5, i -> FixedStepShaft.solve(ShaftInputs.usual(), n));
      if (off < 5e-3) {
        return;
      }
    }
  }

  /** The same furnaces on one thread and on four: time on the clock, and whether the sums are the same to the last bit. */
  private static void ensemble() throws Exception {
    double[][] results = new double[2][];
    double[] seconds = new double[2];
    for (int round = 0; round < 2; round++) {
      for (int way = 0; way < 2; way++) {
        ForkJoinPool pool = new ForkJoinPool(way == 0 ? 1 : 4);
        long begin = System.nanoTime();
        results[way] = pool.submit(() -> IntStream.range(0, 2000).parallel().mapToDouble(i -> new ShaftSolver().solve(FurnaceSets.near(i)).hearth().mouthGas()).toArray()).get();
        seconds[way] = (System.nanoTime() - begin) / 1e9;
        pool.shutdown();
      }
    }
    System.out.printf(Locale.ROOT, "2 000 furnaces: %.2f s on one thread, %.2f s on four; results %s%n", seconds[0], seconds[1],
        Arrays.equals(results[0], results[1]) ? "the same" : "DIFFERENT");
  }

  /** The middle course of every trial of the demonstration that can be forecast, as the page shows it while somebody types; on the clock. */
  private static void centralCase() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      List<TrialPlan> plans = TrialPlans.of(session.study()).all().stream().filter(p -> p.inputs().isPresent()).toList();
      double first = millis(plans.get(0));
      double[] warm = new double[200];
      for (int i = 0; i < warm.length; i++) {
        warm[i] = millis(plans.get(i % plans.size()));
      }
      Arrays.sort(warm);
      System.out.printf(Locale.ROOT, "middle course of a trial, %d trials of the demonstration: %.0f ms the first time, then %.1f ms in the middle, %.1f ms nineteen in twenty, %.1f ms at most%n",
          plans.size(), first, warm[warm.length / 2], warm[warm.length * 19 / 20], warm[warm.length - 1]);
    }
  }

  private static double millis(TrialPlan plan) {
    long begin = System.nanoTime();
    plan.forecast(0, TrialPlans.SEED);
    return (System.nanoTime() - begin) / 1e6;
  }

  private interface Task {
    Object run(int i);
  }

  private static void report(String what, int count, Task task) {
    Object last = null;
    for (int round = 0; round < 3; round++) {
      for (int i = 0; i < count; i++) {
        last = task.run(i);
      }
    }
    long id = Thread.currentThread().threadId();
    long bytes = THREADS.getThreadAllocatedBytes(id);
    long begin = THREADS.getCurrentThreadCpuTime();
    for (int i = 0; i < count; i++) {
      last = task.run(i);
    }
    double nanos = (double) (THREADS.getCurrentThreadCpuTime() - begin) / count;
    double allocated = (double) (THREADS.getThreadAllocatedBytes(id) - bytes) / count;
    System.out.printf(Locale.ROOT, "%s: %.4f ms of processor each, %.0f a second, %.0f bytes allocated each%s%n", what, nanos / 1e6, 1e9 / nanos, allocated,
        last == null ? " " : "");
  }
}
