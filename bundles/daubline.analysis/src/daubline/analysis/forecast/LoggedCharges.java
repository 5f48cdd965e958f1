package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.base.ValueKind;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.ModelFactory;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the run log of a burnt trial says was charged in all, for totals that nobody stated. */
public final class LoggedCharges {

  private static final Map<Material, String> TOTALS = Map.of(Material.ORE, "ore_total", Material.CHARCOAL, "charcoal_total");

  private LoggedCharges() {
  }

  /**
   * The totals by the log, in kg, with the uncertainties of the charges added as independent ones (JCGM 100:2008, 5.1.2).
   *
   * @return readings that stand in no study; none of what was stated as fired, or before the fire is over
   */
  public static List<StagedValue> of(Trial trial) {
    if (trial.getStatus() == null || !trial.getStatus().isBurnt()) {
      return List.of();
    }
    return TOTALS.entrySet().stream().sorted(Map.Entry.comparingByKey()).filter(t -> !isStated(trial, t.getValue()))
        .flatMap(t -> total(trial, t.getKey(), t.getValue()).stream()).toList();
  }

  private static boolean isStated(Trial trial, String variable) {
    return trial.getValues().stream().anyMatch(v -> v.getStage() == Stage.AS_FIRED && variable.equals(v.getVariable()) && Readings.amount(v).isNumber());
  }

  private static Optional<StagedValue> total(Trial trial, Material material, String variable) {
    List<Amount> masses = trial.getLog().stream().filter(Charge.class::isInstance).flatMap(e -> ((Charge) e).getItems().stream())
        .filter(item -> material(item) == material).map(Readings::amount).filter(Amount::isEstimate).toList();
    double sum = masses.stream().mapToDouble(Amount::value).sum();
    if (!(sum > 0)) {
      return Optional.empty();
    }
    double sigma = Math.sqrt(masses.stream().mapToDouble(a -> Math.pow(a.sigmaOr(0), 2)).sum());
    StagedValue value = ModelFactory.eINSTANCE.createStagedValue();
    value.setStage(Stage.AS_FIRED);
    value.setVariable(variable);
    value.setKind(sigma > 0 ? ValueKind.PLUS_MINUS : ValueKind.EXACT);
    value.setValue(sum);
    value.setSigma(sigma > 0 ? sigma : null);
    return Optional.of(value);
  }

  private static Material material(ChargeItem item) {
    return item.getMaterial() != null ? item.getMaterial() : item.getLot() == null ? null : item.getLot().getMaterial();
  }
}
