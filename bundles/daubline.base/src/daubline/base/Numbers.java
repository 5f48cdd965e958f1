package daubline.base;

import java.util.Collection;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Strict reading of numbers. The whole text must be a number in one writing; grouping signs are refused; the decimal
 * sign is the caller's and is the same for a whole file. Java's own NumberFormat reads "12,5" as 125 in an English
 * locale without a word, so it is not used.
 */
public final class Numbers {

  private static final String MINUS = "[-\u2212\u2013]";
  private static final String SIGN = "[-+\u2212\u2013]?";
  private static final Pattern POINT = Pattern.compile(SIGN + "\\d+(\\.\\d+)?([eE][+-]?\\d{1,3})?|" + SIGN + "\\.\\d+");
  private static final Pattern COMMA = Pattern.compile(SIGN + "\\d+(,\\d+)?([eE][+-]?\\d{1,3})?|" + SIGN + ",\\d+");
  private static final Pattern GROUPED = Pattern.compile("\\d{1,3}([.,' \u00A0\u202F]\\d{3})+([.,]\\d+)?");
  private static final Pattern THOUSAND_OR_DECIMAL = Pattern.compile(MINUS + "?[1-9]\\d{0,2}[.,]\\d{3}");

  private Numbers() {
  }

  /**
   * Reads a number.
   *
   * @param text what was typed or stands in a cell
   * @param decimal the decimal sign of the file or screen
   * @return empty when the text is not a number in this writing, or not finite
   */
  public static Optional<Double> parse(String text, DecimalSign decimal) {
    String t = text.strip();
    if (!(decimal == DecimalSign.POINT ? POINT : COMMA).matcher(t).matches()) {
      return Optional.empty();
    }
    double value = Double.parseDouble(t.replaceAll(MINUS, "-").replace(',', '.'));
    return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
  }

  /** Why a text is not a number in this writing, and how to mend it. */
  public static Finding complaint(String text, DecimalSign decimal) {
    String t = text.strip();
    if (GROUPED.matcher(t).matches()) {
      return Finding.error("number.grouped", "", "“" + t + "” may use a grouping sign or another decimal sign",
          "write it without grouping, with “" + decimal.sign() + "” as decimal sign");
    }
    if (parse(t, decimal.other()).isPresent()) {
      return Finding.error("number.decimal", "", "“" + t + "” uses “" + decimal.other().sign() + "” as decimal sign",
          "this place expects “" + decimal.sign() + "”; change the number or the decimal sign of the file");
    }
    return Finding.error("number.text", "", "“" + t + "” is not a number", "enter digits with “" + decimal.sign() + "” as decimal sign");
  }

  /** Whether the text could be read as thousands or as decimals, such as "1,234". */
  public static boolean isAmbiguous(String text) {
    return THOUSAND_OR_DECIMAL.matcher(text.strip()).matches();
  }

  /**
   * Decides the decimal sign of a file from its cells.
   *
   * @param cells texts that are meant as numbers
   * @return the sign that every decimal number uses; empty when the cells contradict each other or when only ambiguous
   *     ones such as "1,234" use a sign at all
   */
  public static Optional<DecimalSign> decide(Collection<String> cells) {
    boolean point = cells.stream().anyMatch(c -> isDecimal(c, DecimalSign.POINT));
    boolean comma = cells.stream().anyMatch(c -> isDecimal(c, DecimalSign.COMMA));
    boolean ambiguous = cells.stream().anyMatch(Numbers::isAmbiguous);
    if (point && comma || !point && !comma && ambiguous) {
      return Optional.empty();
    }
    return Optional.of(comma ? DecimalSign.COMMA : DecimalSign.POINT);
  }

  private static boolean isDecimal(String cell, DecimalSign sign) {
    return cell.indexOf(sign.sign()) >= 0 && !isAmbiguous(cell) && parse(cell, sign).isPresent();
  }
}
