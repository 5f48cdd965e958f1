package daubline.analysis.balance;

import daubline.analysis.forecast.LoggedCharges;
import daubline.analysis.forecast.Oxides;
import daubline.analysis.forecast.TrialPlan;
import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.engine.process.balance.Analysis;
import daubline.model.Lot;
import daubline.model.Piece;
import daubline.model.Reading;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What of a trial goes into its balance besides the plan, taken out of the model once, so that balances can be reckoned later
 * and elsewhere.
 *
 * @param plan what is known before the fire and what came of it
 * @param slag the mean slag, all iron as FeO; without oxides when none was analysed
 * @param flux the flux, where one was analysed
 * @param fired the first number stated as fired, by variable
 * @param pieces masses of pieces of metal, summed by variable, kg
 */
public record BalanceInputs(TrialPlan plan, Analysis slag, Optional<Analysis> flux, Map<String, Amount> fired, Map<String, Double> pieces) {

  public BalanceInputs {
    fired = Collections.unmodifiableMap(new HashMap<>(fired));
    pieces = Collections.unmodifiableMap(new HashMap<>(pieces));
  }

  /** Takes out of the model what the balance of a trial needs. */
  public static BalanceInputs of(Trial trial, TrialPlan plan) {
    Map<String, Amount> fired = new HashMap<>();
    for (StagedValue value : trial.getValues()) {
      Amount amount = Readings.amount(value);
      if (value.getStage() == Stage.AS_FIRED && value.getVariable() != null && amount.isEstimate()) {
        fired.putIfAbsent(value.getVariable(), amount);
      }
    }
    LoggedCharges.of(trial).forEach(total -> fired.putIfAbsent(total.getVariable(), Readings.amount(total)));
    Map<String, Double> pieces = new HashMap<>();
    sum(trial.getPieces(), pieces);
    Optional<Analysis> flux = trial.getLots().stream().filter(l -> l.getMaterial() == Material.FLUX).map(Lot::getAnalyses).flatMap(List::stream)
        .map(Oxides::of).findFirst();
    return new BalanceInputs(plan, Oxides.slagOf(trial).ironAsFeo(), flux, fired, pieces);
  }

  /**
   * Balances the trial.
   *
   * @param draws draws of the backward balance
   * @param seed seed of all random numbers
   */
  public TrialBalance balance(int draws, long seed) {
    return new BalanceMaker(this).make(draws, seed);
  }

  private static void sum(List<Piece> pieces, Map<String, Double> sums) {
    for (Piece piece : pieces) {
      for (Reading reading : piece.getValues()) {
        Amount amount = Readings.amount(reading);
        if (reading.getVariable() != null && amount.isEstimate()) {
          sums.merge(reading.getVariable(), amount.value(), Double::sum);
        }
      }
      sum(piece.getPieces(), sums);
    }
  }
}
