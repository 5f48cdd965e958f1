package daubline.engine.process.shaft;

import static daubline.engine.process.shaft.ShaftParameter.*;

import daubline.engine.stats.RandomStream;

/** Plausible furnaces drawn from a seed, for properties that must hold of every one. */
final class RandomFurnaces {

  private static final ShaftParameter[] EVEN = {DIAMETER, STACK, AIR, ZONE_CO, CHARCOAL_DENSITY, VOIDAGE, CHARCOAL_SIZE,
      FIXED_CARBON, CHARCOAL_MOISTURE, ORE_MOISTURE, LEAK, WALL_LOSS, ORE_SILICA, ORE_ALUMINA, HOT_ZONE, REOXIDISED,
      HEARTH, ORE_IRON, ORE_RATIO};
  private static final double[][] RANGES = {{.2, .35}, {.3, 1}, {80 / 6e4, 1200 / 6e4}, {.3, 1}, {180, 280}, {.4, .52},
      {.018, .035}, {.72, .88}, {.03, .1}, {0, .12}, {.05, .5}, {3, 11}, {.05, .15}, {.015, .05}, {0, .35}, {0, .3},
      {.13, .2}, {.5, .62}, {.3, 1.4}};

  private RandomFurnaces() {
  }

  static ShaftInputs draw(int index) {
    RandomStream random = new RandomStream(RandomStream.key(20, index));
    ShaftInputs in = ShaftInputs.usual();
    for (int i = 0; i < EVEN.length; i++) {
      in = in.with(EVEN[i], RANGES[i][0] + random.uniform() * (RANGES[i][1] - RANGES[i][0]));
    }
    return in.with(REACTIVITY, 1e-4 * Math.pow(10, random.uniform()))
        .with(ORE_SIZE, .003 * Math.pow(10 / 3.0, random.uniform()))
        .with(REDUCIBILITY, Math.clamp(Math.exp(.69 * random.normal()), .1, 10));
  }
}
