package daubline.engine.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.ShaftParameter;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class OwnSkillTest {

  private static final BurnInputs PLAN = BurnInputs.of(Map.of(ShaftParameter.DIAMETER, Spread.exact(.20), ShaftParameter.STACK, Spread.exact(.465),
      ShaftParameter.AIR, Spread.relative(650 / 6e4, .05)), Analysis.ofPercent(Oxide.FE2O3, 83, Oxide.SIO2, 9, Oxide.AL2O3, 3), 18, 34);

  @Test
  void aSteadyTeamBeatsTheTradeAndAScatteredOneDoesNot() {
    assertTrue(OwnSkill.of(List.of(.50, .52, .49, .51)).orElseThrow().isBetter());
    OwnSkill scattered = OwnSkill.of(List.of(.10, .43, .15, .40, .26)).orElseThrow();
    assertFalse(scattered.isBetter());
    assertTrue(scattered.sentence().contains("no better than the trade's experience"));
  }

  @Test
  void belowThreeSmeltsNothingIsSaid() {
    assertTrue(OwnSkill.of(List.of(.3, .4)).isEmpty());
    assertTrue(OwnSkill.of(List.of(.3, .4, 0.0)).isEmpty());
  }

  @Test
  void theNextMeasurementIsTheOneWithTheLargestShare() {
    BurnForecast guessed = BurnForecast.of(PLAN, 300, 5);
    assertTrue(guessed.next().stream().anyMatch(n -> n.about() == BurnQuantity.DURATION && n.what().contains("clock")), guessed.next().toString());
    BurnForecast logged = BurnForecast.of(PLAN.withBurnRate(Spread.relative(6.0 / 3600, .05)), 300, 5);
    assertTrue(logged.next().stream().noneMatch(n -> n.what().contains("clock")), logged.next().toString());
    assertEquals(6.0, logged.get(BurnQuantity.BURN_RATE).median() * 3600, .2);
    assertTrue(width(logged, BurnQuantity.DURATION) < .5 * width(guessed, BurnQuantity.DURATION));
  }

  private static double width(BurnForecast f, BurnQuantity q) {
    return f.get(q).high() - f.get(q).low();
  }

  /** A pit gives room: the time until the inlet chokes grows by its volume over that of the hearth, exactly. */
  @Test
  void aPitGivesRoomInProportion() {
    double hearth = Math.PI * .01 * ShaftParameter.HEARTH.usual();
    double without = BurnForecast.of(PLAN, 0, 1).get(BurnQuantity.BLOCKING).central();
    double with = BurnForecast.of(PLAN.withSlagRoom(new BurnInputs.SlagRoom(hearth, false)), 0, 1).get(BurnQuantity.BLOCKING).central();
    assertEquals(2, with / without, 1e-9);
  }

  @Test
  void tappingTurnsTheWarningIntoAReminder() {
    BurnForecast tapped = BurnForecast.of(PLAN.withSlagRoom(new BurnInputs.SlagRoom(0, true)), 0, 1);
    assertTrue(tapped.findings().stream().noneMatch(f -> f.code().equals("burn.choke")));
    assertTrue(tapped.findings().stream().anyMatch(f -> f.code().equals("burn.tap")), tapped.findings().toString());
  }
}
