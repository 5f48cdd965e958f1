package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.Unit;
import daubline.base.Variables;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.stats.Quantiles;
import daubline.model.Choice;
import daubline.model.Claim;
import daubline.model.ModelFactory;
import daubline.model.Provision;
import daubline.model.Reading;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a forecast of a planned trial takes where the plan is silent: what the stock says of a trial, then the middle of the trials
 * burnt, of the reconstructions still held, of the evidence, and last a usual value with a wide range. Each says what it rests on.
 */
public final class AssumedValues {

  /** A usual value lies within this factor either way (common practice, no source). */
  private static final double USUAL_DOUBT = 1.5;
  /** What is known of one place only may be off by this share (common practice, no source). */
  private static final double ALONE = 0.15;
  /** However alike values are, the next differs by this share (common practice, no source). */
  private static final double LEAST = 0.03;
  /** Charcoal of a small smelt, kg (common practice, no source). */
  private static final double USUAL_CHARCOAL = 40;
  private static final List<String> CHARCOAL = List.of("charcoal_main", "charcoal_total");
  private static final List<String> AIR = List.of("air_flow", "bellows_stroke_volume", "bellows_strokes_per_minute", "bellows_operators");

  private final Study study;
  private final Series series;
  private final Variables variables;

  /** Assumptions for the trials of a series. */
  public AssumedValues(Study study, Series series, Variables variables) {
    this.study = study;
    this.series = series;
    this.variables = variables;
  }

  /**
   * A value taken because the plan is silent.
   *
   * @param variable the id of the variable
   * @param amount in canonical units
   * @param basis what it rests on, in words
   */
  public record Assumed(String variable, Amount amount, String basis) {
  }

  /** What this trial needs for a forecast and has nowhere. */
  List<Assumed> of(Trial trial) {
    KnownValues known = new KnownValues(trial, variables, Overlay.NONE);
    List<Assumed> assumed = new ArrayList<>();
    if (CHARCOAL.stream().allMatch(v -> known.number(v).isEmpty())) {
      assumed.add(charcoal());
    }
    if (known.number("ore_total").isEmpty()) {
      assumed.add(ore(known, assumed));
    }
    if (known.number("base_internal_diameter").isEmpty()) {
      assumed.add(found("base_internal_diameter").orElseGet(() -> usual("base_internal_diameter", ShaftParameter.DIAMETER.usual())));
    }
    if (AIR.stream().allMatch(v -> known.number(v).isEmpty()) && known.word("air_device").isEmpty()) {
      air(known).ifPresent(assumed::add);
    }
    if (!hasIron(trial, known)) {
      assumed.add(iron());
    }
    return List.copyOf(assumed);
  }

  /** As a value of a trial, planned. */
  static StagedValue value(Assumed assumed) {
    StagedValue value = ModelFactory.eINSTANCE.createStagedValue();
    value.setId("");
    value.setVariable(assumed.variable);
    value.setStage(Stage.PLANNED);
    Readings.put(value, assumed.amount);
    return value;
  }

  /** As it is printed: “Ore charged 16 to 36 kg, a usual value (…)”. */
  public String text(Assumed assumed) {
    Unit unit = variables.get(assumed.variable).unit();
    Amount a = assumed.amount;
    return variables.get(assumed.variable).name() + " " + Printed.number(unit.fromCanonical(a.low()), 3) + " to "
        + Printed.number(unit.fromCanonical(a.high()), 3) + " " + unit.symbol() + ", " + assumed.basis;
  }

  private Assumed charcoal() {
    return provided(Material.CHARCOAL, "charcoal_total").or(() -> found("charcoal_total")).orElseGet(() -> usual("charcoal_total", USUAL_CHARCOAL));
  }

  /** Without stock and trials, ore goes with the charcoal in the usual ratio. */
  private Assumed ore(KnownValues known, List<Assumed> assumed) {
    Optional<Assumed> stated = provided(Material.ORE, "ore_total").or(() -> found("ore_total"));
    double charcoal = CHARCOAL.stream().flatMap(v -> known.number(v).stream()).map(Amount::value).findFirst()
        .orElseGet(() -> assumed.isEmpty() ? USUAL_CHARCOAL : assumed.get(0).amount.value());
    return stated.orElseGet(() -> usual("ore_total", ShaftParameter.ORE_RATIO.usual() * charcoal));
  }

  /** Without a known height it cannot draw its own air either; with one the forecast takes natural draught and says so. */
  private Optional<Assumed> air(KnownValues known) {
    boolean shaft = Stream.of("height_above_inlet", "furnace_height").anyMatch(v -> known.number(v).isPresent());
    return found("air_flow").or(() -> shaft ? Optional.empty() : Optional.of(usual("air_flow", ShaftParameter.AIR.usual())));
  }

  private boolean hasIron(Trial trial, KnownValues known) {
    return known.number("ore_iron").isPresent() || ironOf(Stream.concat(trial.getLots().stream(), trial.getLots().stream().flatMap(l -> l.getFrom().stream())))
        .length > 0;
  }

  private Assumed iron() {
    double[] analysed = ironOf(study.getLots().stream());
    return analysed.length > 0 ? middle("ore_iron", analysed, analysed.length == 1 ? "the one analysis of an ore in the study" : "the middle of " + analysed.length
        + " analyses of ore in the study") : found("ore_iron").orElseGet(() -> {
          double usual = ShaftParameter.ORE_IRON.usual();
          return new Assumed("ore_iron", Amount.range(usual - 0.1, usual + 0.1), basisOfUsual());
        });
  }

  private static double[] ironOf(Stream<daubline.model.Lot> lots) {
    return lots.flatMap(l -> l.getAnalyses().stream()).filter(a -> a.getMaterial() == Material.ORE).map(Oxides::of).mapToDouble(Analysis::iron).filter(i -> i > 0).toArray();
  }

  /** What the stock of the series says that a trial takes, in kg. */
  private Optional<Assumed> provided(Material material, String variable) {
    return series.getProvisions().stream().filter(p -> p.getPerTrial() != null && p.getPerTrial() > 0 && isOf(p, material))
        .filter(p -> p.getUnit() == null || p.getUnit().isBlank() || p.getUnit().equals("kg")).findFirst()
        .map(p -> new Assumed(variable, Amount.range(0.95 * p.getPerTrial(), 1.05 * p.getPerTrial()), "what the stock “" + p.getName() + "” gives a trial"));
  }

  private static boolean isOf(Provision provision, Material material) {
    return provision.getLots().isEmpty() ? provision.getName() != null && provision.getName().strip().toLowerCase(java.util.Locale.ROOT).contains(material.word())
        : provision.getLots().stream().allMatch(l -> l.getMaterial() == material);
  }

  private Optional<Assumed> found(String variable) {
    double[] burnt = study.getSeries().stream().flatMap(s -> s.getTrials().stream()).filter(t -> t.getStatus() != null && t.getStatus().isBurnt())
        .flatMap(t -> of(t, variable)).mapToDouble(Double::doubleValue).toArray();
    if (burnt.length > 0) {
      return Optional.of(middle(variable, burnt, burnt.length == 1 ? "the one trial burnt" : "the middle of " + burnt.length + " trials burnt"));
    }
    double[] chosen = study.getReconstructions().stream().filter(r -> !r.isRetired()).flatMap(r -> r.getChoices().stream())
        .filter((Choice c) -> variable.equals(c.getVariable())).flatMap(c -> number(c).stream()).mapToDouble(Double::doubleValue).toArray();
    if (chosen.length > 0) {
      return Optional.of(middle(variable, chosen, "the middle of " + chosen.length + " choices of reconstructions"));
    }
    double[] claimed = study.getSites().stream().flatMap(s -> s.getContexts().stream()).flatMap(c -> c.getSheets().stream()).flatMap(s -> s.getClaims().stream())
        .filter((Claim c) -> variable.equals(c.getVariable())).flatMap(c -> number(c).stream()).mapToDouble(Double::doubleValue).toArray();
    return claimed.length > 0 ? Optional.of(middle(variable, claimed, "the middle of " + claimed.length + " claims on evidence sheets")) : Optional.empty();
  }

  private static Stream<Double> of(Trial trial, String variable) {
    Stream<StagedValue> build = trial.getBuild() == null ? Stream.empty() : trial.getBuild().getValues().stream();
    List<StagedValue> values = Stream.concat(build, trial.getValues().stream()).filter(v -> variable.equals(v.getVariable())).toList();
    return Stream.of(Stage.AS_FIRED, Stage.AS_BUILT, Stage.PLANNED).flatMap(stage -> values.stream().filter(v -> v.getStage() == stage))
        .flatMap(v -> number(v).stream()).limit(1);
  }

  private static Optional<Double> number(Reading reading) {
    return Optional.of(Readings.amount(reading)).filter(a -> a.isNumber() && a.value() > 0).map(Amount::value);
  }

  /** The range of the middle half of the values, at least a little about the median. */
  private static Assumed middle(String variable, double[] values, String basis) {
    double[] quartiles = Quantiles.of(values, 0.25, 0.5, 0.75);
    double doubt = values.length == 1 ? ALONE : LEAST;
    double low = Math.min(quartiles[0], quartiles[1] * (1 - doubt));
    double high = Math.max(quartiles[2], quartiles[1] * (1 + doubt));
    return new Assumed(variable, Amount.range(low, high), basis);
  }

  private static Assumed usual(String variable, double usual) {
    return new Assumed(variable, Amount.range(usual / USUAL_DOUBT, usual * USUAL_DOUBT), basisOfUsual());
  }

  private static String basisOfUsual() {
    return "a usual value (common practice, no source)";
  }
}
