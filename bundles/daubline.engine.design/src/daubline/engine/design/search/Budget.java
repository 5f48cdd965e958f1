package daubline.engine.design.search;

import java.util.ArrayList;
import java.util.List;

/**
 * What may be spent.
 *
 * @param mostTrials the most trials whatever the cost, 1 or more
 * @param mostPerFurnace how often a furnace can be burnt, 1 or more
 * @param spending which numbers of furnaces and trials can be afforded
 */
public record Budget(int mostTrials, int mostPerFurnace, Spending spending) {

  /** Whether so many furnaces and trials can be afforded; fewer of either can be whenever more can. */
  @FunctionalInterface
  public interface Spending {

    /** Whether they can. */
    boolean affords(int furnaces, int trials);
  }

  public Budget {
    if (mostTrials < 1 || mostPerFurnace < 1) {
      throw new IllegalArgumentException("a budget needs at least one trial, and one for each furnace");
    }
  }

  /**
   * A budget of one stock, in any unit: money, days or baskets of charcoal.
   *
   * @param total what there is, zero or more
   * @param perFurnace what building one costs
   * @param perTrial what burning once costs, greater than zero
   */
  public Budget(double total, double perFurnace, double perTrial, int mostTrials, int mostPerFurnace) {
    // a cost typed with decimals must not lose a trial to rounding
    this(mostTrials, mostPerFurnace, (furnaces, trials) -> furnaces * perFurnace + trials * perTrial <= total + 1e-9 * perTrial);
    if (!(total >= 0 && perFurnace >= 0 && perTrial > 0)) {
      throw new IllegalArgumentException("a budget needs a total and costs of zero or more, and a cost above zero for each trial");
    }
  }

  /** So many trials, each furnace burnt at most so often, whatever the cost. */
  public static Budget trials(int most, int mostPerFurnace) {
    return new Budget(most, mostPerFurnace, (furnaces, trials) -> true);
  }

  /** Whether so many trials in so many furnaces are within it. */
  public boolean affords(int furnaces, int trials) {
    return trials <= mostTrials && spending.affords(furnaces, trials);
  }

  /**
   * A number of furnaces and the trials that can then be afforded.
   *
   * @param furnaces how many are built
   * @param trials how many are burnt
   */
  public record Split(int furnaces, int trials) {
  }

  /** Every number of furnaces that can be afforded, with as many trials as it allows. */
  public List<Split> splits() {
    List<Split> splits = new ArrayList<>();
    for (int furnaces = 1; furnaces <= mostTrials; furnaces++) {
      int trials = Math.min(furnaces * mostPerFurnace, mostTrials);
      while (trials >= furnaces && !affords(furnaces, trials)) {
        trials--;
      }
      if (trials >= furnaces) {
        splits.add(new Split(furnaces, trials));
      }
    }
    return splits;
  }
}
