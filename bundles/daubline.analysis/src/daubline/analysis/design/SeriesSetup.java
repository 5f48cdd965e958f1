package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.base.Material;
import daubline.base.Variable;
import daubline.engine.design.advise.Question;
import daubline.model.Factor;
import daubline.model.ForbiddenCombination;
import daubline.model.Labour;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.PlannedRun;
import daubline.model.Provision;
import daubline.model.Series;
import daubline.model.Study;
import daubline.session.StudySession;
import daubline.session.store.LotMass;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** Writes what a series is planned with into the study, each step as one named change. */
public final class SeriesSetup {

  private static final ModelFactory MAKE = ModelFactory.eINSTANCE;
  /** The variables that say how much of a material a trial took. */
  private static final Map<Material, String> USED = new LinkedHashMap<>(Map.of(Material.ORE, "ore_total", Material.CHARCOAL, "charcoal_total"));

  private SeriesSetup() {
  }

  /** A new series. */
  public static Series series(StudySession session, String name, String question, Question aim) {
    Series series = MAKE.createSeries();
    series.setName(name);
    series.setQuestion(question);
    series.setAim(aim.name());
    session.edit("Add series " + name, () -> session.study().getSeries().add(series));
    return series;
  }

  /** The series of a snapshot in the study itself. */
  public static Series find(StudySession session, String id) {
    return session.find(id, Series.class).orElseThrow(() -> new IllegalArgumentException("the study has no series with the id " + id));
  }

  /**
   * Sets a factor, new or anew.
   *
   * @param levels as {@link FactorReader} reads them
   */
  public static void factor(StudySession session, Series series, String variable, String levels, boolean withFurnace, boolean withDay) {
    session.edit("Vary " + variable, () -> {
      Factor factor = series.getFactors().stream().filter(f -> variable.equals(f.getVariable())).findFirst().orElseGet(() -> {
        Factor added = MAKE.createFactor();
        added.setVariable(variable);
        series.getFactors().add(added);
        return added;
      });
      factor.setLevels(levels);
      factor.setHardToChange(withFurnace);
      factor.setDaily(withDay);
    });
  }

  /** Whether a variable is usually set with the furnace: what is planned and built but not fired. */
  public static boolean isBuilt(Variable variable) {
    return variable.isAt(Variable.Place.BUILT);
  }

  /** Forbids a combination. */
  public static void forbid(StudySession session, Series series, String conditions, String because) {
    ForbiddenCombination forbidden = MAKE.createForbiddenCombination();
    forbidden.setConditions(conditions);
    forbidden.setBecause(because);
    session.edit("Forbid " + conditions, () -> series.getForbidden().add(forbidden));
  }

  /** Sets a provision, new or anew by its name. */
  public static void provision(StudySession session, Series series, String name, Consumer<Provision> fill) {
    session.edit("Provide " + name, () -> {
      Provision provision = series.getProvisions().stream().filter(p -> name.equals(p.getName())).findFirst().orElseGet(() -> {
        Provision added = MAKE.createProvision();
        added.setName(name);
        added.setUnit("kg");
        series.getProvisions().add(added);
        return added;
      });
      fill.accept(provision);
    });
  }

  /** States what the plan of a series is asked for. */
  public static void wishes(StudySession session, Series series, Consumer<Series> fill) {
    session.edit("State the size of the plan", () -> fill.accept(series));
  }

  /** Sets the labour of a series. */
  public static void labour(StudySession session, Series series, Consumer<Labour> fill) {
    session.edit("Plan labour and season", () -> {
      if (series.getLabour() == null) {
        series.setLabour(MAKE.createLabour());
      }
      fill.accept(series.getLabour());
    });
  }

  /**
   * Provides ore and charcoal from the lots that nothing else of their kind was made of, with what past trials took of them,
   * and clay where there is any. What is provided already stays as it is. Ore and charcoal that lay there while trials were
   * burnt and that none of them took are left alone: such as fines kept for something else.
   *
   * @return the names of what was provided
   */
  public static List<String> provideFromLots(StudySession session, Series series, StudySnapshot study) {
    Map<Material, List<Lot>> byMaterial = new LinkedHashMap<>();
    for (Lot lot : session.study().getLots()) {
      Material material = lot.getMaterial();
      boolean stock = material == Material.ORE || material == Material.CHARCOAL || material == Material.CLAY;
      if (stock && isLeaf(session.study(), lot) && !isLeftAlone(session.study(), lot) && series.getProvisions().stream().noneMatch(p -> p.getLots().contains(lot))) {
        byMaterial.computeIfAbsent(material, m -> new ArrayList<>()).add(lot);
      }
    }
    session.edit("Provide from the lots", () -> byMaterial.forEach((material, lots) -> {
      Provision provision = MAKE.createProvision();
      provision.setName(material.word());
      provision.setUnit("kg");
      provision.getLots().addAll(lots);
      used(study, material).ifPresent(provision::setPerTrial);
      series.getProvisions().add(provision);
    }));
    return byMaterial.keySet().stream().map(Material::word).toList();
  }

  /** Whether no other lot of its kind was made of it; ash burnt of charcoal for the laboratory takes nothing away. */
  private static boolean isLeaf(Study study, Lot lot) {
    return study.getLots().stream().noneMatch(l -> l.getMaterial() == lot.getMaterial() && l.getFrom().contains(lot));
  }

  private static boolean isLeftAlone(Study study, Lot lot) {
    boolean charged = LotMass.of(study, lot).filter(m -> m.charged().value() > 0).isPresent();
    String since = Stream.concat(Stream.of(String.valueOf(lot.getDeliveredOn())), lot.getTreatments().stream().map(t -> String.valueOf(t.getOn())))
        .filter(on -> !on.equals("null")).max(Comparator.naturalOrder()).orElse("");
    return USED.containsKey(lot.getMaterial()) && !charged && !since.isEmpty() && study.getSeries().stream().flatMap(s -> s.getTrials().stream())
        .anyMatch(t -> t.getStatus().isBurnt() && t.getOn() != null && t.getOn().compareTo(since) > 0);
  }

  /** The mean that past trials took of a material, kg to two digits. */
  private static Optional<Double> used(StudySnapshot study, Material material) {
    List<TrialData> trials = study.trials().stream().filter(t -> t.isCompared(true)).toList();
    return Optional.ofNullable(USED.get(material)).flatMap(id -> study.variables().find(id)).map(v -> Outcome.of(study, v, trials))
        .filter(o -> o.known() > 0).map(o -> Double.parseDouble(daubline.base.Printed.number(Arrays.stream(o.values()).filter(Double::isFinite).average().orElse(0), 2)));
  }

  /**
   * Notes why a trial was burnt otherwise than the last frozen plan said.
   *
   * @param trial name or id of the trial
   */
  public static void deviation(StudySession session, Series series, String trial, String because) {
    PlannedRun run = series.getPlans().stream().flatMap(p -> p.getRuns().stream()).filter(r -> r.getTrial() != null)
        .filter(r -> trial.equals(r.getTrial().getName()) || trial.equals(r.getTrial().getId())).reduce((a, b) -> b)
        .orElseThrow(() -> new IllegalArgumentException("no frozen plan of the series has a trial “" + trial + "”"));
    session.edit("Note a deviation at " + trial, () -> run.setDeviation(because));
  }
}
