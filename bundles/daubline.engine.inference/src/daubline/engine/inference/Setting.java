package daubline.engine.inference;

import daubline.base.Printed;
import daubline.base.Source;
import daubline.base.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * One setting of a criterion.
 *
 * @param key short stable id, unique within the criterion
 * @param name its name as printed
 * @param unit unit for display; empty when the setting is text
 * @param standard value when the user sets none, in canonical units with a point as decimal sign, or the text
 * @param meaning what it does
 * @param source where the value comes from
 */
public record Setting(String key, String name, Optional<Unit> unit, String standard, String meaning, Source source) {

  public Setting {
    Objects.requireNonNull(key);
    Objects.requireNonNull(source);
  }

  /** A number, given in the unit in which it is shown; negative values are refused. */
  public static Setting number(String key, String name, double shown, Unit unit, String meaning, Source source) {
    return new Setting(key, name, Optional.of(unit), Double.toString(unit.differenceToCanonical(shown)), meaning, source);
  }

  /** A text, such as a list of oxides separated by semicolons. */
  public static Setting text(String key, String name, String text, String meaning, Source source) {
    return new Setting(key, name, Optional.empty(), text, meaning, source);
  }

  /** Whether its value is a number. */
  public boolean isNumber() {
    return unit.isPresent();
  }

  /** A value of this setting as printed, with its unit. */
  public String printed(String value) {
    return unit.map(u -> (Printed.number(u.differenceFromCanonical(Double.parseDouble(value))) + "\u00A0" + u.symbol()).strip())
        .orElse(value);
  }
}
