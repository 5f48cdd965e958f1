package daubline.engine.inference;

import daubline.engine.stats.Quantiles;
import daubline.engine.stats.RandomStream;
import daubline.engine.stats.RankAcceptability;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Orders trials against one evidence sheet under uncertain weights and measurements. */
public final class RankingEngine {

  private final List<Criterion> criteria;
  private final ComparisonSettings settings;
  private final double[] weights;

  /** An engine. */
  public RankingEngine(List<Criterion> criteria, ComparisonSettings settings) {
    this.criteria = List.copyOf(criteria);
    this.settings = settings;
    this.weights = settings.weights().shares(criteria);
  }

  /**
   * Ranks the trials.
   *
   * @param trials the remains of each trial, with the trial's id and name
   * @throws java.util.concurrent.CancellationException when the progress asks to stop
   */
  public Ranking rank(List<SheetData> trials, SheetData sheet, Progress progress) {
    double[][] drawnWeights = drawnWeights();
    RankingInput[] inputs = new RankingInput[trials.size()];
    Parallel.run(trials.size(), settings.threads(), progress, () -> new PairScorer(criteria, settings), (scorer, t) -> {
      scorer.take(trials.get(t));
      inputs[t] = RankingInput.of(scorer, sheet, drawnWeights);
    });
    List<Integer> tested = IntStream.range(0, inputs.length).filter(t -> inputs[t].isTested()).boxed()
        .sorted(Comparator.comparing((Integer t) -> -inputs[t].median()).thenComparing(t -> trials.get(t).id())).toList();
    List<String> untested = IntStream.range(0, inputs.length).filter(t -> !inputs[t].isTested()).mapToObj(t -> trials.get(t).id()).sorted().toList();
    List<SheetData> order = tested.stream().map(trials::get).toList();
    List<RankingInput> ordered = tested.stream().map(t -> inputs[t]).toList();
    return new Ranking(sheet.id(), sheet.name(), places(order, ordered, drawnWeights), untested,
        new DiscriminationTable(criteria, weights).of(order, ordered));
  }

  /** Weights of each draw: Dirichlet around the user's weights, or the user's own in every draw when all are zero. */
  private double[][] drawnWeights() {
    double firmness = settings.firmness() > 0 ? settings.firmness() : criteria.size();
    double[] alpha = weights.clone();
    for (int c = 0; c < alpha.length; c++) {
      alpha[c] *= firmness;
    }
    RandomStream stream = new RandomStream(RandomStream.key(settings.seed(), "weights"));
    double[][] drawn = new double[settings.draws()][];
    for (int m = 0; m < drawn.length; m++) {
      drawn[m] = stream.dirichlet(alpha);
    }
    return drawn;
  }

  private List<Ranking.Place> places(List<SheetData> trials, List<RankingInput> inputs, double[][] drawnWeights) {
    if (trials.isEmpty()) {
      return List.of();
    }
    RankAcceptability ranks = RankAcceptability.of(inputs.stream().map(RankingInput::uncertain).toArray(double[][]::new));
    List<Ranking.Place> places = new ArrayList<>();
    for (int t = 0; t < trials.size(); t++) {
      double[] central = ranks.centralWeights(t, drawnWeights);
      places.add(new Ranking.Place(trials.get(t).id(), trials.get(t).name(), t + 1, inputs.get(t).median(), inputs.get(t).coverage(),
          ranks.acceptability(t), wins(trials, ranks, t), named(central), confidence(inputs, t, central)));
    }
    return places;
  }

  private static Map<String, Double> wins(List<SheetData> trials, RankAcceptability ranks, int t) {
    Map<String, Double> wins = new LinkedHashMap<>();
    for (int other = 0; other < trials.size(); other++) {
      if (other != t) {
        wins.put(trials.get(other).id(), ranks.win(t, other));
      }
    }
    return wins;
  }

  private Map<String, Double> named(double[] central) {
    Map<String, Double> named = new LinkedHashMap<>();
    for (int c = 0; c < central.length; c++) {
      named.put(criteria.get(c).id(), central[c]);
    }
    return named;
  }

  private static double confidence(List<RankingInput> inputs, int t, double[] central) {
    if (central.length == 0) {
      return Double.NaN;
    }
    return RankAcceptability.first(inputs.stream().map(i -> i.pooled(central)).toArray(double[][]::new), t);
  }

  static double median(double[] logs) {
    return 100 * Math.exp(Quantiles.of(logs, 0.5)[0]);
  }
}
