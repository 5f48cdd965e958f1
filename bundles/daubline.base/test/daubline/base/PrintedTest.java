package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrintedTest {

  /**
   * JCGM 100:2008 (GUM) 7.2.6: y = 10.057 62 Ω with u = 27 mΩ is written 10.058 Ω; u = 28.05 kHz is rounded to 28 kHz.
   * 7.2.2: 100.021 47 g with 0.35 mg. The last rows are its rule applied: two digits, value to the same place.
   */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "10.05762|0.027|10.058 ± 0.027", "100.02147|0.00035|100.02147 ± 0.00035", "1234.567|28.05|1235 ± 28", "408.3|26|408 ± 26",
      "408.3|1|408.3 ± 1.0", "408.3|0.1|408.30 ± 0.10", "12345|678|12340 ± 680", "12345|100|12340 ± 100", "-3.14159|0.012|-3.142 ± 0.012",
      "0.000123|0.0000045|0.0001230 ± 0.0000045", "5|0|5"})
  void roundsTheValueToItsUncertainty(double value, double sigma, String printed) {
    assertEquals(printed, Printed.plusMinus(value, sigma));
  }

  @Test
  void aNumberThatIsNotOneIsPrintedAsSuch() {
    assertEquals("–", Printed.plusMinus(Double.NaN, 1));
    assertEquals("12", Printed.plusMinus(12, Double.POSITIVE_INFINITY));
    assertEquals("–", Printed.number(Double.NaN));
    assertEquals("–", Printed.fixed(Double.NaN, 2));
    assertEquals("-∞", Printed.number(Double.NEGATIVE_INFINITY));
  }

  @ParameterizedTest
  @CsvSource({"0.1,0.1", "1234.5678,1235", "0.00012345,0.0001234", "1e12,1E+12", "1e-9,1E-9", "0,0", "-0.5,-0.5", "100,100", "12.50,12.5"})
  void plainNumbersHaveFourDigits(double value, String printed) {
    assertEquals(printed, Printed.number(value));
  }

  @Test
  void everyKindOfValueReadsBackAsItself() {
    Unit mm = Units.find(Quantity.LENGTH, "mm").orElseThrow();
    AmountReader reader = new AmountReader(DecimalSign.POINT);
    for (Amount amount : new Amount[] {Amount.exact(0.255), Amount.plusMinus(0.255, 0.012), Amount.range(0.24, 0.27), Amount.atLeast(0.18),
        Amount.atMost(0.4), Amount.belowLimit(0.001), Amount.of(ValueKind.NOT_PRESERVED), Amount.of(ValueKind.NOT_RECORDED),
        Amount.of(ValueKind.NOT_LOOKED_FOR), Amount.of(ValueKind.NOT_WEIGHED), Amount.of(ValueKind.NOT_ANALYSED), Amount.of(ValueKind.NOT_DETECTED),
        Amount.of(ValueKind.TRACE), Amount.of(ValueKind.ABSENT), Amount.of(ValueKind.PRESENT)}) {
      String printed = Printed.amount(amount, mm);
      Amount again = reader.number(printed, mm).amount();
      assertEquals(amount.kind(), again.kind(), printed);
      assertEquals(amount.value(), again.value(), 1e-12, printed);
    }
  }

  @Test
  void theUnitFollowsANoBreakSpace() {
    Unit mm = Units.find(Quantity.LENGTH, "mm").orElseThrow();
    assertEquals("≥ 180\u00A0mm", Printed.withUnit(Amount.atLeast(0.18), mm));
    assertEquals("not preserved", Printed.withUnit(Amount.of(ValueKind.NOT_PRESERVED), mm));
  }
}
