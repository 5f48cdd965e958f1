package daubline.engine.process.balance;

import daubline.engine.stats.Nnls;
import daubline.engine.stats.Quantiles;
import daubline.engine.stats.RandomStream;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Spread of an apportionment when slag and sources vary: every draw takes new analyses and solves again.
 *
 * <p>Source: propagation of distributions, JCGM 101:2008. Slag values are normal with the analytical error; each oxide
 * of a source is log-normal with the source's spread. Draw n depends on seed and n only.
 *
 * @param median median of each amount, kg per kg of slag
 * @param low 5 % quantile of each amount
 * @param high 95 % quantile of each amount
 * @param atZero share of the draws that hold each amount at zero
 * @param metal 5, 50 and 95 % quantiles of the iron not in the slag, kg per kg of slag
 */
public record ApportionmentSpread(List<Double> median, List<Double> low, List<Double> high, List<Double> atZero,
    List<Double> metal) {

  /** Draws and solves; at least one draw. */
  public static ApportionmentSpread of(ApportionmentProblem problem, int draws, long seed) {
    int n = problem.sources().size();
    long key = RandomStream.key(seed, "apportionment");
    double[][] x = new double[n][draws];
    double[] metal = new double[draws];
    IntStream.range(0, draws).parallel().forEach(d -> {
      ApportionmentProblem drawn = vary(problem, new RandomStream(RandomStream.key(key, d)));
      double[] fit = Nnls.solve(drawn.weightedMatrix(), drawn.weightedSlag()).x();
      double iron = -drawn.slag().iron();
      for (int j = 0; j < n; j++) {
        x[j][d] = fit[j];
        iron += fit[j] * drawn.sources().get(j).analysis().iron();
      }
      metal[d] = iron;
    });
    return new ApportionmentSpread(quantile(x, .5), quantile(x, .05), quantile(x, .95),
        IntStream.range(0, n).mapToObj(j -> zeros(x[j])).toList(), list(Quantiles.of(metal, .05, .5, .95)));
  }

  private static List<Double> quantile(double[][] x, double p) {
    return IntStream.range(0, x.length).mapToObj(j -> Quantiles.of(x[j], p)[0]).toList();
  }

  private static double zeros(double[] x) {
    int count = 0;
    for (double v : x) {
      count += v == 0 ? 1 : 0;
    }
    return (double) count / x.length;
  }

  private static List<Double> list(double[] values) {
    return IntStream.range(0, values.length).mapToObj(i -> values[i]).toList();
  }

  private static ApportionmentProblem vary(ApportionmentProblem p, RandomStream random) {
    Map<Oxide, Double> slag = new EnumMap<>(p.slag().shares());
    for (Oxide oxide : p.oxides()) {
      slag.put(oxide, clip(p.slag().share(oxide) + p.error(oxide) * random.normal()));
    }
    List<ApportionmentProblem.Source> sources = p.sources().stream().map(s -> vary(s, random)).toList();
    return new ApportionmentProblem(new Analysis(slag), sources, p.oxides(), p.relativeError(), p.floorError());
  }

  private static ApportionmentProblem.Source vary(ApportionmentProblem.Source source, RandomStream random) {
    Map<Oxide, Double> shares = new EnumMap<>(Oxide.class);
    source.analysis().shares().forEach((oxide, share) ->
        shares.put(oxide, clip(share * Math.exp(source.relativeSpread() * random.normal()))));
    return new ApportionmentProblem.Source(source.name(), new Analysis(shares), source.relativeSpread());
  }

  private static double clip(double share) {
    return Math.clamp(share, 0, 1);
  }
}
