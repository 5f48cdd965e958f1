package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What was done, less what was planned; all values follow from the subtraction. */
class DeviationTest {

  private static final Unit MILLIMETRE = Units.find(Quantity.LENGTH, "mm").orElseThrow();
  private static final Unit FAHRENHEIT = Units.find(Quantity.TEMPERATURE, "°F").orElseThrow();

  private static Amount length(double value) {
    return Amount.exact(MILLIMETRE.toCanonical(value));
  }

  private static Optional<String> printed(Amount planned, Amount actual) {
    return Deviation.of(planned, actual).map(d -> Deviation.printed(d, MILLIMETRE));
  }

  @Test
  void keepsSignUnitAndUncertainty() {
    Amount built = Amount.plusMinus(MILLIMETRE.toCanonical(262), MILLIMETRE.differenceToCanonical(3));
    assertEquals(Optional.of("-23.0 ± 3.0\u00A0mm"), printed(length(285), built));
    assertEquals(Optional.of("+5\u00A0mm"), printed(length(285), length(290)));
    assertEquals(Optional.of("0\u00A0mm"), printed(length(285), length(285)));
  }

  @Test
  void aPlannedRangeIsMissedFromItsNearerEnd() {
    Amount range = Amount.range(MILLIMETRE.toCanonical(280), MILLIMETRE.toCanonical(300));
    assertEquals(Optional.of("0\u00A0mm"), printed(range, length(281)));
    assertEquals(Optional.of("-10\u00A0mm"), printed(range, length(270)));
    assertEquals(Optional.of("+10\u00A0mm"), printed(range, length(310)));
    assertEquals(Optional.of("0\u00A0mm"), printed(Amount.atLeast(MILLIMETRE.toCanonical(280)), length(1000)));
    assertEquals(Optional.of("-30\u00A0mm"), printed(Amount.atLeast(MILLIMETRE.toCanonical(280)), length(250)));
  }

  @Test
  void aDifferenceOfTemperaturesHasNoOffset() {
    Amount planned = Amount.exact(FAHRENHEIT.toCanonical(2000));
    Amount fired = Amount.exact(FAHRENHEIT.toCanonical(2018));
    assertEquals(Optional.of("+18\u00A0°F"), Deviation.of(planned, fired).map(d -> Deviation.printed(d, FAHRENHEIT)));
  }

  @Test
  void whatIsNoNumberHasNoDeviation() {
    assertEquals(Optional.empty(), printed(length(285), Amount.of(ValueKind.NOT_RECORDED)));
    assertEquals(Optional.empty(), printed(Amount.of(ValueKind.NOT_RECORDED), length(285)));
    assertEquals(Optional.empty(), printed(length(285), Amount.atLeast(0.2)));
    assertEquals(Optional.empty(), printed(Amount.category("oval"), Amount.category("round")));
  }
}
