package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountReaderTest {

  private final Unit cm = Units.find(Quantity.LENGTH, "cm").orElseThrow();

  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "25.5|EXACT|0.255", "25.5 ± 1|PLUS_MINUS|0.255", "25.5(10)|PLUS_MINUS|0.255", "24–27|RANGE|0.255",
      "24-27|RANGE|0.255", "38+|AT_LEAST|0.38", "≥ 38|AT_LEAST|0.38", "<= 40|AT_MOST|0.4", "<0.05|BELOW_LIMIT|0.0005",
      "c. 30|EXACT|0.3", "not preserved|NOT_PRESERVED|NaN", "–|NOT_RECORDED|NaN", "tr|TRACE|NaN"})
  void readsWhatPeopleTypeAndPrint(String text, ValueKind kind, double value) {
    Amount amount = new AmountReader(DecimalSign.POINT).number(text, cm).amount();
    assertEquals(kind, amount.kind());
    assertEquals(value, amount.value(), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"12,5|number.decimal", "1,234.5|number.grouped", "abc|number.text", "27–24|value.bounds", "12.5abc|number.text"})
  void refusesWhatIsNotANumberAndSaysWhy(String text, String code) {
    Typed typed = new AmountReader(DecimalSign.POINT).number(text, cm);
    assertFalse(typed.isRead());
    assertEquals(code, typed.finding().code());
    assertFalse(typed.finding().remedy().isEmpty());
  }
}
