package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.Trail;
import daubline.base.Units;
import daubline.base.Variables;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.Spread;
import daubline.engine.process.air.Blast;
import daubline.engine.process.air.Crew;
import daubline.engine.process.air.PackedBed;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.OreSizes;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.thermo.Air;
import daubline.engine.process.thermo.Constants;
import daubline.model.Lot;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Turns what is known of a trial before the fire into the inputs of the process engine. */
final class ForecastInputs {

  private static final double USUAL_BORE = 0.025;
  /** Opening of a furnace without bellows where none is stated, m (common practice, no source). */
  private static final double USUAL_OPENING = 0.05;
  /** Share of drawn air that passes along the wall; no bellows lose any (common practice, no source). */
  private static final Spread PAST_THE_CHARGE = Spread.even(0, 0.2);
  /** Error of a size by sieve bands (common practice, no source). */
  private static final double SIEVE_DOUBT = 0.1;
  /** How long a crew must hold its air, s, and how well that is known: people differ by a third (common practice, no source). */
  private static final double CREW_DAY = 8 * 3600;
  private static final double CREW_DOUBT = 0.3;
  /** Gas of a charge in full fire, K (common practice, no source). */
  private static final double HOT_BED = 1100;
  /** Error of a stated humidity, and of how it stays through the day (common practice, no source). */
  private static final double HUMIDITY_DOUBT = 0.1;

  /** Parameters that are variables as they stand; in the order of the parameters, which is printed. */
  private static final Map<ShaftParameter, String> DIRECT = new EnumMap<>(Map.ofEntries(
      Map.entry(ShaftParameter.DIAMETER, "base_internal_diameter"), Map.entry(ShaftParameter.STACK, "height_above_inlet"),
      Map.entry(ShaftParameter.AIR, "air_flow"), Map.entry(ShaftParameter.HEARTH, "inlet_height_above_floor"),
      Map.entry(ShaftParameter.CHARCOAL_SIZE, "charcoal_size"), Map.entry(ShaftParameter.CHARCOAL_MOISTURE, "charcoal_moisture"),
      Map.entry(ShaftParameter.CHARCOAL_DENSITY, "charcoal_bulk_density"),
      Map.entry(ShaftParameter.FIXED_CARBON, "charcoal_fixed_carbon"), Map.entry(ShaftParameter.ASH, "charcoal_ash"),
      Map.entry(ShaftParameter.ORE_MOISTURE, "ore_moisture"), Map.entry(ShaftParameter.AMBIENT, "air_temperature")));

  private final Trial trial;
  private final KnownValues known;
  private final InputFindings findings;
  private final List<Trail> traced = new ArrayList<>();
  private OreSizes oreSizes = OreSizes.ONE;
  private final Map<ShaftParameter, Spread> furnace = new EnumMap<>(ShaftParameter.class);

  ForecastInputs(Trial trial, Variables variables, Overlay overlay) {
    this.trial = trial;
    this.known = new KnownValues(trial, variables, overlay);
    this.findings = new InputFindings(trial);
  }

  /** The inputs; empty when ore, charcoal, diameter or air is not known or cannot be, with findings that say so. */
  Optional<BurnInputs> build() {
    boolean drawn = isDrawn();
    DIRECT.forEach((parameter, variable) -> {
      if (!drawn || parameter != ShaftParameter.AIR) {
        known.number(variable).ifPresent(amount -> put(parameter, amount));
      }
    });
    stackFromHeight();
    if (drawn) {
      furnace.put(ShaftParameter.LEAK, PAST_THE_CHARGE);
    } else {
      airFromBellows();
    }
    charcoalSize();
    oreSize();
    humidity();
    Analysis ore = ore();
    Optional<Amount> oreMass = mass("ore_total", "the ore to be charged");
    Optional<Amount> charcoal = known.number("charcoal_main").or(() -> known.number("charcoal_total"));
    charcoal.ifPresentOrElse(a -> findings.positive("the charcoal to be burnt", a), () -> findings.missing("the charcoal to be burnt"));
    double bore = size("inlet_bore", "the bore of the air inlet", drawn ? USUAL_OPENING : USUAL_BORE);
    int inlets = (int) Math.max(1, Math.round(size("inlet_count", "the number of air inlets", 1)));
    if (!drawn) {
      airFromCrew(bore, inlets);
    }
    Stream.of(ShaftParameter.DIAMETER, drawn ? ShaftParameter.STACK : ShaftParameter.AIR).filter(p -> !furnace.containsKey(p) && !findings.hasRefused(p.label()))
        .forEach(p -> findings.missing(p.label()));
    if (findings.hasErrors() || oreMass.isEmpty() || charcoal.isEmpty()) {
      return Optional.empty();
    }
    ratioAndOre(ore, oreMass.get(), charcoal.get());
    if (drawn) {
      findings.drawn(known.word("air_device").isPresent(), known.number("inlet_bore").isPresent() && known.number("inlet_count").isPresent(), bore, inlets);
    }
    findings.fromTheFire(known.fromTheFire());
    return Optional.of(new BurnInputs(furnace, ore, or(analysis(Material.LINING, Material.CLAY), BurnInputs.USUAL_LINING),
        or(analysis(Material.ASH), BurnInputs.USUAL_ASH), Spreads.of(oreMass.get()), Spreads.of(charcoal.get()),
        new BurnInputs.Inlets(bore, inlets, Math.clamp(delivered(), 0.1, 1), !drawn, turn()), Shapes.slagRoom(known), Optional.empty(), oreSizes, List.of()));
  }

  private static Analysis or(Analysis known, Analysis usual) {
    return known.total() > 0 ? known : usual;
  }

  /** The furnace, for its drawing. */
  FurnaceShape shape() {
    return Shapes.of(trial, known);
  }

  List<Finding> findings() {
    return findings.all();
  }

  List<Trail> used() {
    return Stream.concat(known.used().stream(), traced.stream()).toList();
  }

  private Optional<Amount> mass(String variable, String what) {
    Optional<Amount> amount = known.number(variable);
    amount.ifPresentOrElse(a -> findings.positive(what, a), () -> findings.missing(what));
    return amount;
  }

  private double size(String variable, String what, double usual) {
    Optional<Amount> amount = known.number(variable);
    amount.ifPresent(a -> findings.positive(what, a));
    return amount.map(Amount::value).filter(v -> v > 0).orElse(usual);
  }

  private void put(ShaftParameter parameter, Amount typed) {
    // temperatures are kept in °C and reckoned in K
    Amount amount = parameter == ShaftParameter.AMBIENT ? Amount.exact(typed.value() + Units.ZERO_CELSIUS) : typed;
    if (findings.range(parameter, amount.value())) {
      furnace.put(parameter, Spreads.of(amount));
    }
  }

  private void stackFromHeight() {
    if (!furnace.containsKey(ShaftParameter.STACK)) {
      known.number("furnace_height").ifPresent(height -> {
        double hearth = known.number("inlet_height_above_floor").map(Amount::value).orElse(ShaftParameter.HEARTH.usual());
        put(ShaftParameter.STACK, Amount.exact(height.value() - hearth));
      });
    }
  }

  /** Whether the furnace draws its air: so it is said and no flow is known, or neither bellows nor flow are known of a shaft of known height. */
  private boolean isDrawn() {
    Optional<Amount> flow = known.number("air_flow");
    if (known.word("air_device").isPresent()) {
      return known.word("air_device").filter("natural draught"::equals).isPresent() && flow.map(Amount::value).orElse(0.0) == 0;
    }
    boolean bellows = Stream.of("bellows_stroke_volume", "bellows_strokes_per_minute", "bellows_operators").anyMatch(v -> known.number(v).isPresent());
    boolean shaft = Stream.of("height_above_inlet", "furnace_height").anyMatch(v -> known.number(v).isPresent());
    return flow.isEmpty() && !bellows && shaft;
  }

  private void airFromBellows() {
    if (furnace.containsKey(ShaftParameter.AIR) || findings.hasRefused(ShaftParameter.AIR.label())) {
      return;
    }
    Optional<Amount> stroke = known.number("bellows_stroke_volume");
    Optional<Amount> rate = known.number("bellows_strokes_per_minute");
    if (stroke.isPresent() && rate.isPresent()) {
      double flow = stroke.get().value() * rate.get().value() * delivered();
      if (findings.range(ShaftParameter.AIR, flow)) {
        furnace.put(ShaftParameter.AIR, Spread.relative(flow, 0.15));
      }
    }
  }

  /** Air that the people at the bellows keep up, where neither air nor strokes are known: what their power drives through inlet and charge. */
  private void airFromCrew(double bore, int inlets) {
    double people = known.number("bellows_operators").map(Amount::value).orElse(0.0);
    if (furnace.containsKey(ShaftParameter.AIR) || findings.hasRefused(ShaftParameter.AIR.label()) || !(people > 0) || !furnace.containsKey(ShaftParameter.DIAMETER)) {
      return;
    }
    double all = known.number("people_count").map(Amount::value).filter(n -> n >= people).orElse(2 * people);
    double delivered = Math.clamp(delivered(), 0.1, 1);
    double area = Math.PI * Math.pow(median(ShaftParameter.DIAMETER), 2) / 4;
    PackedBed bed = new PackedBed(median(ShaftParameter.CHARCOAL_SIZE), ShaftParameter.SPHERICITY.usual(), ShaftParameter.VOIDAGE.usual());
    double flow = new Crew(people, turn(), all, CREW_DAY).flow(delivered, q -> Blast.inletPressure(Blast.inletSpeed(q, bore, inlets), Constants.BLOWER_T)
        + bed.drop(q * Blast.density(Constants.BLOWER_T) / area, median(ShaftParameter.STACK), z -> HOT_BED));
    double taken = Math.clamp(flow, ShaftParameter.AIR.low(), ShaftParameter.AIR.high());
    furnace.put(ShaftParameter.AIR, Spread.relative(taken, CREW_DOUBT));
    findings.byCrew(people, all, turn() / 60, 60_000 * taken, known.number("bellows_stroke_volume").map(v -> 60 * taken / v.value() / delivered));
  }

  private double turn() {
    return known.number("bellows_shift").map(Amount::value).filter(t -> t > 0).orElse(Crew.USUAL_TURN);
  }

  private double delivered() {
    return known.number("bellows_efficiency").map(Amount::value).orElse(BurnInputs.Inlets.USUAL_DELIVERED);
  }

  /** Sieve bands of the lot come before a typed size, which comes before the ends of a grain. */
  private void charcoalSize() {
    Optional<SieveBands> bands = SieveBands.of(trial.getLots().stream(), Material.CHARCOAL);
    if (bands.isPresent() && findings.range(ShaftParameter.CHARCOAL_SIZE, bands.get().size())) {
      furnace.put(ShaftParameter.CHARCOAL_SIZE, Spread.relative(bands.get().size(), SIEVE_DOUBT));
      traced.add(bands.get().from());
      known.forget("charcoal_size");
    } else if (!furnace.containsKey(ShaftParameter.CHARCOAL_SIZE)) {
      between("charcoal_grain_low", "charcoal_grain_high", ShaftParameter.CHARCOAL_SIZE);
    }
  }

  /** Sieve bands of the ore are its size classes; otherwise all pieces are of one size, which is not well known. */
  private void oreSize() {
    Optional<SieveBands> bands = SieveBands.of(trial.getLots().stream(), Material.ORE);
    if (bands.isPresent() && findings.range(ShaftParameter.ORE_SIZE, bands.get().size())) {
      furnace.put(ShaftParameter.ORE_SIZE, Spread.relative(bands.get().size(), SIEVE_DOUBT));
      traced.add(bands.get().from());
      oreSizes = bands.get().classes();
    } else {
      between("ore_grain_low", "ore_grain_high", ShaftParameter.ORE_SIZE);
    }
  }

  /** Vapour of the air from its humidity; air of which nobody wrote the humidity is taken as dry. */
  private void humidity() {
    known.number("air_humidity").ifPresent(humidity -> {
      double t = known.number("air_temperature").map(a -> a.value() + Units.ZERO_CELSIUS).orElse(ShaftParameter.AMBIENT.usual());
      double share = Math.clamp(humidity.value(), 0, 1);
      double vapour = Air.waterPerDryAir(share, t, Constants.ATM);
      if (vapour > 0) {
        furnace.put(ShaftParameter.VAPOUR, Spread.relative(vapour, humidity.sigmaOr(HUMIDITY_DOUBT * share) / share));
      }
    });
  }

  private void between(String lowVariable, String highVariable, ShaftParameter parameter) {
    Optional<Amount> low = known.number(lowVariable);
    Optional<Amount> high = known.number(highVariable);
    if (low.isPresent() && high.isPresent() && low.get().value() < high.get().value() && findings.range(parameter, high.get().value())) {
      furnace.put(parameter, Spread.even(Math.max(low.get().value(), parameter.low()), Math.max(high.get().value(), parameter.low() * 1.01)));
    }
  }

  private void ratioAndOre(Analysis ore, Amount oreMass, Amount charcoal) {
    double oreDry = oreMass.value() * (1 - median(ShaftParameter.ORE_MOISTURE));
    double charcoalDry = charcoal.value() * (1 - median(ShaftParameter.CHARCOAL_MOISTURE));
    findings.range(ShaftParameter.ORE_RATIO, oreDry / charcoalDry);
    furnace.put(ShaftParameter.ORE_RATIO, Spread.relative(oreDry / charcoalDry, 0.05));
    furnace.put(ShaftParameter.ORE_IRON, Spread.exact(Math.min(ore.iron(), ShaftParameter.ORE_IRON.high())));
    furnace.put(ShaftParameter.ORE_SILICA, Spread.exact(ore.share(Oxide.SIO2)));
    furnace.put(ShaftParameter.ORE_ALUMINA, Spread.exact(ore.share(Oxide.AL2O3)));
  }

  private double median(ShaftParameter parameter) {
    return furnace.containsKey(parameter) ? furnace.get(parameter).median() : parameter.usual();
  }

  /** The ore's analysis, or its iron and silica alone. */
  private Analysis ore() {
    Analysis analysed = analysis(Material.ORE);
    Analysis ore = analysed.iron() > 0 ? analysed : known.number("ore_iron").map(iron -> {
      findings.ironContent(iron.value());
      double oxide = Math.clamp(iron.value() / Oxide.FE2O3.ironShare(), 0, 1);
      double silica = known.number("ore_silica").map(Amount::value).orElse(ShaftParameter.ORE_SILICA.usual());
      return Analysis.EMPTY.with(Oxide.FE2O3, oxide).with(Oxide.SIO2, Math.clamp(silica, 0, 1 - oxide));
    }).orElse(Analysis.EMPTY);
    if (ore.iron() <= 0 && !findings.hasRefused(InputFindings.ORE_IRON)) {
      findings.missing("an analysis of the ore, or its iron content,");
    }
    return ore;
  }

  /** The first analysis of one of these materials among the trial's lots, the lots they were made from, and the furnace's lots. */
  private Analysis analysis(Material... materials) {
    for (Material material : materials) {
      Optional<daubline.model.Analysis> found = lots().flatMap(lot -> lot.getAnalyses().stream()).filter(a -> a.getMaterial() == material).findFirst();
      if (found.isPresent()) {
        Trail trail = Trail.entry("Analysis of " + material.word(), String.valueOf(found.get().getName()), String.valueOf(found.get().getId()));
        if (!traced.contains(trail)) {
          traced.add(trail);
        }
        return Oxides.of(found.get());
      }
    }
    return Analysis.EMPTY;
  }

  private Stream<Lot> lots() {
    Stream<Lot> build = trial.getBuild() == null ? Stream.empty() : trial.getBuild().getLots().stream();
    return Stream.concat(Stream.concat(trial.getLots().stream(), trial.getLots().stream().flatMap(lot -> lot.getFrom().stream())), build);
  }
}
