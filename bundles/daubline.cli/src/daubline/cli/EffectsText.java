package daubline.cli;

import daubline.analysis.design.SeriesEffects;
import daubline.base.Printed;
import daubline.base.Version;
import daubline.engine.design.learn.BoxMeyer;
import daubline.engine.design.learn.Effect;
import daubline.engine.design.learn.EffectsReport;
import java.util.Map;
import java.util.stream.IntStream;

/** Prints effects, and gives them as plain values for {@link Json}. */
final class EffectsText {

  private EffectsText() {
  }

  static void print(SeriesEffects effects) {
    Out.line("%s: what moved %s", effects.brief().series().name(), effects.outcome().name());
    effects.report().ifPresent(r -> print(effects, r));
    effects.findings().forEach(f -> Out.line("  %s", f));
  }

  private static void print(SeriesEffects effects, EffectsReport report) {
    Out.line("  %d trials in %d %s; %s", report.trials(), report.furnaces(), report.furnaces() == 1 ? "furnace" : "furnaces", report.method().word());
    if (Double.isFinite(report.trialDeviation())) {
      Out.line("  equal trials differ by %s %s (one standard deviation)%s%s", Printed.number(report.trialDeviation(), 2), effects.outcome().unit(),
          Double.isNaN(report.furnaceDeviation()) ? "" : ", furnaces by " + Printed.number(report.furnaceDeviation(), 2), Double.isNaN(report.dayDeviation()) ? ""
              : ", days by " + Printed.number(report.dayDeviation(), 2));
    }
    for (Effect e : report.effects()) {
      Out.line("  %s", e.sentence());
      Out.line("      dealt out anew: as large in %s of the ways (%s %d looked at; no smaller than %s is possible)", Printed.number(e.permutation().p(), 2),
          e.permutation().complete() ? "all" : "drawn", e.permutation().ways(), Printed.number(e.permutation().floor(), 2));
    }
    report.halfNormal().ifPresent(h -> Out.line("  half-normal plot: pseudo standard error %s, one effect stands out from %s, the largest of all from %s",
        Printed.number(h.lenth().error(), 3), Printed.number(h.lenth().error() * h.lenth().single(), 3), Printed.number(h.lenth().error() * h.lenth().any(), 3)));
    report.activity().ifPresent(a -> activity(effects, a));
  }

  private static void activity(SeriesEffects effects, BoxMeyer activity) {
    Out.line("  some effects cannot be told apart; the probability that each factor is active at all, if a quarter of them are thought to be");
    for (int j = 0; j < activity.active().length; j++) {
      Out.line("      %-28s %s", effects.burnt().design().factors().get(j).name(), Printed.fixed(activity.active()[j], 2));
    }
  }

  static Map<String, Object> json(SeriesEffects effects) {
    return Json.map("version", Version.NUMBER, "series", effects.brief().series().name(), "outcome", effects.outcome().id(), "unit", effects.outcome().unit(),
        "values", IntStream.range(0, effects.burnt().trials().size()).mapToObj(i -> Json.map("trial", effects.burnt().trials().get(i).id(), "name",
            effects.burnt().trials().get(i).name(), "furnace", effects.burnt().design().furnaces()[i] + 1, "value", effects.outcome().values()[i])).toList(),
        "report", effects.report().map(EffectsText::report), "findings", DesignJson.findings(effects.findings()));
  }

  private static Map<String, Object> report(EffectsReport r) {
    return Json.map("method", r.method().word(), "trials", r.trials(), "furnaces", r.furnaces(), "mean", r.mean(), "trialDeviation", r.trialDeviation(), "furnaceDeviation",
        r.furnaceDeviation(), "dayDeviation", r.dayDeviation(), "effects", r.effects().stream().map(EffectsText::effect).toList(), "halfNormal", r.halfNormal().map(h -> Json.map("names", h.names(), "sizes",
            h.sizes(), "scores", h.scores(), "pseudoError", h.lenth().error(), "single", h.lenth().single(), "any", h.lenth().any())),
        "activity", r.activity().map(BoxMeyer::active));
  }

  private static Map<String, Object> effect(Effect e) {
    return Json.map("name", e.name(), "change", e.change(), "estimate", e.estimate(), "standardError", e.standardError(), "freedom", e.freedom(), "low", e.low(), "high",
        e.high(), "p", e.p(), "smallest", e.smallest(), "stratum", e.stratum(), "separable", e.separable(), "aliases", e.aliases(), "permutation",
        Json.map("p", e.permutation().p(), "floor", e.permutation().floor(), "ways", e.permutation().ways(), "complete", e.permutation().complete()), "sentence", e.sentence());
  }
}
