package daubline.engine.process.thermo;

import java.util.List;

/**
 * Molar heat capacity, enthalpy and entropy of one substance over temperature, made of pieces that each hold between
 * two temperatures. Beyond the outer limits the nearest piece is carried on.
 */
public final class HeatFunction {

  private final List<Piece> pieces;

  HeatFunction(Piece... pieces) {
    this.pieces = List.of(pieces);
  }

  /** One formula between two temperatures. */
  interface Piece {
    /** Lower limit, K. */
    double low();

    /** Upper limit, K. */
    double high();

    /** Heat capacity, J/(mol K). */
    double cp(double t);

    /** Enthalpy from the elements at 298.15 K, J/mol. */
    double enthalpy(double t);

    /** Entropy at 1 bar, J/(mol K). */
    double entropy(double t);
  }

  private Piece at(double t) {
    for (Piece piece : pieces) {
      if (t <= piece.high()) {
        return piece;
      }
    }
    return pieces.getLast();
  }

  /** Lowest temperature for which the formula was fitted, K. */
  public double low() {
    return pieces.getFirst().low();
  }

  /** Highest temperature for which the formula was fitted, K. */
  public double high() {
    return pieces.getLast().high();
  }

  /** Heat capacity at constant pressure, J/(mol K), at t in K. */
  public double cp(double t) {
    return at(t).cp(t);
  }

  /** Enthalpy counted from the elements at 298.15 K, J/mol, at t in K. */
  public double enthalpy(double t) {
    return at(t).enthalpy(t);
  }

  /** Standard entropy at 1 bar, J/(mol K), at t in K. */
  public double entropy(double t) {
    return at(t).entropy(t);
  }

  /** Gibbs energy H - T S, J/mol, at t in K. */
  public double gibbs(double t) {
    Piece piece = at(t);
    return piece.enthalpy(t) - t * piece.entropy(t);
  }

  /**
   * Shomate form, t = T/1000: cp = a + b t + c t² + d t³ + e/t².
   *
   * <p>Source: NIST Chemistry WebBook, SRD 69, after M. W. Chase, NIST-JANAF Thermochemical Tables, 4th ed. 1998.
   */
  record Shomate(double low, double high, double a, double b, double c, double d, double e, double f, double g)
      implements Piece {

    @Override
    public double cp(double temperature) {
      double t = temperature / 1000;
      return a + t * (b + t * (c + t * d)) + e / (t * t);
    }

    @Override
    public double enthalpy(double temperature) {
      double t = temperature / 1000;
      return 1000 * (t * (a + t * (b / 2 + t * (c / 3 + t * d / 4))) - e / t + f);
    }

    @Override
    public double entropy(double temperature) {
      double t = temperature / 1000;
      return a * Math.log(t) + t * (b + t * (c / 2 + t * d / 3)) - e / (2 * t * t) + g;
    }
  }

  /**
   * The nine-constant form of NASA: cp/R = a1/T² + a2/T + a3 + a4 T + a5 T² + a6 T³ + a7 T⁴.
   *
   * <p>Source: B. J. McBride, M. J. Zehe, S. Gordon, NASA/TP-2002-211556.
   */
  record Nasa9(double low, double high, double a1, double a2, double a3, double a4, double a5, double a6, double a7,
      double b1, double b2) implements Piece {

    @Override
    public double cp(double t) {
      return Constants.R * (a1 / (t * t) + a2 / t + a3 + t * (a4 + t * (a5 + t * (a6 + t * a7))));
    }

    @Override
    public double enthalpy(double t) {
      return Constants.R * (-a1 / t + a2 * Math.log(t)
          + t * (a3 + t * (a4 / 2 + t * (a5 / 3 + t * (a6 / 4 + t * a7 / 5)))) + b1);
    }

    @Override
    public double entropy(double t) {
      return Constants.R * (-a1 / (2 * t * t) - a2 / t + a3 * Math.log(t)
          + t * (a4 + t * (a5 / 2 + t * (a6 / 3 + t * a7 / 4))) + b2);
    }
  }
}
