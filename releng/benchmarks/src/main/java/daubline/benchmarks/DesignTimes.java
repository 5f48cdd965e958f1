package daubline.benchmarks;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.Term;
import daubline.engine.design.catalogue.LatinHypercube;
import daubline.engine.design.learn.MixedModel;
import daubline.engine.design.learn.Permutation;
import daubline.engine.design.search.CoordinateExchange;
import daubline.engine.design.search.SearchRequest;
import daubline.engine.stats.RandomStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;

/**
 * The design engine on one thread in processor time, after warming up: quality of D-optimal designs at equal time against a
 * plain exchange, space-filling hypercubes, permutations, restricted maximum likelihood; and the same seed on one and on
 * several threads. Peers in R: releng/benchmarks/peers/designs.R.
 */
public final class DesignTimes {

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final double[] OATS = {111, 130, 157, 174, 117, 114, 161, 141, 105, 140, 118, 156, 61, 91, 97, 100, 70, 108, 126,
    149, 96, 124, 121, 144, 68, 64, 112, 86, 60, 102, 89, 96, 89, 129, 132, 124, 74, 89, 81, 122, 64, 103, 132, 133, 70, 89,
    104, 117, 62, 90, 100, 116, 80, 82, 94, 126, 63, 70, 109, 99, 53, 74, 118, 113, 89, 82, 86, 104, 97, 99, 119, 121};

  private DesignTimes() {
  }

  /** Prints the figures; no arguments. */
  public static void main(String[] arguments) throws Exception {
    ForkJoinPool one = new ForkJoinPool(1);
    one.submit(DesignTimes::searches).get();
    one.submit(DesignTimes::hypercube).get();
    one.submit(DesignTimes::analyses).get();
    threads(one);
    one.shutdown();
  }

  private static double seconds() {
    return THREADS.getCurrentThreadCpuTime() / 1e9;
  }

  private static List<Factor> three(int k) {
    return IntStream.range(0, k).mapToObj(i -> Factor.measured("f" + i, "f" + i, "", -1, 1).on(-1, 0, 1)).toList();
  }

  private static void searches() {
    List<Factor> handbook = List.of(Factor.measured("x1", "x1", "", -1, 1).on(-1, -.5, 0, .5, 1), Factor.measured("x2", "x2", "", -1, 1).on(-1, 1),
        Factor.measured("x3", "x3", "", -1, 1).on(-1, 1));
    Model bent = new Model(handbook, List.of(Term.of(0), Term.of(1), Term.of(2), Term.of(0, 0)));
    compare("12 of 20 candidates, 5 unknowns (e-Handbook 5.5.2.1)", SearchRequest.independent(new Space(handbook, List.of()), bent, 12, 1), .1);
    List<Factor> six = three(6);
    for (double time : new double[] {.25, .5, 1}) {
      compare("40 of 3^6, 28 unknowns", SearchRequest.independent(new Space(six, List.of()), Model.quadratic(six), 40, 1), time);
    }
    List<Factor> mixed = List.of(Factor.category("o", "ore", "bog", "rock", "sand"), Factor.category("t", "tuyere", "one", "two"),
        Factor.measured("h", "height", "", -1, 1).on(-1, 0, 1), Factor.measured("b", "blast", "", -1, 1).on(-1, -.5, 0, .5, 1));
    compare("24 of mixed levels, squares and interactions", SearchRequest.independent(new Space(mixed, List.of()), Model.quadratic(mixed), 24, 1), .25);
  }

  /** Both searches run from fresh seeds until the time is over; the best of each counts. */
  private static void compare(String what, SearchRequest request, double limit) {
    double[][] candidates = request.space().candidates(3).stream().map(request.model()::row).toArray(double[][]::new);
    int trials = request.furnaces().length;
    int p = request.model().size();
    for (int warm = 0; warm < 2; warm++) {
      own(request, limit);
      plain(candidates, trials, limit);
    }
    double[] own = own(request, limit);
    double[] plain = plain(candidates, trials, limit);
    System.out.printf(Locale.ROOT, "%s, %.2f s of processor: coordinate exchange D %.6f in %.0f starts; plain exchange D %.6f in %.0f starts; ratio of starts %.1f%n", what, limit,
        Math.exp(own[0] / p) / trials, own[1], Math.exp(plain[0] / p) / trials, plain[1], own[1] / plain[1]);
  }

  private static double[] own(SearchRequest request, double limit) {
    double best = Double.NEGATIVE_INFINITY;
    double end = seconds() + limit;
    int starts = 0;
    for (; seconds() < end; starts++) {
      SearchRequest single = new SearchRequest(request.space(), request.model(), request.criterion(), request.strata(), request.done(), request.furnaces(), request.days(), 1, starts,
          request.steps(), request.polish());
      best = Math.max(best, CoordinateExchange.search(single, Progress.NONE).logDeterminant());
    }
    return new double[] {best, starts};
  }

  private static double[] plain(double[][] candidates, int trials, double limit) {
    double best = Double.NEGATIVE_INFINITY;
    double end = seconds() + limit;
    int starts = 0;
    for (; seconds() < end; starts++) {
      best = Math.max(best, RowExchange.run(candidates, trials, new RandomStream(RandomStream.key(5, starts))));
    }
    return new double[] {best, starts};
  }

  private static void hypercube() {
    LatinHypercube.search(20, 6, 4, 1, Progress.NONE);
    double begin = seconds();
    int starts = 0;
    double closest = 0;
    while (closest < .739) {
      closest = Math.max(closest, Math.sqrt(LatinHypercube.search(20, 6, 1, 100 + starts, Progress.NONE).distance2()) / 20);
      starts++;
    }
    System.out.printf(Locale.ROOT, "20 points in 6 dimensions: closest %.4f after %.3f s of processor (%d starts)%n", closest, seconds() - begin, starts);
  }

  private static void analyses() {
    double[] y = new RandomStream(1).normals(24);
    double[][] x = new double[6][24];
    RandomStream random = new RandomStream(2);
    for (double[] column : x) {
      Arrays.setAll(column, i -> i % 2 == 0 ? 1 : -1);
      for (int i = 23; i > 0; i--) {
        int j = random.below(i + 1);
        double keep = column[i];
        column[i] = column[j];
        column[j] = keep;
      }
    }
    report("10 000 permutations of 24 trials, 6 effects", 20, () -> Arrays.stream(x).mapToDouble(c -> Permutation.of(y, c, new int[24], 10_000, 1).p()).sum());
    List<Factor> factors = List.of(Factor.category("n", "nitrogen", "0", "0.2", "0.4", "0.6"), Factor.category("v", "variety", "victory", "golden rain", "marvellous"));
    double[][] matrix = Model.interactions(factors).matrix(IntStream.range(0, 72).mapToObj(i -> new double[] {i % 4, i / 4 % 3}).toList());
    List<int[]> strata = List.of(IntStream.range(0, 72).map(i -> i / 4).toArray(), IntStream.range(0, 72).map(i -> i / 12).toArray());
    report("oats, 72 trials in two strata, restricted maximum likelihood", 20, () -> MixedModel.fit(OATS, matrix, strata, true).criterion());
    MixedModel fitted = MixedModel.fit(OATS, matrix, strata, true);
    double[][] rows = IntStream.range(6, 12).mapToObj(c -> IntStream.range(0, 12).mapToDouble(k -> k == c ? 1 : 0).toArray()).toArray(double[][]::new);
    report("Kenward-Roger test of one term of it", 20, () -> fitted.adjusted().test(rows).f());
  }

  private interface Task {
    double run();
  }

  private static void report(String what, int count, Task task) {
    double last = 0;
    for (int i = 0; i < 3 * count; i++) {
      last = task.run();
    }
    double begin = seconds();
    for (int i = 0; i < count; i++) {
      last = task.run();
    }
    System.out.printf(Locale.ROOT, "%s: %.3f ms of processor each (result %.5f)%n", what, 1000 * (seconds() - begin) / count, last);
  }

  /** The same request on one thread and on four: time on the clock, and whether the designs are the same to the last bit. */
  private static void threads(ForkJoinPool one) throws Exception {
    List<Factor> factors = List.of(Factor.measured("h", "height", "m", .6, 1.2).changing(Change.EACH_FURNACE), Factor.measured("b", "blast", "L/min", 200, 600),
        Factor.category("o", "ore", "bog", "rock", "sand"));
    SearchRequest request = SearchRequest.inFurnaces(new Space(factors, List.of()), Model.interactions(factors), 24, 8, Strata.USUAL, 4).withStarts(200);
    ForkJoinPool four = new ForkJoinPool(4);
    for (int round = 0; round < 2; round++) {
      long[] begin = {System.nanoTime(), 0, 0};
      Design alone = one.submit(() -> CoordinateExchange.search(request, Progress.NONE).design()).get();
      begin[1] = System.nanoTime();
      Design shared = four.submit(() -> CoordinateExchange.search(request, Progress.NONE).design()).get();
      begin[2] = System.nanoTime();
      if (round == 1) {
        System.out.printf(Locale.ROOT, "24 trials in 8 furnaces, 200 starts: %.2f s on one thread, %.2f s on four; settings %s (%08x, %08x)%n", (begin[1] - begin[0]) / 1e9,
            (begin[2] - begin[1]) / 1e9, mark(alone) == mark(shared) ? "the same" : "DIFFERENT", mark(alone), mark(shared));
      }
    }
    four.shutdown();
  }

  private static int mark(Design design) {
    return Arrays.deepHashCode(design.settings().toArray());
  }
}
