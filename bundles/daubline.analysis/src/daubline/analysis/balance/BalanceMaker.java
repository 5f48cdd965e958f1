package daubline.analysis.balance;

import daubline.analysis.forecast.Outcome;
import daubline.analysis.forecast.TrialPlan;
import daubline.base.Amount;
import daubline.base.Finding;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.ApportionmentProblem;
import daubline.engine.process.balance.ElementBalance;
import daubline.engine.process.balance.ForwardBalance;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.balance.OxideMasses;
import daubline.engine.process.balance.Portion;
import daubline.engine.process.balance.SlagIndices;
import daubline.engine.process.balance.Yield;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.slag.SlagBehaviour;
import daubline.engine.process.thermo.Constants;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes the balance of one trial. */
final class BalanceMaker {

  /** °C; where slag runs at an air inlet (common practice, no source). */
  private static final double USUAL_HEAT = 1250;

  private final BalanceInputs given;
  private final TrialPlan plan;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Portion> charged = new ArrayList<>();
  private final List<ApportionmentProblem.Source> sources = new ArrayList<>();

  BalanceMaker(BalanceInputs given) {
    this.given = given;
    this.plan = given.plan();
  }

  TrialBalance make(int draws, long seed) {
    if (plan.inputs().isEmpty()) {
      plan.findings().stream().filter(Finding::isError).forEach(findings::add);
      return new TrialBalance(plan.trial(), plan.name(), List.of(), Optional.empty(), false, List.of(), List.of(), Double.NaN, List.of(), List.of(),
          Optional.empty(), Optional.empty(), findings);
    }
    charge(plan.inputs().get());
    Analysis slag = given.slag();
    Outcome weighed = plan.outcomes().get(BurnQuantity.SLAG);
    boolean made = plan.outcomes().containsKey(BurnQuantity.METAL);
    double metal = made ? plan.outcomes().get(BurnQuantity.METAL).value() : forecastMetal();
    double iron = OxideMasses.of(charged).iron();
    Optional<ForwardBalance> forward = iron > 0 && metal >= 0
        ? Optional.of(ForwardBalance.of(charged, ForwardBalance.Partition.ofIron(Math.min(1, metal / iron)))) : Optional.empty();
    forward.ifPresent(this::bound);
    Elements elements = new Elements(plan, charged, slag);
    return new TrialBalance(plan.trial(), plan.name(), charged, forward, !made, made ? elements.all(findings) : List.of(), tracers(slag),
        weighed == null ? Double.NaN : weighed.value(), indices(slag), yields(slag), backward(slag, draws, seed), hot(slag), named());
  }

  private List<Finding> named() {
    return findings.stream().map(f -> f.at(plan.name() + ", " + f.where()).about(plan.trial(), "")).toList();
  }

  private void charge(BurnInputs in) {
    double ore = charged("ore_total", in.oreMass().median());
    add("ore", ore * (1 - in.spread(ShaftParameter.ORE_MOISTURE).median()), in.ore());
    Optional<Amount> lost = fired("lining_mass_lost");
    double duration = plan.outcomes().containsKey(BurnQuantity.DURATION) ? plan.outcomes().get(BurnQuantity.DURATION).value() : 5 * 3600;
    add("lining", lost.map(Amount::value).filter(v -> v >= 0).orElse(in.spread(ShaftParameter.LINING).median() * duration), in.lining());
    if (lost.isEmpty()) {
      note("lining", "the lining lost was not weighed; the usual loss by hour is taken", "weigh or measure the lining before and after");
    }
    if (in.lining().equals(BurnInputs.USUAL_LINING)) {
      note("lining-analysis", "the lining was not analysed; a usual clay is taken", "have the clay analysed");
    }
    double charcoal = charged("charcoal_total", in.charcoalMass().median());
    add("charcoal ash", charcoal * (1 - in.spread(ShaftParameter.CHARCOAL_MOISTURE).median()) * in.spread(ShaftParameter.ASH).median(), in.ash());
    if (in.ash().equals(BurnInputs.USUAL_ASH)) {
      note("ash-analysis", "the charcoal ash was not analysed; a usual hardwood ash is taken", "burn a kilogram of charcoal to ash and have it analysed");
    }
    fired("flux_total").filter(a -> a.value() > 0).ifPresent(flux -> {
      given.flux().ifPresentOrElse(a -> add("flux", flux.value(), a), () -> note("flux", "flux was charged and not analysed; it is left out", "have it analysed"));
    });
  }

  private void add(String name, double mass, Analysis analysis) {
    charged.add(new Portion(name, Math.max(0, mass), analysis));
    sources.add(new ApportionmentProblem.Source(name, analysis, SlagSources.BETWEEN_PIECES));
  }

  /** What was charged by the log or the sheet; what was planned where neither tells. */
  private double charged(String total, double planned) {
    return fired(total).map(Amount::value).filter(v -> v > 0).orElse(planned);
  }

  private Optional<Amount> fired(String variable) {
    return Optional.ofNullable(given.fired().get(variable));
  }

  private double forecastMetal() {
    note("metal", "no metal was weighed; the forecast's is taken", "weigh the bloom and have its share of metal told");
    return plan.inputs().map(in -> BurnForecast.of(in, 0, 0).get(BurnQuantity.METAL).central()).orElse(Double.NaN);
  }

  private void bound(ForwardBalance forward) {
    if (forward.exceedsBound()) {
      findings.add(Finding.warning("balance.bound", "forward balance", String.format(java.util.Locale.ROOT,
          "%.2f kg of metal is more than the %.2f kg that the silica of the charge leaves free", forward.metal(), forward.mostMetal()),
          "check ore mass, its iron and silica, and the share of metal in the bloom"));
    }
  }

  private List<TrialBalance.Tracer> tracers(Analysis slag) {
    OxideMasses all = OxideMasses.of(charged);
    return Stream.of(Oxide.values()).filter(o -> !o.isIron() && slag.share(o) > 0 && all.mass(o) > 0)
        .map(o -> new TrialBalance.Tracer(o.formula(), ForwardBalance.slagByTracer(charged, o, slag))).toList();
  }

  private List<TrialBalance.Index> indices(Analysis slag) {
    if (slag.total() <= 0) {
      note("slag-analysis", "no slag of the trial was analysed, so nothing can be told backward", "have tapped and furnace slag analysed");
      return List.of();
    }
    List<TrialBalance.Index> all = new ArrayList<>();
    all.add(new TrialBalance.Index("reducible iron index", "FeO / (2.39 × SiO2), all iron as FeO", SlagIndices.reducibleIronIndex(slag)));
    Analysis charge = OxideMasses.of(charged).analysis();
    for (SlagIndices.Ratio ratio : SlagIndices.NON_REDUCED) {
      double shift = ratio.logShift(slag, charge);
      if (Double.isFinite(shift)) {
        all.add(new TrialBalance.Index(ratio.label() + " slag to charge", "ln of the ratio in the slag over that of the charge; 0 when neither was lost", shift));
      }
    }
    return all;
  }

  private List<TrialBalance.NamedYield> yields(Analysis slag) {
    BurnInputs in = plan.inputs().orElseThrow();
    Outcome bloom = plan.outcomes().get(BurnQuantity.BLOOM);
    Outcome metal = plan.outcomes().get(BurnQuantity.METAL);
    Outcome weighed = plan.outcomes().get(BurnQuantity.SLAG);
    double bloomMass = bloom == null ? Double.NaN : bloom.value();
    Yield.Masses masses = new Yield.Masses(charged.get(0).mass(), in.ore().iron(), fired("charcoal_total").map(Amount::value).orElse(Double.NaN), bloomMass,
        metal == null || !(bloomMass > 0) ? Double.NaN : metal.value() / bloomMass, piece("billet_mass"), piece("bar_mass"),
        weighed == null ? Double.NaN : weighed.value());
    return Stream.of(Yield.values()).map(y -> new TrialBalance.NamedYield(y, y.of(masses))).filter(y -> Double.isFinite(y.value())).toList();
  }

  private double piece(String variable) {
    double sum = given.pieces().getOrDefault(variable, 0.0);
    return sum > 0 ? sum : fired(variable).map(Amount::value).orElse(Double.NaN);
  }

  private Optional<SlagSources> backward(Analysis slag, int draws, long seed) {
    return slag.total() > 0 ? SlagSources.of(slag, sources, draws, seed, findings::add) : Optional.empty();
  }

  /** The slag analysed, where the shaft model finds the charge hottest. */
  private Optional<TrialBalance.HotSlag> hot(Analysis slag) {
    if (!(slag.share(Oxide.SIO2) > 0 && slag.iron() > 0)) {
      return Optional.empty();
    }
    double hottest = plan.inputs().map(in -> BurnForecast.of(in, 0, 0).get(BurnQuantity.HOTTEST).central()).filter(Double::isFinite).orElse(USUAL_HEAT);
    SlagBehaviour behaviour = SlagBehaviour.of(slag, hottest + Constants.ZERO_C);
    findings.addAll(behaviour.findings());
    return Optional.of(new TrialBalance.HotSlag(hottest, behaviour));
  }

  private void note(String code, String what, String remedy) {
    findings.add(Finding.note("balance." + code, "balance", what, remedy));
  }
}
