package daubline.criteria;

import daubline.base.Printed;
import daubline.base.Source;
import daubline.base.Trail;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Explanation;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.kernel.CompositionKernel;
import daubline.engine.inference.kernel.Kernel;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** A criterion on the composition of slag: log-ratios of the parts that both sides report. */
abstract class CompositionCriterion extends CardCriterion {

  private static final String PARTS = "parts";
  private static final String SPECIMEN = "specimen";
  private static final String TOLERANCE = "tolerance";
  private static final String RELATIVE = "analytical_relative";
  private static final String ABSOLUTE = "analytical_absolute";
  private static final int ENOUGH_FOR_COVARIANCE = 8;

  CompositionCriterion(Card card, String parts) {
    super(card, List.of(), List.of(
        Setting.text(PARTS, "Sub-composition", parts, "the oxides compared, separated by semicolons; iron is FeO, all iron recast to it",
            Source.commonPractice("oxides that most laboratories report")),
        Setting.text(SPECIMEN, "Specimens", "", "compare only analyses whose specimen contains this text; empty for all slag",
            Source.commonPractice("bulk slag of one smelt is compared as a whole")),
        Shown.relative(15, "slag of one furnace differs from piece to piece by this much"),
        Setting.number(RELATIVE, "Analytical uncertainty (relative)", 3, Shown.PERCENT, "of an analysis that states none",
            Source.commonPractice("bulk XRF of major oxides")),
        Setting.number(ABSOLUTE, "Analytical uncertainty (absolute)", 0.05, Shown.PERCENT, "of an analysis that states none, in weight per cent",
            Source.commonPractice("bulk XRF of minor oxides"))));
  }

  @Override
  public final Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    SlagSample asked = SlagSample.of(evidence, settings.text(SPECIMEN));
    SlagSample seen = SlagSample.of(found, settings.text(SPECIMEN));
    Set<String> parts = asked.reported(settings.list(PARTS));
    parts.retainAll(seen.reported(settings.list(PARTS)));
    SlagSample askedFull = asked.with(parts);
    SlagSample seenFull = seen.with(parts);
    String missing = missing(asked, seen, askedFull, seenFull, parts);
    if (!missing.isEmpty()) {
      return Assessment.notTested(() -> explain(missing, asked, seen, Set.of()));
    }
    List<String> order = List.copyOf(parts);
    Kernel kernel = kernel(order, askedFull, seenFull, settings);
    Supplier<String> reason = () -> parts.size() + " oxides of " + askedFull.analyses().size() + " and " + seenFull.analyses().size()
        + " analyses compared by log-ratios, " + Words.apart(kernel.sigmas()).replace(" above", " apart");
    return Assessment.tested(kernel, () -> explain(reason.get(), askedFull, seenFull, parts));
  }

  private static String missing(SlagSample asked, SlagSample seen, SlagSample askedFull, SlagSample seenFull, Set<String> parts) {
    if (asked.analyses().isEmpty() || seen.analyses().isEmpty()) {
      return (asked.analyses().isEmpty() ? Side.EVIDENCE : Side.TRIAL).word() + " has no slag analysis that fits the settings";
    }
    if (parts.size() < 2) {
      return "fewer than two of the oxides asked for are reported on both sides";
    }
    return askedFull.analyses().isEmpty() || seenFull.analyses().isEmpty() ? "no analysis of one side reports all oxides compared" : "";
  }

  private static Kernel kernel(List<String> parts, SlagSample asked, SlagSample seen, SettingValues settings) {
    int n = parts.size();
    double relative = settings.number(RELATIVE);
    double absolute = settings.number(ABSOLUTE);
    double[] difference = new double[n];
    double[] sigma = new double[n];
    boolean[] below = new boolean[n];
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      String part = parts.get(i);
      difference[i] = seen.meanLog(part) - asked.meanLog(part);
      below[i] = seen.isBelow(part);
      sigma[i] = Math.sqrt(seen.variance(part, relative, absolute));
      covariance[i][i] = asked.variance(part, relative, absolute) + Math.pow(settings.number(TOLERANCE), 2);
    }
    if (asked.analyses().size() >= ENOUGH_FOR_COVARIANCE) {
      addBetweenFragments(covariance, parts, asked);
    }
    return new CompositionKernel(difference, covariance, sigma, below);
  }

  private static void addBetweenFragments(double[][] covariance, List<String> parts, SlagSample asked) {
    for (int i = 0; i < parts.size(); i++) {
      for (int j = 0; j < parts.size(); j++) {
        covariance[i][j] += asked.covariance(parts.get(i), parts.get(j));
      }
    }
  }

  private static Explanation explain(String reason, SlagSample asked, SlagSample seen, Set<String> parts) {
    String left = printed(asked, parts);
    String right = printed(seen, parts);
    return new Explanation(reason, left, right, Trail.of("Compared", "", asked.trail(Side.EVIDENCE, left), seen.trail(Side.TRIAL, right)));
  }

  private static String printed(SlagSample sample, Set<String> parts) {
    return parts.isEmpty() ? sample.analyses().isEmpty() ? "–" : sample.analyses().size() + " analyses"
        : parts.stream().map(p -> p + " " + (sample.isBelow(p) ? "<" : "") + Printed.number(100 * sample.mean(p) / (sample.isBelow(p) ? 0.65 : 1), 3))
            .collect(Collectors.joining(", ")) + "\u00A0%";
  }
}
