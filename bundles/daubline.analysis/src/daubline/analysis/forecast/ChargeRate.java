package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.engine.process.Spread;
import daubline.model.Charge;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How fast charcoal burns, from the charge log: what is filled up was burnt since the charge before. Needs three charges
 * with a clock and a weight; charges before the first ore are left out where there are enough after it.
 */
final class ChargeRate {

  private static final int LEAST = 3;
  /** Scales and measures, common to all charges (common practice, no source). */
  private static final double SCALE = .03;

  private record Fill(double time, double mass, boolean withOre) {
  }

  private ChargeRate() {
  }

  /** The rate in kg/s with its spread; empty with fewer than three timed and weighed charges. */
  static Optional<Spread> of(Trial trial) {
    List<Fill> fills = new ArrayList<>(trial.getLog().stream().filter(Charge.class::isInstance).map(Charge.class::cast)
        .filter(c -> c.getElapsed() != null).map(ChargeRate::fill).filter(f -> f.mass() > 0).sorted(Comparator.comparingDouble(Fill::time)).toList());
    List<Fill> main = fills.stream().dropWhile(f -> !f.withOre()).toList();
    List<Fill> taken = main.size() >= LEAST ? main : fills;
    if (taken.size() < LEAST || !(taken.getLast().time() > taken.getFirst().time())) {
      return Optional.empty();
    }
    double time = taken.getLast().time() - taken.getFirst().time();
    double mass = taken.stream().skip(1).mapToDouble(Fill::mass).sum();
    double rate = mass / time;
    return Optional.of(Spread.relative(rate, Math.hypot(SCALE, scatter(taken, rate))));
  }

  private static Fill fill(Charge charge) {
    double mass = charge.getItems().stream().filter(i -> i.getMaterial() == Material.CHARCOAL).map(Readings::amount)
        .filter(Amount::isEstimate).mapToDouble(Amount::value).sum();
    return new Fill(charge.getElapsed(), mass, charge.getItems().stream().anyMatch(i -> i.getMaterial() == Material.ORE));
  }

  /** Standard error of the mean rate, relative, from how the intervals differ. */
  private static double scatter(List<Fill> fills, double rate) {
    double sum = 0;
    int n = 0;
    for (int i = 1; i < fills.size(); i++) {
      double time = fills.get(i).time() - fills.get(i - 1).time();
      if (time > 0) {
        sum += Math.pow(fills.get(i).mass() / time / rate - 1, 2);
        n++;
      }
    }
    return n < 2 ? .2 : Math.min(.5, Math.sqrt(sum / (n - 1) / n));
  }
}
