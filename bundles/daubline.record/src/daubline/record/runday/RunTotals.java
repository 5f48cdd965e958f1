package daubline.record.runday;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Stage;
import daubline.base.Units;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.LogEntry;
import daubline.model.Measure;
import daubline.model.Trial;
import daubline.record.UnitMass;
import daubline.session.Readings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * What was charged so far and what follows from it.
 *
 * @param ore ore charged, kg
 * @param fuel charcoal charged, kg, with that of the preheat
 * @param charges number of charges that hold ore
 * @param lastCharge seconds since the fire was lit at the last charge; NaN before the first
 * @param interval usual time between the last charges, s; NaN before the second
 * @param level last level of the burden below the rim, m; NaN when never measured
 * @param descent how fast the burden sinks, m/s: the mean of the last three sinkings between two levels with no charge
 *     between them; NaN when there is none
 * @param finish seconds since the fire was lit at which the planned ore is in, at the pace of the last charges; NaN when
 *     no ore total is planned
 */
public record RunTotals(Amount ore, Amount fuel, int charges, double lastCharge, double interval, double level, double descent, double finish) {

  private static final int LAST = 5;
  private static final int SINKINGS = 3;

  /** The totals of a log. */
  public static RunTotals of(Trial trial) {
    List<LogEntry> timed = trial.getLog().stream().filter(e -> e.getElapsed() != null).sorted(java.util.Comparator.comparing(LogEntry::getElapsed)).toList();
    List<Charge> fed = timed.stream().filter(e -> e instanceof Charge c && holds(c, Material.ORE)).map(Charge.class::cast).toList();
    double last = timed.stream().filter(e -> e instanceof Charge c && !c.getItems().isEmpty()).mapToDouble(LogEntry::getElapsed).max().orElse(Double.NaN);
    Amount ore = sum(trial, Material.ORE);
    double interval = interval(fed);
    return new RunTotals(ore, sum(trial, Material.CHARCOAL), fed.size(), last, interval, level(timed), descent(timed), finish(trial, fed, ore, interval));
  }

  private static boolean holds(Charge charge, Material material) {
    return charge.getItems().stream().anyMatch(i -> material(i) == material && Readings.amount(i).isNumber());
  }

  private static Material material(ChargeItem item) {
    return item.getMaterial() != null ? item.getMaterial() : item.getLot() == null ? null : item.getLot().getMaterial();
  }

  /**
   * The sum of one material. Weighings are independent of each other; fillings of one measure share the error of its
   * calibration (JCGM 100:2008, 5.2.2).
   */
  private static Amount sum(Trial trial, Material material) {
    double sum = 0;
    double squares = 0;
    Map<Measure, Integer> counts = new HashMap<>();
    for (LogEntry entry : trial.getLog()) {
      for (ChargeItem item : entry instanceof Charge c ? c.getItems() : List.<ChargeItem>of()) {
        Amount mass = Readings.amount(item);
        if (material(item) == material && mass.isNumber()) {
          sum += mass.value();
          if (item.getMeasure() != null && item.getCount() != null) {
            counts.merge(item.getMeasure(), item.getCount(), Integer::sum);
          } else {
            squares += mass.sigmaOr(0) * mass.sigmaOr(0);
          }
        }
      }
    }
    for (Map.Entry<Measure, Integer> counted : counts.entrySet()) {
      double sigma = UnitMass.of(counted.getKey()).times(counted.getValue()).sigmaOr(0);
      squares += sigma * sigma;
    }
    return squares > 0 ? Amount.plusMinus(sum, Math.sqrt(squares)) : Amount.exact(sum);
  }

  private static double interval(List<Charge> fed) {
    List<Charge> last = fed.subList(Math.max(0, fed.size() - LAST), fed.size());
    return last.size() < 2 ? Double.NaN : (last.get(last.size() - 1).getElapsed() - last.get(0).getElapsed()) / (last.size() - 1);
  }

  private static OptionalDouble levelOf(LogEntry entry) {
    return entry.getValues().stream().filter(r -> "burden_level".equals(r.getVariable())).map(Readings::amount).filter(Amount::isNumber).mapToDouble(Amount::value).findFirst();
  }

  private static double level(List<LogEntry> timed) {
    return timed.stream().map(RunTotals::levelOf).filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble).reduce((a, b) -> b).orElse(Double.NaN);
  }

  private static double descent(List<LogEntry> timed) {
    List<LogEntry> steps = timed.stream().filter(e -> e instanceof Charge || levelOf(e).isPresent()).toList();
    List<Double> speeds = IntStream.range(1, steps.size()).filter(i -> levelOf(steps.get(i - 1)).isPresent() && levelOf(steps.get(i)).isPresent()
        && !(steps.get(i) instanceof Charge) && steps.get(i).getElapsed() > steps.get(i - 1).getElapsed())
        .mapToObj(i -> (levelOf(steps.get(i)).getAsDouble() - levelOf(steps.get(i - 1)).getAsDouble()) / (steps.get(i).getElapsed() - steps.get(i - 1).getElapsed())).toList();
    return speeds.subList(Math.max(0, speeds.size() - SINKINGS), speeds.size()).stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
  }

  private static double finish(Trial trial, List<Charge> fed, Amount ore, double interval) {
    OptionalDouble planned = planned(trial, "ore_total");
    if (planned.isEmpty() || fed.isEmpty()) {
      return Double.NaN;
    }
    double pace = Double.isNaN(interval) ? planned(trial, "charge_interval").orElse(Double.NaN) : interval;
    double each = ore.value() / fed.size();
    double left = Math.max(0, planned.getAsDouble() - ore.value());
    return fed.get(fed.size() - 1).getElapsed() + Math.ceil(left / each - 1e-9) * pace;
  }

  /** A planned number of a trial, canonical unit. */
  public static OptionalDouble planned(Trial trial, String variable) {
    return trial.getValues().stream().filter(v -> variable.equals(v.getVariable()) && v.getStage() == Stage.PLANNED).map(Readings::amount).filter(Amount::isNumber)
        .mapToDouble(Amount::value).findFirst();
  }

  /** Ore over fuel; NaN without fuel. */
  public double ratio() {
    return fuel.value() > 0 ? ore.value() / fuel.value() : Double.NaN;
  }

  /** Speed of sinking as people say it, in cm/h; empty when unknown. */
  public String descentText() {
    return Double.isNaN(descent) ? "" : Printed.number(Units.find(Quantity.SPEED, "cm/h").orElseThrow().fromCanonical(descent), 2) + " cm/h";
  }
}
