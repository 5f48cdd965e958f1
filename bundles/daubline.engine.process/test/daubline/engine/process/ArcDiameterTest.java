package daubline.engine.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.ArcDiameter.Way;
import daubline.engine.stats.Uncertain;
import org.junit.jupiter.api.Test;

/**
 * Diameters from arcs, reckoned by hand: the formulas are plane geometry (intersecting chords, Euclid III.35), the
 * propagation is JCGM 100:2008, 5.1.2 with derivatives taken by hand, the test of first order JCGM 101:2008, 8.1.
 */
class ArcDiameterTest {

  private static ArcDiameter rise(double c, double uc, double h, double uh) {
    return ArcDiameter.of(Way.CHORD_AND_RISE, Uncertain.normal(c, uc), Uncertain.normal(h, uh), 1);
  }

  @Test
  void chordAndRiseWithHandPropagatedUncertainty() {
    // D = 0.15 + 0.16/0.6 = 0.41667; dD/dc = c/2h = 4/3; dD/dh = 1 - c²/4h² = -7/9; u² = (4/3 · 2)² + (7/9 · 2)² mm²
    ArcDiameter d = rise(0.4, 0.002, 0.15, 0.002);
    assertEquals(0.15 + 0.16 / 0.6, d.diameter(), 1e-12);
    assertEquals(0.002 * 4 / 3, d.parts()[0], 1e-8);
    assertEquals(0.002 * 7 / 9, d.parts()[1], 1e-7);
    assertEquals(0.002 * Math.sqrt(16 / 9.0 + 49 / 81.0), d.sigma(), 1e-7);
    assertTrue(d.isFirstOrder());
    assertEquals(d.diameter() - 1.96 * d.sigma(), d.low(), 2e-4);
    assertEquals(d.diameter() + 1.96 * d.sigma(), d.high(), 2e-4);
  }

  @Test
  void aFlatArcIsSaidToBeLopsidedAndItsEndsFollowFromTheRise() {
    // The rise alone is uncertain: D falls steadily with h, so the ends are D(h ± 1.96 u) exactly.
    ArcDiameter d = rise(0.4, 0, 0.05, 0.003);
    double low = 0.05 + 1.959964 * 0.003;
    double high = 0.05 - 1.959964 * 0.003;
    assertEquals(15 * 0.003, d.sigma(), 1e-5);
    assertEquals(low + 0.04 / low, d.low(), 0.001);
    assertEquals(high + 0.04 / high, d.high(), 0.0015);
    assertFalse(d.isFirstOrder());
  }

  @Test
  void anArcThatMayBeStraightHasNoUpperLimit() {
    ArcDiameter d = rise(0.3, 0.005, 0.004, 0.003);
    assertTrue(Double.isInfinite(d.high()));
    assertTrue(d.low() > 1 && Double.isFinite(d.low()), "low " + d.low());
    assertFalse(d.isFirstOrder());
  }

  @Test
  void aHalfCircleHasTheDiameterOfItsChordByEachWay() {
    assertEquals(0.4, rise(0.4, 0, 0.2, 0).diameter(), 1e-12);
    assertEquals(0.4, ArcDiameter.of(Way.CHORD_AND_ANGLE, Uncertain.normal(0.4, 0), Uncertain.normal(180, 0), 1).diameter(), 1e-12);
    assertEquals(0.4, ArcDiameter.of(Way.LENGTH_AND_ANGLE, Uncertain.normal(0.2 * Math.PI, 0), Uncertain.normal(180, 0), 1).diameter(), 1e-12);
    assertTrue(rise(0.4, 0, 0.2, 0).isFirstOrder(), "nothing is uncertain");
  }

  @Test
  void atTheHalfCircleFirstOrderMissesTheRise() {
    // dD/dh = 0 there, yet an error of the rise either way makes the diameter greater (second order).
    ArcDiameter d = rise(0.4, 0, 0.2, 0.03);
    assertEquals(0, d.sigma(), 1e-5);
    assertFalse(d.isFirstOrder());
    assertTrue(d.low() >= 0.4 && d.high() > 0.405, d.low() + " to " + d.high());
  }

  @Test
  void anglesByHand() {
    // D = c / sin 45° ; dD/dc = √2 ; dD/dθ = -c/2 · cos 45°/sin² 45° per radian = -c/√2
    ArcDiameter d = ArcDiameter.of(Way.CHORD_AND_ANGLE, Uncertain.normal(0.3, 0.003), Uncertain.normal(90, 2), 1);
    assertEquals(0.3 * Math.sqrt(2), d.diameter(), 1e-12);
    assertEquals(Math.hypot(0.003 * Math.sqrt(2), 0.3 / Math.sqrt(2) * Math.toRadians(2)), d.sigma(), 1e-6);
    // D = 2s/θ ; relative variances add
    ArcDiameter l = ArcDiameter.of(Way.LENGTH_AND_ANGLE, Uncertain.normal(0.3, 0.003), Uncertain.rectangular(84, 96), 1);
    assertEquals(0.6 / (Math.PI / 2), l.diameter(), 1e-12);
    assertEquals(l.diameter() * Math.hypot(0.01, 12 / Math.sqrt(12) / 90), l.sigma(), 1e-5);
  }

  @Test
  void whatIsNoArcIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> rise(0.4, 0, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> rise(-0.4, 0, 0.1, 0));
  }
}
