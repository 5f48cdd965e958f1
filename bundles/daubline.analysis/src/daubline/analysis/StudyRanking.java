package daubline.analysis;

import daubline.criteria.Criteria;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.engine.inference.RankingEngine;
import daubline.engine.inference.SheetData;
import java.util.List;

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
    List<SheetData> trials = options.trialsOf(snapshot);
    return options.targets(snapshot).stream().map(Target::sheet)
        .map(sheet -> engine.rank(trials.stream().filter(t -> !t.id().equals(sheet.id())).toList(), sheet, progress)).toList();
  }

  /** Different recipes that agree equally well in a ranking. */
  public static Equifinality equallyGood(StudySnapshot snapshot, Ranking ranking) {
    return Equifinality.of(ranking, Recipes.of(snapshot), Equifinality.SAME_RECIPE);
  }
}
