package daubline.session;

import daubline.base.Amount;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Typed;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.model.Claim;
import daubline.model.Reading;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Moves values between the model, which keeps them as typed and canonical, and amounts. */
public final class Readings {

  private Readings() {
  }

  /** The amount a reading holds; not recorded when it holds none. */
  public static Amount amount(Reading reading) {
    ValueKind kind = reading.getKind() == null ? ValueKind.NOT_RECORDED : reading.getKind();
    String category = reading.getCategory() == null ? "" : reading.getCategory();
    return new Amount(kind, number(reading.getValue()), number(reading.getLow()), number(reading.getHigh()),
        number(reading.getSigma()), category);
  }

  private static double number(Double value) {
    return value == null ? Double.NaN : value;
  }

  /**
   * Puts a typed value into a reading: text and unit as typed beside the canonical value.
   *
   * @param reading where to; unchanged when the text cannot be read
   * @param variable the variable it is a value of
   * @param typed the text
   * @param unit the symbol or spelling of the unit; empty for the variable's usual unit
   * @param decimal the decimal sign of the text
   * @return what is wrong with it; empty when it was put
   */
  public static Optional<Finding> put(Reading reading, Variable variable, String typed, String unit, DecimalSign decimal) {
    Optional<Unit> known = unit.isBlank() ? Optional.of(variable.unit()) : Units.find(variable.quantity(), unit);
    if (known.isEmpty()) {
      return Optional.of(Finding.error("unit.unknown", "", "“" + unit + "” is no unit of " + variable.name(),
          "use one of: " + String.join(", ", Units.of(variable.quantity()).stream().map(Unit::symbol).toList())).about("", variable.id()));
    }
    Typed result = variable.read(typed, known.get(), decimal);
    if (!result.isRead()) {
      return Optional.of(result.finding().about("", variable.id()));
    }
    reading.setVariable(variable.id());
    put(reading, result.amount());
    reading.setTyped(typed.strip());
    reading.setUnit(result.amount().isNumber() ? known.get().symbol() : null);
    return Optional.empty();
  }

  /** Puts an amount into a reading; what was typed before is forgotten, and what a claim was calculated or measured from. */
  public static void put(Reading reading, Amount amount) {
    if (reading instanceof Claim claim) {
      claim.setFormula(null);
      claim.getInputs().clear();
      claim.setMeasurement(null);
    }
    reading.setKind(amount.kind());
    reading.setValue(orNull(amount.value()));
    reading.setLow(orNull(amount.low()));
    reading.setHigh(orNull(amount.high()));
    reading.setSigma(orNull(amount.sigma()));
    reading.setCategory(amount.category().isEmpty() ? null : amount.category());
    reading.setTyped(null);
    reading.setUnit(null);
  }

  /**
   * Picks a reading among those about the same variable in its list, or takes the pick back. Only one can be picked: the
   * others are picked no longer, and what was said for them goes.
   */
  public static void pick(Reading reading, boolean picked) {
    if (picked && reading.eContainer() != null && reading.eContainer().eGet(reading.eContainingFeature()) instanceof List<?> beside) {
      beside.stream().filter(o -> o != reading && o instanceof Reading).map(Reading.class::cast)
          .filter(o -> o.isPicked() && Objects.equals(o.getVariable(), reading.getVariable())).forEach(o -> {
            o.setPicked(false);
            o.setPickedBecause(null);
          });
    }
    reading.setPicked(picked);
  }

  private static Double orNull(double value) {
    return Double.isNaN(value) ? null : value;
  }
}
