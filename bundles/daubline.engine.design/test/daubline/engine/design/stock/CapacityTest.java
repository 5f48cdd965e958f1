package daubline.engine.design.stock;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.MoistureBasis;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Checked by sums that a reader can do on paper; the amounts are invented. */
class CapacityTest {

  private static final Timetable.Work WORK = new Timetable.Work(4, 2, 2, 5, 1, 4, 1, 2, 1);

  private static Stock ore() {
    // 200 kg moist at 10 % of the wet mass: 180 dry; roasting takes 15 %: 153; sieving 10 %: 137.7; a tenth held back: 123.93
    return new Stock("ore", "kg", 200, 0.1, MoistureBasis.WET, List.of(new Stock.Loss("roasting", 0.15), new Stock.Loss("sieving", 0.1)),
        0.1, 0, 15, 0, 0);
  }

  @Test
  void usableOreFollowsWaterLossesAndReserve() {
    assertEquals(123.93, ore().usable(), 1e-9);
    Stock dry = new Stock("ore", "kg", 110, 0.1, MoistureBasis.DRY, List.of(), 0, 0, 1, 0, 0);
    assertEquals(100, dry.usable(), 1e-9);
  }

  @Test
  void theTightestConstraintBindsAndTheNextIsNamed() {
    // ore: 123.93/15 = 8 trials; charcoal 400 with 5 % fines and 10 kg once: 370/40 = 9; clay 500: n=6 takes 3 new (300) and 3
    // refits (60) = 360, n=8: 4·100 + 4·20 = 480, n=9: 580
    List<Stock> stocks = List.of(ore(), new Stock("charcoal", "kg", 400, 0, MoistureBasis.WET, List.of(new Stock.Loss("fines", 0.05)), 0,
        10, 40, 0, 0), new Stock("clay", "kg", 500, 0, MoistureBasis.WET, List.of(), 0, 0, 0, 100, 20));
    Capacity capacity = Capacity.of(new Capacity.Request(stocks, 2, WORK, 40, List.of(new Capacity.Ceiling("burning permission", 7)), 0.2, 0.9));
    assertEquals(7, capacity.trials());
    assertEquals("burning permission", capacity.binding().get(0).name());
    assertEquals(8, capacity.next().orElseThrow().trials());
    assertEquals(List.of(7, 8, 8, 9), capacity.limits().stream().filter(l -> !l.name().equals("days")).map(Capacity.Limit::trials).toList());
    assertEquals(5.6, capacity.expected(), 1e-12);
    // seven trials, one in five fails: P(≥ 4) = .9667, P(≥ 5) = .8520 (binomial tables)
    assertEquals(4, capacity.assured());
    assertTrue(capacity.findings().get(0).what().contains("at most 7 trials, because of burning permission"));
  }

  @Test
  void timetableKeepsHandsDryingAndOrder() {
    // team of 4; builds of two people for two days run two at a time: days 0–1; dry 5: burns on days 7 and 8; mending needs a day
    // and one day of drying
    Timetable table = Timetable.of(new int[] {0, 1, 0}, WORK);
    assertEquals(7, table.bars().stream().filter(b -> b.what().equals("burn") && b.trial() == 0).findFirst().orElseThrow().start());
    assertEquals(8, table.bars().stream().filter(b -> b.trial() == 1).findFirst().orElseThrow().start());
    Timetable.Bar mend = table.bars().stream().filter(b -> b.what().equals("mend")).findFirst().orElseThrow();
    assertEquals(9, mend.start(), "day 8 has all hands at the second burn");
    assertEquals(11, table.bars().stream().filter(b -> b.trial() == 2).findFirst().orElseThrow().start());
    assertEquals(12, table.days());
    assertEquals(2 * 2 * 2 + 3 * 4 + 2, table.personDays());
    assertArrayEquals(new int[] {4, 4, 0, 0, 0, 0, 0, 4, 4, 2, 0, 4}, table.people());
  }

  @Test
  void daysCanBind() {
    Capacity capacity = Capacity.of(new Capacity.Request(List.of(Stock.plain("ore", "kg", 1000, 10)), 1, WORK, 8, List.of(), 0, 0.9));
    assertEquals("days", capacity.binding().get(0).name());
    assertEquals(1, capacity.trials());
    assertEquals(1, capacity.assured());
  }

  @Test
  void nothingIsEnoughForNothingAndWrongSharesAreRefused() {
    Capacity none = Capacity.of(new Capacity.Request(List.of(Stock.plain("charcoal", "kg", 5, 40)), 1, WORK, 30, List.of(), 0.1, 0.9));
    assertEquals("capacity.none", none.findings().get(0).code());
    String message = assertThrows(IllegalArgumentException.class, () -> new Stock("ore", "kg", 1, 10, MoistureBasis.WET, List.of(), 0, 0,
        1, 0, 0)).getMessage();
    assertTrue(message.contains("ore") && message.contains("moisture"), message);
    assertThrows(IllegalArgumentException.class, () -> new Timetable.Work(2, 1, 1, 1, 1, 3, 1, 1, 1));
  }
}
