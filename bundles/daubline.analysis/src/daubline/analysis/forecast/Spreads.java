package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.ValueKind;
import daubline.engine.process.Spread;

/** Spreads of values of a study. */
final class Spreads {

  /** Where a stated value has no uncertainty (common practice, no source). */
  private static final double USUAL_DOUBT = 0.03;

  private Spreads() {
  }

  /** The spread of an amount: even over a range, otherwise known to its uncertainty, or to a few per cent. */
  static Spread of(Amount amount) {
    if (amount.kind() == ValueKind.RANGE && amount.low() < amount.high()) {
      return Spread.even(amount.low(), amount.high());
    }
    double sigma = amount.sigmaOr(Math.abs(amount.value()) * USUAL_DOUBT);
    return amount.value() > 0 ? Spread.relative(amount.value(), Math.min(1, sigma / amount.value())) : Spread.exact(amount.value());
  }
}
