package daubline.base;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a value as people type and print it: {@code 255}, {@code 255 ± 10}, {@code 255(10)}, {@code 240–270},
 * {@code ≥ 38}, {@code 38+}, {@code ≤ 40}, {@code < 0.05}, {@code not preserved}, {@code n.a.}, a word of a list. A
 * tilde or "c." before a number is kept in the text and read as the number.
 */
public final class AmountReader {

  private static final Map<String, ValueKind> WORDS = Map.ofEntries(
      Map.entry("present", ValueKind.PRESENT), Map.entry("yes", ValueKind.PRESENT),
      Map.entry("absent", ValueKind.ABSENT), Map.entry("no", ValueKind.ABSENT), Map.entry("none", ValueKind.ABSENT),
      Map.entry("not preserved", ValueKind.NOT_PRESERVED), Map.entry("n.p.", ValueKind.NOT_PRESERVED),
      Map.entry("not looked for", ValueKind.NOT_LOOKED_FOR),
      Map.entry("not recorded", ValueKind.NOT_RECORDED), Map.entry("–", ValueKind.NOT_RECORDED),
      Map.entry("-", ValueKind.NOT_RECORDED), Map.entry("not reported", ValueKind.NOT_RECORDED),
      Map.entry("not weighed", ValueKind.NOT_WEIGHED),
      Map.entry("n.a.", ValueKind.NOT_ANALYSED), Map.entry("na", ValueKind.NOT_ANALYSED),
      Map.entry("not analysed", ValueKind.NOT_ANALYSED), Map.entry("not analyzed", ValueKind.NOT_ANALYSED),
      Map.entry("n.d.", ValueKind.NOT_DETECTED), Map.entry("nd", ValueKind.NOT_DETECTED),
      Map.entry("bdl", ValueKind.BELOW_DETECTION), Map.entry("b.d.l.", ValueKind.BELOW_DETECTION),
      Map.entry("<lod", ValueKind.BELOW_DETECTION), Map.entry("< lod", ValueKind.BELOW_DETECTION), Map.entry("<dl", ValueKind.BELOW_DETECTION),
      Map.entry("< dl", ValueKind.BELOW_DETECTION), Map.entry("<mdl", ValueKind.BELOW_DETECTION), Map.entry("bd", ValueKind.BELOW_DETECTION),
      Map.entry("b.d.", ValueKind.BELOW_DETECTION), Map.entry("<nwg", ValueKind.BELOW_DETECTION), Map.entry("< nwg", ValueKind.BELOW_DETECTION),
      Map.entry("n.n.", ValueKind.NOT_DETECTED), Map.entry("n. n.", ValueKind.NOT_DETECTED), Map.entry("n. d.", ValueKind.NOT_DETECTED),
      Map.entry("n.b.", ValueKind.NOT_ANALYSED), Map.entry("n. b.", ValueKind.NOT_ANALYSED), Map.entry("n.m.", ValueKind.NOT_ANALYSED),
      Map.entry("n. a.", ValueKind.NOT_ANALYSED), Map.entry("sp.", ValueKind.TRACE), Map.entry("spuren", ValueKind.TRACE), Map.entry("not detected", ValueKind.NOT_DETECTED),
      Map.entry("tr", ValueKind.TRACE), Map.entry("tr.", ValueKind.TRACE), Map.entry("trace", ValueKind.TRACE));

  private static final String NUMBER = "([-\u2212]?[0-9.,]+(?:[eE][+-]?[0-9]+)?)";
  private static final Pattern ABOUT = Pattern.compile("^(?:~|≈|c\\.|ca\\.?|about|approx\\.?)\\s*(?=[0-9.,-])", Pattern.CASE_INSENSITIVE);
  private static final Pattern PLUS_MINUS = Pattern.compile(NUMBER + "\\s*(?:±|\\+/-|\\+-)\\s*" + NUMBER);
  private static final Pattern LAST_DIGITS = Pattern.compile("([-\u2212]?[0-9.,]+)\\(([0-9]+)\\)");
  private static final Pattern RANGE = Pattern.compile(NUMBER + "\\s*(?:–|—|-|to|\\.\\.\\.?|…)\\s*" + NUMBER);
  private static final Pattern AT_LEAST = Pattern.compile("(?:≥|>=|>|at least|min\\.?)\\s*" + NUMBER + "|" + NUMBER + "\\s*\\+", Pattern.CASE_INSENSITIVE);
  private static final Pattern AT_MOST = Pattern.compile("(?:≤|<=|at most|max\\.?)\\s*" + NUMBER, Pattern.CASE_INSENSITIVE);
  private static final Pattern BELOW = Pattern.compile("<\\s*" + NUMBER);

  private final DecimalSign decimal;

  /** A reader for one decimal sign. */
  public AmountReader(DecimalSign decimal) {
    this.decimal = decimal;
  }

  /**
   * Reads a number or a reason why there is none.
   *
   * @param text as typed
   * @param unit the unit it was typed in
   */
  public Typed number(String text, Unit unit) {
    String t = text.strip();
    Optional<ValueKind> word = word(t);
    if (word.isPresent()) {
      return Typed.of(Amount.of(word.get()));
    }
    if (t.isEmpty()) {
      return Typed.wrong(Finding.error("value.empty", "", "the value is empty", "enter a value or say why there is none, such as “not preserved”"));
    }
    try {
      return Typed.of(read(ABOUT.matcher(t).replaceFirst(""), unit));
    } catch (NotANumber e) {
      return Typed.wrong(Numbers.complaint(e.text, decimal));
    } catch (IllegalArgumentException e) {
      return Typed.wrong(Finding.error("value.bounds", "", "“" + t + "”: " + e.getMessage(), "write the lower bound first and an uncertainty without sign"));
    }
  }

  /** Reads present, absent or a reason why neither is known. */
  public Typed yesNo(String text) {
    return word(text.strip()).filter(k -> !k.isNumber()).map(k -> Typed.of(Amount.of(k))).orElseGet(() -> Typed.wrong(
        Finding.error("value.yesno", "", "“" + text.strip() + "” is neither present nor absent", "write present, absent, not preserved or not looked for")));
  }

  /** Reads a word of a variable's list, or a reason why there is none. */
  public Typed category(String text, java.util.List<String> words) {
    String t = text.strip();
    Optional<String> listed = words.stream().filter(w -> w.equalsIgnoreCase(t)).findFirst();
    if (listed.isPresent()) {
      return Typed.of(Amount.category(listed.get()));
    }
    Optional<ValueKind> kind = word(t).filter(ValueKind::isMissing);
    if (kind.isPresent()) {
      return Typed.of(Amount.of(kind.get()));
    }
    return Probabilities.parse(t, decimal).filter(p -> words.containsAll(p.keySet())).map(p -> Typed.of(Amount.category(t)))
        .orElseGet(() -> Typed.wrong(Finding.error("value.category", "", "“" + t + "” is not in the list",
            "choose one of: " + String.join(", ", words))));
  }

  /** Reads free text; the words for missing keep their meaning. */
  public Typed text(String text) {
    String t = text.strip();
    return Typed.of(word(t).filter(ValueKind::isMissing).map(Amount::of).orElseGet(() -> Amount.text(t)));
  }

  private static Optional<ValueKind> word(String text) {
    return Optional.ofNullable(WORDS.get(text.toLowerCase(Locale.ROOT)));
  }

  private Amount read(String t, Unit unit) {
    Matcher m = PLUS_MINUS.matcher(t);
    if (m.matches()) {
      return Amount.plusMinus(unit.toCanonical(parse(m.group(1))), unit.differenceToCanonical(parse(m.group(2))));
    }
    m = LAST_DIGITS.matcher(t);
    if (m.matches()) {
      return Amount.plusMinus(unit.toCanonical(parse(m.group(1))), unit.differenceToCanonical(lastDigits(m.group(1), m.group(2))));
    }
    m = AT_LEAST.matcher(t);
    if (m.matches()) {
      return Amount.atLeast(unit.toCanonical(parse(m.group(1) != null ? m.group(1) : m.group(2))));
    }
    m = AT_MOST.matcher(t);
    if (m.matches()) {
      return Amount.atMost(unit.toCanonical(parse(m.group(1))));
    }
    m = BELOW.matcher(t);
    if (m.matches()) {
      return Amount.belowLimit(unit.toCanonical(parse(m.group(1))));
    }
    m = RANGE.matcher(t);
    if (m.matches()) {
      return Amount.range(unit.toCanonical(parse(m.group(1))), unit.toCanonical(parse(m.group(2))));
    }
    return Amount.exact(unit.toCanonical(parse(t)));
  }

  private double lastDigits(String number, String digits) {
    int point = number.indexOf(decimal.sign());
    int decimals = point < 0 ? 0 : number.length() - point - 1;
    return Double.parseDouble(digits + "e-" + decimals);
  }

  private double parse(String text) {
    return Numbers.parse(text, decimal).orElseThrow(() -> new NotANumber(text));
  }

  private static final class NotANumber extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient String text;

    NotANumber(String text) {
      super(text, null, false, false);
      this.text = text;
    }
  }
}
