package daubline.criteria;

import daubline.base.Printed;
import daubline.base.Source;
import daubline.base.Trail;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Explanation;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.SheetGroup;
import daubline.engine.inference.kernel.CompositionKernel;
import daubline.engine.inference.kernel.Kernel;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** A criterion on the composition of slag: log-ratios of the parts that both sides report. */
abstract class CompositionCriterion extends CardCriterion {

  private static final String PARTS = "parts";
  private static final String SPECIMEN = "specimen";
  private static final String TOLERANCE = "tolerance";
  private static final String RELATIVE = "analytical_relative";
  private static final String ABSOLUTE = "analytical_absolute";
  private static final int ENOUGH_FOR_COVARIANCE = 8;
  /** Keeps the covariance regular when tolerance and uncertainties are set to zero. */
  private static final double NEVER_CERTAIN = 1e-12;

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
    SlagTable asked = settings.once(Side.EVIDENCE, evidence, s -> table(s, settings));
    SlagTable seen = settings.once(Side.TRIAL, found, s -> table(s, settings));
    int[] parts = asked.shared(seen, settings.list(PARTS).size());
    SlagTable askedFull = asked.with(parts);
    SlagTable seenFull = seen.with(parts);
    String missing = missing(asked, seen, askedFull, seenFull, parts.length);
    if (!missing.isEmpty()) {
      return Assessment.notTested(() -> explain(missing, evidence, found, settings, Set.of()));
    }
    List<String> names = Arrays.stream(parts).mapToObj(settings.list(PARTS)::get).toList();
    Kernel kernel = kernel(names, askedFull, seenFull, settings.number(TOLERANCE), betweenFeatures(evidence, settings, parts));
    return Assessment.tested(kernel, () -> explain(parts.length + " oxides of " + askedFull.logs().length + " and " + seenFull.logs().length
        + " analyses compared by log-ratios, " + Words.apart(kernel.sigmas()).replace(" above", " apart"), evidence, found, settings,
        new LinkedHashSet<>(names)));
  }

  private static SlagTable table(SheetData sheet, SettingValues settings) {
    return SlagTable.of(SlagSample.of(sheet, settings.text(SPECIMEN)), settings.list(PARTS), settings.number(RELATIVE), settings.number(ABSOLUTE));
  }

  private static String missing(SlagTable asked, SlagTable seen, SlagTable askedFull, SlagTable seenFull, int parts) {
    if (asked.isEmpty() || seen.isEmpty()) {
      return (asked.isEmpty() ? Side.EVIDENCE : Side.TRIAL).word() + " has no slag analysis that fits the settings";
    }
    if (parts < 2) {
      return "fewer than two of the oxides asked for are reported on both sides";
    }
    return askedFull.isEmpty() || seenFull.isEmpty() ? "no analysis of one side reports all oxides compared" : "";
  }

  private static Kernel kernel(List<String> parts, SlagTable asked, SlagTable seen, double tolerance, double[] between) {
    int n = parts.size();
    double[] difference = new double[n];
    double[] sigma = new double[n];
    boolean[] below = new boolean[n];
    double[][] covariance = new double[n][n];
    for (int i = 0; i < n; i++) {
      difference[i] = seen.mean(i) - asked.mean(i);
      below[i] = seen.isBelow(i);
      sigma[i] = Math.sqrt(seen.variance(i));
      covariance[i][i] = Math.max(NEVER_CERTAIN, asked.variance(i) + tolerance * tolerance + between[i]);
    }
    if (asked.logs().length >= ENOUGH_FOR_COVARIANCE) {
      addBetweenFragments(covariance, asked);
    }
    return new CompositionKernel(parts, difference, covariance, sigma, below);
  }

  /** Variance of each logarithm that one more feature of a group adds; zero for a sheet of its own. */
  private static double[] betweenFeatures(SheetData evidence, SettingValues settings, int[] parts) {
    List<SlagTable> features = evidence.features().stream().map(f -> table(f, settings).with(parts)).filter(t -> !t.isEmpty()).toList();
    double[] between = new double[parts.length];
    if (features.size() > 1) {
      SlagTable means = SlagTable.ofMeans(features, parts.length);
      Arrays.setAll(between, i -> means.covariance(i, i) * SheetGroup.oneMore(features.size()));
    }
    return between;
  }

  private static void addBetweenFragments(double[][] covariance, SlagTable asked) {
    for (int i = 0; i < covariance.length; i++) {
      for (int j = 0; j < covariance.length; j++) {
        covariance[i][j] += asked.covariance(i, j);
      }
    }
  }

  private static Explanation explain(String reason, SheetData evidence, SheetData found, SettingValues settings, Set<String> parts) {
    SlagSample asked = SlagSample.of(evidence, settings.text(SPECIMEN)).with(parts);
    SlagSample seen = SlagSample.of(found, settings.text(SPECIMEN)).with(parts);
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
