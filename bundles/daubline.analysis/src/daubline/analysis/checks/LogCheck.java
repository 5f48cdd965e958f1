package daubline.analysis.checks;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.LogEntry;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.Map;

/** Run logs: entries out of order, and charges that do not add up to the stated totals. */
final class LogCheck implements Check {

  private static final double SHARE = 0.05;
  private static final Map<Material, String> TOTALS = Map.of(Material.ORE, "ore_total", Material.CHARCOAL, "charcoal_total");

  @Override
  public String id() {
    return "log";
  }

  @Override
  public String description() {
    return "Log entries earlier than the one before them, and charges that do not add up to the totals given for the trial.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.eachTrial(trial -> {
      checkOrder(study, trial);
      TOTALS.forEach((material, variable) -> checkTotal(study, trial, material, variable));
    });
  }

  private void checkOrder(CheckedStudy study, Trial trial) {
    double last = Double.NEGATIVE_INFINITY;
    for (LogEntry entry : trial.getLog()) {
      if (entry.getElapsed() != null) {
        if (entry.getElapsed() < last && !entry.isLate() && !entry.isInferred()) {
          study.report(Finding.warning("log.order", "", "an entry at " + Printed.number(entry.getElapsed() / 60) + " min stands after one at "
              + Printed.number(last / 60) + " min", "mark it as late, or correct its time; the original is kept"), entry, null);
        }
        last = Math.max(last, entry.getElapsed());
      }
    }
  }

  private void checkTotal(CheckedStudy study, Trial trial, Material material, String variable) {
    double charged = trial.getLog().stream().filter(Charge.class::isInstance).flatMap(e -> ((Charge) e).getItems().stream())
        .filter(i -> material(i) == material).map(Readings::amount).filter(Amount::isNumber).mapToDouble(Amount::value).sum();
    for (StagedValue value : trial.getValues()) {
      Amount total = Readings.amount(value);
      boolean stated = variable.equals(value.getVariable()) && value.getStage() == daubline.base.Stage.AS_FIRED && total.isNumber();
      if (stated && charged > 0 && Math.abs(charged - total.value()) > SHARE * total.value() + 2 * total.sigmaOr(0)) {
        study.report(Finding.warning("log.total", "", "the charges add up to " + Printed.number(charged) + " kg of " + material.word()
            + ", the total is given as " + Printed.number(total.value()) + " kg", "look for a charge that was missed, or correct the total"), value, variable);
      }
    }
  }

  private static Material material(ChargeItem item) {
    return item.getMaterial() != null ? item.getMaterial() : item.getLot() == null ? null : item.getLot().getMaterial();
  }
}
