package daubline.engine.process.shaft;

import java.util.Arrays;

/**
 * The pieces of an ore by size class. Sizes are told as factors on {@link ShaftParameter#ORE_SIZE}, so that a doubt about
 * all sizes stays one number. Immutable.
 */
public final class OreSizes {

  /** All pieces of one size. */
  public static final OreSizes ONE = new OreSizes(new double[] {1}, new double[] {1});
  /** More classes than this only cost time: the shaft's equations grow by two a class. */
  public static final int MOST = 6;

  private final double[] shares;
  private final double[] factors;

  private OreSizes(double[] shares, double[] factors) {
    this.shares = shares;
    this.factors = factors;
  }

  /**
   * Classes of an ore.
   *
   * @param masses mass of each class in any unit, more than nothing
   * @param sizes size of its pieces, m
   * @param size what {@link ShaftParameter#ORE_SIZE} will say, m
   * @throws IllegalArgumentException when there is no class, more than {@link #MOST}, or one that is empty or has no size
   */
  public static OreSizes of(double[] masses, double[] sizes, double size) {
    if (masses.length == 0 || masses.length > MOST || masses.length != sizes.length) {
      throw new IllegalArgumentException("an ore has 1 to " + MOST + " size classes, each with a mass and a size, not " + masses.length + " and " + sizes.length);
    }
    if (Arrays.stream(masses).anyMatch(m -> !(m > 0)) || Arrays.stream(sizes).anyMatch(s -> !(s > 0)) || !(size > 0)) {
      throw new IllegalArgumentException("every size class of an ore needs a mass and a size above nothing");
    }
    double all = Arrays.stream(masses).sum();
    return new OreSizes(Arrays.stream(masses).map(m -> m / all).toArray(), Arrays.stream(sizes).map(s -> s / size).toArray());
  }

  /** How many classes. */
  public int count() {
    return shares.length;
  }

  /** Share of the ore's mass in a class, 0 to 1. */
  public double share(int index) {
    return shares[index];
  }

  /** Size of its pieces over {@link ShaftParameter#ORE_SIZE}. */
  public double factor(int index) {
    return factors[index];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof OreSizes that && Arrays.equals(shares, that.shares) && Arrays.equals(factors, that.factors);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(shares) + Arrays.hashCode(factors);
  }
}
