package daubline.analysis.checks;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Plausibility;
import daubline.base.Typed;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.Component;
import daubline.model.Reading;
import daubline.model.ResidueMass;
import daubline.session.Readings;
import java.util.Optional;

/** Values: of a known variable, in its plausible range, and the stored number is what was typed. */
final class ValueCheck implements Check {

  private static final double TOLERANCE = 1e-6;

  @Override
  public String id() {
    return "value";
  }

  @Override
  public String description() {
    return "Values that belong to no variable, lie outside the plausible range, or differ from the text that was typed.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(Reading.class, reading -> check(study, reading));
  }

  private void check(CheckedStudy study, Reading reading) {
    if (reading instanceof Component || reading instanceof ResidueMass || reading.getVariable() == null) {
      return;
    }
    Optional<Variable> variable = study.variables().find(reading.getVariable());
    if (variable.isEmpty()) {
      study.report(Finding.warning("value.variable", "", "“" + reading.getVariable() + "” is no variable of the catalogue or the study",
          "define it in the study, or choose an existing variable"), reading, reading.getVariable());
      return;
    }
    Unit unit = Units.find(variable.get().quantity(), reading.getUnit() == null ? "" : reading.getUnit()).orElse(variable.get().unit());
    Amount amount = Readings.amount(reading);
    Plausibility.check(variable.get(), amount, unit).ifPresent(f -> study.report(f, reading, reading.getVariable()));
    if (reading.getTyped() != null && amount.isNumber() && !agrees(variable.get(), reading.getTyped(), unit, amount)) {
      study.report(Finding.error("value.differs", "", variable.get().name() + ": “" + reading.getTyped() + " " + unit.symbol()
          + "” was typed, but the number kept is another one", "type the value again"), reading, reading.getVariable());
    }
  }

  /** Whether the typed text gives the stored number in one of the two writings. */
  private static boolean agrees(Variable variable, String typed, Unit unit, Amount amount) {
    boolean readable = false;
    for (DecimalSign sign : DecimalSign.values()) {
      Typed again = variable.read(typed, unit, sign);
      if (again.isRead() && again.amount().isNumber()) {
        readable = true;
        if (Math.abs(again.amount().value() - amount.value()) <= TOLERANCE * Math.max(Math.abs(amount.value()), TOLERANCE)) {
          return true;
        }
      }
    }
    return !readable;
  }
}
