package daubline.engine.design.learn;

import daubline.base.Printed;
import daubline.engine.design.Design;

/** Says an effect in words: the estimate, its interval, the trials behind it, and how large an effect must be to be seen. */
final class Sentences {

  private Sentences() {
  }

  static Effect with(Effect e, EffectsRequest request, Design design, EffectsReport.HalfNormal halfNormal) {
    StringBuilder text = new StringBuilder();
    String unit = request.unit().isEmpty() ? "" : "\u00A0" + request.unit();
    text.append(e.name()).append(e.change().isEmpty() ? "" : " " + e.change()).append(": ").append(request.outcome()).append(' ')
        .append(signed(e.estimate(), e.standardError())).append(unit);
    String behind = design.size() + " trials" + (design.sharesFurnaces() ? " in " + design.furnaceCount() + (design.furnaceCount() == 1 ? " furnace" : " furnaces") : "")
        + (design.sharesDays() ? " on " + design.dayCount() + " days" : "");
    if (e.freedom() > 0) {
      text.append(" (").append(Printed.number(100 * request.confidence(), 3)).append(" % interval ")
          .append(rounded(e.low(), e.standardError())).append(" to ").append(rounded(e.high(), e.standardError()))
          .append(freedom(e.freedom())).append(behind).append(e.low() > 0 || e.high() < 0 ? ". " : "; the sign is open. ").append("An effect of about ")
          .append(Printed.number(e.smallest(), 2)).append(unit).append(" would have been seen four times in five, a smaller one less often.");
    } else {
      text.append(", ").append(behind).append(". ").append(unjudged(e, halfNormal));
    }
    if (!e.separable()) {
      text.append(" It cannot be separated from " + e.stratum() + "-to-" + e.stratum() + " variation.");
    }
    if (!e.aliases().isEmpty()) {
      text.append(" It could as well be ").append(e.aliases()).append('.');
    }
    return new Effect(e.name(), e.term(), e.change(), e.estimate(), e.standardError(), e.freedom(), e.low(), e.high(), e.p(),
        e.smallest(), e.stratum(), e.separable(), e.aliases(), e.permutation(), text.toString());
  }

  private static String unjudged(Effect e, EffectsReport.HalfNormal plot) {
    int place = plot == null ? -1 : plot.names().indexOf(e.name());
    if (place < 0 && !e.stratum().equals("trial")) {
      return "Too few " + e.stratum() + "s are left to say how far it can be trusted, or how small an effect could have been seen.";
    }
    if (place < 0) {
      return "No repeat is left to say how far it can be trusted, or how small an effect could have been seen.";
    }
    double ratio = plot.sizes()[place] / plot.lenth().error();
    if (ratio > plot.lenth().any()) {
      return "It stands out from all the others beyond what chance does to the largest of " + plot.names().size() + ".";
    }
    return ratio > plot.lenth().single() ? "It stands out from the others, but one of " + plot.names().size() + " may by chance."
        : "It does not stand out from the others; an effect no larger than they scatter cannot be told from chance.";
  }

  /** The degrees of freedom behind an interval; those of several strata are no whole number. */
  private static String freedom(double freedom) {
    return " on " + Printed.number(freedom, 2) + (freedom == 1 ? " degree" : " degrees") + " of freedom), ";
  }

  private static String signed(double value, double error) {
    return (value > 0 ? "+" : "") + rounded(value, error);
  }

  private static String rounded(double value, double error) {
    return error > 0 && Double.isFinite(error) ? Printed.fixed(value, Math.max(0, Printed.decimals(error))) : Printed.number(value, 3);
  }
}
