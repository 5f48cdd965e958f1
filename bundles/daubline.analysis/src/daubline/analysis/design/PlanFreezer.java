package daubline.analysis.design;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variables;
import daubline.base.Version;
import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Run;
import daubline.model.FrozenPlan;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.PlannedRun;
import daubline.model.Prediction;
import daubline.model.Reading;
import daubline.model.Reconstruction;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Writes a proposal into the study as one change: furnaces to build, trials planned in their order, what is predicted for
 * each with the time it was stated, and the frozen plan itself.
 */
public final class PlanFreezer {

  private static final ModelFactory MAKE = ModelFactory.eINSTANCE;

  private final Study study;
  private final Series series;
  private final Proposal proposal;
  private final Variables variables;
  private final Map<Integer, FurnaceBuild> builds = new HashMap<>();

  private PlanFreezer(Study study, Series series, Proposal proposal) {
    this.study = study;
    this.series = series;
    this.proposal = proposal;
    variables = StudyVariables.of(study);
  }

  /**
   * A prediction of one trial.
   *
   * @param place the place of the trial in the plan, from 0
   * @param variable the id of the variable
   * @param amount in canonical units
   * @param engine what stated it
   * @param note what it assumes; may be empty
   */
  public record Stated(int place, String variable, Amount amount, String engine, String note) {
  }

  /** Why a plan cannot be frozen now; empty when it can. */
  public static Optional<Finding> refusal(Series series) {
    if (series.isFrozen()) {
      return Optional.of(Finding.error("plan.series-frozen", name(series), "the series is closed and read-only", "plan a new series"));
    }
    boolean open = series.getPlans().stream().flatMap(p -> p.getRuns().stream()).map(PlannedRun::getTrial)
        .anyMatch(t -> t != null && t.getStatus() == TrialStatus.PLANNED);
    return open ? Optional.of(Finding.error("plan.frozen-already", name(series), "a frozen plan still has trials to burn",
        "burn or abandon them, or replace the plan while none of it was burnt")) : Optional.empty();
  }

  /** Whether the last frozen plan can be taken out because none of its trials was touched. */
  public static boolean isReplaceable(Series series) {
    return !series.getPlans().isEmpty() && !series.isFrozen() && last(series).getRuns().stream().map(PlannedRun::getTrial)
        .allMatch(t -> t == null || t.getStatus() == TrialStatus.PLANNED && t.getLog().isEmpty() && t.getRemains() == null);
  }

  private static FrozenPlan last(Series series) {
    return series.getPlans().get(series.getPlans().size() - 1);
  }

  /** Takes the last frozen plan out with its trials and the furnaces that nothing else uses. */
  public static void withdraw(StudySession session, Series series) {
    if (!isReplaceable(series)) {
      throw new IllegalArgumentException("the plan of " + name(series) + " cannot be withdrawn: some of it was burnt or recorded");
    }
    session.edit("Withdraw the plan of " + name(series), () -> remove(session.study(), last(series)));
  }

  private static void remove(Study study, FrozenPlan plan) {
    List<Trial> trials = plan.getRuns().stream().map(PlannedRun::getTrial).filter(t -> t != null).toList();
    List<FurnaceBuild> builds = trials.stream().map(Trial::getBuild).filter(b -> b != null).distinct().toList();
    EcoreUtil.delete(plan, true);
    trials.forEach(t -> EcoreUtil.delete(t, true));
    builds.stream().filter(b -> study.getSeries().stream().flatMap(s -> s.getTrials().stream()).noneMatch(t -> t.getBuild() == b))
        .forEach(b -> EcoreUtil.delete(b, true));
  }

  /**
   * Freezes a proposal.
   *
   * @param at the time, as it is to stand in the plan
   * @param predictions what is predicted
   * @throws IllegalArgumentException when the series cannot take a plan now
   */
  public static FrozenPlan freeze(StudySession session, Series series, Proposal proposal, String at, List<Stated> predictions) {
    refusal(series).ifPresent(f -> {
      throw new IllegalArgumentException(f.where() + ": " + f.what() + " – " + f.remedy());
    });
    FrozenPlan plan = MAKE.createFrozenPlan();
    session.edit("Freeze the plan of " + name(series), () -> new PlanFreezer(session.study(), series, proposal).write(plan, at, predictions));
    return plan;
  }

  private void write(FrozenPlan plan, String at, List<Stated> predictions) {
    Design design = proposal.plan().design();
    plan.setName(proposal.chosen().name());
    plan.setAim(proposal.brief().question().name());
    plan.setSeed(proposal.plan().seed());
    plan.setAlgorithm(proposal.plan().algorithm());
    plan.setVersion(proposal.plan().version());
    plan.setFrozenAt(at);
    plan.setEngine("Daubline " + Version.NUMBER);
    plan.setFurnaceRatio(proposal.strata().furnace());
    plan.setDayRatio(proposal.strata().day());
    plan.setRestriction(proposal.plan().restriction());
    plan.setReasons(String.join(" ", proposal.advice().reasons()));
    series.getPlans().add(plan);
    series.setSeed(proposal.plan().seed());
    int number = series.getTrials().stream().filter(t -> t.getNumber() != null).mapToInt(Trial::getNumber).max().orElse(0);
    List<Lot> lots = series.getProvisions().stream().flatMap(p -> p.getLots().stream()).distinct().toList();
    for (int i = 0; i < design.size(); i++) {
      Trial trial = trial(design, i, number + i + 1, lots);
      plan.getRuns().add(run(design, i, trial));
      int place = i;
      predictions.stream().filter(p -> p.place() == place).forEach(p -> trial.getPredictions().add(prediction(p, at, trial)));
    }
  }

  private Trial trial(Design design, int place, int number, List<Lot> lots) {
    Run run = design.runs().get(place);
    Trial trial = MAKE.createTrial();
    trial.setNumber(number);
    trial.setName(name(series) + " " + number);
    trial.setKind(TrialKind.EXPERIMENT);
    trial.setStatus(TrialStatus.PLANNED);
    trial.setBuild(builds.computeIfAbsent(run.furnace(), f -> build(design, run)));
    trial.setReconstruction(trial.getBuild().getReconstruction());
    trial.getLots().addAll(lots);
    put(design.factors(), run, trial.getValues(), false);
    proposal.season().calendar().ifPresent(c -> proposal.timetable().bars().stream().filter(b -> b.trial() == place).findFirst()
        .ifPresent(b -> trial.setOn(c.date(b.start()).toString())));
    series.getTrials().add(trial);
    return trial;
  }

  private FurnaceBuild build(Design design, Run run) {
    FurnaceBuild build = MAKE.createFurnaceBuild();
    build.setName(freeName());
    put(design.factors(), run, build.getValues(), true);
    for (int j = 0; j < design.factors().size(); j++) {
      if (design.factors().get(j).id().equals(FactorReader.RECONSTRUCTION)) {
        build.setReconstruction(reconstruction(design.factors().get(j).show(run.setting()[j])));
      }
    }
    study.getBuilds().add(build);
    return build;
  }

  private String freeName() {
    int n = builds.size() + 1;
    while (isTaken(name(series) + ", furnace " + n)) {
      n++;
    }
    return name(series) + ", furnace " + n;
  }

  private boolean isTaken(String name) {
    return study.getBuilds().stream().anyMatch(b -> name.equals(b.getName()));
  }

  private Reconstruction reconstruction(String name) {
    return study.getReconstructions().stream().filter(r -> name.equals(name(r))).findFirst().orElse(null);
  }

  /** Settings bound to the furnace stand with the furnace, the others with the trial. */
  private void put(List<Factor> factors, Run run, List<StagedValue> values, boolean ofFurnace) {
    for (int j = 0; j < factors.size(); j++) {
      Factor f = factors.get(j);
      if (!f.id().equals(FactorReader.RECONSTRUCTION) && (f.change() == Change.EACH_FURNACE) == ofFurnace) {
        StagedValue value = MAKE.createStagedValue();
        value.setStage(Stage.PLANNED);
        fill(value, f.id(), BurntTrials.amount(variables, f, run.setting()[j]), f.unit());
        values.add(value);
      }
    }
  }

  private PlannedRun run(Design design, int place, Trial trial) {
    Run planned = design.runs().get(place);
    PlannedRun run = MAKE.createPlannedRun();
    run.setPlace(place + 1);
    run.setFurnace(planned.furnace() + 1);
    run.setDay(day(design, place));
    run.setTrial(trial);
    for (int j = 0; j < design.factors().size(); j++) {
      Reading setting = MAKE.createReading();
      fill(setting, design.factors().get(j).id(), BurntTrials.amount(variables, design.factors().get(j), planned.setting()[j]), design.factors().get(j).unit());
      run.getSettings().add(setting);
    }
    return run;
  }

  /** The days in the order in which they come, from 1. */
  private static int day(Design design, int place) {
    int[] days = design.days();
    return (int) java.util.Arrays.stream(days, 0, place + 1).distinct().count();
  }

  private Prediction prediction(Stated stated, String at, Trial trial) {
    Prediction prediction = MAKE.createPrediction();
    fill(prediction, stated.variable(), stated.amount(), variables.find(stated.variable()).map(v -> v.unit().symbol()).orElse(""));
    prediction.setStatedOn(at);
    prediction.setLocked(true);
    prediction.setEngine(stated.engine());
    prediction.setNote(stated.note().isEmpty() ? null : stated.note());
    prediction.setReconstruction(trial.getReconstruction());
    return prediction;
  }

  private void fill(Reading reading, String variable, Amount amount, String unit) {
    reading.setVariable(variable);
    Readings.put(reading, amount);
    Optional<Unit> shown = variables.find(variable).flatMap(v -> Units.find(v.quantity(), unit));
    reading.setTyped(shown.filter(u -> amount.isNumber()).map(u -> Printed.amount(amount, u)).orElse(amount.category().isEmpty() ? amount.kind().word() : amount.category()));
    reading.setUnit(amount.isNumber() ? shown.map(Unit::symbol).orElse(null) : null);
  }

  private static String name(daubline.model.Named object) {
    return object.getName() == null || object.getName().isBlank() ? String.valueOf(object.getId()) : object.getName();
  }

  /** The trials of a frozen plan in order; those deleted since are left out. */
  public static List<Trial> trials(FrozenPlan plan) {
    List<Trial> trials = new ArrayList<>();
    plan.getRuns().stream().map(PlannedRun::getTrial).filter(t -> t != null).forEach(trials::add);
    return trials;
  }
}
