package daubline.analysis.design;

import daubline.analysis.forecast.AssumedValues;
import daubline.analysis.forecast.SettingForecast;
import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Unit;
import daubline.base.Variables;
import daubline.base.Version;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Rule;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Forecast;
import daubline.model.Lot;
import daubline.model.Reconstruction;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;

/** What the process engine foresees at settings of a series: what must not be burnt, and what to expect of each trial. */
public final class Foreseen {

  /** Slag at the air inlet before this is no trial but a choked furnace: the third hour of charging (s). */
  private static final double CHOKED = 3 * 3600;
  /** Settings are judged on a grid of this step, so that few forecasts are needed. */
  private static final double STEP = 0.5;

  /** What a forecast tells of a variable of the catalogue. */
  private static final Map<BurnQuantity, String> STATED = new LinkedHashMap<>();

  static {
    STATED.put(BurnQuantity.BLOOM, "bloom_mass");
    STATED.put(BurnQuantity.DURATION, "main_sequence_duration");
    STATED.put(BurnQuantity.RESIDENCE, "burden_residence_time");
    STATED.put(BurnQuantity.MOUTH_GAS, "temperature_top");
    STATED.put(BurnQuantity.SLAG_FEO, "chem_feo_total");
    STATED.put(BurnQuantity.SLAG_LIQUIDUS, "slag_liquidus");
  }

  private final Variables variables;
  private final List<Factor> factors;
  private final SettingForecast usual;
  private final AssumedValues assumptions;
  private final Map<String, SettingForecast> byReconstruction = new LinkedHashMap<>();
  private final Map<String, String> judged = new ConcurrentHashMap<>();

  private Foreseen(StudySession session, Series series, List<Factor> factors) {
    this.factors = factors;
    variables = StudyVariables.of(session.study());
    assumptions = new AssumedValues(session.study(), series, variables);
    Optional<Trial> like = series.getTrials().stream().reduce((a, b) -> b);
    List<Lot> lots = series.getProvisions().stream().flatMap(p -> p.getLots().stream()).distinct().toList();
    usual = new SettingForecast(like, lots, Optional.empty(), variables);
    for (Reconstruction r : session.study().getReconstructions()) {
      byReconstruction.put(String.valueOf(r.getName()), new SettingForecast(like, lots, Optional.of(r), variables));
    }
  }

  /** What is foreseen for a series; for the thread that owns the session. */
  public static Foreseen of(StudySession session, Series series, List<Factor> factors) {
    return new Foreseen(session, series, factors);
  }

  /** The variable that a forecast can predict, with its quantity; empty for any other. */
  public static Optional<BurnQuantity> quantity(String variable) {
    return STATED.entrySet().stream().filter(e -> e.getValue().equals(variable)).map(Map.Entry::getKey).findFirst();
  }

  private Map<String, Amount> settings(double[] setting) {
    Map<String, Amount> settings = new LinkedHashMap<>();
    for (int j = 0; j < setting.length; j++) {
      if (!factors.get(j).id().equals(FactorReader.RECONSTRUCTION)) {
        settings.put(factors.get(j).id(), BurntTrials.amount(variables, factors.get(j), setting[j]));
      }
    }
    return settings;
  }

  private SettingForecast forecaster(double[] setting) {
    for (int j = 0; j < setting.length; j++) {
      if (factors.get(j).id().equals(FactorReader.RECONSTRUCTION)) {
        return byReconstruction.getOrDefault(factors.get(j).show(setting[j]), usual);
      }
    }
    return usual;
  }

  /** The forecast at a coded setting; empty when too little is known. */
  public Optional<BurnForecast> at(double[] setting, int draws, long seed) {
    return forecaster(setting).at(settings(setting), draws, seed);
  }

  /** The forecast at a coded setting if a reconstruction holds. */
  Optional<BurnForecast> at(double[] setting, String reconstruction, int draws, long seed) {
    return byReconstruction.getOrDefault(reconstruction, usual).at(settings(setting), draws, seed);
  }

  /** What a forecast lacks at the middle of the factors; empty when it can be made. */
  public List<Finding> missing() {
    double[] middle = factors.stream().mapToDouble(f -> f.codes().length > 0 ? f.codes()[0] : 0).toArray();
    return forecaster(middle).missing(settings(middle)).stream().filter(Finding::isError).toList();
  }

  /** The rule that forbids what would choke before the third hour or find no steady heat; empty when nothing can be foreseen. */
  public Optional<Rule> rule() {
    return missing().isEmpty() ? Optional.of(Rule.judged("the forecast says it would choke before the third hour, or find no steady heat",
        s -> !why(s).isEmpty())) : Optional.empty();
  }

  /** Why a coded setting should not be burnt, judged at the nearest point of a coarse grid; empty when nothing speaks against it. */
  public String why(double[] setting) {
    double[] near = setting.clone();
    for (int j = 0; j < near.length; j++) {
      near[j] = factors.get(j).isCategory() ? near[j] : Math.round(near[j] / STEP) * STEP;
    }
    return judged.computeIfAbsent(Arrays.toString(near), k -> judge(near));
  }

  private String judge(double[] setting) {
    Optional<BurnForecast> forecast = at(setting, 0, 0);
    if (forecast.isEmpty()) {
      return "";
    }
    if (!forecast.get().shaft().converged()) {
      return "no steady hot shaft is found";
    }
    double blocking = forecast.get().get(BurnQuantity.BLOCKING).central();
    boolean chokes = !isTapped(setting) && blocking < CHOKED && blocking < forecast.get().get(BurnQuantity.DURATION).central();
    return chokes ? "slag reaches the air inlet after " + daubline.base.Printed.number(blocking / 3600, 2) + " h" : "";
  }

  private boolean isTapped(double[] setting) {
    Amount way = settings(setting).get("slag_management");
    return way != null && way.category().equals("slag tapping");
  }

  /**
   * What is foreseen of the trials of a plan.
   *
   * @param stated the predictions, as ranges from 5 to 95 %
   * @param findings what they assume, and the trials of which nothing could be predicted, with why
   */
  public record Outlook(List<PlanFreezer.Stated> stated, List<Finding> findings) {
    public Outlook {
      stated = List.copyOf(stated);
      findings = List.copyOf(findings);
    }
  }

  /** What is foreseen of each trial of a design; what the plan leaves open is assumed, and said. */
  public Outlook outlook(Design design, int draws, long seed) {
    List<PlanFreezer.Stated> stated = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    Map<String, List<Integer>> assumed = new LinkedHashMap<>();
    for (int i = 0; i < design.size(); i++) {
      double[] setting = design.settings().get(i);
      SettingForecast forecaster = forecaster(setting).assuming(assumptions);
      List<String> taken = forecaster.assumed(settings(setting));
      List<PlanFreezer.Stated> of = predictions(i, forecaster.at(settings(setting), draws, seed), draws, seed, taken);
      if (of.isEmpty()) {
        findings.add(unforeseen(i, forecaster.missing(settings(setting))));
      } else {
        assumed.computeIfAbsent(String.join("; ", taken), k -> new ArrayList<>()).add(i + 1);
      }
      stated.addAll(of);
    }
    assumed.remove("");
    assumed.forEach((what, trials) -> findings.add(Finding.note("plan.assumed", trials.size() == design.size() ? "all trials" : "trials " + trials.stream().map(String::valueOf).collect(Collectors.joining(", ")),
        "assumed for the predictions: " + what, "say what a trial takes in the stock of the series, or state it as a choice of the reconstruction, and freeze anew")));
    return new Outlook(stated, findings);
  }

  private List<PlanFreezer.Stated> predictions(int place, Optional<BurnForecast> forecast, int draws, long seed, List<String> assumed) {
    List<PlanFreezer.Stated> stated = new ArrayList<>();
    String engine = "process engine, Daubline " + Version.NUMBER + ", " + draws + " draws, seed " + seed;
    String note = assumed.isEmpty() ? "" : "Assumed: " + String.join("; ", assumed) + ".";
    forecast.ifPresent(f -> STATED.forEach((quantity, variable) -> amount(f.get(quantity), variable)
        .ifPresent(a -> stated.add(new PlanFreezer.Stated(place, variable, a, engine, note)))));
    return stated;
  }

  private static Finding unforeseen(int place, List<Finding> missing) {
    List<Finding> errors = missing.stream().filter(Finding::isError).toList();
    String why = errors.isEmpty() ? "no steady hot shaft is found at its settings" : String.join("; ", errors.stream().map(Finding::what).toList());
    return Finding.warning("plan.no-prediction", "trial " + (place + 1), "nothing is predicted: " + why,
        errors.isEmpty() ? "look at its settings, or state a prediction of your own" : "mend it in the factors, the reconstruction or the lots, or state a prediction of your own");
  }

  private Optional<Amount> amount(Forecast forecast, String variable) {
    boolean ranged = Double.isFinite(forecast.low()) && Double.isFinite(forecast.high()) && forecast.low() < forecast.high();
    Unit unit = variables.get(variable).unit();
    return ranged ? Optional.of(Amount.range(rounded(forecast.low(), unit), rounded(forecast.high(), unit))) : Optional.empty();
  }

  /** Three digits in the unit of the variable are more than a forecast knows. */
  private static double rounded(double value, Unit unit) {
    return unit.toCanonical(Double.parseDouble(daubline.base.Printed.number(unit.fromCanonical(value), 3)));
  }
}
