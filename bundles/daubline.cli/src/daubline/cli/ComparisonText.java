package daubline.cli;

import daubline.analysis.EvidenceData;
import daubline.analysis.StudyResults;
import daubline.base.Printed;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Verdict;
import java.util.Comparator;
import java.util.List;

/** Prints a comparison for people: each evidence sheet with the trials ranked under it. */
final class ComparisonText {

  private final boolean reasons;
  private final boolean trail;
  private final int most;

  /** All trials. */
  ComparisonText(boolean reasons, boolean trail) {
    this(reasons, trail, Integer.MAX_VALUE);
  }

  /** No more than so many trials under each sheet. */
  ComparisonText(boolean reasons, boolean trail, int most) {
    this.reasons = reasons;
    this.trail = trail;
    this.most = most;
  }

  void print(StudyResults results) {
    for (EvidenceData evidence : results.snapshot().sheets()) {
      List<Comparison> ranked = results.comparisons().stream().filter(c -> c.sheet().equals(evidence.sheet().id()))
          .sorted(Comparator.comparing((Comparison c) -> !c.isTested()).thenComparing(c -> -c.agreement()).thenComparing(Comparison::trialName)
              .thenComparing(Comparison::trial)).toList();
      if (!ranked.isEmpty()) {
        print(evidence, ranked);
      }
    }
    Out.line("Agreement is how close the remains are, coverage how much could be compared; neither says anything without the other.");
    Out.line("Consistent with the evidence does not mean that the furnace was so.");
  }

  private void print(EvidenceData evidence, List<Comparison> ranked) {
    Out.line("%s · %s", evidence.site(), evidence.sheet().name());
    long untested = ranked.stream().filter(c -> !c.isTested()).count();
    if (untested == ranked.size()) {
      Out.line("  nothing here could be compared with any trial%s", reasons ? "" : " (--reasons says why)");
    } else {
      Out.line("  %-24s %-22s %-9s %-16s %s", "trial", "agreement (5–95 %)", "coverage", "a reproduction", "consistent / not / not tested");
      ranked.stream().filter(Comparison::isTested).limit(most).forEach(ComparisonText::line);
      if (ranked.size() - untested > most) {
        Out.line("  and %d more, see the table ranking", ranked.size() - untested - most);
      }
      if (untested > 0) {
        Out.line("  %d more could not be compared at all", untested);
      }
    }
    if (reasons || trail) {
      ranked.forEach(this::reasons);
    }
    Out.line("");
  }

  private static void line(Comparison c) {
    Out.line("  %-24s %-22s %-9s %-16s %d / %d / %d", shorten(c.trialName(), 24),
        Printed.fixed(c.agreement(), 0) + " (" + Printed.fixed(c.low(), 0) + "–" + Printed.fixed(c.high(), 0) + ")",
        Printed.fixed(c.coverage() * 100, 0) + " %", Printed.fixed(c.bandLow(), 0) + "–" + Printed.fixed(c.bandHigh(), 0),
        c.count(Verdict.CONSISTENT), c.count(Verdict.NOT_CONSISTENT), c.count(Verdict.NOT_TESTED));
  }

  private void reasons(Comparison comparison) {
    Out.line("  %s", comparison.trialName());
    for (CriterionResult result : comparison.criteria()) {
      Out.line("    %-15s %-34s %s", result.verdict().word(), result.name(), result.reason());
      if (trail && result.isTested()) {
        result.trail().asText().lines().forEach(line -> Out.line("        %s", line));
      }
    }
  }

  private static String shorten(String text, int length) {
    return text.length() <= length ? text : text.substring(0, length - 1) + "…";
  }
}
