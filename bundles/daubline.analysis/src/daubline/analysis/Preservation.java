package daubline.analysis;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.ValueKind;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the height to which a property could be seen does to a claim about a height of the wall. A claim wholly above it
 * counts as not preserved: nobody could have recovered it. A zone that reaches up to it may have gone on, so its height
 * is a lower limit. Everything below it was seen and stays as it is; so do claims about anything that is no height.
 */
public final class Preservation {

  /** Heights to which something reaches up from the floor, so that a broken wall cuts them off. */
  private static final Set<String> ZONES = Set.of("slag_adhering_height", "reduced_height", "oxidised_height", "vitrified_height", "vitrified_height_12",
      "vitrified_height_3", "vitrified_height_6", "vitrified_height_9");
  /** Heights at which something is. */
  private static final Set<String> PLACES = Set.of("inlet_height_above_floor");
  private static final double SPREAD = 2;
  private static final double SAME = 1e-9;

  private Preservation() {
  }

  /** Whether a limit means something for a variable. */
  public static boolean concerns(String variable) {
    return ZONES.contains(variable) || PLACES.contains(variable);
  }

  /**
   * The amount as it may be compared.
   *
   * @param limit height in m to which the property could be seen; NaN when nobody said so
   * @return the same amount where the limit changes nothing
   */
  public static Amount seen(String variable, Amount amount, double limit) {
    if (Double.isNaN(limit) || !concerns(variable)) {
      return amount;
    }
    if (limit <= 0 || amount.isNumber() && low(amount) > limit + SAME) {
      return Amount.of(ValueKind.NOT_PRESERVED);
    }
    boolean cut = ZONES.contains(variable) && amount.isNumber() && amount.kind() != ValueKind.AT_MOST && amount.kind() != ValueKind.AT_LEAST
        && high(amount) >= limit - SAME;
    return cut ? Amount.atLeast(Math.min(limit, amount.kind() == ValueKind.RANGE ? amount.low() : amount.value())) : amount;
  }

  /** As low as an amount may lie: its lower bound, or two standard uncertainties below it. */
  private static double low(Amount amount) {
    return switch (amount.kind()) {
      case RANGE -> amount.low();
      case AT_MOST, BELOW_LIMIT -> Double.NEGATIVE_INFINITY;
      default -> amount.value() - SPREAD * amount.sigmaOr(0);
    };
  }

  private static double high(Amount amount) {
    return amount.kind() == ValueKind.RANGE ? amount.high() : amount.value();
  }

  /** A sheet with its claims as they may be compared; what was claimed stays in the trail. */
  static SheetData seen(SheetData sheet) {
    boolean any = sheet.statements().entrySet().stream().anyMatch(e -> concerns(e.getKey()) && e.getValue().stream().anyMatch(s -> !Double.isNaN(s.preservationLimit())));
    if (!any) {
      return sheet;
    }
    Map<String, List<Statement>> statements = new LinkedHashMap<>();
    sheet.statements().forEach((variable, all) -> statements.put(variable, all.stream().map(s -> seen(variable, s)).toList()));
    return new SheetData(sheet.id(), sheet.name(), sheet.samplingFraction(), statements, sheet.residues(), sheet.analyses(), sheet.features());
  }

  private static Statement seen(String variable, Statement s) {
    Amount seen = seen(variable, s.amount(), s.preservationLimit());
    if (seen.equals(s.amount())) {
      return s;
    }
    String why = seen.kind() == ValueKind.NOT_PRESERVED ? "above it nothing could be seen, so it counts as not preserved" : "it may have gone on above, so it counts as a lower limit";
    return s.reading(seen,
        Trail.of("Could be seen up to " + Printed.millimetres(s.preservationLimit()) + ": " + why, "", s.trail()));
  }
}
