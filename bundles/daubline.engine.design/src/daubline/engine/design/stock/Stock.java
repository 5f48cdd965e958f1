package daubline.engine.design.stock;

import daubline.base.MoistureBasis;
import java.util.List;

/**
 * Something that trials use up: ore, charcoal, clay, people-days, money. All amounts are in one unit.
 *
 * @param name what it is
 * @param unit the symbol of the unit, such as "kg"
 * @param delivered what there is as delivered, zero or more
 * @param moisture the share of water in it, 0 to below 1; on a dry basis it may exceed 1
 * @param moistureBasis what the share of water is a share of
 * @param losses what is lost on the way to the furnace, one after the other: roasting, crushing, sieving, fines
 * @param reserve the share of the rest held back, 0 to below 1
 * @param once what is used once, such as a preheat of the ground or a pilot
 * @param perTrial what a trial uses
 * @param perFurnace what a new furnace uses beyond that
 * @param perRefit what mending a furnace for one more burn uses
 */
public record Stock(String name, String unit, double delivered, double moisture, MoistureBasis moistureBasis, List<Loss> losses,
    double reserve, double once, double perTrial, double perFurnace, double perRefit) {

  /**
   * A loss on the way.
   *
   * @param name where it is lost
   * @param share of what arrives there, 0 to below 1
   */
  public record Loss(String name, double share) {
  }

  /** Checks the shares. @throws IllegalArgumentException naming the stock and the number */
  public Stock {
    losses = List.copyOf(losses);
    share(name, "the reserve", reserve, 1);
    share(name, "the moisture", moisture, moistureBasis == MoistureBasis.WET ? 1 : Double.POSITIVE_INFINITY);
    for (Loss loss : losses) {
      share(name, "the loss by " + loss.name, loss.share, 1);
    }
    for (double v : new double[] {delivered, once, perTrial, perFurnace, perRefit}) {
      if (!(v >= 0 && Double.isFinite(v))) {
        throw new IllegalArgumentException(name + ": an amount of " + v + " " + unit + " is not possible; give zero or more");
      }
    }
  }

  private static void share(String name, String what, double share, double below) {
    if (!(share >= 0 && share < below)) {
      throw new IllegalArgumentException(name + ": " + what + " of " + share + " is not possible; give a share from 0 to below "
          + (below == 1 ? "1 (10 % is 0.1)" : "infinity"));
    }
  }

  /** A stock used by trials only, dry and without losses. */
  public static Stock plain(String name, String unit, double delivered, double perTrial) {
    return new Stock(name, unit, delivered, 0, MoistureBasis.WET, List.of(), 0, 0, perTrial, 0, 0);
  }

  /** What is left for trials after water, losses and reserve. */
  public double usable() {
    double rest = moistureBasis == MoistureBasis.WET ? delivered * (1 - moisture) : delivered / (1 + moisture);
    for (Loss loss : losses) {
      rest *= 1 - loss.share;
    }
    return rest * (1 - reserve);
  }

  /** What so many trials in so many furnaces use. */
  public double needed(int trials, int furnaces) {
    return trials == 0 ? 0 : once + perTrial * trials + perFurnace * furnaces + perRefit * (trials - furnaces);
  }
}
