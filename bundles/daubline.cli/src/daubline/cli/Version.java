package daubline.cli;

/** Which version this is. */
public final class Version {

  /** The version of the engines and formats, printed on every export. */
  public static final String NUMBER = "0.1.0";

  private Version() {
  }

  static String line() {
    return "daubline " + NUMBER;
  }
}
