package daubline.export.tables;

import daubline.analysis.StudyRanking;
import daubline.analysis.StudyResults;
import daubline.engine.inference.Ranking;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.ArrayList;
import java.util.List;

/** How far the order of the trials can be relied on when weights and measurements are uncertain. */
public final class RanksTable extends Spec {

  private static final int RANKS = 3;

  /** The table. */
  public RanksTable() {
    super("ranks", "Ranks under Uncertainty", "Share of draws in which each trial takes the first ranks against each evidence sheet, weights and measurements "
        + "uncertain.");
  }

  @Override
  List<Column> columns(StudyResults results) {
    return List.of(Column.text("sheet", "Evidence sheet"), Column.number("place", "Place", ""), Column.text("trial", "Trial"),
        Column.number("agreement", "Agreement", "0–100"), Column.number("coverage", "Coverage", "%"), Column.number("rank_1", "Rank 1", "%"),
        Column.number("rank_2", "Rank 2", "%"), Column.number("rank_3", "Rank 3", "%"), Column.number("ahead", "Ahead of next", "%"),
        Column.number("best_weights", "First at best weights", "%"), Column.words("recipes", "Recipes that agree equally well"));
  }

  @Override
  List<List<Cell>> rows(StudyResults results) {
    List<List<Cell>> rows = new ArrayList<>();
    for (Ranking ranking : RankedTrials.of(results)) {
      List<List<String>> recipes = StudyRanking.equallyGood(results.snapshot(), ranking).groups();
      ranking.places().forEach(place -> rows.add(row(ranking, place, recipes)));
    }
    return rows;
  }

  private static List<Cell> row(Ranking ranking, Ranking.Place place, List<List<String>> recipes) {
    List<Cell> cells = new ArrayList<>(List.of(Cell.text(ranking.sheetName()), Cell.fixed(place.rank(), 0), Cell.text(place.trialName()),
        Cell.fixed(place.agreement(), 0), percent(place.coverage())));
    for (int rank = 0; rank < RANKS; rank++) {
      cells.add(rank < place.acceptability().length ? percent(place.acceptability()[rank]) : Cell.EMPTY);
    }
    cells.add(ranking.places().stream().filter(p -> p.rank() == place.rank() + 1).findFirst()
        .map(next -> percent(place.wins().getOrDefault(next.trial(), Double.NaN))).orElse(Cell.EMPTY));
    cells.add(percent(place.confidence()));
    cells.add(recipes.size() < 2 ? Cell.EMPTY : recipe(place.trial(), recipes));
    return cells;
  }

  /** The number of the recipe among those that agree equally well; empty for a trial that agrees less. */
  private static Cell recipe(String trial, List<List<String>> recipes) {
    for (int r = 0; r < recipes.size(); r++) {
      if (recipes.get(r).contains(trial)) {
        return Cell.text(r + 1 + " of " + recipes.size());
      }
    }
    return Cell.EMPTY;
  }

  private static Cell percent(double share) {
    return Double.isNaN(share) ? Cell.EMPTY : Cell.fixed(100 * share, 0);
  }

  @Override
  List<String> notes(StudyResults results) {
    return List.of("Ahead of next: probability of a higher agreement than the trial of the next place. First at best weights: how often the trial comes first "
        + "under the weights that suit it best; empty when it never does.",
        "Trials with the same recipe number count as one recipe; recipes with different numbers agree equally well and the evidence cannot tell them apart.", RankedTrials.note(results));
  }
}
