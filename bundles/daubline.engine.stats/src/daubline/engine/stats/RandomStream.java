package daubline.engine.stats;

/**
 * A stream of pseudo-random numbers that depends on its key alone. Generator: SplitMix64 (Steele, Lea &amp; Flood 2014,
 * Fast splittable pseudorandom number generators, OOPSLA, 453–472); normal deviates by Box &amp; Muller 1958, gamma
 * deviates by Marsaglia &amp; Tsang 2000. Written here, with functions that are the same on every
 * machine, so that neither a later Java release nor another processor can change printed results.
 */
public final class RandomStream {

  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final double UNIT = 0x1.0p-53;

  private long state;
  private double spare = Double.NaN;

  /** A stream for a key, usually one made by {@link #key}. */
  public RandomStream(long key) {
    state = key;
  }

  /** A key from a seed and the names of what the stream is for; other names give another stream. */
  public static long key(long seed, String... names) {
    long key = mix(seed + GOLDEN);
    for (String name : names) {
      for (int i = 0; i < name.length(); i++) {
        key = (key ^ name.charAt(i)) * 0x100000001B3L;
      }
      key = mix(key + GOLDEN);
    }
    return key;
  }

  /** A key for one part of what another key is for. */
  public static long key(long key, long part) {
    return mix(mix(key + GOLDEN) ^ mix(part * GOLDEN + 1));
  }

  private static long mix(long z) {
    long a = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
    long b = (a ^ a >>> 27) * 0x94D049BB133111EBL;
    return b ^ b >>> 31;
  }

  /** The next 64 bits. */
  public long bits() {
    state += GOLDEN;
    return mix(state);
  }

  /** A whole number from 0 to bound − 1; bound greater than zero. */
  public int below(int bound) {
    return (int) (uniform() * bound);
  }

  /** Uniform between 0 and 1, both excluded. */
  public double uniform() {
    return ((bits() >>> 11) + 0.5) * UNIT;
  }

  /** Standard normal. */
  public double normal() {
    if (!Double.isNaN(spare)) {
      double next = spare;
      spare = Double.NaN;
      return next;
    }
    double[] pair = new double[2];
    Elementary.normals(uniform(), uniform(), pair, 0);
    spare = pair[1];
    return pair[0];
  }

  /** Fills an array with standard normal deviates. */
  public double[] normals(int count) {
    double[] z = new double[count];
    int i = 0;
    if (count > 0 && !Double.isNaN(spare)) {
      z[i++] = normal();
    }
    for (; i + 1 < count; i += 2) {
      Elementary.normals(uniform(), uniform(), z, i);
    }
    if (i < count) {
      z[i] = normal();
    }
    return z;
  }

  /** Fills an array with uniform deviates. */
  public double[] uniforms(int count) {
    double[] u = new double[count];
    for (int i = 0; i < count; i++) {
      u[i] = uniform();
    }
    return u;
  }

  /**
   * Gamma with unit scale.
   *
   * @param shape greater than zero
   */
  public double gamma(double shape) {
    if (shape < 1) {
      return gamma(shape + 1) * Math.pow(uniform(), 1 / shape);
    }
    double d = shape - 1.0 / 3;
    double c = 1 / Math.sqrt(9 * d);
    while (true) {
      double z = normal();
      double v = Math.pow(1 + c * z, 3);
      if (v > 0 && Math.log(uniform()) < z * z / 2 + d - d * v + d * Math.log(v)) {
        return d * v;
      }
    }
  }

  /** Shares that sum to one, Dirichlet with these parameters; a parameter of zero gives a share of zero. */
  public double[] dirichlet(double[] alpha) {
    double[] shares = new double[alpha.length];
    double sum = 0;
    for (int i = 0; i < alpha.length; i++) {
      shares[i] = alpha[i] > 0 ? gamma(alpha[i]) : 0;
      sum += shares[i];
    }
    for (int i = 0; i < alpha.length; i++) {
      shares[i] /= sum;
    }
    return shares;
  }

  /** The index drawn from probabilities that sum to one. */
  public static int pick(double[] probabilities, double uniform) {
    double sum = 0;
    for (int k = 0; k < probabilities.length - 1; k++) {
      sum += probabilities[k];
      if (uniform < sum) {
        return k;
      }
    }
    return probabilities.length - 1;
  }
}
