package daubline.engine.stats;

import java.util.function.ToDoubleFunction;

/**
 * An input of a measurement model as a distribution (JCGM 101:2008, 6.4).
 *
 * @param mean its expectation
 * @param sigma its standard uncertainty
 * @param freedom degrees of freedom of that uncertainty, infinite when it is known
 * @param draw takes one value
 */
public record Uncertain(double mean, double sigma, double freedom, ToDoubleFunction<RandomStream> draw) {

  /** A normal distribution. */
  public static Uncertain normal(double mean, double sigma) {
    return new Uncertain(mean, sigma, Double.POSITIVE_INFINITY, r -> mean + sigma * r.normal());
  }

  /** A normal estimate whose uncertainty was itself estimated; drawn from the scaled and shifted t distribution (6.4.9). */
  public static Uncertain normal(double mean, double sigma, double freedom) {
    return new Uncertain(mean, sigma, freedom, r -> mean + sigma * r.normal() / Math.sqrt(2 * r.gamma(freedom / 2) / freedom));
  }

  /** A rectangular distribution between two bounds. */
  public static Uncertain rectangular(double low, double high) {
    return new Uncertain((low + high) / 2, (high - low) / Math.sqrt(12), Double.POSITIVE_INFINITY, r -> low + (high - low) * r.uniform());
  }
}
