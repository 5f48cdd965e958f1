package daubline.ui.compare;

import daubline.analysis.StudyRanking;
import daubline.analysis.StudySnapshot;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Exclusion;
import daubline.engine.inference.Ranking;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.prefs.Preferred;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A ranking as rows of cells. */
final class RankTables {

  private static final int SHOWN_WEIGHTS = 4;

  private RankTables() {
  }

  private static GridCell percent(double share) {
    return GridCell.of(Double.isNaN(share) ? "–" : PairModel.percent(share) + " %", Look.NUMBER);
  }

  private static GridCell shaded(double share) {
    return percent(share).shaded(share);
  }

  private static List<Heading> words(String... keys) {
    return new ArrayList<>(Heading.of(keys));
  }

  static List<Heading> rankHeadings(Ranking ranking) {
    List<Heading> headings = words("pair.trial", "rank.agreement", "ranks.next", "ranks.confidence");
    for (int r = 1; r <= ranking.places().size(); r++) {
      headings.add(new Heading("ranks.rank", Words.of("ranks.rank", r)));
    }
    return headings;
  }

  /** How often each trial takes each rank. */
  static List<List<GridCell>> ranks(Ranking ranking) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (Ranking.Place place : ranking.places()) {
      List<GridCell> row = new ArrayList<>(List.of(GridCell.of(place.trialName(), Look.NAME), GridCell.of(PairModel.whole(place.agreement()), Look.NUMBER),
          percent(ranking.places().stream().filter(p -> p.rank() == place.rank() + 1).findFirst()
              .map(p -> place.wins().getOrDefault(p.trial(), Double.NaN)).orElse(Double.NaN)),
          Double.isNaN(place.confidence()) ? GridCell.of(Words.of("ranks.never"), Look.QUIET) : percent(place.confidence())));
      for (double share : place.acceptability()) {
        row.add(shaded(share));
      }
      rows.add(row);
    }
    return rows;
  }

  static List<Heading> pairHeadings(Ranking ranking) {
    List<Heading> headings = words("pair.trial");
    ranking.places().forEach(p -> headings.add(new Heading("ranks.pairs", p.trialName())));
    return headings;
  }

  /** How probably the trial of the row agrees better than that of the column. */
  static List<List<GridCell>> pairs(Ranking ranking) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (Ranking.Place row : ranking.places()) {
      List<GridCell> cells = new ArrayList<>(List.of(GridCell.of(row.rank() + "  " + row.trialName(), Look.NAME)));
      for (Ranking.Place column : ranking.places()) {
        double win = row.wins().getOrDefault(column.trial(), Double.NaN);
        String tip = row == column ? "" : Words.of("ranks.win", row.trialName(), column.trialName(), PairModel.percent(win));
        cells.add(row == column ? GridCell.VOID : new GridCell(PairModel.percent(win) + " %", Look.NUMBER, Mark.NONE, tip, win));
      }
      rows.add(cells);
    }
    return rows;
  }

  static List<Heading> weightHeadings() {
    return words("pair.trial", "ranks.confidence", "ranks.rather");
  }

  /** The weights under which each trial comes first, where they exceed the usual ones. */
  static List<List<GridCell>> weights(Ranking ranking, Map<String, Double> usual) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (Ranking.Place place : ranking.places()) {
      List<StudyRanking.Heavier> heavier = StudyRanking.heavier(ranking, place, usual);
      String all = heavier.stream().map(RankTables::heavier).collect(Collectors.joining("\n"));
      String text = place.centralWeights().isEmpty() ? Words.of("ranks.never.first") : heavier.isEmpty() ? Words.of("ranks.any.weights")
          : heavier.stream().limit(SHOWN_WEIGHTS).map(RankTables::heavier).collect(Collectors.joining("; "));
      rows.add(List.of(GridCell.of(place.trialName(), Look.NAME), percent(place.confidence()), new GridCell(text, Look.PLAIN, Mark.NONE, all)));
    }
    return rows;
  }

  private static String heavier(StudyRanking.Heavier h) {
    return Words.of("ranks.heavier", Words.said(h.criterion()), Preferred.sign(Printed.fixed(100 * h.weight(), 1)), Preferred.sign(Printed.fixed(100 * h.usual(), 1)));
  }

  static List<Heading> criterionHeadings() {
    return words("reasons.criterion", "ranks.share", "ranks.change", "ranks.first.without", "ranks.tells");
  }

  /** What each criterion does to the order. */
  static List<List<GridCell>> criteria(Ranking ranking) {
    return ranking.criteria().stream().filter(c -> !Double.isNaN(c.share()) && (c.share() != 0 || c.influence() != 0))
        .sorted(Comparator.comparingDouble((Ranking.Discrimination c) -> -Math.abs(c.share())).thenComparing(Ranking.Discrimination::criterion))
        .map(c -> List.of(GridCell.of(Words.said(c.name()), Look.NAME), shaded(c.share()), GridCell.of(PairModel.whole(c.influence()), Look.NUMBER),
            GridCell.of(name(ranking, c.firstWithout())), c.tellsApart() ? GridCell.of(Words.of("ranks.tells.yes"))
                : new GridCell(Words.of("ranks.tells.not"), Look.QUIET, Mark.NOT_TESTED, Words.of("ranks.tells.not.tip")))).toList();
  }

  private static String name(Ranking ranking, String trial) {
    return ranking.places().stream().filter(p -> p.trial().equals(trial)).map(Ranking.Place::trialName).findFirst().orElse("–");
  }

  static List<Heading> equalHeadings() {
    return words("ranks.recipe", "ranks.trials");
  }

  /** Different recipes that agree equally well, each with its trials. */
  static List<List<GridCell>> equal(Equifinality equal, StudySnapshot snapshot) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (List<String> group : equal.groups()) {
      String trials = group.stream().map(id -> snapshot.trial(id).map(t -> t.name()).orElse(id)).collect(Collectors.joining(", "));
      rows.add(List.of(GridCell.of(Words.of("ranks.recipe.number", rows.size() + 1), Look.NAME), GridCell.of(trials)));
    }
    return rows;
  }

  static List<Heading> excludedHeadings() {
    return words("pair.trial", "ranks.excluded", "ranks.chance", "ranks.list");
  }

  /** Which trials the evidence rules out, by which shortest list of criteria. */
  static List<List<GridCell>> excluded(List<Comparison> ranked, double alpha) {
    List<List<GridCell>> rows = new ArrayList<>();
    for (Comparison c : ranked) {
      Exclusion exclusion = Exclusion.of(c, alpha);
      String list = exclusion.criteria().stream().map(r -> Words.said(r.name()) + " (p " + ReasonsModel.probability(r.compatibility()) + ")").collect(Collectors.joining(", "));
      String tip = exclusion.criteria().stream().map(RankTables::both).collect(Collectors.joining("\n"));
      GridCell verdict = !c.isTested() ? new GridCell(Words.of("verdict.NOT_TESTED"), Look.QUIET, Mark.NOT_TESTED, Words.of("pair.nothing.tip"))
          : exclusion.isRuledOut() ? new GridCell(Words.of("ranks.ruledout"), Look.PLAIN, Mark.NOT_CONSISTENT, tip) : GridCell.of(Words.of("rank.notruledout"));
      rows.add(List.of(GridCell.of(c.trialName(), Look.NAME), verdict, GridCell.of(ReasonsModel.probability(exclusion.probability()), Look.NUMBER),
          new GridCell(list, Look.PLAIN, Mark.NONE, tip)));
    }
    return rows;
  }

  private static String both(CriterionResult r) {
    return Words.of("ranks.both", Words.said(r.name()), Words.said(r.evidence()), Words.said(r.found()));
  }
}
