package daubline.base;

import java.util.List;

/**
 * A total of what was recovered. It is a lower limit of what there was where only a share was dug or recovered, where that
 * share is not known of a deposit, where the reading is doubtful, or where something was found and not weighed.
 *
 * @param total in kilograms; at least where it is a lower limit
 * @param share share of the whole that was dug or recovered, 0 to 1, NaN when not stated
 * @param unweighed classes that are there and not in the total
 * @param doubtful whether it, or a mass in it, was read with low confidence: the share recovered is then as doubtful as the mass
 */
public record RecoveredTotal(Amount total, double share, int unweighed, boolean doubtful) {

  /** The variable in which sheets state a total. */
  public static final String VARIABLE = "residue_total";

  /**
   * One mass that goes into a total.
   *
   * @param mass in kilograms, or why there is none
   * @param share share recovered of this class, NaN when not stated
   * @param doubtful whether it was read with low confidence
   */
  public record Part(Amount mass, double share, boolean doubtful) {
  }

  /** Whether the whole is as much or more. */
  public boolean isLeast() {
    return total.kind() == ValueKind.AT_LEAST;
  }

  /**
   * A total that somebody states.
   *
   * @param share share of the whole that was recovered, NaN when not stated
   * @param whole whether it counts as the whole when no share is stated, as the remains of an own trial do
   * @param doubtful whether it was read with low confidence
   */
  public static RecoveredTotal stated(Amount total, double share, boolean whole, boolean doubtful) {
    boolean isTotal = total.kind() == ValueKind.EXACT || total.kind() == ValueKind.PLUS_MINUS;
    return new RecoveredTotal(isTotal && (doubtful || !isWhole(share, whole)) ? Amount.atLeast(total.value()) : total, share, 0, doubtful);
  }

  private static boolean isWhole(double share, boolean whole) {
    return Double.isNaN(share) ? whole : share >= 1;
  }

  /**
   * The total of the classes that were weighed; the smallest share counts where they differ.
   *
   * @param sheetShare share of the whole deposit, where a class states none
   * @param whole whether a class counts as recovered whole when no share is stated
   * @return a total of not recorded when nothing was weighed
   */
  public static RecoveredTotal sum(List<Part> parts, double sheetShare, boolean whole) {
    List<Amount> weighed = parts.stream().map(Part::mass).filter(Amount::isNumber).toList();
    int unweighed = (int) parts.stream().map(Part::mass).filter(a -> a.kind() == ValueKind.NOT_WEIGHED || a.kind() == ValueKind.PRESENT).count();
    double share = share(parts, sheetShare);
    boolean doubtful = parts.stream().anyMatch(p -> p.doubtful() && p.mass().isNumber());
    if (weighed.isEmpty()) {
      return new RecoveredTotal(Amount.of(ValueKind.NOT_RECORDED), share, unweighed, doubtful);
    }
    double sum = weighed.stream().mapToDouble(Amount::value).sum();
    double variance = weighed.stream().mapToDouble(a -> Math.pow(a.sigmaOr(0), 2)).sum();
    boolean least = unweighed > 0 || doubtful || !isWhole(share, whole) || weighed.stream().anyMatch(a -> a.kind() == ValueKind.AT_LEAST);
    return new RecoveredTotal(least ? Amount.atLeast(sum) : variance > 0 ? Amount.plusMinus(sum, Math.sqrt(variance)) : Amount.exact(sum), share, unweighed, doubtful);
  }

  private static double share(List<Part> parts, double sheetShare) {
    double smallest = Double.NaN;
    for (Part part : parts) {
      double own = Double.isNaN(part.share()) ? sheetShare : part.share();
      smallest = part.mass().isNumber() && !(own >= smallest) ? own : smallest;
    }
    return Double.isNaN(smallest) ? sheetShare : smallest;
  }

  /** The number with its unit, without the words before it. */
  public String number() {
    return Printed.withUnit(isLeast() ? Amount.exact(total.value()) : total, Units.canonical(Quantity.MASS));
  }

  /** As it reads: at least 12.3 kg (40 % of it recovered). */
  public String text() {
    return isLeast() ? "at least " + number() + " (" + why() + ")" : number();
  }

  /** Why it is a lower limit; empty when it is none. */
  public String why() {
    if (!isLeast()) {
      return "";
    }
    String other = join(doubtful ? "read with low confidence" : "", unweighed == 0 ? "" : unweighed + (unweighed == 1 ? " class" : " classes") + " not weighed");
    String recovered = Double.isNaN(share) ? other.isEmpty() ? "share recovered not stated" : "" : share < 1 ? percent() + " of it recovered" : "";
    String all = join(recovered, other);
    return all.isEmpty() ? "a lower limit as stated" : all;
  }

  private static String join(String one, String other) {
    return one + (one.isEmpty() || other.isEmpty() ? "" : "; ") + other;
  }

  /** The share in per cent, with its sign. */
  public String percent() {
    return Printed.number(share * 100, 3) + "\u00A0%";
  }
}
