package daubline.engine.process.balance;

/**
 * Something charged or consumed: ore, lining, ash, flux.
 *
 * @param name what it is, in the user's words
 * @param mass dry mass, kg
 * @param analysis its oxides as shares of the dry mass; what is missing to one (loss on ignition) leaves as gas
 */
public record Portion(String name, double mass, Analysis analysis) {

  public Portion {
    if (!(mass >= 0)) {
      throw new IllegalArgumentException("mass of " + name + " must be zero or more, is " + mass + " kg");
    }
  }
}
