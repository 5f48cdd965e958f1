package daubline.engine.design.search;

import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Chooses how many furnaces to build and how often to burn each, by searching the best design for every split. */
public final class BudgetSearch {

  private BudgetSearch() {
  }

  /**
   * One way to spend the budget.
   *
   * @param split the furnaces and trials
   * @param found the best design for it
   */
  public record Option(Budget.Split split, CoordinateExchange.Found found) {
  }

  /**
   * The ways to spend the budget, best first: most information, or smallest variance of prediction.
   *
   * @param done trials burnt already, which count and stay
   * @param perDay how many trials may share a day, each in another furnace, 1 or more
   * @throws IllegalArgumentException when no way lets the model be estimated
   */
  public static List<Option> search(Space space, Model model, Budget budget, Criterion criterion, Strata strata, List<Run> done,
      int perDay, int starts, long seed, Progress progress) {
    List<Option> options = new ArrayList<>();
    String last = "the budget is smaller than the cost of one furnace and one trial";
    for (Budget.Split split : budget.splits()) {
      progress.check();
      try {
        SearchRequest request = SearchRequest.added(done, space, model, split.trials(), split.furnaces(), strata, seed);
        SearchRequest dated = perDay > 1 ? request.sharingDays(perDay) : request;
        options.add(new Option(split, CoordinateExchange.search(dated.with(criterion).withStarts(starts), progress)));
      } catch (IllegalArgumentException e) {
        // too few trials or furnaces for this model: another split may do
        last = e.getMessage();
      }
    }
    if (options.isEmpty()) {
      throw new IllegalArgumentException(last);
    }
    options.sort(Comparator.comparingDouble(o -> criterion == Criterion.EFFECTS ? -o.found.logDeterminant()
        : o.found.averageVariance()));
    return options;
  }
}
