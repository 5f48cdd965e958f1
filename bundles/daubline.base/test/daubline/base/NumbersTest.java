package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumbersTest {

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "POINT|12.5|12.5", "COMMA|12,5|12.5", "POINT|-0.03|-0.03", "COMMA|-0,03|-0.03", "POINT|−0.03|-0.03", "POINT|–3|-3", "POINT|+4|4",
      "POINT|.5|0.5", "COMMA|,5|0.5", "POINT|1E5|100000", "POINT|2.5e-3|0.0025", "POINT|007|7", "COMMA|1,234|1.234", "POINT|1.234|1.234",
      "POINT| 12.5 |12.5"})
  void readsWholeNumbersInOneWriting(DecimalSign sign, String text, double value) {
    assertEquals(value, Numbers.parse(text, sign).orElseThrow(), 0);
  }

  /**
   * What java.text.NumberFormat does with them, tried on Java 17: in en_US "12,5" is 125, "-0,03" is -3 and "12.5abc" is
   * 12.5; in de_DE "12.5" is 125. None of them says a word.
   */
  @ParameterizedTest
  @CsvSource(delimiter = '|', quoteCharacter = '`', value = {
      "POINT|12,5|number.decimal", "COMMA|12.5|number.decimal", "POINT|-0,03|number.decimal", "POINT|12.5abc|number.text",
      "POINT|1,234.5|number.grouped", "COMMA|1.234,5|number.grouped", "POINT|1 234|number.grouped", "POINT|1'234|number.grouped",
      "POINT|1,234|number.grouped", "POINT|+-5|number.text", "POINT|--5|number.text", "POINT|1e999|number.text", "POINT|NaN|number.text",
      "POINT|Infinity|number.text", "POINT|0x1F|number.text", "POINT|1.|number.text", "POINT|1.2.3|number.text", "POINT|٣|number.text",
      "POINT|5d|number.text", "POINT|``|number.text"})
  void refusesTheRestAndSaysWhy(DecimalSign sign, String text, String code) {
    String typed = text == null ? "" : text;
    assertEquals(Optional.empty(), Numbers.parse(typed, sign));
    Finding finding = Numbers.complaint(typed, sign);
    assertEquals(code, finding.code());
    assertTrue(finding.what().contains("“" + typed + "”"), finding.what());
    assertTrue(finding.remedy().contains("“" + sign.sign() + "”"), finding.remedy());
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "12.5;3;4.25|POINT", "12,5;3;4,25|COMMA", "12,5;1,234|COMMA", "12.5;1,234|POINT", "1;2;3|POINT", "1,234;5|", "12.5;12,5|", "0,123;1|COMMA",
      "1.234;12.34|POINT"})
  void decidesTheDecimalSignPerFile(String cells, DecimalSign sign) {
    List<String> texts = Arrays.asList(cells.split(";"));
    assertEquals(Optional.ofNullable(sign), Numbers.decide(texts));
  }

  @Test
  void knowsWhatCouldBeThousands() {
    assertTrue(Numbers.isAmbiguous("1,234") && Numbers.isAmbiguous("12.500") && Numbers.isAmbiguous("-1.234"));
    assertTrue(!Numbers.isAmbiguous("0,123") && !Numbers.isAmbiguous("1234,5") && !Numbers.isAmbiguous("1,23"));
  }
}
