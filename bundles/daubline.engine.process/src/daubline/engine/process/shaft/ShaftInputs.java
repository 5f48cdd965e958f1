package daubline.engine.process.shaft;

import java.util.Arrays;
import java.util.Optional;

/** The numbers of one furnace and its charge; immutable. */
public final class ShaftInputs {

  private final double[] values;
  private final OreSizes sizes;

  private ShaftInputs(double[] values, OreSizes sizes) {
    this.values = values;
    this.sizes = sizes;
  }

  /** A small blown furnace with the usual value of everything. */
  public static ShaftInputs usual() {
    double[] values = new double[ShaftParameter.values().length];
    for (ShaftParameter p : ShaftParameter.values()) {
      values[p.ordinal()] = p.usual();
    }
    return new ShaftInputs(values, OreSizes.ONE);
  }

  /** One value, in the unit of the parameter. */
  public double get(ShaftParameter parameter) {
    return values[parameter.ordinal()];
  }

  /** The same with one value set. */
  public ShaftInputs with(ShaftParameter parameter, double value) {
    double[] copy = values.clone();
    copy[parameter.ordinal()] = value;
    return new ShaftInputs(copy, sizes);
  }

  /** The same with the ore in other size classes. */
  public ShaftInputs with(OreSizes others) {
    return new ShaftInputs(values, others);
  }

  /** The size classes of the ore. */
  public OreSizes sizes() {
    return sizes;
  }

  /** Size of the pieces of a class, m, held to the range of {@link ShaftParameter#ORE_SIZE}. */
  public double oreSize(int index) {
    return Math.clamp(get(ShaftParameter.ORE_SIZE) * sizes.factor(index), ShaftParameter.ORE_SIZE.low(), ShaftParameter.ORE_SIZE.high());
  }

  /** Every value the given share of the way from here to there, with the size classes of there. */
  ShaftInputs towards(ShaftInputs there, double share) {
    double[] mixed = new double[values.length];
    for (int i = 0; i < mixed.length; i++) {
      mixed[i] = values[i] + share * (there.values[i] - values[i]);
    }
    return new ShaftInputs(mixed, there.sizes);
  }

  /** What makes the values unusable, in words; empty when nothing does. */
  public Optional<String> fault() {
    for (ShaftParameter p : ShaftParameter.values()) {
      double v = get(p);
      double slack = 1e-9 * Math.abs(p.high());
      if (!(v >= p.low() - slack && v <= p.high() + slack)) {
        return Optional.of(p.label() + " of " + v + " " + p.unit() + " lies outside " + p.low() + " to " + p.high());
      }
    }
    double solid = get(ShaftParameter.FIXED_CARBON) + get(ShaftParameter.ASH);
    return solid > 1 ? Optional.of("fixed carbon and ash together exceed the dry charcoal") : Optional.empty();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ShaftInputs that && Arrays.equals(values, that.values) && sizes.equals(that.sizes);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(values) + sizes.hashCode();
  }
}
