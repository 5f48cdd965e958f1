package daubline.benchmarks;

import com.sun.management.ThreadMXBean;
import daubline.engine.process.shaft.ShaftInputs;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.process.shaft.ShaftSolver;
import daubline.engine.stats.Nnls;
import daubline.engine.stats.RandomStream;
import java.lang.management.ManagementFactory;
import java.util.Locale;

/**
 * Processor time and allocation of the process engine on one thread, after warming up: the shaft of the usual furnace and
 * of its neighbours, and non-negative least squares of the size of a slag apportionment. Processor time, not time on the
 * clock, so that a busy machine disturbs little. Peers: releng/benchmarks/peers/shaft.py and nnls.R.
 */
public final class ProcessTimes {

  private static final int PROBLEMS = 10_000;
  private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();

  private ProcessTimes() {
  }

  /** Prints the figures; no arguments. */
  public static void main(String[] arguments) {
    ShaftSolution fine = new ShaftSolver(400).solve(ShaftInputs.usual());
    ShaftSolution usual = new ShaftSolver().solve(ShaftInputs.usual());
    System.out.printf(Locale.ROOT, "usual furnace: charcoal %.5f kg/h, mouth %.2f C; against a mesh of 400: charcoal %.1e, metal %.1e relative%n",
        usual.rates().charcoal() * 3600, usual.hearth().mouthGas() - 273.15, usual.rates().charcoal() / fine.rates().charcoal() - 1,
        usual.hearth().metalShare() / fine.hearth().metalShare() - 1);
    ShaftSolver solver = new ShaftSolver();
    report("shaft, usual furnace", 300, i -> solver.solve(ShaftInputs.usual()));
    report("shaft, furnaces about it", 300, i -> solver.solve(near(i)));
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
  }

  private static ShaftInputs near(int i) {
    RandomStream random = new RandomStream(RandomStream.key(8, i));
    return ShaftInputs.usual().with(ShaftParameter.DIAMETER, .2 + .1 * random.uniform()).with(ShaftParameter.STACK, .4 + .3 * random.uniform())
        .with(ShaftParameter.AIR, (400 + 600 * random.uniform()) / 6e4).with(ShaftParameter.WALL_LOSS, 4 + 4 * random.uniform());
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
