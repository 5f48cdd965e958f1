package daubline.analysis.deposit;

/**
 * What of a study the public may see.
 *
 * @param degrees grid in degrees to which places of sensitive sites are coarsened, such as 0.1; 0 to leave them out
 * @param allSites whether all sites are treated as sensitive
 */
public record Disclosure(double degrees, boolean allSites) {

  public Disclosure {
    if (!(degrees >= 0 && degrees <= 10)) {
      throw new IllegalArgumentException("Places are coarsened to a grid of 0 to 10 degrees, not " + degrees);
    }
  }

  /** Sensitive sites to a tenth of a degree, some ten kilometres; the others as they are. */
  public static Disclosure standard() {
    return new Disclosure(0.1, false);
  }
}
