package daubline.engine.design.search;

import java.util.ArrayList;
import java.util.List;

/**
 * What may be spent, in any unit: money, days or baskets of charcoal.
 *
 * @param total what there is, zero or more
 * @param perFurnace what building one costs
 * @param perTrial what burning once costs, greater than zero
 * @param mostTrials the most trials whatever the cost, 1 or more
 * @param mostPerFurnace how often a furnace can be burnt, 1 or more
 */
public record Budget(double total, double perFurnace, double perTrial, int mostTrials, int mostPerFurnace) {

  public Budget {
    if (!(total >= 0 && perFurnace >= 0 && perTrial > 0) || mostTrials < 1 || mostPerFurnace < 1) {
      throw new IllegalArgumentException("a budget needs a total and costs of zero or more, a cost above zero for each "
          + "trial, and at least one trial for each furnace");
    }
  }

  /** So many trials, each furnace burnt at most so often, whatever the cost. */
  public static Budget trials(int most, int mostPerFurnace) {
    return new Budget(most, 0, 1, most, mostPerFurnace);
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
      // a cost typed with decimals must not lose a trial to rounding
      int affordable = (int) Math.floor((total - furnaces * perFurnace) / perTrial + 1e-9);
      int trials = Math.min(Math.min(affordable, furnaces * mostPerFurnace), mostTrials);
      if (trials >= furnaces) {
        splits.add(new Split(furnaces, trials));
      }
    }
    return splits;
  }
}
