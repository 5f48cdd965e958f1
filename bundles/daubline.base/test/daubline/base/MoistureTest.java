package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Reckoned by hand: 25 kg of water in 100 kg dry make 125 kg moist, so 0.25 on the dry basis is 25 ÷ 125 = 0.20 on the wet. */
class MoistureTest {

  @Test
  void theTwoBasesSayTheSameWater() {
    Moisture water = Moisture.of(0.25, 0.01, MoistureBasis.DRY);
    assertEquals(0.20, water.wet(), 1e-12);
    assertEquals(0.01 / 1.5625, water.sigma(), 1e-12, "dw = du ÷ (1 + u)²");
    assertEquals(0.25, water.dry(), 1e-12);
    assertEquals(0.01, water.on(MoistureBasis.DRY).sigma(), 1e-12);
    assertEquals(1.5 / 2.5, Moisture.of(1.5, Double.NaN, MoistureBasis.DRY).wet(), 1e-12, "more water than clay is possible on the dry basis");
  }

  @Test
  void massesGoBothWays() {
    Moisture water = Moisture.of(0.20, 0.01, MoistureBasis.WET);
    Amount dry = water.dryMass(Amount.plusMinus(125, 0.5));
    assertEquals(100, dry.value(), 1e-12);
    assertEquals(Math.sqrt(0.4 * 0.4 + 1.25 * 1.25), dry.sigma(), 1e-12, "0.8 × 0.5 kg and 125 kg × 0.01");
    assertEquals(125, water.moistMass(Amount.exact(100)).value(), 1e-12);
    assertEquals(100 * 0.01 / 0.64, water.moistMass(Amount.exact(100)).sigma(), 1e-12);
  }

  @Test
  void whatCannotBeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Moisture.of(1.0, 0, MoistureBasis.WET));
    assertThrows(IllegalArgumentException.class, () -> Moisture.of(-0.1, 0, MoistureBasis.DRY));
    assertEquals(MoistureBasis.DRY, MoistureBasis.find(" Dry ").orElseThrow());
    assertTrue(MoistureBasis.find(null).isEmpty() && MoistureBasis.find("damp").isEmpty());
  }
}
