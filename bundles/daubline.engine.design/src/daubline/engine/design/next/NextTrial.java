package daubline.engine.design.next;

import daubline.base.Finding;
import daubline.base.Printed;
import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.search.CoordinateExchange;
import daubline.engine.design.search.Criterion;
import daubline.engine.design.search.SearchRequest;
import daubline.engine.stats.LeastSquares;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What to burn next, by three questions: which trial sharpens the effects most, which tells the surviving reconstructions
 * apart, which most likely improves the agreement.
 *
 * @param suggestions one for each question that can be asked of these trials
 * @param findings why a question could not be asked
 */
public record NextTrial(List<Suggestion> suggestions, List<Finding> findings) {

  /** Fewer trials than this cannot carry a response surface of agreement. */
  public static final int LEAST_FOR_IMPROVEMENT = 10;
  private static final double TIE = 0.02;
  private static final int STEPS = 5;
  private static final int SHOWN_TIES = 4;

  /** The question that a suggestion answers. */
  public enum Aim {
    /** Sharper effects. */
    AUGMENT("sharpens the effects"),
    /** Which of the factors of an aliased screen act. */
    SCREEN("tells which factors act"),
    /** Reconstructions apart. */
    DISCRIMINATE("tells reconstructions apart"),
    /** Better agreement. */
    IMPROVE("may agree better");

    private final String word;

    Aim(String word) {
      this.word = word;
    }

    /** In words, to follow "this trial". */
    public String word() {
      return word;
    }
  }

  /**
   * A trial suggested.
   *
   * @param aim the question it answers
   * @param setting its coded setting
   * @param text its setting in words
   * @param gain the size of what is gained, as said in {@code separates}
   * @param separates what it would separate or gain, in words
   * @param cost what it costs, in words
   * @param certainty how sure this is, in words
   * @param ties other settings that gain nearly as much
   */
  public record Suggestion(Aim aim, double[] setting, String text, double gain, String separates, String cost, String certainty,
      List<double[]> ties) {
  }

  /**
   * What the suggestion starts from.
   *
   * @param done the trials burnt
   * @param model the effects of interest
   * @param space the settings allowed
   * @param strata how alike the trials of a furnace are thought to be
   * @param agreement the agreement of each trial, larger is better; NaN where none
   * @param rivals the surviving reconstructions with their predictions of one outcome
   * @param trialDeviation the standard deviation of that outcome between trials, greater than zero
   * @param cost what one more trial costs in stock, in words
   * @param seed the seed
   */
  public record Request(Design done, Model model, Space space, Strata strata, double[] agreement, List<Rival> rivals,
      double trialDeviation, String cost, long seed) {

    public Request {
      agreement = agreement.clone();
      rivals = List.copyOf(rivals);
      if (agreement.length != done.size()) {
        throw new IllegalArgumentException(agreement.length + " values of agreement for " + done.size() + " trials");
      }
    }
  }

  /** The suggestions. */
  public static NextTrial suggest(Request request, Progress progress) {
    List<Suggestion> suggestions = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    augment(request, progress, suggestions, findings);
    discriminate(request, suggestions, findings);
    improve(request, suggestions, findings);
    return new NextTrial(List.copyOf(suggestions), List.copyOf(findings));
  }

  private static void augment(Request request, Progress progress, List<Suggestion> suggestions, List<Finding> findings) {
    List<double[]> settings = request.done.settings();
    int known = settings.isEmpty() ? 0 : LeastSquares.rank(request.model.matrix(settings));
    int missing = Math.max(1, request.model.size() - known);
    int next = IntStream.of(request.done.furnaces()).max().orElse(-1) + 1;
    int day = IntStream.of(request.done.days()).max().orElse(-1) + 1;
    List<Run> frozen = request.done.runs().stream().map(r -> new Run(r.setting(), r.furnace(), r.day(), true)).toList();
    int[] furnaces = IntStream.range(next, next + missing).toArray();
    int[] days = IntStream.range(day, day + missing).toArray();
    try {
      SearchRequest search = new SearchRequest(request.space, request.model, Criterion.EFFECTS, request.strata, frozen, furnaces, days,
          20, request.seed, STEPS, false);
      CoordinateExchange.Found found = CoordinateExchange.search(search, progress);
      double[] setting = found.design().settings().get(request.done.size());
      suggestions.add(known == request.model.size() ? sharper(request, setting) : firstOf(request, setting, missing, known));
    } catch (IllegalArgumentException e) {
      findings.add(Finding.note("next.augment", "the next trial", e.getMessage(), "ask for fewer effects"));
    }
  }

  private static Suggestion firstOf(Request request, double[] setting, int missing, int known) {
    return suggestion(request, Aim.AUGMENT, setting, 0, (missing == 1 ? "it is the one trial needed before all " : "it is the first of " + missing + " trials needed before all ")
        + request.model.size() + " unknowns can be told apart; " + known + " are so far", "certain: counting columns", asMuch(request, setting));
  }

  /** Settings that add an unknown too, and as much of what is known least. */
  private static List<double[]> asMuch(Request request, double[] setting) {
    double most = information(request, setting);
    return request.space.candidates(STEPS).stream().filter(s -> !java.util.Arrays.equals(s, setting) && information(request, s) > most + Math.log(1 - TIE)).limit(SHOWN_TIES).toList();
  }

  /** The logarithm of the determinant with one more trial; a grain on the diagonal stands for what is not known yet. */
  private static double information(Request request, double[] setting) {
    List<double[]> settings = new ArrayList<>(request.done.settings());
    settings.add(setting);
    double[][] m = daubline.engine.stats.Matrices.square(request.model.matrix(settings));
    for (int i = 0; i < m.length; i++) {
      m[i][i] += 1e-6;
    }
    return daubline.engine.stats.Cholesky.of(m).logDeterminant();
  }

  /** One more row multiplies the determinant by 1 + its variance of prediction: the setting known worst is burnt. */
  private static Suggestion sharper(Request request, double[] setting) {
    double[][] x = request.model.matrix(request.done.settings());
    double[][] precision = request.strata.precision(request.done.furnaces(), request.done.days());
    double[][] inverse = daubline.engine.stats.Cholesky.of(daubline.engine.stats.Matrices.quadratic(x, precision)).inverse();
    double own = 1 + request.strata.furnace() + request.strata.day();
    double gain = gain(request, inverse, setting) / own;
    List<double[]> ties = request.space.candidates(STEPS).stream()
        .filter(s -> !java.util.Arrays.equals(s, setting) && gain(request, inverse, s) / own > gain * (1 - TIE)).limit(SHOWN_TIES).toList();
    int p = request.model.size();
    double narrower = 1 - Math.pow(1 + gain, -0.5 / p);
    return suggestion(request, Aim.AUGMENT, setting, gain, "it narrows the intervals of all " + (p - 1) + " effects together by about "
        + Printed.number(100 * narrower, 2) + " % each", "certain as far as the model holds: it does not depend on outcomes", ties);
  }

  private static double gain(Request request, double[][] inverse, double[] setting) {
    double[] row = request.model.row(setting);
    return daubline.engine.stats.Matrices.dot(row, daubline.engine.stats.Matrices.times(inverse, row));
  }

  private static Suggestion suggestion(Request request, Aim aim, double[] setting, double gain, String separates, String certainty,
      List<double[]> ties) {
    List<Factor> factors = request.space.factors();
    String text = IntStream.range(0, setting.length).mapToObj(j -> factors.get(j).name() + " " + factors.get(j).show(setting[j]))
        .collect(java.util.stream.Collectors.joining(", "));
    boolean build = factors.stream().anyMatch(f -> f.change() == Change.EACH_FURNACE);
    String cost = request.cost + (build ? (request.cost.isEmpty() ? "" : "; ") + "a furnace built for it, unless one of these settings stands" : "");
    return new Suggestion(aim, setting, text, gain, separates, cost, certainty, ties);
  }

  /** Expected separation of normal predictions, summed over pairs of reconstructions (Box &amp; Hill 1967). */
  private static void discriminate(Request request, List<Suggestion> suggestions, List<Finding> findings) {
    if (request.rivals.size() < 2) {
      findings.add(Finding.note("next.rivals", "the next trial", request.rivals.isEmpty() ? "no surviving reconstruction predicts this outcome, so that none can be separated"
          : "only " + request.rivals.get(0).name() + " predicts this outcome, so that nothing can be separated from it", "state a prediction for each surviving "
          + "reconstruction, or ask about an outcome that the forecast tells, such as the bloom mass"));
      return;
    }
    if (!(request.trialDeviation > 0)) {
      findings.add(Finding.note("next.scatter", "the next trial", "the scatter between trials is unknown, so that it cannot be said how far predictions must lie apart",
          "burn a repeat, or record the outcome of more trials"));
      return;
    }
    List<double[]> candidates = candidates(request);
    double[] separation = candidates.stream().mapToDouble(s -> separation(request, s)).toArray();
    int best = IntStream.range(0, separation.length).boxed().max(Comparator.comparingDouble(i -> separation[i])).orElseThrow();
    double most = separation[best];
    if (!(most > 1e-12)) {
      findings.add(Finding.note("next.same", "the next trial", "the surviving reconstructions predict the same at every setting "
          + "allowed", "compare another outcome, or state where they differ"));
      return;
    }
    List<double[]> ties = IntStream.range(0, separation.length).filter(i -> i != best && separation[i] > most * (1 - TIE))
        .mapToObj(candidates::get).limit(SHOWN_TIES).toList();
    suggestions.add(suggestion(request, Aim.DISCRIMINATE, candidates.get(best), most, apart(request, candidates.get(best)),
        certainty(request, candidates.get(best)), ties));
  }

  /** The same with one more suggestion at the end. */
  public NextTrial with(Suggestion suggestion) {
    List<Suggestion> more = new ArrayList<>(suggestions);
    more.add(suggestion);
    return new NextTrial(List.copyOf(more), findings);
  }

  private static List<double[]> candidates(Request request) {
    List<double[]> grid = request.space.candidates(STEPS);
    return grid.isEmpty() ? request.space.region() : grid;
  }

  private static double separation(Request request, double[] setting) {
    double total = request.rivals.stream().mapToDouble(Rival::probability).sum();
    double sum = 0;
    for (Rival a : request.rivals) {
      for (Rival b : request.rivals) {
        double va = variance(request, a);
        double vb = variance(request, b);
        double gap = a.prediction().applyAsDouble(setting) - b.prediction().applyAsDouble(setting);
        sum += a.probability() * b.probability() * (va / vb - 1 + gap * gap / vb);
      }
    }
    // a setting at which a reconstruction predicts nothing separates nothing
    return Double.isNaN(sum) ? 0 : sum / (2 * total * total);
  }

  private static double variance(Request request, Rival rival) {
    double furnace = 1 + request.strata.furnace() + request.strata.day();
    return request.trialDeviation * request.trialDeviation * furnace + rival.deviation() * rival.deviation();
  }

  private static String apart(Request request, double[] setting) {
    List<Rival> by = request.rivals.stream().sorted(Comparator.comparingDouble(r -> r.prediction().applyAsDouble(setting))).toList();
    double total = by.stream().mapToDouble(Rival::probability).sum();
    boolean alike = by.stream().mapToDouble(Rival::probability).distinct().count() == 1;
    return "it separates " + by.stream().map(r -> r.name() + " (predicts " + Printed.number(r.prediction().applyAsDouble(setting), 3)
        + (alike ? "" : ", holds " + Printed.fixed(100 * r.probability() / total, 0) + " % of the belief after the trials so far") + ")").collect(java.util.stream.Collectors.joining(", "));
  }

  /** The chance that the two believed most are told apart at one in twenty, if one of them is right. */
  private static String certainty(Request request, double[] setting) {
    List<Rival> by = request.rivals.stream().sorted(Comparator.comparingDouble(r -> -r.probability())).toList();
    double gap = Math.abs(by.get(0).prediction().applyAsDouble(setting) - by.get(1).prediction().applyAsDouble(setting));
    double z = gap / Math.sqrt(Math.max(variance(request, by.get(0)), variance(request, by.get(1))));
    double chance = new org.hipparchus.distribution.continuous.NormalDistribution().cumulativeProbability(z - 1.959963984540054);
    return "if " + by.get(0).name() + " or " + by.get(1).name() + " is right, one such trial speaks against the other with a chance of about "
        + Printed.number(100 * chance, 2) + " %";
  }

  private static void improve(Request request, List<Suggestion> suggestions, List<Finding> findings) {
    int[] used = IntStream.range(0, request.agreement.length).filter(i -> Double.isFinite(request.agreement[i])).toArray();
    if (used.length < LEAST_FOR_IMPROVEMENT) {
      findings.add(Finding.note("next.too-few", "the next trial", used.length + " trials have an agreement; a surface through them "
          + "would be guesswork", "ask again from " + LEAST_FOR_IMPROVEMENT + " trials on"));
      return;
    }
    double[][] x = IntStream.of(used).mapToObj(i -> spread(request, request.done.settings().get(i))).toArray(double[][]::new);
    double[] y = IntStream.of(used).mapToDouble(i -> request.agreement[i]).toArray();
    GaussianProcess process = GaussianProcess.fit(x, y, request.seed);
    // with noise the best seen is partly luck: the best expected at a trial burnt is what must be beaten
    double target = java.util.Arrays.stream(x).mapToDouble(s -> process.at(s).mean()).max().orElseThrow();
    List<double[]> candidates = candidates(request);
    double[] gain = candidates.stream().mapToDouble(s -> process.at(spread(request, s)).improvement(target)).toArray();
    int best = IntStream.range(0, gain.length).boxed().max(Comparator.comparingDouble(i -> gain[i])).orElseThrow();
    GaussianProcess.Prediction there = process.at(spread(request, candidates.get(best)));
    List<double[]> ties = IntStream.range(0, gain.length).filter(i -> i != best && gain[i] > gain[best] * (1 - TIE))
        .mapToObj(candidates::get).limit(SHOWN_TIES).toList();
    suggestions.add(suggestion(request, Aim.IMPROVE, candidates.get(best), gain[best], "agreement expected at "
        + Printed.plusMinus(there.mean(), Math.sqrt(there.variance())) + ", " + Printed.number(target, 3) + " at the best trial so far; "
        + "expected gain " + Printed.number(gain[best], 2), "a smooth surface through " + used.length + " trials, nothing more; a repeat scatters by "
        + Printed.number(Math.sqrt(process.noise()), 2), ties));
  }

  /** Settings with categories spread into columns, so that distance between categories has a meaning. */
  private static double[] spread(Request request, double[] setting) {
    Model main = Model.main(request.space.factors());
    double[] row = main.row(setting);
    return java.util.Arrays.copyOfRange(row, 1, row.length);
  }
}
