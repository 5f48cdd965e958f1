package daubline.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.slag.Liquidus;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The lines of equal liquidus in the triangle. */
class LiquidusFieldTest {

  @Test
  void everyPointOfALineHasItsTemperature() {
    for (LiquidusField.Contour contour : LiquidusField.contours()) {
      for (OxideShares p : contour.points()) {
        Liquidus there = Liquidus.of(new Analysis(Map.of(Oxide.FEO, p.feo(), Oxide.SIO2, p.sio2(), Oxide.AL2O3, Math.max(0, p.al2o3()))));
        assertEquals(contour.celsius(), there.temperature() - 273.15, 12, p.toString());
        assertTrue(there.sigma() <= LiquidusField.WORST_SIGMA * 1.1, p.toString());
      }
    }
  }

  /** On the side without alumina 1200 °C is met beside wüstite, on both sides of fayalite, and beside silica (Bowen and Schairer 1932, from memory). */
  @Test
  void fayaliteStandsBetweenItsTwoEutectics() {
    List<LiquidusField.Contour> at1200 = LiquidusField.contours().stream().filter(c -> c.celsius() == 1200).toList();
    assertFalse(at1200.isEmpty());
    List<Double> silica = at1200.stream().flatMap(c -> c.points().stream()).filter(p -> p.al2o3() < 1e-6).map(OxideShares::sio2).sorted().toList();
    assertEquals(4, silica.size(), silica.toString());
    assertTrue(silica.get(1) < 0.2949 && silica.get(2) > 0.2949, silica.toString());
  }
}
