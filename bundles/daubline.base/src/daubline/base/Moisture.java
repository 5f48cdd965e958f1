package daubline.base;

/**
 * Water in a material, kept on the wet basis: w = u ÷ (1 + u) from the dry basis u. Masses are converted both ways by the
 * definition of the two bases; uncertainties are first order (JCGM 100:2008, 5.1.2), mass and water taken as independent.
 *
 * @param wet mass of water over the moist mass, 0 to below 1
 * @param sigma one standard uncertainty of it, 0 or more
 */
public record Moisture(double wet, double sigma) {

  public Moisture {
    if (!(wet >= 0 && wet < 1) || !(sigma >= 0)) {
      throw new IllegalArgumentException("Water of " + wet + " of the moist mass is not possible; it is 0 to below 1");
    }
  }

  /**
   * Water from a share on a stated basis.
   *
   * @param share the share on that basis, 0 or more; on the wet basis below 1
   * @param sigma its standard uncertainty; NaN when not stated, taken as 0
   * @throws IllegalArgumentException when the share is not possible on that basis
   */
  public static Moisture of(double share, double sigma, MoistureBasis basis) {
    double known = Double.isNaN(sigma) ? 0 : sigma;
    return basis == MoistureBasis.WET || !(share >= 0) ? new Moisture(share, known)
        : new Moisture(share / (1 + share), known / ((1 + share) * (1 + share)));
  }

  /** Mass of water over the dry mass. */
  public double dry() {
    return wet / (1 - wet);
  }

  /** The share on a basis with its uncertainty. */
  public Amount on(MoistureBasis basis) {
    return basis == MoistureBasis.WET ? amount(wet, sigma) : amount(dry(), sigma / ((1 - wet) * (1 - wet)));
  }

  /** The dry mass in a moist one; the uncertainty of both is carried on. */
  public Amount dryMass(Amount moist) {
    return amount(moist.value() * (1 - wet), Math.hypot((1 - wet) * moist.sigmaOr(0), moist.value() * sigma));
  }

  /** The moist mass of a dry one; the uncertainty of both is carried on. */
  public Amount moistMass(Amount dry) {
    return amount(dry.value() / (1 - wet), Math.hypot(dry.sigmaOr(0) / (1 - wet), dry.value() * sigma / ((1 - wet) * (1 - wet))));
  }

  private static Amount amount(double value, double sigma) {
    return sigma > 0 ? Amount.plusMinus(value, sigma) : Amount.exact(value);
  }
}
