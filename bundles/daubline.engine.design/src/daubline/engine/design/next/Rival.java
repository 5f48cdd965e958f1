package daubline.engine.design.next;

import java.util.function.ToDoubleFunction;

/**
 * A reconstruction that has survived so far, with what it predicts.
 *
 * @param name its name
 * @param probability how far it is believed, in any unit; all are divided by their sum
 * @param prediction the outcome it predicts for a coded setting
 * @param deviation how far it may itself be wrong, one standard deviation in the outcome's unit, zero or more
 */
public record Rival(String name, double probability, ToDoubleFunction<double[]> prediction, double deviation) {

  public Rival {
    if (!(probability >= 0) || !(deviation >= 0)) {
      throw new IllegalArgumentException("reconstruction " + name + ": belief and deviation must be zero or more, not "
          + probability + " and " + deviation);
    }
  }
}
