package daubline.analysis;

import daubline.criteria.Criteria;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.engine.inference.RankingEngine;
import daubline.engine.inference.SheetData;
import java.util.List;

/** Ranks the trials of a study against its evidence sheets, and says how far the order can be relied on. */
public final class StudyRanking {

  private StudyRanking() {
  }

  /**
   * One ranking for each sheet that was asked for.
   *
   * @param progress told how far each ranking has come, and asked whether to go on
   */
  public static List<Ranking> of(StudySnapshot snapshot, ComparisonOptions options, Progress progress) {
    ComparisonSettings settings = snapshot.settings().with(options.draws(), options.seed(), options.threads());
    RankingEngine engine = new RankingEngine(Criteria.all(), settings);
    List<SheetData> trials = options.trialsOf(snapshot);
    return options.sheetsOf(snapshot).stream().map(sheet -> engine.rank(trials, sheet, progress)).toList();
  }
}
