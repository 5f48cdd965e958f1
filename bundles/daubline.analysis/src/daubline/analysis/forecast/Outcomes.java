package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Stage;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Spread;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.model.Reading;
import daubline.model.ResidueMass;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What came of a trial, figure by figure of the forecast, from its values as fired, its log, its pieces and its remains. */
final class Outcomes {

  /** Residue classes that are slag of the smelt. */
  static final Set<String> SLAG_CLASSES = Set.of("tapped_slag", "furnace_slag", "furnace_bottom", "pit_block", "prills_runs", "lining_slag", "undiagnostic");
  private static final Map<BurnQuantity, String> FIRED = new EnumMap<>(Map.of(BurnQuantity.DURATION, "main_sequence_duration",
      BurnQuantity.RESIDENCE, "burden_residence_time", BurnQuantity.HOTTEST, "temperature_peak_inlet", BurnQuantity.MOUTH_GAS, "temperature_top",
      BurnQuantity.INLET_SPEED, "inlet_air_speed", BurnQuantity.INLET_PRESSURE, "inlet_pressure", BurnQuantity.TAPS, "slag_tap_count",
      BurnQuantity.SLAG_FEO, "chem_feo_total"));

  private final Trial trial;
  private final Map<BurnQuantity, Outcome> all = new EnumMap<>(BurnQuantity.class);

  Outcomes(Trial trial, Optional<BurnInputs> inputs) {
    this.trial = trial;
    FIRED.forEach((quantity, variable) -> value(variable).ifPresent(a -> put(quantity, a, "as fired")));
    burnRate();
    gas();
    bloom(inputs);
    slag();
  }

  Map<BurnQuantity, Outcome> all() {
    return all;
  }

  private void put(BurnQuantity quantity, Amount amount, String where) {
    all.put(quantity, new Outcome(amount.value(), amount.sigmaOr(0), where));
  }

  /** A value as fired or as found. */
  private Optional<Amount> value(String variable) {
    Stream<? extends Reading> fired = trial.getValues().stream().filter(v -> v.getStage() == Stage.AS_FIRED);
    Stream<? extends Reading> found = trial.getRemains() == null ? Stream.empty() : trial.getRemains().getClaims().stream();
    return Stream.concat(fired, found).filter(v -> variable.equals(v.getVariable())).map(Readings::amount).filter(Amount::isEstimate).findFirst();
  }

  /** The ore that was charged, stated or summed up from the log; a plan may have meant another mass. */
  private Optional<Amount> charged() {
    return value("ore_total").or(() -> LoggedCharges.of(trial).stream().filter(v -> "ore_total".equals(v.getVariable())).map(Readings::amount).findFirst());
  }

  private void burnRate() {
    Optional<Spread> logged = ChargeRate.of(trial);
    if (logged.isPresent()) {
      Spread rate = logged.get();
      all.put(BurnQuantity.BURN_RATE, new Outcome(rate.median(), (rate.high() - rate.low()) / 3.29, "charge log"));
      return;
    }
    Optional<Amount> charcoal = value("charcoal_main");
    Optional<Amount> time = value("main_sequence_duration");
    if (charcoal.isPresent() && time.isPresent() && time.get().value() > 0) {
      all.put(BurnQuantity.BURN_RATE, new Outcome(charcoal.get().value() / time.get().value(), 0, "charcoal by time of the main sequence"));
    }
  }

  private void gas() {
    double co = value("gas_co_share").map(Amount::value).orElse(Double.NaN);
    double co2 = value("gas_co2_share").map(Amount::value).orElse(Double.NaN);
    if (co + co2 > 0) {
      all.put(BurnQuantity.TOP_CO, new Outcome(co / (co + co2), 0, "gas at the top"));
    }
  }

  private void bloom(Optional<BurnInputs> inputs) {
    List<Amount> pieces = trial.getPieces().stream().flatMap(p -> p.getValues().stream()).filter(v -> "bloom_mass".equals(v.getVariable()))
        .map(Readings::amount).filter(Amount::isEstimate).toList();
    Optional<Amount> bloom = value("bloom_mass").or(() -> pieces.isEmpty() ? Optional.empty()
        : Optional.of(Amount.exact(pieces.stream().mapToDouble(Amount::value).sum())));
    if (bloom.isEmpty()) {
      return;
    }
    put(BurnQuantity.BLOOM, bloom.get(), "weighed");
    value("iron_made").or(() -> value("bloom_share_metal").map(s -> Amount.exact(s.value() * bloom.get().value())))
        .ifPresent(iron -> put(BurnQuantity.METAL, iron, "bloom and its share of metal"));
    inputs.ifPresent(in -> {
      double ore = charged().map(Amount::value).filter(v -> v > 0).orElse(in.oreMass().median());
      double iron = ore * (1 - in.spread(ShaftParameter.ORE_MOISTURE).median()) * in.ore().iron();
      if (iron > 0 && bloom.get().value() >= 0 && bloom.get().value() / iron <= 1.5) {
        all.put(BurnQuantity.RECOVERY, new Outcome(bloom.get().value() / iron, bloom.get().sigmaOr(0) / iron, "bloom weighed, ore as charged"));
      }
    });
  }

  private void slag() {
    double mass = 0;
    double variance = 0;
    if (trial.getRemains() != null) {
      for (ResidueMass residue : trial.getRemains().getResidues()) {
        Amount amount = Readings.amount(residue);
        if (amount.isEstimate() && residue.getResidueClass() != null && SLAG_CLASSES.contains(residue.getResidueClass().getId())) {
          mass += amount.value();
          variance += Math.pow(amount.sigmaOr(0), 2);
        }
      }
    }
    if (mass > 0) {
      all.put(BurnQuantity.SLAG, new Outcome(mass, Math.sqrt(variance), "slag weighed by class"));
    } else {
      value("tapped_slag_mass").flatMap(t -> value("furnace_slag_mass").map(f -> Amount.exact(t.value() + f.value())))
          .ifPresent(sum -> put(BurnQuantity.SLAG, sum, "tapped and furnace slag weighed"));
    }
    Analysis mean = Oxides.slagOf(trial).ironAsFeo();
    if (mean.share(Oxide.FEO) > 0) {
      all.put(BurnQuantity.SLAG_FEO, new Outcome(mean.share(Oxide.FEO), 0, "slag analysed"));
    }
  }
}
