package daubline.analysis;

import daubline.criteria.Criteria;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.engine.inference.RankingEngine;
import daubline.engine.inference.SheetData;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Ranks the trials of a study against its evidence, and says how far the order can be relied on. */
public final class StudyRanking {

  private StudyRanking() {
  }

  /**
   * One ranking for each target that was asked for.
   *
   * @param progress told how far each ranking has come, and asked whether to go on
   */
  public static List<Ranking> of(StudySnapshot snapshot, ComparisonOptions options, Progress progress) {
    RankingEngine engine = new RankingEngine(Criteria.all(), options.settingsOf(snapshot));
    return options.targets(snapshot).stream().map(target -> rank(engine, snapshot, options, target, progress)).toList();
  }

  /** The ranking against one target. */
  public static Ranking of(StudySnapshot snapshot, ComparisonOptions options, Target target, Progress progress) {
    return rank(new RankingEngine(Criteria.all(), options.settingsOf(snapshot)), snapshot, options, target, progress);
  }

  /** A trial is not ranked against itself. */
  private static Ranking rank(RankingEngine engine, StudySnapshot snapshot, ComparisonOptions options, Target target, Progress progress) {
    List<SheetData> others = options.trialsOf(snapshot).stream().filter(t -> !t.id().equals(target.sheet().id())).toList();
    return engine.rank(others, target.sheet(), progress);
  }

  /** The share of each criterion in all weights, by its id, before weights are drawn. */
  public static Map<String, Double> usualWeights(ComparisonSettings settings) {
    double[] shares = settings.weights().shares(Criteria.all());
    Map<String, Double> usual = new LinkedHashMap<>();
    for (int c = 0; c < shares.length; c++) {
      usual.put(Criteria.all().get(c).id(), shares[c]);
    }
    return usual;
  }

  /**
   * A criterion that counts for more than usual where a trial comes first.
   *
   * @param criterion its name as printed
   * @param weight its mean weight in the draws in which the trial comes first, as a share
   * @param usual its usual weight, as a share
   */
  public record Heavier(String criterion, double weight, double usual) {
  }

  /** The tested criteria that count for more than usual when a trial comes first, those that gain most first. */
  public static List<Heavier> heavier(Ranking ranking, Ranking.Place place, Map<String, Double> usual) {
    return ranking.criteria().stream().filter(c -> c.influence() > 0)
        .map(c -> new Heavier(c.name(), place.centralWeights().getOrDefault(c.criterion(), 0.0), usual.get(c.criterion())))
        .filter(h -> h.weight() > h.usual()).sorted(Comparator.comparingDouble(h -> h.usual() - h.weight())).toList();
  }

  /** Different recipes that agree equally well in a ranking. */
  public static Equifinality equallyGood(StudySnapshot snapshot, Ranking ranking) {
    return Equifinality.of(ranking, Recipes.of(snapshot), Equifinality.SAME_RECIPE);
  }
}
