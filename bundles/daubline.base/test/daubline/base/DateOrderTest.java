package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The order of a date changes what is shown, never what is kept. */
class DateOrderTest {

  @ParameterizedTest
  @CsvSource({"2031-08-16,16.08.2031,08/16/2031", "2031-08,08.2031,08/2031", "2031,2031,2031", "2031-08-16T14:05,16.08.2031T14:05,08/16/2031T14:05",
      "AV-2031-08,AV-2031-08,AV-2031-08", "14:35,14:35,14:35"})
  void isShown(String kept, String dayFirst, String monthFirst) {
    assertEquals(kept, DateOrder.YMD.show(kept));
    assertEquals(dayFirst, DateOrder.DMY.show(kept));
    assertEquals(monthFirst, DateOrder.MDY.show(kept));
  }

  @ParameterizedTest
  @EnumSource
  void whatIsShownReadsBack(DateOrder order) {
    for (String kept : new String[] {"2031-08-16", "2031-02-01", "2032-02-29", "2031-08-16T14:05", "2031-08-16 14:05"}) {
      assertEquals(kept, order.keep(order.show(kept)));
      assertEquals(kept, order.keep(kept), "as it is kept it is always understood");
    }
  }

  @Test
  void anotherOrderIsNotGuessedAndNoDayIsMadeUp() {
    assertEquals("08/16/2031", DateOrder.DMY.keep("08/16/2031"), "the sign tells that it is not this order");
    assertEquals("16/08/2031", DateOrder.MDY.keep("16/08/2031"), "there is no month 16");
    assertEquals("31.02.2031", DateOrder.DMY.keep("31.02.2031"));
    assertEquals("16.8.31", DateOrder.DMY.keep("16.8.31"), "no century is guessed");
    assertEquals("2031-08-06", DateOrder.DMY.keep("6.8.2031"));
  }
}
