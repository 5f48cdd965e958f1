package daubline.cli;

import daubline.analysis.Against;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyResults;
import daubline.analysis.Target;
import daubline.base.Printed;
import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Exclusion;
import daubline.engine.inference.Setting;
import daubline.engine.inference.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Prints a comparison for people: each target with the trials ranked under it. */
final class ComparisonText {

  private final StudyResults results;
  private final ComparisonOptions options;
  private final ComparisonSettings settings;
  private final boolean reasons;
  private final boolean trail;
  private final int most;

  /** All trials. */
  ComparisonText(StudyResults results, ComparisonOptions options, boolean reasons, boolean trail) {
    this(results, options, reasons, trail, Integer.MAX_VALUE);
  }

  /** No more than so many trials under each target. */
  ComparisonText(StudyResults results, ComparisonOptions options, boolean reasons, boolean trail, int most) {
    this.results = results;
    this.options = options;
    this.settings = options.settingsOf(results.snapshot());
    this.reasons = reasons;
    this.trail = trail;
    this.most = most;
  }

  void print() {
    results.checks().stream().filter(f -> f.code().startsWith("setting.")).forEach(f -> Page.say(0, f.toString()));
    int silent = 0;
    for (Target target : options.targets(results.snapshot())) {
      List<Comparison> ranked = results.ranked(target.sheet().id());
      boolean tested = ranked.stream().anyMatch(Comparison::isTested);
      if (tested || reasons && !ranked.isEmpty()) {
        print(target, ranked);
      }
      silent += tested || ranked.isEmpty() ? 0 : 1;
    }
    if (silent > 0 && !reasons) {
      Page.say(0, silent + (silent == 1 ? " sheet could" : " sheets could") + " not be compared with any trial at all (--reasons says why)");
      Out.line("");
    }
    legend();
  }

  private void print(Target target, List<Comparison> ranked) {
    Out.line("%s", target.heading());
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("trial", "consistent / not / not tested", "agreement", "5–95 %", "bounds", "a faithful repeat", "coverage"));
    ranked.stream().filter(Comparison::isTested).limit(most).forEach(c -> rows.add(row(c)));
    if (rows.size() > 1) {
      Page.table(2, 2, rows);
    }
    long untested = ranked.stream().filter(c -> !c.isTested()).count();
    if (ranked.size() - untested > most) {
      Page.say(2, "and " + (ranked.size() - untested - most) + " more, see the table ranking");
    }
    if (untested > 0) {
      Page.say(2, untested == ranked.size() ? "nothing here could be compared with any trial" : untested + " more could not be compared at all");
    }
    ruledOut(ranked);
    if (reasons) {
      ranked.forEach(this::reasons);
    }
    Out.line("");
  }

  private static List<String> row(Comparison c) {
    return List.of(Page.cut(c.trialName(), 24),
        c.count(Verdict.CONSISTENT) + " / " + c.count(Verdict.NOT_CONSISTENT) + " / " + c.count(Verdict.NOT_TESTED), Printed.fixed(c.agreement(), 0),
        Page.span(c.low(), c.high()), Page.span(c.boundLow(), c.boundHigh()), Page.span(c.bandLow(), c.bandHigh()), Page.percent(c.coverage()));
  }

  private void ruledOut(List<Comparison> ranked) {
    Map<String, List<String>> byList = new LinkedHashMap<>();
    for (Comparison comparison : ranked) {
      Exclusion exclusion = Exclusion.of(comparison, settings.alpha());
      if (exclusion.isRuledOut()) {
        byList.computeIfAbsent(ExcludedCommand.names(exclusion), n -> new ArrayList<>()).add(comparison.trialName());
      }
    }
    byList.forEach((list, trials) -> Page.hang(2, 4, "ruled out by " + list + ": " + String.join(", ", trials)));
  }

  private void reasons(Comparison comparison) {
    Out.line("");
    Out.line("  %s", comparison.trialName() + " against " + comparison.sheetName());
    for (CriterionResult result : comparison.criteria()) {
      Page.hang(4, 8, (result.verdict().word() + ": " + result.name() + "  " + figures(result)).stripTrailing());
      Page.say(8, result.reason());
      if (trail && result.isTested()) {
        result.trail().asText().lines().forEach(line -> Page.hang(10 + indent(line), 14 + indent(line), line.strip()));
      }
    }
  }

  private static int indent(String line) {
    return line.length() - line.stripLeading().length();
  }

  private String figures(CriterionResult r) {
    if (!r.isTested()) {
      return "";
    }
    return "agreement " + Printed.agreement(r.agreement()) + " (" + Printed.number(r.low(), 2) + "–" + Printed.number(r.high(), 2) + "), difference "
        + Printed.number(r.sigmas(), 2) + " u, p " + Page.probability(r.compatibility()) + ", weight " + Page.percent(r.weight()) + tolerances(r);
  }

  private String tolerances(CriterionResult r) {
    Criterion criterion = Criteria.find(r.criterion()).orElseThrow();
    String numbers = criterion.settings().stream().filter(Setting::isNumber)
        .map(s -> s.name().toLowerCase(Locale.ROOT) + " " + s.printed(settings.of(criterion).text(s.key()))).collect(Collectors.joining(", "));
    return numbers.isEmpty() ? "" : "; " + numbers;
  }

  private void legend() {
    Page.say(0, "Agreement (0–100) is how close the remains are, median over the uncertainty of the trial, with its 5–95 % interval; coverage is how much, by "
        + "weight, could be compared. Neither says anything without the other.");
    Page.say(0, "Bounds: agreement if all that is untested disagreed, or agreed fully. A faithful repeat: what a repeat of the very same furnace and smelt "
        + "would score, 5–95 %; it does not score 100.");
    if (reasons) {
      Page.say(0, "Difference in combined standard uncertainties u; p: two-sided probability of a difference this large or larger in a faithful repeat; below "
          + Printed.number(settings.alpha()) + " the verdict is not consistent. criteria ID explains a criterion, settings STUDY changes a tolerance.");
    }
    if (options.against() != Against.SHEET && options.against() != Against.TRIAL) {
      Page.say(0, "Features together: what one more feature of the group would look like, mean and between-feature spread widened for so few.");
    }
    Page.say(0, "Consistent with the evidence does not mean that the furnace was so.");
  }
}
