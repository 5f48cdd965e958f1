package daubline.ui.prefs;

import daubline.base.Amount;
import daubline.base.DateOrder;
import daubline.base.DecimalSign;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.Variable;
import daubline.ui.Words;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** How numbers are shown and read in the window: decimal sign and unit per quantity. */
public final class Preferred {

  /** Key of the decimal sign. */
  public static final String DECIMAL = "decimal";
  /** Key of the order of dates. */
  public static final String DATES = "dates";
  private static final String UNIT = "unit.";

  private Preferred() {
  }

  /** Where preferences are kept. */
  public static IEclipsePreferences node() {
    return InstanceScope.INSTANCE.getNode("daubline.ui");
  }

  /** Keeps a preference; empty text takes it away. */
  public static void put(String key, String value) {
    if (value.isEmpty()) {
      node().remove(key);
    } else {
      node().put(key, value);
    }
    try {
      node().flush();
    } catch (BackingStoreException e) {
      Platform.getLog(Preferred.class).warn(e.getMessage(), e);
    }
  }

  /** The decimal sign: the chosen one, otherwise that of the language. */
  public static DecimalSign decimal() {
    String language = Locale.getDefault().getLanguage().equals("de") ? DecimalSign.COMMA.name() : DecimalSign.POINT.name();
    return DecimalSign.valueOf(node().get(DECIMAL, language));
  }

  /** The order in which dates are shown; what a study keeps does not change with it. */
  public static DateOrder dates() {
    String kept = node().get(DATES, "");
    return Arrays.stream(DateOrder.values()).filter(order -> order.name().equals(kept)).findFirst().orElse(DateOrder.YMD);
  }

  /** The key of the preferred unit of a quantity. */
  public static String unitKey(Quantity quantity) {
    return UNIT + quantity.name();
  }

  /** The unit in which a quantity is to be shown; empty to show it as it was typed. */
  public static Optional<Unit> unit(Quantity quantity) {
    return Optional.of(node().get(unitKey(quantity), "")).filter(u -> !u.isEmpty()).flatMap(u -> Units.find(quantity, u));
  }

  /** A number in the preferred writing. */
  public static String number(double value) {
    return sign(Printed.number(value, 12));
  }

  /** A text of digits with the preferred decimal sign. */
  public static String sign(String digits) {
    return decimal() == DecimalSign.COMMA ? digits.replace('.', ',') : digits;
  }

  /** An amount with its unit: in the preferred unit, otherwise in the usual unit of the variable. */
  public static String amount(Amount amount, Variable variable) {
    if (amount.kind() == ValueKind.CATEGORY) {
      return Words.word(variable, amount.category());
    }
    String text = Printed.withUnit(amount, unit(variable.quantity()).orElse(variable.unit()));
    return amount.isNumber() ? sign(text) : text;
  }
}
