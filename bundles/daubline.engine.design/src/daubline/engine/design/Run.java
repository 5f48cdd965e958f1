package daubline.engine.design;

/**
 * One trial of a design.
 *
 * @param setting the coded setting, one number for each factor
 * @param furnace the number of the furnace it is burnt in, from 0
 * @param day the number of the day it is burnt on, from 0
 * @param done whether it was burnt already and cannot be changed
 */
public record Run(double[] setting, int furnace, int day, boolean done) {

  public Run {
    setting = setting.clone();
  }

  /** A trial in a furnace of its own on a day of its own. */
  public static Run alone(int number, double... setting) {
    return new Run(setting, number, number, false);
  }

  @Override
  public double[] setting() {
    return setting.clone();
  }
}
