package daubline.validation;

import daubline.engine.process.BurnInputs;
import daubline.engine.process.RecoveryModel;
import daubline.engine.process.shaft.ShaftInputs;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.process.shaft.ShaftSolver;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Ways to predict the recovery of a smelt from others; draws of bloom over iron in ore, in per cent. */
final class Predictors {

  static final int DRAWS = 400;
  private static final long SEED = 41;
  private static final double DEAD_BLAST = .5;

  private Predictors() {
  }

  /** Mean and scatter of the others, whatever the furnace. */
  static double[] constant(Smelt smelt, List<Smelt> others) {
    double[] y = others.stream().mapToDouble(Smelt::recovery).toArray();
    return normal(smelt, Arrays.stream(y).average().orElseThrow(), deviation(y) * Math.sqrt(1 + 1.0 / y.length));
  }

  /** No bloom below half a litre a minute for each square centimetre of hearth, otherwise mean and scatter of the others with a bloom. */
  static double[] threshold(Smelt smelt, List<Smelt> others) {
    if (smelt.blast() < DEAD_BLAST) {
      return new double[DRAWS];
    }
    List<Smelt> blown = others.stream().filter(o -> !(o.blast() < DEAD_BLAST)).toList();
    return constant(smelt, blown.size() > 1 ? blown : others);
  }

  /** The model of the forecast: logit of the others with a bloom, and the chance of none from the blast. */
  static double[] logit(Smelt smelt, List<Smelt> others) {
    RecoveryModel model = RecoveryModel.of(others.stream().map(Smelt::recovery).filter(r -> r > 0).toList(), List.of());
    double none = Double.isNaN(smelt.blast()) ? RecoveryModel.noBloom(1) : RecoveryModel.noBloom(smelt.blast() / 6);
    return IntStream.range(0, DRAWS).mapToDouble(i -> {
      RandomStream random = new RandomStream(RandomStream.key(RandomStream.key(SEED, smelt.id() + "logit"), i));
      double drawn = model.draw(random);
      return random.uniform() < none ? 0 : 100 * drawn;
    }).toArray();
  }

  /** The shaft physics alone, every unknown input drawn from its usual range; refused draws are left out. */
  static double[] physics(Smelt smelt) {
    BurnInputs in = smelt.furnace();
    return IntStream.range(0, DRAWS).parallel().mapToObj(i -> {
      RandomStream random = new RandomStream(RandomStream.key(RandomStream.key(SEED, smelt.id() + "physics"), i));
      ShaftInputs shaft = ShaftInputs.usual();
      for (ShaftParameter p : ShaftParameter.values()) {
        // no record tells the humidity: dry air, which draws nothing
        if (p != ShaftParameter.VAPOUR) {
          shaft = shaft.with(p, Math.clamp(in.spread(p).draw(random.uniform(), random.normal()), p.low(), p.high()));
        }
      }
      shaft = shaft.with(ShaftParameter.ORE_IRON, Math.min(smelt.oreIron(), ShaftParameter.ORE_IRON.high()))
          .with(ShaftParameter.ORE_SILICA, .05 + .10 * random.uniform()).with(ShaftParameter.ORE_ALUMINA, .015 + .035 * random.uniform());
      ShaftSolution solution = new ShaftSolver().solve(shaft);
      return solution.converged() ? 100 * solution.hearth().bloomShare() / shaft.get(ShaftParameter.BLOOM_IRON) : Double.NaN;
    }).mapToDouble(d -> d).filter(d -> !Double.isNaN(d)).map(d -> Math.min(100, d)).toArray();
  }

  private static double[] normal(Smelt smelt, double mean, double sigma) {
    return IntStream.range(0, DRAWS).mapToDouble(i -> {
      RandomStream random = new RandomStream(RandomStream.key(RandomStream.key(SEED, smelt.id() + "normal"), i));
      return 100 * Math.clamp(mean + sigma * random.normal(), 0, 1);
    }).toArray();
  }

  private static double deviation(double[] y) {
    double mean = Arrays.stream(y).average().orElseThrow();
    return Math.sqrt(Arrays.stream(y).map(v -> (v - mean) * (v - mean)).sum() / Math.max(1, y.length - 1));
  }

  /** Every smelt but those of one group. */
  static List<Smelt> without(List<Smelt> all, java.util.function.Predicate<Smelt> left) {
    List<Smelt> others = new ArrayList<>(all);
    others.removeIf(left);
    return others;
  }
}
