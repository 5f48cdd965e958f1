package daubline.cli;

import daubline.analysis.forecast.Figures;
import daubline.analysis.forecast.InletRace;
import daubline.analysis.forecast.TrialForecast;
import daubline.base.Printed;
import daubline.engine.process.BurnQuantity;
import java.util.ArrayList;
import java.util.List;

/** Which trial must be tapped first and which chokes first, and why, in a sentence each. */
final class RaceWords {

  private RaceWords() {
  }

  /** The sentences about trials of one series or study; none for a single trial, since nothing races with it. */
  static List<String> sentences(List<TrialForecast> forecasts) {
    List<String> all = new ArrayList<>();
    if (forecasts.stream().filter(f -> f.forecast().isPresent()).count() > 1) {
      InletRace.firstToTap(forecasts).ifPresent(r -> all.add("to be tapped first: " + reason(r)));
      InletRace.firstToChoke(forecasts).ifPresent(r -> all.add((r.isBlocked() ? "first to choke, having no tap: " : "nearest to choking, having no tap: ") + reason(r)
          + ", its inlet " + Printed.fixed(100 * r.inlet(), 0) + " cm above the floor, " + (r.where().pit() > 0 ? "with a pit below it" : "no pit below it")));
    }
    return all;
  }

  private static String reason(InletRace r) {
    String interval = Double.isNaN(r.low()) ? "" : " (" + Figures.text(BurnQuantity.BLOCKING, r.low()) + "–" + Figures.text(BurnQuantity.BLOCKING, r.high()) + ")";
    return r.trial().name() + ", after about " + Figures.text(BurnQuantity.BLOCKING, r.after()) + " h" + interval + " of " + Figures.text(BurnQuantity.DURATION, r.duration())
        + " h, because " + Printed.fixed(3600 * r.slag(), 1) + " kg of slag an hour go into " + Printed.fixed(1000 * r.room(), 1) + " L of room among the charcoal";
  }
}
