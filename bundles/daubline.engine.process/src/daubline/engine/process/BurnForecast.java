package daubline.engine.process;

import daubline.base.Finding;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.stats.Quantiles;
import daubline.engine.stats.RandomStream;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What can be said of a burn before it is lit. Same inputs, draws and seed give the same forecast on any number of
 * threads. Propagation of distributions after JCGM 101:2008.
 *
 * @param quantities every quantity, in the order of {@link BurnQuantity}
 * @param shaft the shaft with every input at its median, for the drawn section
 * @param oreClasses how far each size class of the ore is reduced at the air inlet; empty without a shaft
 * @param slagRise level of the slag against time
 * @param recovery the model behind yield, with how much of it is still the published smelts
 * @param next what to measure next so that the forecast narrows most
 * @param refused share of the draws whose shaft was refused
 * @param findings warnings in plain words
 * @param cautions safety notes that belong to the figures
 */
public record BurnForecast(List<Forecast> quantities, ShaftSolution shaft, List<OreClass> oreClasses, List<Rise> slagRise,
    RecoveryModel recovery, List<NextMeasurement> next, double refused, List<Finding> findings, List<String> cautions) {

  /** Draws that give steady intervals at little cost. */
  public static final int USUAL_DRAWS = 300;
  private static final double LEAST_SHARE = .02;
  private static final int RISE_POINTS = 25;

  /**
   * Slag level at one time, as a share of the way from hearth bottom to air inlet; one is blocked.
   *
   * @param time from the first slag, s
   * @param median middle level
   * @param low level with little slag (5 %)
   * @param high level with much slag (95 %)
   */
  public record Rise(double time, double median, double low, double high) {
  }

  /**
   * One size class of the ore, as it comes to the air inlet; NaN for an interval that nothing was drawn for.
   *
   * @param size size of its pieces, m
   * @param share share of the ore's mass
   * @param reduced share of the oxygen of haematite that is gone, in the middle course
   * @param low 5 % point of it
   * @param high 95 % point of it
   */
  public record OreClass(double size, double share, double reduced, double low, double high) {
  }

  /**
   * Forecasts a burn.
   *
   * @param inputs what is planned
   * @param draws courses to draw; 0 gives the middle course alone, quickly, with no intervals (NaN)
   * @param seed any number; the same gives the same
   */
  public static BurnForecast of(BurnInputs inputs, int draws, long seed) {
    RecoveryModel model = RecoveryModel.of(inputs.ownRecoveries());
    BurnDraw middle = new BurnDraw(inputs, model, null);
    long key = RandomStream.key(seed, "burn");
    List<BurnDraw> courses = IntStream.range(0, draws).parallel()
        .mapToObj(i -> new BurnDraw(inputs, model, new RandomStream(RandomStream.key(key, i)))).toList();
    List<Forecast> quantities = Stream.of(BurnQuantity.values())
        .map(q -> forecast(q, middle, courses, inputs)).toList();
    long refused = courses.stream().filter(d -> !d.solution.converged()).count();
    double share = draws > 0 ? (double) refused / draws : middle.solution.converged() ? 0 : 1;
    return new BurnForecast(quantities, middle.solution, oreClasses(middle, courses), rise(quantities), model,
        NextMeasurement.of(quantities, inputs), share,
        BurnWarnings.of(inputs, middle, quantities, share, model), Cautions.all());
  }

  /** The forecast of one quantity. */
  public Forecast get(BurnQuantity quantity) {
    return quantities.get(quantity.ordinal());
  }

  private static Forecast forecast(BurnQuantity q, BurnDraw middle, List<BurnDraw> courses, BurnInputs in) {
    double[] y = courses.stream().mapToDouble(d -> d.value(q)).toArray();
    double[] known = Arrays.stream(y).filter(v -> !Double.isNaN(v)).toArray();
    if (known.length == 0) {
      return new Forecast(q, middle.value(q), Double.NaN, Double.NaN, Double.NaN, Map.of());
    }
    double[] points = Quantiles.of(known, .05, .5, .95);
    return new Forecast(q, middle.value(q), points[1], points[0], points[2], shares(y, courses, in));
  }

  private static List<OreClass> oreClasses(BurnDraw middle, List<BurnDraw> courses) {
    List<ShaftSolution.OreClass> classes = middle.solution.classes();
    return IntStream.range(0, classes.size()).mapToObj(i -> {
      double[] drawn = courses.stream().filter(d -> d.solution.converged()).mapToDouble(d -> d.solution.classes().get(i).reduced()).toArray();
      double[] ends = drawn.length == 0 ? new double[] {Double.NaN, Double.NaN} : Quantiles.of(drawn, .05, .95);
      return new OreClass(classes.get(i).size(), classes.get(i).share(), classes.get(i).reduced(), ends[0], ends[1]);
    }).toList();
  }

  private static Map<String, Double> shares(double[] y, List<BurnDraw> courses, BurnInputs in) {
    Map<String, Double> all = new LinkedHashMap<>();
    for (ShaftParameter p : ShaftParameter.values()) {
      if (in.spread(p).shape() != Spread.Shape.EXACT) {
        all.put(p.label(), InputShares.firstOrder(courses.stream().mapToDouble(d -> d.shaft.get(p)).toArray(), y));
      }
    }
    for (BurnDraw.Guess guess : BurnDraw.Guess.values()) {
      double[] x = courses.stream().mapToDouble(d -> d.guess(guess)).toArray();
      if (Arrays.stream(x).noneMatch(Double::isNaN)) {
        all.put(guess.label(), InputShares.firstOrder(x, y));
      }
    }
    Map<String, Double> sorted = new LinkedHashMap<>();
    double least = Math.max(LEAST_SHARE, InputShares.chance(y.length));
    all.entrySet().stream().filter(e -> e.getValue() >= least)
        .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder())).forEach(e -> sorted.put(e.getKey(), e.getValue()));
    return java.util.Collections.unmodifiableMap(sorted);
  }

  /** Slag comes evenly, so a level is time by blocking time. */
  private static List<Rise> rise(List<Forecast> quantities) {
    Forecast blocking = quantities.get(BurnQuantity.BLOCKING.ordinal());
    Forecast duration = quantities.get(BurnQuantity.DURATION.ordinal());
    return IntStream.rangeClosed(0, RISE_POINTS).mapToObj(i -> {
      double time = duration.central() * i / RISE_POINTS;
      return new Rise(time, time / blocking.central(), time / blocking.high(), time / blocking.low());
    }).toList();
  }
}
