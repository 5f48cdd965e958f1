package daubline.engine.process.shaft;

/**
 * A number that the shaft model needs, with its unit, its usual value and the range in which it is believed to lie.
 *
 * <p>Usual values and ranges are assumptions for small charcoal furnaces unless a source stands in the model's page;
 * material constants of bed and shape are orders of size from textbooks (from memory).
 */
public enum ShaftParameter {
  /** Inside diameter, m. */
  DIAMETER("inside diameter", "m", .25, .10, 1.0),
  /** Height of the stack above the air inlet, m. */
  STACK("stack above the air inlet", "m", .50, .15, 2.5),
  /** Air from the blower, at 20 °C and one atmosphere, m³/s. */
  AIR("air blown", "m³/s", 700 / 60000.0, 40 / 60000.0, 2500 / 60000.0),
  /** Share of the air that never passes the charcoal. */
  LEAK("share of air lost", "1", .25, 0, .7),
  /** CO/(CO + CO2) leaving the burning zone. */
  ZONE_CO("CO share leaving the burning zone", "1", .85, .3, 1),
  /** Bulk density of charcoal, kg/m³. */
  CHARCOAL_DENSITY("bulk density of charcoal", "kg/m³", 230, 120, 400),
  /** Voidage of the bed. */
  VOIDAGE("voidage of the bed", "1", .46, .3, .6),
  /** Size of charcoal, m. */
  CHARCOAL_SIZE("charcoal size", "m", .025, .005, .08),
  /** Sphericity of charcoal. */
  SPHERICITY("sphericity of charcoal", "1", .7, .4, 1),
  /** Fixed carbon of dry charcoal. */
  FIXED_CARBON("fixed carbon of dry charcoal", "1", .80, .5, .97),
  /** Ash of dry charcoal. */
  ASH("ash of dry charcoal", "1", .02, 0, .15),
  /** Moisture of charcoal, wet basis. */
  CHARCOAL_MOISTURE("moisture of charcoal", "1", .06, 0, .35),
  /** Dry ore per dry charcoal in the charge. */
  ORE_RATIO("dry ore per dry charcoal", "1", .9, .05, 3),
  /** Moisture of ore, wet basis. */
  ORE_MOISTURE("moisture of ore", "1", .05, 0, .3),
  /** Iron in dry ore. */
  ORE_IRON("iron in dry ore", "1", .58, .2, .699),
  /** Silica in dry ore. */
  ORE_SILICA("silica in dry ore", "1", .09, 0, .5),
  /** Alumina in dry ore. */
  ORE_ALUMINA("alumina in dry ore", "1", .03, 0, .3),
  /** Size of ore, m. */
  ORE_SIZE("ore size", "m", .006, .0005, .05),
  /** Apparent density of ore pieces, kg/m³. */
  ORE_DENSITY("density of ore pieces", "kg/m³", 3200, 1500, 5200),
  /** Factor on the reduction rate of the ore. */
  REDUCIBILITY("factor on reduction rate", "1", 1, .1, 10),
  /** Gasification rate per carbon at 850 °C and one atmosphere of CO2, 1/s. */
  REACTIVITY("charcoal reactivity at 850 °C", "1/s", 3e-4, 1e-5, 1e-2),
  /** Activation energy of gasification, J/mol. */
  ACTIVATION("activation energy of gasification", "J/mol", 2e5, 1.2e5, 2.7e5),
  /** Heat passing the wall per area and kelvin, W/(m² K). */
  WALL_LOSS("heat loss through the wall", "W/(m² K)", 6, .5, 25),
  /** Conductivity inside charcoal pieces, W/(m K). */
  CHARCOAL_CONDUCTIVITY("conductivity of charcoal", "W/(m K)", .12, .03, .5),
  /** Height of the hearth below the air inlet, m. */
  HEARTH("hearth below the air inlet", "m", .18, .02, .8),
  /** Share of the remaining oxide reduced in the hot zone. */
  HOT_ZONE("reduced in the hot zone", "1", .15, 0, .9),
  /** Share of metal oxidised again before the inlet. */
  REOXIDISED("metal oxidised again", "1", .10, 0, .9),
  /** Lining consumed, kg/s. */
  LINING("lining consumed", "kg/s", .20 / 3600, 0, 5 / 3600.0),
  /** Silica in lining. */
  LINING_SILICA("silica in lining", "1", .65, .2, 1),
  /** Alumina in lining. */
  LINING_ALUMINA("alumina in lining", "1", .18, 0, .5),
  /** Iron in lining. */
  LINING_IRON("iron in lining", "1", .04, 0, .2),
  /** Silica in ash. */
  ASH_SILICA("silica in ash", "1", .10, 0, .8),
  /** Temperature at which ore melts with its gangue, K. */
  ORE_MELTS("ore melts with its gangue at", "K", 1493, 1350, 1650),
  /** Width of that melting, K. */
  MELTING_WIDTH("width of ore melting", "K", 15, 5, 60),
  /** Temperature above which slag runs, K. */
  SLAG_RUNS("slag runs above", "K", 1423, 1330, 1600),
  /** Width of that change, K. */
  RUNNING_WIDTH("width of slag softening", "K", 25, 5, 80),
  /** Ambient temperature, K. */
  AMBIENT("ambient temperature", "K", 293.15, 243, 323),
  /** Rate of drying, 1/s. */
  DRYING("rate of drying", "1/s", .01, .001, .1),
  /** Iron share of the bloom. */
  BLOOM_IRON("iron in the bloom", "1", .80, .4, 1),
  /** Room for slag among the charcoal of the hearth. */
  HEARTH_ROOM("room for slag in the hearth", "1", .45, .2, 1),
  /** Water vapour in the air, mol per mol of dry air; 0.023 is air of 20 °C full of it. */
  VAPOUR("water vapour per dry air", "1", 0, 0, .1);

  private final String label;
  private final String unit;
  private final double usual;
  private final double low;
  private final double high;

  ShaftParameter(String label, String unit, double usual, double low, double high) {
    this.label = label;
    this.unit = unit;
    this.usual = usual;
    this.low = low;
    this.high = high;
  }

  /** The name to print. */
  public String label() {
    return label;
  }

  /** Its unit. */
  public String unit() {
    return unit;
  }

  /** The value used when nothing else is known. */
  public double usual() {
    return usual;
  }

  /** Smallest value that the model accepts. */
  public double low() {
    return low;
  }

  /** Largest value that the model accepts. */
  public double high() {
    return high;
  }
}
