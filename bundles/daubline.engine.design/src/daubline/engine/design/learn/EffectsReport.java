package daubline.engine.design.learn;

import daubline.base.Finding;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Run;
import daubline.engine.design.Strata;
import daubline.engine.design.Term;
import daubline.engine.design.judge.Aliases;
import daubline.engine.design.judge.DesignReview;
import daubline.engine.design.judge.Freedom;
import daubline.engine.design.judge.Power;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What the burnt trials say moved an outcome. An estimate comes with its interval and the number of trials behind it, and
 * with the size that could not have been seen; nothing is ever called without effect.
 *
 * @param method how the effects were judged
 * @param trials how many trials counted
 * @param furnaces in how many furnaces
 * @param mean the mean outcome of the model
 * @param trialDeviation the standard deviation between trials; NaN without error
 * @param furnaceDeviation the standard deviation between furnaces, 0 at the boundary; NaN when not asked
 * @param dayDeviation the standard deviation between days, 0 at the boundary; NaN when not asked
 * @param effects one for each column that can be told apart
 * @param halfNormal for the half-normal plot, when there are three effects or more of one stratum
 * @param activity the activity probabilities of an aliased two-level screen
 * @param fitted for predictions
 * @param findings what the reader must know
 */
public record EffectsReport(Method method, int trials, int furnaces, double mean, double trialDeviation, double furnaceDeviation,
    double dayDeviation, List<Effect> effects, Optional<HalfNormal> halfNormal, Optional<BoxMeyer> activity, Fitted fitted, List<Finding> findings) {

  /** How effects were judged. */
  public enum Method {
    /** Least squares with intervals from t. */
    LEAST_SQUARES("least squares, no furnace or day as a stratum"),
    /** Restricted maximum likelihood with furnaces as a stratum, after Kenward and Roger. */
    FURNACES("restricted maximum likelihood with furnaces as a stratum (Kenward–Roger)"),
    /** The same with days as a stratum, where days are shared and furnaces are not. */
    DAYS("restricted maximum likelihood with days as a stratum (Kenward–Roger)"),
    /** The same with both. */
    FURNACES_AND_DAYS("restricted maximum likelihood with furnaces and days as strata (Kenward–Roger)"),
    /** Too few furnaces or days to say how far they differ: each stratum by itself. */
    LAYER_BY_LAYER("each stratum by itself, since so few furnaces or days do not tell how far they differ: what changes within them is compared within them only"),
    /** Too few trials for an error: half-normal plot with Lenth's pseudo standard error. */
    HALF_NORMAL("half-normal plot with Lenth's pseudo standard error, since too few trials are left for an error"),
    /** Not even that: fewer than three effects of one stratum to compare. */
    ESTIMATES("estimates alone: no trial is left for an error, and too few effects to compare them with each other");

    private final String word;

    Method(String word) {
      this.word = word;
    }

    /** In words. */
    public String word() {
      return word;
    }
  }

  /**
   * The half-normal plot.
   *
   * @param names the effects in rising size
   * @param sizes their sizes, divided so that all have the same standard error
   * @param scores the half-normal scores
   * @param lenth the pseudo standard error and the critical ratios
   */
  public record HalfNormal(List<String> names, double[] sizes, double[] scores, Lenth lenth) {
  }

  private static final double ALPHA = 0.05;
  private static final int DRAWS = 20_000;

  /**
   * The report.
   *
   * @throws IllegalArgumentException when fewer than three trials have an outcome
   */
  public static EffectsReport of(EffectsRequest request) {
    List<Finding> findings = new ArrayList<>();
    int[] used = IntStream.range(0, request.outcomes().length).filter(i -> Double.isFinite(request.outcomes()[i])).toArray();
    if (used.length < 3) {
      throw new IllegalArgumentException("only " + used.length + " trials have an outcome of " + request.outcome()
          + "; effects need three or more");
    }
    missing(request, used, findings);
    List<Run> runs = Arrays.stream(used).mapToObj(i -> request.design().runs().get(i)).toList();
    Design design = new Design(request.design().name(), request.design().factors(), runs, List.of());
    double[] y = Arrays.stream(used).mapToDouble(i -> request.outcomes()[i]).toArray();
    return new Builder(request, design, y, findings).make();
  }

  private static void missing(EffectsRequest request, int[] used, List<Finding> findings) {
    if (used.length < request.outcomes().length) {
      String lost = IntStream.range(0, request.outcomes().length).filter(i -> !Double.isFinite(request.outcomes()[i]))
          .mapToObj(i -> Integer.toString(i + 1)).collect(Collectors.joining(", "));
      findings.add(Finding.warning("effects.missing", "trial " + lost, "no outcome of " + request.outcome() + "; the trial is left "
          + "out, not taken as zero", "if it failed because of a setting, that is a finding of its own: say so beside the effects"));
    }
  }

  /** Works one report out. */
  private static final class Builder {
    private final EffectsRequest request;
    private final Design design;
    private final Model model;
    private final double[] y;
    private final List<Finding> findings;
    private final Estimates estimates;
    private final Layers layers;
    private final Freedom freedom;
    private final List<DesignReview.Alias> aliases;
    private final Optional<HalfNormal> halfNormal;

    Builder(EffectsRequest request, Design design, double[] y, List<Finding> findings) {
      this.request = request;
      this.design = design;
      this.y = y;
      this.findings = findings;
      model = request.model();
      estimates = Estimates.of(design, model, y);
      layers = estimates.layers();
      freedom = Freedom.of(design, model.matrix(design.settings()), layers.days());
      aliases = Aliases.of(design, model, estimates.kept(), Strata.NONE.precision(design.furnaces(), design.days()));
      halfNormal = halfNormal();
    }

    EffectsReport make() {
      List<Effect> effects = new ArrayList<>();
      for (int k = 0; k < estimates.kept().length; k++) {
        if (estimates.kept()[k] > 0) {
          effects.add(effect(k));
        }
      }
      dependent();
      strata(effects);
      several(effects);
      double least = Arrays.stream(estimates.freedom()).min().orElse(0);
      Method method = estimates.method() == Method.HALF_NORMAL && halfNormal.isEmpty() ? Method.ESTIMATES : estimates.method();
      return new EffectsReport(method, y.length, design.furnaceCount(), estimates.coefficients()[0],
          Math.sqrt(estimates.trialVariance()), Math.sqrt(estimates.furnaceVariance()), Math.sqrt(estimates.dayVariance()), effects, halfNormal, activity(),
          new Fitted(model, estimates.kept(), estimates.coefficients(), estimates.covariance(), least), findings);
    }

    private Effect effect(int k) {
      int column = estimates.kept()[k];
      double span = DesignReview.span(model, column);
      double estimate = span * estimates.coefficients()[k];
      double error = span * Math.sqrt(estimates.covariance()[k][k]);
      double below = estimates.freedom()[k];
      double reach = Tails.within(request.confidence(), below) * error;
      String stratum = freedom.stratum().get(column);
      boolean separable = stratum.equals("trial") || (stratum.equals("day") ? freedom.days() : freedom.furnaces()) >= 2;
      double[] x = design.settings().stream().mapToDouble(s -> model.value(column, s)).toArray();
      int[] groups = stratum.equals("day") ? design.days() : layers.furnaces() ? design.furnaces() : new int[y.length];
      Permutation permutation = Permutation.of(y, x, groups, DRAWS, request.seed());
      Effect bare = new Effect(model.name(column), model.terms().get(model.termOf(column)), change(column), estimate, error, below,
          estimate - reach, estimate + reach, Tails.t(estimate / error, below),
          below > 0 ? error * Power.smallest(DesignReview.POWER, below, 1 - request.confidence()) : Double.POSITIVE_INFINITY, stratum,
          separable, aliases(model.name(column)), permutation, "");
      return Sentences.with(bare, request, design, halfNormal.orElse(null));
    }

    private String change(int column) {
      Term term = model.terms().get(model.termOf(column));
      if (term.order() != 1) {
        return "";
      }
      Factor f = model.factors().get(term.factors().get(0));
      if (f.isCategory()) {
        return f.names().size() == 2 ? "from " + f.names().get(0) + " to " + f.names().get(1) : "against the average of all";
      }
      return "from " + daubline.base.Printed.number(f.low()) + " to " + f.show(1);
    }

    private String aliases(String column) {
      List<String> whole = names(column, 0.99, Double.POSITIVE_INFINITY);
      List<String> part = names(column, 0.3, 0.99);
      return String.join(" or ", whole) + (whole.isEmpty() || part.isEmpty() ? "" : ", or ") + (part.isEmpty() ? "" : "in part " + String.join(" or ", part));
    }

    /** The interactions whose share in a column lies above one limit and up to another. */
    private List<String> names(String column, double above, double upTo) {
      return aliases.stream().filter(a -> a.column().equals(column) && Math.abs(a.share()) > above && Math.abs(a.share()) <= upTo)
          .map(DesignReview.Alias::interaction).distinct().limit(4).toList();
    }

    private void dependent() {
      String lost = IntStream.range(0, model.size()).filter(c -> Arrays.stream(estimates.kept()).noneMatch(k -> k == c))
          .mapToObj(model::name).collect(Collectors.joining(", "));
      if (!lost.isEmpty()) {
        findings.add(Finding.warning("effects.inseparable", "the effects", "these trials cannot tell apart from the effects "
            + "before them: " + lost, "read the estimates as either, or add trials that break the tie"));
      }
    }

    private void strata(List<Effect> effects) {
      for (String stratum : List.of("furnace", "day")) {
        String names = effects.stream().filter(e -> !e.separable() && e.stratum().equals(stratum)).map(Effect::name).collect(Collectors.joining(", "));
        if (!names.isEmpty()) {
          findings.add(Finding.warning("effects." + stratum, "the effects", names + " cannot be separated from " + stratum + "-to-" + stratum + " variation",
              stratum.equals("furnace") ? "build more furnaces of the same kind" : "burn the same setting on more days"));
        }
      }
      if (design.furnaceCount() == 1) {
        findings.add(Finding.note("effects.one-furnace", "the effects", "every trial was burnt in the same furnace: how furnaces differ is not known, and the effects are those in this one",
            "burn some of the settings in a second furnace before you speak of others"));
      }
      boundary("furnace", estimates.furnaceVariance());
      boundary("day", estimates.dayVariance());
      if (!layers.shadow().isEmpty()) {
        findings.add(Finding.warning("effects.days", "the effects", layers.shadow(), "read each estimate as that of the setting and of the days it was burnt on, or spread settings over days"));
      }
      if (layers.any() && estimates.method() == Method.HALF_NORMAL) {
        findings.add(Finding.warning("effects.no-error", "the effects", (layers.furnaces() ? "furnaces are burnt" : "days are used") + " more than once, and no trial is left "
            + "to show how equal trials differ", "ask about fewer factors, or add repeats"));
      }
    }

    private void boundary(String stratum, double variance) {
      if (variance == 0) {
        findings.add(Finding.note("effects." + stratum + "-boundary", "the effects", "the variance between " + stratum + "s is estimated as 0 (boundary)",
            "with so few " + stratum + "s this says little; " + stratum + "s stay a stratum"));
      }
    }

    /** The more is asked of the same trials, the likelier something comes out by chance (Bonferroni's bound). */
    private void several(List<Effect> effects) {
      long judged = effects.stream().filter(e -> e.freedom() > 0).count();
      double alpha = 1 - request.confidence();
      if (judged > 1) {
        findings.add(Finding.note("effects.several", "the effects", judged + " effects are judged at " + percent(request.confidence()) + " % each: when none of them acts, one interval "
            + "or more leaves out zero in up to " + percent(Math.min(1, judged * alpha)) + " of 100 such series", "for all of them together ask for intervals of "
            + percent(1 - alpha / judged) + " %, and do not look for the outcome that shows most"));
      }
    }

    private static String percent(double share) {
      return daubline.base.Printed.number(100 * share, 3);
    }

    private Optional<HalfNormal> halfNormal() {
      double[] standardised = estimates.standardised(design, model);
      int[] of = IntStream.range(0, standardised.length).filter(k -> estimates.kept()[k] > 0)
          .filter(k -> !layers.any() || freedom.stratum().get(estimates.kept()[k]).equals("trial"))
          .boxed().sorted(java.util.Comparator.comparingDouble(k -> Math.abs(standardised[k]))).mapToInt(k -> k).toArray();
      if (of.length < 3) {
        return Optional.empty();
      }
      double[] sizes = Arrays.stream(of).mapToDouble(k -> Math.abs(standardised[k])).toArray();
      return Optional.of(new HalfNormal(Arrays.stream(of).mapToObj(k -> model.name(estimates.kept()[k])).toList(), sizes,
          Lenth.scores(of.length), Lenth.of(sizes, ALPHA, request.seed())));
    }

    private Optional<BoxMeyer> activity() {
      boolean twoLevel = design.factors().stream().allMatch(f -> f.names().size() <= 2);
      boolean aliased = estimates.kept().length < model.size() || aliases.stream().anyMatch(a -> Math.abs(a.share()) > 0.3);
      int k = design.factors().size();
      if (!twoLevel || !aliased || layers.any() || k < 3 || k > 12 || y.length < 8) {
        return Optional.empty();
      }
      Model main = Model.main(design.factors());
      double[][] x = design.settings().stream().map(s -> Arrays.copyOfRange(main.row(s), 1, k + 1)).toArray(double[][]::new);
      return Optional.of(BoxMeyer.of(x, new double[0][], y, BoxMeyer.Prior.USUAL));
    }
  }
}
