package daubline.base;

/** Which version of the tool this is; printed on every export. */
public final class Version {

  /** The version number, the same as the bundles'. */
  public static final String NUMBER = "0.1.0";

  private Version() {
  }

  /** Name and number in one line. */
  public static String line() {
    return "daubline " + NUMBER;
  }
}
