package daubline.engine.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.stats.Quantiles;
import daubline.engine.stats.RandomStream;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BurnForecastTest {

  private static final Analysis ORE = Analysis.ofPercent(Oxide.FE2O3, 83, Oxide.SIO2, 9, Oxide.AL2O3, 3, Oxide.CAO, 1,
      Oxide.MNO, 1);

  /** A furnace like the published DM-040: 20 cm, 650 L/min, 18 kg of ore, 38 kg of charcoal. */
  private static BurnInputs compact() {
    return BurnInputs.of(Map.of(ShaftParameter.DIAMETER, Spread.exact(.20), ShaftParameter.STACK, Spread.exact(.465),
        ShaftParameter.AIR, Spread.relative(650 / 6e4, .05)), ORE, 18, 34);
  }

  @Test
  void everyQuantityHasSourceUnitAndOrderedInterval() {
    BurnForecast f = BurnForecast.of(compact(), 120, 1);
    for (BurnQuantity q : BurnQuantity.values()) {
      Forecast x = f.get(q);
      assertEquals(q, x.quantity());
      assertTrue(x.low() <= x.median() && x.median() <= x.high(), q + " " + x);
      assertTrue(Double.isFinite(x.central()), q.label());
      assertFalse(q.source().text().isEmpty() || q.unit().isEmpty() || q.standing().words().isEmpty());
    }
    assertEquals(5, f.cautions().size());
  }

  /** Burn rate, duration and recovery of the published smelt lie inside the intervals (7.5 kg/h, 4.5 h, 44.6 %). */
  @Test
  void publishedSmeltLiesInside() {
    BurnForecast f = BurnForecast.of(compact(), 300, 1);
    assertInside(f.get(BurnQuantity.BURN_RATE), 7.5 / 3600);
    assertInside(f.get(BurnQuantity.DURATION), 4.5 * 3600);
    assertInside(f.get(BurnQuantity.RECOVERY), .446);
    assertTrue(f.get(BurnQuantity.HOTTEST).median() > 1000 && f.get(BurnQuantity.HOTTEST).median() < 1400);
  }

  private static void assertInside(Forecast f, double value) {
    assertTrue(f.low() <= value && value <= f.high(), f.toString());
  }

  @Test
  void sameForOneThreadAndMany() throws Exception {
    BurnForecast one;
    try (ForkJoinPool pool = new ForkJoinPool(1)) {
      one = pool.submit(() -> BurnForecast.of(compact(), 40, 9)).get();
    }
    try (ForkJoinPool pool = new ForkJoinPool(4)) {
      assertEquals(one.quantities(), pool.submit(() -> BurnForecast.of(compact(), 40, 9)).get().quantities());
    }
  }

  @Test
  void massesBalanceWithinEveryCourse() {
    RecoveryModel model = RecoveryModel.of(List.of());
    for (int i = 0; i < 50; i++) {
      BurnDraw d = new BurnDraw(compact(), model, new RandomStream(i));
      assertTrue(d.value(BurnQuantity.METAL) <= d.value(BurnQuantity.IRON_BOUND) * 18 * .62);
      assertTrue(d.value(BurnQuantity.SLAG_FEO) > 0 && d.value(BurnQuantity.SLAG_FEO) < 1);
      assertTrue(d.value(BurnQuantity.RECOVERY) <= 1);
    }
  }

  /** Low air is warned of, and with it a bloom is unlikely: 100 L/min in 30 cm gave none (published DM-002). */
  @Test
  void lowAirIsWarnedOf() {
    BurnInputs weak = BurnInputs.of(Map.of(ShaftParameter.DIAMETER, Spread.exact(.30), ShaftParameter.STACK,
        Spread.exact(.25), ShaftParameter.AIR, Spread.exact(100 / 6e4)), ORE, 6, 22);
    BurnForecast f = BurnForecast.of(weak, 100, 2);
    assertTrue(f.findings().stream().anyMatch(x -> x.code().equals("burn.low-air")));
    assertTrue(f.get(BurnQuantity.NO_BLOOM).median() > .8);
    assertEquals(0, f.get(BurnQuantity.BLOOM).median());
  }

  /** A shaft of 2 m with coarse charcoal and many openings draws more than a low one; draught is 4 to 9 Pa a metre by hydrostatics. */
  @Test
  void withoutBellowsTheHotColumnDrawsTheAir() {
    BurnForecast tall = drawn(2, .05);
    BurnForecast low = drawn(.8, .05);
    BurnForecast fine = drawn(2, .015);
    Forecast air = tall.get(BurnQuantity.AIR);
    assertTrue(air.central() > low.get(BurnQuantity.AIR).central() && air.central() > fine.get(BurnQuantity.AIR).central(), air.toString());
    assertTrue(air.low() < air.central() && air.central() < air.high() && air.high() > 1.5 * air.low(), air.toString());
    double pull = tall.get(BurnQuantity.DRAUGHT).central();
    assertTrue(pull > 8 && pull < 18, "draught " + pull);
    // in still air what it pulls is what openings and charge resist
    assertEquals(pull, tall.get(BurnQuantity.INLET_PRESSURE).central() + tall.get(BurnQuantity.BED_PRESSURE).central(), .1 * pull);
    assertEquals(0, tall.get(BurnQuantity.PEOPLE).central());
    assertTrue(air.shares().containsKey("wind, and shape of the pieces"), air.shares().toString());
    assertTrue(tall.findings().stream().anyMatch(x -> x.code().equals("burn.drawn")));
  }

  private static BurnForecast drawn(double stack, double charcoal) {
    return BurnForecast.of(BurnInputs.of(Map.of(ShaftParameter.DIAMETER, Spread.exact(.5), ShaftParameter.STACK, Spread.exact(stack),
        ShaftParameter.CHARCOAL_SIZE, Spread.exact(charcoal), ShaftParameter.LEAK, Spread.even(0, .2)), ORE, 60, 150)
        .withInlets(new BurnInputs.Inlets(.06, 8, .7, false)), 100, 4);
  }

  /** A taller, slower shaft with fine ore gives the gas more time: the iron comes with more carbon; no more than graphite allows. */
  @Test
  void slowAndFineCarburisesMore() {
    Map<ShaftParameter, Spread> slow = new java.util.EnumMap<>(compact().furnace());
    slow.put(ShaftParameter.STACK, Spread.exact(1.2));
    slow.put(ShaftParameter.ORE_SIZE, Spread.exact(.002));
    slow.put(ShaftParameter.AIR, Spread.exact(450 / 6e4));
    Forecast fast = BurnForecast.of(compact(), 100, 1).get(BurnQuantity.CARBON);
    BurnForecast forecast = BurnForecast.of(BurnInputs.of(slow, ORE, 18, 34), 100, 1);
    Forecast much = forecast.get(BurnQuantity.CARBON);
    assertTrue(much.central() > fast.central() && fast.central() >= 0 && much.high() < .025, fast + " " + much);
    assertTrue(forecast.findings().stream().anyMatch(x -> x.code().equals("burn.carbon")));
  }

  @Test
  void shallowHearthChokesFirst() {
    Map<ShaftParameter, Spread> shallow = new java.util.EnumMap<>(compact().furnace());
    shallow.put(ShaftParameter.HEARTH, Spread.exact(.06));
    BurnForecast low = BurnForecast.of(BurnInputs.of(shallow, ORE, 18, 34), 0, 1);
    BurnForecast usual = BurnForecast.of(compact(), 0, 1);
    assertTrue(low.get(BurnQuantity.BLOCKING).central() < usual.get(BurnQuantity.BLOCKING).central());
    assertTrue(low.findings().stream().anyMatch(x -> x.code().equals("burn.choke")), low.findings().toString());
    assertTrue(low.slagRise().getLast().median() > 1);
  }

  /** Prior predictive of the published smelts: median about 26 %, 5–95 % about 7–61 %; then the team's own take over. */
  @Test
  void recoveryStartsFromPublishedSmeltsAndBecomesTheTeams() {
    RecoveryModel prior = RecoveryModel.of(List.of());
    double[] q = quantiles(prior);
    assertEquals(.26, q[1], .02);
    assertEquals(.07, q[0], .02);
    assertEquals(.61, q[2], .06);
    RecoveryModel own = RecoveryModel.of(List.of(.50, .55, .48, .52, .51));
    assertTrue(own.priorWeight() < .2);
    double[] mine = quantiles(own);
    assertTrue(mine[1] > .42 && mine[2] - mine[0] < q[2] - q[0], mine[0] + " " + mine[1] + " " + mine[2]);
  }

  private static double[] quantiles(RecoveryModel model) {
    double[] x = IntStream.range(0, 20_000)
        .mapToDouble(i -> model.draw(new RandomStream(RandomStream.key(3, i)))).toArray();
    return Quantiles.of(x, .05, .5, .95);
  }

  /** Ishigami function a = 7, b = 0.1: first-order indices .3139, .4424, 0 (documentation of SALib and OpenTURNS). */
  @Test
  void sharesOfTheIshigamiFunction() {
    int n = 16384;
    double[][] x = new double[3][n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      RandomStream random = new RandomStream(RandomStream.key(5, i));
      for (double[] column : x) {
        column[i] = Math.PI * (2 * random.uniform() - 1);
      }
      y[i] = Math.sin(x[0][i]) + 7 * Math.pow(Math.sin(x[1][i]), 2) + .1 * Math.pow(x[2][i], 4) * Math.sin(x[0][i]);
    }
    assertEquals(.3139, InputShares.firstOrder(x[0], y), .02);
    assertEquals(.4424, InputShares.firstOrder(x[1], y), .02);
    assertEquals(0, InputShares.firstOrder(x[2], y), .01);
  }

  /** Sobol' g-function, a = 0, 1, 4.5: first-order indices of the first two inputs, exact by integration. */
  @Test
  void sharesOfTheGFunction() {
    double[] a = {0, 1, 4.5};
    int n = 16384;
    double[][] x = new double[3][n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      RandomStream random = new RandomStream(RandomStream.key(6, i));
      y[i] = 1;
      for (int j = 0; j < 3; j++) {
        x[j][i] = random.uniform();
        y[i] *= (Math.abs(4 * x[j][i] - 2) + a[j]) / (1 + a[j]);
      }
    }
    double total = 1;
    for (double v : a) {
      total *= 1 + 1 / (3 * (1 + v) * (1 + v));
    }
    for (int j = 0; j < 3; j++) {
      double exact = 1 / (3 * (1 + a[j]) * (1 + a[j])) / (total - 1);
      assertEquals(exact, InputShares.firstOrder(x[j], y), .02, "input " + j);
    }
  }
}
