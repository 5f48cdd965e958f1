package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Mixture;
import daubline.engine.design.Model;
import daubline.engine.design.Run;
import daubline.engine.design.learn.EffectsReport;
import daubline.engine.design.learn.EffectsRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What moved an outcome of a series.
 *
 * @param brief the series
 * @param burnt its trials
 * @param outcome the outcome
 * @param model the effects asked for
 * @param report the report; empty when there is too little to say anything
 * @param findings everything the reader must know, errors first
 */
public record SeriesEffects(DesignBrief brief, BurntTrials burnt, Outcome outcome, Model model, Optional<EffectsReport> report,
    List<Finding> findings) {

  /** Which effects are asked for. */
  public enum Terms {
    /** Main effects when the trials carry no more, otherwise what the series was planned for. */
    USUAL,
    /** Main effects alone. */
    MAIN,
    /** Interactions of two as well. */
    INTERACTIONS,
    /** Squares as well. */
    QUADRATIC;

    /** The word typed for it. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  private static final int SPARE = 2;

  /**
   * The effects of a series.
   *
   * @param confidence of the intervals, such as 0.95
   * @param seed of simulated critical values and drawn permutations
   */
  public static SeriesEffects of(StudySnapshot study, DesignBrief brief, BurntTrials burnt, Outcome outcome, Terms terms, double confidence, long seed) {
    List<Finding> findings = new ArrayList<>(brief.findings());
    findings.addAll(burnt.findings());
    findings.addAll(outcome.findings());
    if (burnt.trials().isEmpty()) {
      findings.add(Finding.error("effects.nothing", brief.series().name(), "no trial of this series is burnt", "burn trials and record what they left"));
    }
    BurntTrials varied = varied(brief, burnt, findings);
    List<Factor> factors = varied.design().factors();
    Model model = model(brief, factors, outcome.known(), terms);
    Optional<EffectsReport> report = factors.isEmpty() ? Optional.empty() : report(varied, outcome, model, confidence, seed, findings);
    mixture(varied, findings);
    BurntFindings.outside(varied, findings);
    BurntFindings.failed(varied, outcome, model, report, findings);
    report.ifPresent(r -> r.findings().stream().filter(f -> !f.code().equals("effects.missing")).forEach(findings::add));
    missing(varied, outcome, findings);
    findings.sort(java.util.Comparator.comparing(Finding::severity));
    return new SeriesEffects(brief, varied, outcome, model, report, List.copyOf(findings));
  }

  private static void mixture(BurntTrials burnt, List<Finding> findings) {
    Mixture.of(burnt.design()).ifPresent(m -> {
      List<String> names = m.names(burnt.design().factors());
      findings.add(Finding.note("effects.mixture", "the effects", String.join(", ", names) + " are shares of one whole: none of them was ever changed alone, and an effect of "
          + names.get(0) + " or " + names.get(1) + " is that of taking it instead of " + names.get(2), "look at the triangle of shares rather than at single effects"));
    });
  }

  private static void missing(BurntTrials burnt, Outcome outcome, List<Finding> findings) {
    String names = String.join(", ", IntStream.range(0, burnt.trials().size()).filter(i -> !Double.isFinite(outcome.values()[i]))
        .mapToObj(i -> burnt.trials().get(i).name() + (burnt.trials().get(i).status() == TrialStatus.FAILED ? " (failed)" : "")).toList());
    if (!names.isEmpty()) {
      findings.add(Finding.warning("effects.missing", names, "no " + outcome.name() + " is recorded; left out, not taken as zero",
          "if a trial failed because of a setting, that is a finding of its own: say so beside the effects"));
    }
  }

  /** A factor that was the same in every trial burnt can have no effect to estimate and is left out. */
  private static BurntTrials varied(DesignBrief brief, BurntTrials burnt, List<Finding> findings) {
    List<double[]> settings = burnt.design().settings();
    int[] kept = IntStream.range(0, brief.factors().size()).filter(j -> settings.stream().mapToDouble(s -> s[j]).distinct().count() > 1).toArray();
    if (kept.length < brief.factors().size() && !settings.isEmpty()) {
      String same = String.join(", ", IntStream.range(0, brief.factors().size()).filter(j -> Arrays.stream(kept).noneMatch(k -> k == j))
          .mapToObj(j -> brief.factors().get(j).name()).toList());
      findings.add(Finding.warning("effects.constant", brief.series().name(), same + " was the same in every trial burnt and says nothing",
          "burn a trial at another setting"));
    }
    List<Factor> factors = Arrays.stream(kept).mapToObj(j -> burntWords(brief.factors().get(j), j, settings)).toList();
    List<Run> runs = burnt.design().runs().stream().map(r -> new Run(recoded(r.setting(), kept, brief.factors(), factors), r.furnace(), r.day(), true)).toList();
    return new BurntTrials(burnt.trials(), new Design("trials burnt", factors, runs, List.of()), burnt.findings());
  }

  /** Words that no trial was burnt at are left out, so that the others can be told apart. */
  private static Factor burntWords(Factor f, int j, List<double[]> settings) {
    if (!f.isCategory()) {
      return f;
    }
    List<String> used = IntStream.range(0, f.names().size()).filter(i -> settings.stream().anyMatch(s -> Math.round(s[j]) == i)).mapToObj(f.names()::get).toList();
    return new Factor(f.id(), f.name(), f.unit(), 0, 0, List.of(), used, f.change());
  }

  private static double[] recoded(double[] setting, int[] kept, List<Factor> all, List<Factor> factors) {
    return IntStream.range(0, kept.length).mapToDouble(k -> {
      Factor before = all.get(kept[k]);
      double code = setting[kept[k]];
      return before.isCategory() ? factors.get(k).code(before.names().get((int) Math.round(code))) : code;
    }).toArray();
  }

  private static Model model(DesignBrief brief, List<Factor> factors, int trials, Terms terms) {
    Model usual = brief.question().model(factors);
    return switch (terms) {
      case MAIN -> Model.main(factors);
      case INTERACTIONS -> Model.interactions(factors);
      case QUADRATIC -> Model.quadratic(factors);
      case USUAL -> trials >= usual.size() + SPARE ? usual : Model.main(factors);
    };
  }

  private static Optional<EffectsReport> report(BurntTrials burnt, Outcome outcome, Model model, double confidence, long seed, List<Finding> findings) {
    double[] known = Arrays.stream(outcome.values()).filter(Double::isFinite).toArray();
    if (known.length >= 2 && Arrays.stream(known).distinct().count() == 1) {
      findings.add(Finding.warning("effects.equal", outcome.name(), "it is the same in all " + known.length + " trials: nothing moved it, and nothing can "
          + "be said about how large an effect would have been seen", "measure it more finely, or ask about another outcome"));
      return Optional.empty();
    }
    try {
      return Optional.of(EffectsReport.of(new EffectsRequest(burnt.design(), model, outcome.values(), outcome.name(), outcome.unit(), confidence, seed)));
    } catch (IllegalArgumentException e) {
      findings.add(Finding.error("effects.too-few", outcome.name(), e.getMessage(), "burn more trials, record the outcome, or ask about another one"));
      return Optional.empty();
    }
  }
}
