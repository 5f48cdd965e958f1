package daubline.engine.design.advise;

import daubline.base.Printed;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.judge.DesignReview;
import daubline.engine.design.search.Budget;
import daubline.engine.design.search.BudgetSearch;
import daubline.engine.design.search.Criterion;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Recommends one design for a question and a budget, with its reasons, and shows the others beside it. */
public final class DesignAdvisor {

  private static final double TIE = 0.05;
  /** Without a score to tell designs apart, that which leaves fewest effects unjudged, and then sees most. */
  private static final Comparator<Option> BETTER = Comparator.comparingDouble(Option::score).thenComparingLong(Option::unjudged)
      .thenComparingDouble(Option::hardestJudged);

  private DesignAdvisor() {
  }

  /**
   * What is asked.
   *
   * @param space the factors and rules
   * @param question what the series is for
   * @param budget what may be spent
   * @param strata how alike the trials of a furnace are thought to be
   * @param extras centre trials and repeats asked for beside what the design needs
   * @param perDay how many trials may share a day, each in another furnace, 1 or more
   * @param done trials burnt already, which count and stay; designs that start anew are then left aside
   * @param unjudged whether a design that leaves nothing to judge some effect by will do when there is no better
   * @param starts random starts of each search, 1 or more; 20 is enough for six factors
   * @param seed the seed
   */
  public record Request(Space space, Question question, Budget budget, Strata strata, Extras extras, int perDay, List<Run> done, boolean unjudged, int starts, long seed) {

    /** A series that begins, in which every effect must be judged. */
    public Request(Space space, Question question, Budget budget, Strata strata, int starts, long seed) {
      this(space, question, budget, strata, Extras.NONE, 1, List.of(), false, starts, seed);
    }

    public Request {
      done = List.copyOf(done);
    }
  }

  /**
   * One design weighed.
   *
   * @param name its kind
   * @param design the design; null when it cannot be made
   * @param review its review; null when it cannot be made
   * @param score what it is weighed by, smaller is better: the hardest effect to see, or the average variance of prediction
   * @param verdict why it is recommended or rejected, in words
   */
  public record Option(String name, Design design, DesignReview review, double score, String verdict) {

    boolean possible() {
      return review != null && Double.isFinite(score);
    }

    /** Whether every effect has an estimate, be there an error to judge it by or not. */
    boolean estimable() {
      return review != null && review.effects().stream().allMatch(DesignReview.EffectReview::estimable);
    }

    private long unjudged() {
      return review.effects().stream().filter(e -> Double.isInfinite(e.smallest())).count();
    }

    private double hardestJudged() {
      return review.effects().stream().mapToDouble(DesignReview.EffectReview::smallest).filter(Double::isFinite).max().orElse(Double.POSITIVE_INFINITY);
    }
  }

  /**
   * The advice.
   *
   * @param recommended the design recommended
   * @param rejected the others, the nearest first
   * @param model the model that answers the question
   * @param reasons why, in sentences
   */
  public record Advice(Option recommended, List<Option> rejected, Model model, List<String> reasons) {
  }

  /**
   * Weighs every kind of design.
   *
   * @throws IllegalArgumentException when no design answers the question within the budget, saying what would
   */
  public static Advice recommend(Request request, Progress progress) {
    Model model = request.question.model(request.space.factors());
    Budget left = request.extras.left(request.budget);
    int trials = left.splits().stream().mapToInt(Budget.Split::trials).max().orElse(0);
    List<Option> options = new ArrayList<>();
    options.add(optimal(request, model, left, progress));
    for (Catalogue.Kind kind : Catalogue.all()) {
      progress.check();
      options.add(request.done.isEmpty() ? closed(request, model, left, kind, trials, progress)
          : new Option(kind.name(), null, null, Double.POSITIVE_INFINITY, "it starts anew and leaves the " + request.done.size() + " trials burnt aside"));
    }
    // a closed design that does as well is preferred: it is known, balanced and easy to explain
    Option best = options.stream().filter(o -> o.possible() || request.unjudged && o.estimable()).min(BETTER)
        .orElseThrow(() -> new IllegalArgumentException(nothing(request, options, trials)));
    Option chosen = options.stream().skip(1).filter(o -> o.possible() && o.score <= best.score * (1 + TIE) + 1e-9)
        .min(Comparator.comparingDouble(Option::score)).orElse(best);
    List<Option> rejected = options.stream().filter(o -> o != chosen).map(o -> rejected(request, o, chosen))
        .sorted(Comparator.comparingDouble(o -> o.possible() ? o.score : Double.POSITIVE_INFINITY)).toList();
    List<String> reasons = reasons(request, model, chosen);
    Option recommended = new Option(chosen.name, chosen.design, chosen.review, chosen.score, String.join(" ", reasons));
    return new Advice(recommended, rejected, model, reasons);
  }

  private static String nothing(Request request, List<Option> options, int trials) {
    return "no design answers “" + request.question.word() + "” with " + trials + " trials and " + request.space.factors().size()
        + " factors: " + options.get(0).verdict + ". Ask which factors matter first, drop a factor, or raise the budget";
  }

  private static Option optimal(Request request, Model model, Budget left, Progress progress) {
    String name = request.question.criterion().word() + " by exchange";
    try {
      List<BudgetSearch.Option> found = BudgetSearch.search(request.space, model, left, request.question.criterion(),
          request.strata, request.done, request.perDay, request.starts, request.seed, progress);
      // the most information can leave nothing to judge a furnace's effect by; such a split is passed over when another can
      List<Option> options = found.stream().map(o -> completed(request, model, name, o.found().design())).toList();
      return options.stream().filter(o -> o.review != null).min(BETTER).orElse(options.get(0));
    } catch (IllegalArgumentException e) {
      return new Option(name, null, null, Double.POSITIVE_INFINITY, e.getMessage());
    }
  }

  private static Option completed(Request request, Model model, String name, Design design) {
    try {
      return weighed(request, model, name, complete(request, model, design));
    } catch (IllegalArgumentException e) {
      return new Option(name, null, null, Double.POSITIVE_INFINITY, e.getMessage());
    }
  }

  private static Option closed(Request request, Model model, Budget left, Catalogue.Kind kind, int trials, Progress progress) {
    try {
      Design placed = Furnaces.place(kind.maker().make(request.space.factors(), trials, request.seed, progress), left);
      Design design = complete(request, model, Days.share(placed, request.perDay));
      return weighed(request, model, kind.name(), design);
    } catch (IllegalArgumentException e) {
      return new Option(kind.name(), null, null, Double.POSITIVE_INFINITY, e.getMessage());
    }
  }

  /** With the centre trials and repeats asked for. */
  private static Design complete(Request request, Model model, Design design) {
    Design more = request.extras.add(design, model, request.space, request.strata, request.budget);
    offLevel(more);
    String forbidden = forbidden(request.space, more);
    if (!forbidden.isEmpty()) {
      throw new IllegalArgumentException("it would burn what the rules forbid: " + forbidden);
    }
    return more;
  }

  /** Settings between the levels of a factor cannot be burnt. */
  private static void offLevel(Design design) {
    for (int j = 0; j < design.factors().size(); j++) {
      Factor f = design.factors().get(j);
      double[] codes = f.codes();
      int column = j;
      design.runs().stream().filter(r -> !r.done()).mapToDouble(r -> r.setting()[column]).filter(v -> codes.length > 0 && Arrays.stream(codes).noneMatch(c -> Math.abs(c - v) < 1e-9))
          .findFirst().ifPresent(v -> {
            throw new IllegalArgumentException("it would set " + f.name() + " to " + f.show(v) + ", which is not among its levels");
          });
    }
  }

  private static String forbidden(Space space, Design design) {
    for (int i = 0; i < design.size(); i++) {
      if (!design.runs().get(i).done() && !space.allows(design.settings().get(i))) {
        return design.text(i);
      }
    }
    return "";
  }

  private static Option weighed(Request request, Model model, String name, Design design) {
    DesignReview review = DesignReview.of(design, model, request.space, request.strata);
    double score = request.question.criterion() == Criterion.PREDICTION ? review.prediction().average() : hardest(review);
    return new Option(name, design, review, score, Double.isFinite(score) ? "" : cannot(review));
  }

  private static double hardest(DesignReview review) {
    return review.effects().stream().mapToDouble(DesignReview.EffectReview::smallest).max().orElse(Double.POSITIVE_INFINITY);
  }

  private static String cannot(DesignReview review) {
    List<String> lost = review.effects().stream().filter(e -> !e.estimable()).map(DesignReview.EffectReview::name).toList();
    if (!lost.isEmpty()) {
      return "it cannot tell apart " + String.join(", ", lost.subList(0, Math.min(4, lost.size()))) + (lost.size() > 4 ? " and "
          + (lost.size() - 4) + " more" : "");
    }
    return "it leaves nothing to judge the error of " + review.effects().stream().filter(e -> Double.isInfinite(e.smallest()))
        .map(DesignReview.EffectReview::name).findFirst().orElse("the prediction");
  }

  private static Option rejected(Request request, Option option, Option chosen) {
    if (!option.possible() || !chosen.possible()) {
      return option;
    }
    String verdict = option.score <= chosen.score * (1 + TIE) ? "it does as well (" + score(request, option) + ") with " + size(option.design.runs())
        + "; the one recommended is easier to explain or a little better"
        : score(request, option) + ", against " + Printed.number(chosen.score, 3) + " of the one recommended; " + size(option.design.runs());
    return new Option(option.name, option.design, option.review, option.score, verdict);
  }

  private static String size(List<Run> runs) {
    long furnaces = runs.stream().mapToInt(Run::furnace).distinct().count();
    return runs.size() + " trials in " + furnaces + (furnaces == 1 ? " furnace" : " furnaces");
  }

  private static String score(Request request, Option option) {
    return request.question.criterion() == Criterion.PREDICTION
        ? "its predictions have an average variance of " + Printed.number(option.score, 3) + " of a trial's"
        : "its hardest effect must be " + Printed.number(option.score, 3) + " standard deviations to be seen four times in five";
  }

  private static List<String> reasons(Request request, Model model, Option chosen) {
    List<String> reasons = new ArrayList<>();
    reasons.add("You ask " + request.question.word() + ": that is " + (model.size() - 1) + " effects beside the mean.");
    if (!request.done.isEmpty()) {
      reasons.add(request.done.size() + " trials burnt already count; what follows adds to them.");
    }
    if (request.extras.total() > 0) {
      reasons.add("Among the trials are at least " + request.extras.centres() + " in the centre and " + request.extras.repeats() + " repeats, as you asked.");
    }
    reasons.add("The budget allows " + size(chosen.design.runs().stream().filter(r -> !r.done()).toList()) + ".");
    reasons.add(chosen.possible() ? "Of the designs within the rules and the budget, " + chosen.name + " does best: " + score(request, chosen) + "."
        : "No design within the rules and the budget leaves an error to judge every effect by. " + chosen.name + " leaves the fewest open: "
        + String.join(", ", chosen.review.effects().stream().filter(e -> Double.isInfinite(e.smallest())).map(DesignReview.EffectReview::name).toList())
        + " will have an estimate and no interval.");
    chosen.review.findings().stream().filter(f -> f.code().equals("design.aliased") || f.code().equals("design.between-furnaces")
        || f.code().equals("design.furnace-error")).forEach(f -> reasons.add("Mind: " + f.what() + "."));
    return List.copyOf(reasons);
  }
}
