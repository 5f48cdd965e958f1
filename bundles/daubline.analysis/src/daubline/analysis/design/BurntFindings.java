package daubline.analysis.design;

import daubline.analysis.TrialData;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.TrialStatus;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.learn.EffectsReport;
import daubline.engine.design.learn.EffectsRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What must be known of the trials behind an effect: burnt outside the limits planned, or failed and counted all the same. */
final class BurntFindings {

  /** In half ranges from the middle, limits at 1: further out, one trial weighs on the slope more than those at the limits (our own choice, no source). */
  private static final double OUTSIDE = 1.2;
  private static final double CONFIDENCE = 0.95;

  private BurntFindings() {
  }

  /** Names trials burnt well outside the limits of a factor. */
  static void outside(BurntTrials burnt, List<Finding> findings) {
    List<Factor> factors = burnt.design().factors();
    for (int i = 0; i < burnt.trials().size(); i++) {
      double[] setting = burnt.design().settings().get(i);
      List<String> beyond = new ArrayList<>();
      for (int j = 0; j < setting.length; j++) {
        Factor f = factors.get(j);
        if (!f.isCategory() && Math.abs(setting[j]) > OUTSIDE) {
          beyond.add(f.name() + " " + f.show(setting[j]) + " (planned " + Printed.number(f.low()) + " to " + f.show(1) + ")");
        }
      }
      if (!beyond.isEmpty()) {
        findings.add(Finding.note("effects.outside", burnt.trials().get(i).name(), "burnt outside the limits: " + String.join(", ", beyond) + "; it weighs more than the others",
            "read the effect as a straight line that reaches out to it").about(burnt.trials().get(i).id(), ""));
      }
    }
  }

  /** A failed trial counts with what it left; what the others say without it stands beside. */
  static void failed(BurntTrials burnt, Outcome outcome, Model model, Optional<EffectsReport> report, List<Finding> findings) {
    int[] failed = IntStream.range(0, burnt.trials().size()).filter(i -> burnt.trials().get(i).status() == TrialStatus.FAILED && Double.isFinite(outcome.values()[i])).toArray();
    if (failed.length == 0 || report.isEmpty()) {
      return;
    }
    double[] rest = outcome.values().clone();
    IntStream.of(failed).forEach(i -> rest[i] = Double.NaN);
    String names = IntStream.of(failed).mapToObj(burnt.trials()::get).map(TrialData::name).collect(Collectors.joining(", "));
    findings.add(Finding.warning("effects.failed", names, "failed and counts with the outcome recorded. " + without(burnt, outcome, model, rest),
        "if the settings did not make it fail, take it out of comparison and say why"));
  }

  private static String without(BurntTrials burnt, Outcome outcome, Model model, double[] rest) {
    try {
      EffectsReport others = EffectsReport.of(new EffectsRequest(burnt.design(), model, rest, outcome.name(), outcome.unit(), CONFIDENCE, 1));
      String unit = outcome.unit().isEmpty() ? "" : "\u00A0" + outcome.unit();
      return "Without: " + others.effects().stream().filter(e -> e.term().order() == 1).map(e -> e.name() + " " + (e.estimate() > 0 ? "+" : "") + Printed.number(e.estimate(), 2) + unit
          + (e.freedom() > 0 ? " (" + Printed.number(e.low(), 2) + " to " + Printed.number(e.high(), 2) + ")" : "")).collect(Collectors.joining(", "));
    } catch (IllegalArgumentException e) {
      return "Without it nothing can be said";
    }
  }
}
