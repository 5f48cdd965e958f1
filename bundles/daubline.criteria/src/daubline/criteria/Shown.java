package daubline.criteria;

import daubline.base.Quantity;
import daubline.base.Source;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.engine.inference.Setting;

/** The units in which settings are shown, and the tolerance that most criteria have. */
final class Shown {

  static final Unit PERCENT = unit(Quantity.FRACTION, "%");
  static final Unit MM = unit(Quantity.LENGTH, "mm");
  static final Unit DEGREE = unit(Quantity.ANGLE, "°");
  static final Unit DENSITY = unit(Quantity.DENSITY, "g/cm³");
  static final Unit ONE = unit(Quantity.NUMBER, "1");

  private static final String TOLERANCE_MEANING =
      "how far a faithful repeat may differ, one standard deviation: scatter between smelts, wear and erosion, and reading";

  private Shown() {
  }

  private static Unit unit(Quantity quantity, String spelling) {
    return Units.find(quantity, spelling).orElseThrow();
  }

  /** A tolerance by difference. */
  static Setting tolerance(double shown, Unit unit, String practice) {
    return Setting.number(NumberCriterion.TOLERANCE, "Tolerance", shown, unit, TOLERANCE_MEANING, Source.commonPractice(practice));
  }

  /** A tolerance by ratio, in per cent. */
  static Setting relative(double percent, String practice) {
    return Setting.number(NumberCriterion.TOLERANCE, "Tolerance (relative)", percent, PERCENT, TOLERANCE_MEANING, Source.commonPractice(practice));
  }
}
