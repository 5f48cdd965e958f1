package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.RecoveredTotal.Part;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When a total is only a lower limit, and how it reads. Masses invented unless said. */
class RecoveredTotalTest {

  private static Part part(double mass, double share) {
    return new Part(Amount.exact(mass), share, false);
  }

  @Test
  void aShareMakesALowerLimit() {
    RecoveredTotal total = RecoveredTotal.sum(List.of(part(10, Double.NaN), part(2.3, Double.NaN)), 0.4, false);
    assertEquals("at least 12.3\u00A0kg (40\u00A0% of it recovered)", total.text());
    assertEquals("12.3\u00A0kg", RecoveredTotal.sum(List.of(part(10, 1), part(2.3, 1)), 0.4, false).text(), "each class says more than the sheet");
    assertEquals("at least 12.3\u00A0kg (25\u00A0% of it recovered)", RecoveredTotal.sum(List.of(part(10, 1), part(2.3, 0.25)), Double.NaN, false).text());
  }

  @Test
  void aDepositOfUnknownShareIsALowerLimitAndAnOwnTrialIsNot() {
    assertEquals("at least 12\u00A0kg (share recovered not stated)", RecoveredTotal.sum(List.of(part(12, Double.NaN)), Double.NaN, false).text());
    assertFalse(RecoveredTotal.sum(List.of(part(12, Double.NaN)), Double.NaN, true).isLeast());
  }

  @Test
  void whatWasNotWeighedMakesALowerLimitAndZeroDoesNot() {
    List<Part> parts = List.of(part(12, 1), new Part(Amount.of(ValueKind.NOT_WEIGHED), Double.NaN, false), part(0, 1), new Part(Amount.of(ValueKind.NOT_RECORDED), Double.NaN, false));
    assertEquals("at least 12\u00A0kg (1 class not weighed)", RecoveredTotal.sum(parts, 1, false).text());
    assertFalse(RecoveredTotal.sum(List.of(new Part(Amount.of(ValueKind.NOT_WEIGHED), 1, false)), 1, true).total().isNumber());
  }

  @Test
  void uncertaintiesAddUpInQuadrature() {
    RecoveredTotal total = RecoveredTotal.sum(List.of(new Part(Amount.plusMinus(10, 0.3), 1, false), new Part(Amount.plusMinus(5, 0.4), 1, false)), 1, false);
    assertEquals(Amount.plusMinus(15, 0.5), total.total());
  }

  @Test
  void whatSaysMoreThanATotalStaysAsItIs() {
    assertEquals(Amount.range(3, 5), RecoveredTotal.stated(Amount.range(3, 5), 0.5, false, false).total());
    assertEquals(Amount.atLeast(3), RecoveredTotal.stated(Amount.atLeast(3), 1, false, false).total());
    assertTrue(RecoveredTotal.stated(Amount.plusMinus(31, 2), 0.5, false, false).isLeast());
    assertEquals("at least 31\u00A0kg (50\u00A0% of it recovered)", RecoveredTotal.stated(Amount.exact(31), 0.5, true, false).text());
    assertEquals("31\u00A0kg", RecoveredTotal.stated(Amount.exact(31), 1, false, false).text());
  }

  /** Who doubts the mass doubts that it was all: the share that goes with it is as doubtful. */
  @Test
  void aReadingOfLowConfidenceIsALowerLimitEvenOfAWholeDeposit() {
    assertEquals("at least 31\u00A0kg (read with low confidence)", RecoveredTotal.stated(Amount.exact(31), 1, false, true).text());
    assertEquals("at least 31\u00A0kg (50\u00A0% of it recovered; read with low confidence)", RecoveredTotal.stated(Amount.exact(31), 0.5, false, true).text());
    RecoveredTotal sum = RecoveredTotal.sum(List.of(part(10, 1), new Part(Amount.exact(2.3), 1, true)), 1, false);
    assertEquals("at least 12.3\u00A0kg (read with low confidence)", sum.text());
    assertEquals("12.3\u00A0kg", RecoveredTotal.sum(List.of(part(12.3, 1), new Part(Amount.of(ValueKind.NOT_RECORDED), 1, true)), 1, false).text(), "a doubt about nothing");
    assertEquals(Amount.range(3, 5), RecoveredTotal.stated(Amount.range(3, 5), 1, false, true).total());
  }
}
