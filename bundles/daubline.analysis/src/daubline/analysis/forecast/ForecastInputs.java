package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.base.Variables;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.Spread;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.model.Component;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns what is known of a trial before the fire into the inputs of the process engine. */
final class ForecastInputs {

  /** Where a stated value has no uncertainty (common practice, no source). */
  private static final double USUAL_DOUBT = 0.03;

  /** Parameters that are variables as they stand; in the order of the parameters, which is printed. */
  private static final Map<ShaftParameter, String> DIRECT = new EnumMap<>(Map.ofEntries(
      Map.entry(ShaftParameter.DIAMETER, "base_internal_diameter"), Map.entry(ShaftParameter.STACK, "height_above_inlet"),
      Map.entry(ShaftParameter.AIR, "air_flow"), Map.entry(ShaftParameter.HEARTH, "inlet_height_above_floor"),
      Map.entry(ShaftParameter.CHARCOAL_SIZE, "charcoal_size"), Map.entry(ShaftParameter.CHARCOAL_MOISTURE, "charcoal_moisture"),
      Map.entry(ShaftParameter.CHARCOAL_DENSITY, "charcoal_bulk_density"), Map.entry(ShaftParameter.FIXED_CARBON, "charcoal_fixed_carbon"),
      Map.entry(ShaftParameter.ASH, "charcoal_ash"), Map.entry(ShaftParameter.ORE_MOISTURE, "ore_moisture")));

  private final Trial trial;
  private final KnownValues known;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Trail> analyses = new ArrayList<>();

  ForecastInputs(Trial trial, Variables variables) {
    this.trial = trial;
    this.known = new KnownValues(trial, variables);
  }

  /** The inputs; empty when ore, charcoal, diameter or air is not known, with findings that say so. */
  Optional<BurnInputs> build() {
    Map<ShaftParameter, Spread> furnace = new EnumMap<>(ShaftParameter.class);
    DIRECT.forEach((parameter, variable) -> known.number(variable).ifPresent(amount -> put(furnace, parameter, amount)));
    stackFromHeight(furnace);
    airFromBellows(furnace);
    oreSize(furnace);
    Analysis ore = analysis(Material.ORE);
    Optional<Amount> oreMass = planned("ore_total", "the ore to be charged");
    Optional<Amount> charcoal = known.number("charcoal_main").or(() -> planned("charcoal_total", "the charcoal to be burnt"));
    Stream.of(ShaftParameter.DIAMETER, ShaftParameter.AIR).filter(p -> !furnace.containsKey(p)).forEach(p -> missing(p.label()));
    if (ore.iron() <= 0) {
      missing("an analysis of the ore, or its iron content,");
    }
    if (findings.stream().anyMatch(Finding::isError) || oreMass.isEmpty() || charcoal.isEmpty()) {
      return Optional.empty();
    }
    ratioAndOre(furnace, ore, oreMass.get(), charcoal.get());
    Analysis lining = analysis(Material.CLAY);
    Analysis ash = analysis(Material.ASH);
    return Optional.of(new BurnInputs(furnace, ore, lining.total() > 0 ? lining : BurnInputs.USUAL_LINING, ash.total() > 0 ? ash : BurnInputs.USUAL_ASH,
        spread(oreMass.get()), spread(charcoal.get()), known.number("inlet_bore").map(Amount::value).orElse(0.025),
        known.number("inlet_count").map(a -> (int) Math.round(a.value())).orElse(1), Optional.empty(), List.of()));
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  List<Trail> used() {
    return Stream.concat(known.used().stream(), analyses.stream()).toList();
  }

  private Optional<Amount> planned(String variable, String what) {
    Optional<Amount> amount = known.number(variable);
    if (amount.isEmpty()) {
      missing(what);
    }
    return amount;
  }

  private void missing(String what) {
    findings.add(Finding.error("forecast.missing", trial.getName(), what + " is not known", "plan it in the trial, its build, its reconstruction or its lots")
        .about(trial.getId(), ""));
  }

  private void put(Map<ShaftParameter, Spread> furnace, ShaftParameter parameter, Amount amount) {
    Spread spread = spread(amount);
    if (spread.median() < parameter.low() || spread.median() > parameter.high()) {
      findings.add(Finding.warning("forecast.range", trial.getName(), parameter.label() + " " + daubline.base.Printed.number(spread.median()) + " "
          + parameter.unit() + " lies outside what the shaft model knows (" + daubline.base.Printed.number(parameter.low()) + " to "
          + daubline.base.Printed.number(parameter.high()) + ")", "check the value; the forecast is refused if the model cannot take it").about(trial.getId(), ""));
    }
    furnace.put(parameter, spread);
  }

  private void stackFromHeight(Map<ShaftParameter, Spread> furnace) {
    if (!furnace.containsKey(ShaftParameter.STACK)) {
      known.number("furnace_height").ifPresent(height -> {
        double hearth = known.number("inlet_height_above_floor").map(Amount::value).orElse(ShaftParameter.HEARTH.usual());
        if (height.value() > hearth) {
          put(furnace, ShaftParameter.STACK, Amount.exact(height.value() - hearth));
        }
      });
    }
  }

  private void airFromBellows(Map<ShaftParameter, Spread> furnace) {
    Optional<Amount> stroke = known.number("bellows_stroke_volume");
    Optional<Amount> rate = known.number("bellows_strokes_per_minute");
    if (!furnace.containsKey(ShaftParameter.AIR) && stroke.isPresent() && rate.isPresent()) {
      double efficiency = known.number("bellows_efficiency").map(Amount::value).orElse(0.7);
      furnace.put(ShaftParameter.AIR, Spread.relative(stroke.get().value() * rate.get().value() * efficiency, 0.15));
    }
  }

  private void oreSize(Map<ShaftParameter, Spread> furnace) {
    Optional<Amount> low = known.number("ore_grain_low");
    Optional<Amount> high = known.number("ore_grain_high");
    if (low.isPresent() && high.isPresent() && low.get().value() < high.get().value()) {
      furnace.put(ShaftParameter.ORE_SIZE, Spread.even(Math.max(low.get().value(), ShaftParameter.ORE_SIZE.low()), high.get().value()));
    }
  }

  private void ratioAndOre(Map<ShaftParameter, Spread> furnace, Analysis ore, Amount oreMass, Amount charcoal) {
    double oreDry = oreMass.value() * (1 - median(furnace, ShaftParameter.ORE_MOISTURE));
    double charcoalDry = charcoal.value() * (1 - median(furnace, ShaftParameter.CHARCOAL_MOISTURE));
    furnace.put(ShaftParameter.ORE_RATIO, Spread.relative(oreDry / charcoalDry, 0.05));
    furnace.put(ShaftParameter.ORE_IRON, Spread.exact(Math.min(ore.iron(), ShaftParameter.ORE_IRON.high())));
    furnace.put(ShaftParameter.ORE_SILICA, Spread.exact(ore.share(Oxide.SIO2)));
    furnace.put(ShaftParameter.ORE_ALUMINA, Spread.exact(ore.share(Oxide.AL2O3)));
  }

  private static double median(Map<ShaftParameter, Spread> furnace, ShaftParameter parameter) {
    return furnace.containsKey(parameter) ? furnace.get(parameter).median() : parameter.usual();
  }

  private static Spread spread(Amount amount) {
    if (amount.kind() == ValueKind.RANGE) {
      return Spread.even(amount.low(), amount.high());
    }
    double sigma = amount.sigmaOr(Math.abs(amount.value()) * USUAL_DOUBT);
    return amount.value() > 0 ? Spread.relative(amount.value(), sigma / amount.value()) : Spread.exact(amount.value());
  }

  /** The first analysis of a material among the trial's lots and the lots they were made from; iron alone when there is none. */
  private Analysis analysis(Material material) {
    Optional<daubline.model.Analysis> found = lots().flatMap(lot -> lot.getAnalyses().stream())
        .filter(a -> a.getMaterial() == material).findFirst();
    if (found.isPresent()) {
      analyses.add(Trail.entry("Analysis of " + material.word(), String.valueOf(found.get().getName()), found.get().getId()));
      return oxides(found.get());
    }
    return material != Material.ORE ? Analysis.EMPTY : known.number("ore_iron")
        .map(iron -> Analysis.EMPTY.with(Oxide.FE2O3, Math.min(1, iron.value() / Oxide.FE2O3.ironShare()))
            .with(Oxide.SIO2, known.number("ore_silica").map(Amount::value).orElse(ShaftParameter.ORE_SILICA.usual()))).orElse(Analysis.EMPTY);
  }

  private Stream<daubline.model.Lot> lots() {
    return Stream.concat(trial.getLots().stream(), trial.getLots().stream().flatMap(lot -> lot.getFrom().stream()));
  }

  private static Analysis oxides(daubline.model.Analysis printed) {
    Map<Oxide, Double> shares = new EnumMap<>(Oxide.class);
    for (Component component : printed.getComponents()) {
      Amount amount = Readings.amount(component);
      if (amount.isNumber() && amount.kind() != ValueKind.BELOW_LIMIT && amount.value() >= 0 && amount.value() <= 1) {
        Stream.of(Oxide.values()).filter(o -> o.formula().equals(component.getSymbol())).forEach(o -> shares.put(o, amount.value()));
      }
    }
    return new Analysis(shares);
  }
}
