package daubline.record;

import daubline.base.Amount;
import daubline.model.Measure;
import daubline.session.Readings;
import java.util.List;

/**
 * What one filling of a measure weighs, from its weighings.
 *
 * @param mean mean mass, kg; NaN without weighings
 * @param shared standard uncertainty of the mean, kg, which all fillings share; NaN when one weighing says nothing of it
 * @param spread standard deviation of single fillings about the mean, kg; 0 when unknown
 * @param weighings how many weighings
 */
public record UnitMass(double mean, double shared, double spread, int weighings) {

  /**
   * The unit mass of a measure: mean, s/√n and s of its weighings (JCGM 100:2008, 4.2.2 and 4.2.3); a single weighing
   * keeps the uncertainty that was typed with it.
   */
  public static UnitMass of(Measure measure) {
    return of(measure.getWeighings().stream().map(Readings::amount).filter(Amount::isEstimate).toList());
  }

  static UnitMass of(List<Amount> weighings) {
    int n = weighings.size();
    double mean = weighings.stream().mapToDouble(Amount::value).average().orElse(Double.NaN);
    if (n < 2) {
      return new UnitMass(mean, n == 1 ? weighings.get(0).sigma() : Double.NaN, 0, n);
    }
    double squares = weighings.stream().mapToDouble(w -> (w.value() - mean) * (w.value() - mean)).sum();
    double spread = Math.sqrt(squares / (n - 1));
    return new UnitMass(mean, spread / Math.sqrt(n), spread, n);
  }

  /** Whether there is anything to count with. */
  public boolean isKnown() {
    return weighings > 0;
  }

  /**
   * The mass of some fillings: the error of the calibration is the same in each and grows with their number, the error
   * of filling is not and grows with its root (JCGM 100:2008, 5.2.2).
   */
  public Amount times(int count) {
    double sigma = Double.isNaN(shared) ? Double.NaN : Math.hypot(count * shared, Math.sqrt(count) * spread);
    return Double.isNaN(sigma) ? Amount.exact(count * mean) : Amount.plusMinus(count * mean, sigma);
  }
}
