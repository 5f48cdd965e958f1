package daubline.benchmarks;

import daubline.engine.process.BurnInputs;
import daubline.engine.process.Spread;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.ShaftInputs;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.process.shaft.ShaftSolver;
import daubline.engine.stats.RandomStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Sets of furnaces that the shaft's peers solve too: each is solved on the usual mesh and on one ten times finer, what differs is
 * printed, and furnaces with the fine results are written for releng/benchmarks/peers/shaft.py and shaft_batch.py.
 */
final class FurnaceSets {

  private static final int FINE = 400;

  private FurnaceSets() {
  }

  /** Furnaces about the usual one. */
  static ShaftInputs near(int i) {
    RandomStream random = new RandomStream(RandomStream.key(8, i));
    return ShaftInputs.usual().with(ShaftParameter.DIAMETER, .2 + .1 * random.uniform()).with(ShaftParameter.STACK, .4 + .3 * random.uniform())
        .with(ShaftParameter.AIR, (400 + 600 * random.uniform()) / 6e4).with(ShaftParameter.WALL_LOSS, 4 + 4 * random.uniform());
  }

  /** Plausible furnaces: every number drawn as a forecast draws it where nothing is known, dead furnaces among them. */
  static ShaftInputs plausible(int i) {
    RandomStream random = new RandomStream(RandomStream.key(11, i));
    BurnInputs usual = BurnInputs.of(Map.of(ShaftParameter.DIAMETER, Spread.even(.2, .35), ShaftParameter.STACK, Spread.even(.3, 1),
        ShaftParameter.AIR, Spread.even(80 / 6e4, 1200 / 6e4), ShaftParameter.ORE_SIZE, Spread.even(.003, .01), ShaftParameter.ORE_RATIO, Spread.even(.3, 1.4)),
        Analysis.ofPercent(Oxide.FE2O3, 83, Oxide.SIO2, 9), 18, 34);
    ShaftInputs in = ShaftInputs.usual();
    for (ShaftParameter p : ShaftParameter.values()) {
      in = in.with(p, Math.clamp(usual.spread(p).draw(random.uniform(), random.normal()), p.low(), p.high()));
    }
    return in;
  }

  /** Solves, prints and writes a set. */
  static void report(String name, List<ShaftInputs> furnaces, Path file) throws Exception {
    List<ShaftSolution> usual = furnaces.parallelStream().map(in -> new ShaftSolver().solve(in)).toList();
    List<ShaftSolution> fine = furnaces.parallelStream().map(in -> new ShaftSolver(FINE).solve(in)).toList();
    List<Integer> both = IntStream.range(0, furnaces.size()).filter(i -> usual.get(i).converged() && fine.get(i).converged()).boxed().toList();
    System.out.printf(Locale.ROOT, "%s, %d furnaces: %d solved, refused %s; against a mesh of %d, middle, nineteen in twenty and worst: charcoal %s %%, metal %s points, "
        + "solids at the inlet %s K, gas at the mouth %s K%n", name, furnaces.size(), usual.stream().filter(ShaftSolution::converged).count(), refusals(usual), FINE,
        off(both, i -> 100 * Math.abs(usual.get(i).rates().charcoal() / fine.get(i).rates().charcoal() - 1)),
        off(both, i -> 100 * Math.abs(usual.get(i).hearth().metalShare() - fine.get(i).hearth().metalShare())),
        off(both, i -> Math.abs(usual.get(i).hearth().inletSolid() - fine.get(i).hearth().inletSolid())),
        off(both, i -> Math.abs(usual.get(i).hearth().mouthGas() - fine.get(i).hearth().mouthGas())));
    write(furnaces, fine, file);
  }

  private static Map<String, Long> refusals(List<ShaftSolution> solutions) {
    return solutions.stream().flatMap(s -> s.refusal().stream()).map(r -> r.replaceAll(" \\(.*?\\)", ""))
        .collect(Collectors.groupingBy(r -> r, TreeMap::new, Collectors.counting()));
  }

  private static String off(List<Integer> both, ToDoubleFunction<Integer> difference) {
    double[] sorted = both.stream().mapToDouble(difference).sorted().toArray();
    return Arrays.stream(new double[] {sorted[sorted.length / 2], sorted[sorted.length * 19 / 20], sorted[sorted.length - 1]})
        .mapToObj(v -> String.format(Locale.ROOT, "%.1e", v)).collect(Collectors.joining(", "));
  }

  private static void write(List<ShaftInputs> furnaces, List<ShaftSolution> fine, Path file) throws Exception {
    try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
      out.println(Arrays.stream(ShaftParameter.values()).map(p -> p.name().toLowerCase(Locale.ROOT)).collect(Collectors.joining(","))
          + ",result_charcoal,result_metal,result_inlet_solid,result_mouth_gas");
      for (int i = 0; i < furnaces.size(); i++) {
        ShaftInputs in = furnaces.get(i);
        ShaftSolution s = fine.get(i);
        out.println(Arrays.stream(ShaftParameter.values()).map(p -> String.valueOf(in.get(p))).collect(Collectors.joining(",")) + (s.converged()
            ? "," + s.rates().charcoal() + "," + s.hearth().metalShare() + "," + s.hearth().inletSolid() + "," + s.hearth().mouthGas() : ",nan,nan,nan,nan"));
      }
    }
  }
}
