package daubline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Blocks from the clipboard, as spreadsheets of different languages put them there. */
class PastedBlockTest {

  @Test
  void cellsStandBetweenTabsAndLinesEndInAnyWay() {
    assertEquals(List.of(List.of("Erz", "12,5"), List.of("", "13"), List.of("x", "")), PastedBlock.of("Erz\t12,5\r\n\t13\nx\t\r").lines());
    assertEquals(List.of(List.of("one")), PastedBlock.of("one\n\n\n").lines());
    assertEquals(List.of(), PastedBlock.of("").lines());
    assertEquals(5, PastedBlock.of("a\tb\n\nc\td").cells());
  }

  @Test
  void quotationMarksHoldACellTogetherButAreKeptInsideWords() {
    assertEquals(List.of(List.of("slag\nin two lines, with a\ttab", "say \"hot\""), List.of("next")),
        PastedBlock.of("\"slag\nin two lines, with a\ttab\"\t\"say \"\"hot\"\"\"\nnext").lines());
    assertEquals(List.of(List.of("\"Ore\" pile", "12\"", "\"open")), PastedBlock.of("\"Ore\" pile\t12\"\t\"open").lines());
  }

  @Test
  void theDecimalSignIsThatOfAllNumbers() {
    assertEquals(Optional.of(DecimalSign.COMMA), PastedBlock.of("12,5\t408,5 ± 2,25 mm\n≥ 180,75\t1,234").decimal());
    assertEquals(Optional.of(DecimalSign.POINT), PastedBlock.of("12.5\tsee fig. 3,4\n2031\t16.08.2031").decimal());
    assertEquals(Optional.empty(), PastedBlock.of("12,5\t12.5").decimal());
  }

  @Test
  void thousandsOrDecimalsAreAskedAboutOnlyWhenNothingElseTells() {
    assertTrue(PastedBlock.of("1,234\t2,500 kg").isAmbiguous(DecimalSign.POINT));
    assertFalse(PastedBlock.of("1,234\t2,50").isAmbiguous(DecimalSign.POINT));
    assertFalse(PastedBlock.of("1,234").isAmbiguous(DecimalSign.COMMA));
    assertFalse(PastedBlock.of("12\tore").isAmbiguous(DecimalSign.POINT));
  }

  @Test
  void onlyNumbersGetTheOtherSign() {
    PastedBlock block = PastedBlock.of("12,5\t−0,03\t380,5–434,0 mm\t<0,05\t1170,5/930,5\tAbb. 3,4\t16.08.2031\tErz, geröstet\t12,5 L/min\t(2,5)");
    assertEquals(List.of(List.of("12.5", "−0.03", "380.5–434.0 mm", "<0.05", "1170.5/930.5", "Abb. 3,4", "16.08.2031", "Erz, geröstet", "12.5 L/min", "(2.5)")),
        block.with(DecimalSign.POINT).lines());
    assertEquals(block, block.with(DecimalSign.COMMA));
  }
}
