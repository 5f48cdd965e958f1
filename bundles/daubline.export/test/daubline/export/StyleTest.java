package daubline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import daubline.analysis.record.PersonData;
import daubline.base.Amount;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Print styles: JCGM 100:2008, 7.2.6 for digits; signs after the SI Brochure, 9th edition, 5.4. */
class StyleTest {

  private static final Unit MM = Units.find(Quantity.LENGTH, "mm").orElseThrow();

  private static Cell mm(Amount amount) {
    return Cell.amount(amount, MM, null);
  }

  @Test
  void digitsFollowTheUncertainty() {
    assertEquals("408 ± 26", Style.JOURNAL.print(mm(Amount.plusMinus(0.40837, 0.0258))));
    assertEquals("408.4 ± 2.6", Style.JOURNAL.print(mm(Amount.plusMinus(0.40837, 0.00258))));
  }

  @Test
  void theMinusIsAMinusAndWordsKeepTheirHyphens() {
    assertEquals("−12.5", Style.JOURNAL.print(mm(Amount.exact(-0.0125))));
    assertEquals("−3–4", Style.JOURNAL.print(mm(Amount.range(-0.003, 0.004))));
    assertEquals("03-04", Style.JOURNAL.print(Cell.text("03-04")));
    assertEquals("-12.5", Style.PLAIN.print(mm(Amount.exact(-0.0125))));
  }

  @Test
  void aDecimalCommaIsPutIntoNumbersOnly() {
    Style comma = new Style(Style.Preset.JOURNAL, true);
    assertEquals("−12,5 ± 1,2", comma.print(mm(Amount.plusMinus(-0.0125, 0.0012))));
    assertEquals("fig. 9.2", comma.print(Cell.text("fig. 9.2")));
  }

  @Test
  void theKindsOfMissingStayDifferentAndTheLegendNamesThem() {
    Table table = new Table("t", "T", "", List.of(Column.number("a", "A", "")), List.of(List.of(Cell.missing(ValueKind.NOT_ANALYSED)),
        List.of(Cell.missing(ValueKind.NOT_RECORDED)), List.of(mm(Amount.belowLimit(0.00005))), List.of(Cell.missing(ValueKind.NOT_DETECTED)),
        List.of(mm(Amount.exact(0)))), List.of());
    assertEquals(List.of("n.a.", "–", "< 0.05", "n.d.", "0"), table.cells(0).stream().map(Style.JOURNAL::print).toList());
    assertEquals(List.of("– not recorded", "n.a. not analysed", "n.d. not detected"), Style.JOURNAL.legend(table));
    assertEquals(List.of("not analysed", "not recorded", "below 0.05", "not detected", "0"), table.cells(0).stream().map(Style.ACCESSIBLE::print).toList());
  }

  @Test
  void theAccessibleStyleSpeaks() {
    assertEquals("408 plus or minus 26", Style.ACCESSIBLE.print(mm(Amount.plusMinus(0.408, 0.026))));
    assertEquals("at least 180", Style.ACCESSIBLE.print(mm(Amount.atLeast(0.18))));
    assertEquals("380 to 434", Style.ACCESSIBLE.print(mm(Amount.range(0.38, 0.434))));
  }

  @Test
  void onlyNotesThatACellRefersToAreNumbered() {
    Table table = new Table("t", "T", "", List.of(Column.text("a", "A")), List.of(List.of(Cell.text("x").noted(2))), List.of("All.", "One."));
    assertEquals(List.of("All.", "[2] One."), Style.PLAIN.notes(table));
    assertEquals("x [2]", Style.PLAIN.printNoted(table.rows().get(0).get(0)));
  }

  @Test
  void nobodyIsNamedWithoutConsent() {
    Discretion discretion = new Discretion(List.of(new PersonData("a", "Ann Holm", "", -1, true, ""), new PersonData("b", "Bo", "", -1, false, ""),
        new PersonData("c", "Bo Lind", "", -1, false, "")));
    assertEquals("Ann Holm, Person 3 and Person 2; Bologna", discretion.text("Ann Holm, Bo Lind and BO; Bologna"));
    Table table = new Table("t", "T", "", List.of(Column.text("a", "A")), List.of(List.of(Cell.text("by Bo"))), List.of("Bo says"));
    assertFalse(discretion.table(table).toString().contains("Bo"));
  }
}
