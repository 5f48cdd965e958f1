package daubline.engine.process;

import daubline.engine.process.shaft.ShaftParameter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The measurement that would narrow one figure of a forecast most: the one whose inputs together explain the largest
 * share of its variance. Source: variance reduction by fixing inputs, first-order Sobol' indices; that a measurement
 * fixes its inputs wholly is an upper bound on its worth.
 *
 * @param about the figure
 * @param what what to measure
 * @param share largest share of the figure's variance that it can take away, 0 to 1
 */
public record NextMeasurement(BurnQuantity about, String what, double share) {

  private static final double WORTHWHILE = .1;
  private static final List<BurnQuantity> ASKED = List.of(BurnQuantity.BLOCKING, BurnQuantity.BLOOM, BurnQuantity.HOTTEST, BurnQuantity.DURATION);

  /** What can be measured, and which inputs it fixes. */
  private enum Measurement {
    LOG("log three charges with the clock", BurnDraw.Guess.BURN_RATE.label()),
    AIR("measure the air at the inlet, leaks included", ShaftParameter.AIR.label(), ShaftParameter.LEAK.label(),
        BurnDraw.Guess.DRAUGHT.label()),
    GAS("measure CO and CO2 at the mouth", ShaftParameter.ZONE_CO.label(), ShaftParameter.REACTIVITY.label()),
    WALL("measure the temperature at two heights of the shaft", ShaftParameter.WALL_LOSS.label(), ShaftParameter.CHARCOAL_CONDUCTIVITY.label()),
    SLAG("weigh all slag, and note when it reaches the inlet", ShaftParameter.LINING.label(), ShaftParameter.HEARTH_ROOM.label()),
    ORE("have the ore analysed as charged", BurnDraw.Guess.ORE_IRON.label(), BurnDraw.Guess.ORE_GANGUE.label(), ShaftParameter.ORE_MOISTURE.label()),
    CHARCOAL("weigh a full bucket of charcoal, and dry a handful", ShaftParameter.CHARCOAL_DENSITY.label(), ShaftParameter.CHARCOAL_MOISTURE.label(),
        ShaftParameter.FIXED_CARBON.label(), ShaftParameter.ASH.label()),
    SIEVE("sieve ore and charcoal as charged", ShaftParameter.ORE_SIZE.label(), ShaftParameter.CHARCOAL_SIZE.label(), ShaftParameter.VOIDAGE.label()),
    SMELTS("weigh ore, bloom and slag of smelts of your own", BurnDraw.Guess.RECOVERY.label(), ShaftParameter.BLOOM_IRON.label()),
    SCALES("weigh ore and charcoal to one per cent", BurnDraw.Guess.ORE_MASS.label(), BurnDraw.Guess.CHARCOAL_MASS.label());

    private final String words;
    private final List<String> inputs;

    Measurement(String words, String... inputs) {
      this.words = words;
      this.inputs = List.of(inputs);
    }

    double worth(Forecast forecast) {
      return Math.min(1, inputs.stream().mapToDouble(i -> forecast.shares().getOrDefault(i, 0.0)).sum());
    }
  }

  /** The best measurement for each figure that people ask about; figures that no measurement helps are left out. */
  static List<NextMeasurement> of(List<Forecast> forecasts, BurnInputs in) {
    List<NextMeasurement> all = new ArrayList<>();
    for (BurnQuantity quantity : ASKED) {
      Forecast forecast = forecasts.get(quantity.ordinal());
      best(forecast, in).ifPresent(m -> all.add(new NextMeasurement(quantity, m.words, m.worth(forecast))));
    }
    return List.copyOf(all);
  }

  private static Optional<Measurement> best(Forecast forecast, BurnInputs in) {
    return java.util.Arrays.stream(Measurement.values()).filter(m -> m != Measurement.LOG || in.burnRate().isEmpty())
        .max(Comparator.comparingDouble(m -> m.worth(forecast))).filter(m -> m.worth(forecast) >= WORTHWHILE);
  }

  /** In one sentence. */
  public String sentence() {
    return String.format(java.util.Locale.ROOT, "%s: %s (up to %.0f %% of its spread)", about.label(), what, 100 * share);
  }
}
