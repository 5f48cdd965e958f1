package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.analysis.record.PlanningData.ProvisionData;
import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.Unit;
import daubline.base.Variable;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Strata;
import daubline.engine.design.learn.BoxMeyer;
import daubline.engine.design.learn.EffectsReport;
import daubline.engine.design.next.Beliefs;
import daubline.engine.design.next.NextTrial;
import daubline.engine.design.next.Rival;
import daubline.engine.design.next.ScreenFollowUp;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What to burn next in a series.
 *
 * @param factors the factors that settings are coded in
 * @param next the suggestions
 * @param findings what stood in the way
 */
public record NextSteps(List<Factor> factors, NextTrial next, List<Finding> findings) {

  /** Why forecasts tell no reconstructions apart; of no use beside a trial that does by what their trials left. */
  private static final List<String> NO_RIVALS = List.of("next.rivals", "next.same", "next.scatter");

  /**
   * What it starts from.
   *
   * @param effects what the trials say so far, of the outcome that reconstructions are told apart by
   * @param agreement agreement of each trial with a sheet, NaN where there is none
   * @param foreseen the process engine's forecasts
   * @param strata how alike the trials of a furnace are thought to be
   */
  public record Request(StudySnapshot study, SeriesEffects effects, double[] agreement, Foreseen foreseen, Strata strata, long seed) {
  }

  /** The suggestions. @throws IllegalArgumentException when the series has no factor that can be set */
  public static NextSteps of(Request request, Progress progress) {
    SeriesEffects effects = request.effects;
    DesignBrief brief = effects.brief();
    if (brief.factors().isEmpty()) {
      throw new IllegalArgumentException("the series has no factors, so no setting can be suggested; add what you will vary");
    }
    BurntTrials burnt = BurntTrials.of(request.study, brief, false);
    Model model = Model.main(brief.factors());
    List<Finding> findings = new ArrayList<>(brief.findings());
    double deviation = effects.report().map(r -> r.trialDeviation()).filter(d -> d > 0).orElseGet(() -> scatter(effects.outcome(), findings));
    String cost = cost(request.study, brief, burnt);
    List<Rival> rivals = deviation > 0 ? Beliefs.after(rivals(request), burnt.design(), toBelieve(request, effects.outcome().values()), deviation) : rivals(request);
    NextTrial trial = NextTrial.suggest(new NextTrial.Request(burnt.design(), model, brief.space(), request.strata, request.agreement, rivals,
        deviation, cost, request.seed), progress);
    Optional<NextTrial.Suggestion> telling = TellingTrial.of(request.study, brief, burnt, cost);
    NextTrial told = telling.map(trial::with).orElse(trial);
    NextTrial next = screen(effects, cost).map(told::with).orElse(told);
    next.findings().stream().filter(f -> telling.isEmpty() || !NO_RIVALS.contains(f.code())).forEach(findings::add);
    return new NextSteps(brief.factors(), next, List.copyOf(findings));
  }

  /** Forecasts speak of every trial burnt; what was stated before the trials of a reconstruction speaks of these alone and moves no belief. */
  private static double[] toBelieve(Request request, double[] outcomes) {
    boolean forecast = Foreseen.quantity(request.effects.outcome().id()).isPresent() && request.foreseen.missing().isEmpty();
    return forecast ? outcomes : new double[0];
  }

  /** Without an error of the model the scatter of all trials is taken: it holds the effects too, so it is rather too large. */
  private static double scatter(Outcome outcome, List<Finding> findings) {
    double[] known = Arrays.stream(outcome.values()).filter(Double::isFinite).toArray();
    if (known.length < 3) {
      return Double.NaN;
    }
    double mean = Arrays.stream(known).average().orElse(0);
    double deviation = Math.sqrt(Arrays.stream(known).map(v -> (v - mean) * (v - mean)).sum() / (known.length - 1));
    findings.add(Finding.note("next.whole-scatter", "the next trial", "no trial is left to show how far equal trials differ; the scatter of all " + known.length
        + " trials is taken instead, " + Printed.number(deviation, 2) + " " + outcome.unit() + ", which holds the effects too", "burn a repeat: reconstructions can then be told "
        + "apart more sharply"));
    return deviation;
  }

  /** Trials that tell the explanations of an aliased screen apart; empty where there is no such screen. */
  private static Optional<NextTrial.Suggestion> screen(SeriesEffects effects, String cost) {
    Design screen = effects.burnt().design();
    List<Factor> all = effects.brief().factors();
    return effects.report().flatMap(EffectsReport::activity).flatMap(beliefs -> ScreenFollowUp.of(screen, effects.outcome().values(), beliefs, BoxMeyer.Prior.USUAL,
        s -> all.size() != screen.factors().size() || effects.brief().space().allows(coded(s, screen.factors(), all)), cost));
  }

  /** A setting of the factors that varied, in the codes of the brief: words that were never burnt are counted there too. */
  private static double[] coded(double[] setting, List<Factor> varied, List<Factor> all) {
    return IntStream.range(0, setting.length).mapToDouble(j -> all.get(j).isCategory() ? all.get(j).code(varied.get(j).names().get((int) Math.round(setting[j])))
        : setting[j]).toArray();
  }

  /** Each reconstruction not retired with what it predicts: by the process engine, otherwise what was stated before its trials. */
  private static List<Rival> rivals(Request request) {
    String variable = request.effects.outcome().id();
    Optional<BurnQuantity> quantity = Foreseen.quantity(variable);
    Optional<Unit> unit = request.study.variables().find(variable).map(Variable::unit);
    List<Rival> rivals = new ArrayList<>();
    for (String name : unit.isEmpty() ? List.<String>of() : request.study.record().reconstructions()) {
      quantity.flatMap(q -> byEngine(request, name, q, unit.get())).or(() -> stated(request.study, name, variable, unit.get())).ifPresent(rivals::add);
    }
    return rivals;
  }

  private static Optional<Rival> byEngine(Request request, String name, BurnQuantity quantity, Unit unit) {
    List<double[]> region = request.effects.brief().space().candidates(3);
    if (region.isEmpty() || request.foreseen.at(region.get(0), name, 0, request.seed).isEmpty()) {
      return Optional.empty();
    }
    Map<String, Double> known = new ConcurrentHashMap<>();
    ToDoubleFunction<double[]> prediction = s -> known.computeIfAbsent(Arrays.toString(s), k -> request.foreseen.at(s, name, 0, request.seed)
        .map((BurnForecast f) -> unit.fromCanonical(f.get(quantity).central())).orElse(Double.NaN));
    double own = request.foreseen.at(region.get(0), name, 60, request.seed).map(f -> f.get(quantity))
        .map(f -> unit.differenceFromCanonical(f.high() - f.low()) / 3.29).filter(Double::isFinite).orElse(0.0);
    return Optional.of(new Rival(name, 1, prediction, own));
  }

  private static Optional<Rival> stated(StudySnapshot study, String name, String variable, Unit unit) {
    List<Amount> amounts = study.record().trials().stream().filter(t -> t.reconstruction().equals(name)).flatMap(t -> t.predictions().stream())
        .filter(p -> p.variable().equals(variable)).map(p -> p.statement().amount()).filter(a -> a.isNumber() && Double.isFinite(a.value())).toList();
    if (amounts.isEmpty()) {
      return Optional.empty();
    }
    double mean = amounts.stream().mapToDouble(a -> unit.fromCanonical(a.value())).average().orElseThrow();
    double half = amounts.stream().mapToDouble(a -> unit.differenceFromCanonical(Double.isNaN(a.low()) || Double.isNaN(a.high()) ? a.sigmaOr(0) : (a.high() - a.low()) / 3.29))
        .average().orElse(0);
    return Optional.of(new Rival(name, 1, s -> mean, half));
  }

  /** What one more trial takes of the stock; where none is stated, what the trials burnt took. */
  private static String cost(StudySnapshot study, DesignBrief brief, BurntTrials burnt) {
    Map<String, String> parts = new LinkedHashMap<>();
    for (ProvisionData p : brief.series().planning().provisions()) {
      if (p.perTrial() > 0) {
        parts.put(p.name(), Printed.number(p.perTrial()) + " " + (p.unit().isEmpty() ? "kg" : p.unit()) + " of " + p.name());
      }
    }
    return parts.isEmpty() ? usualCost(study, burnt.trials()) : String.join(", ", parts.values());
  }

  private static String usualCost(StudySnapshot study, List<TrialData> trials) {
    return List.of("ore_total", "charcoal_total").stream().flatMap(id -> study.variables().find(id).stream()).map(v -> Outcome.of(study, v, trials))
        .filter(o -> o.known() > 0).map(o -> "about " + Printed.number(Arrays.stream(o.values()).filter(Double::isFinite).average().orElse(0), 2) + " " + o.unit()
            + " (" + o.name() + ")").collect(Collectors.joining(", "));
  }
}
