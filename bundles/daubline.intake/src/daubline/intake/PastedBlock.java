package daubline.intake;

import daubline.base.DecimalSign;
import daubline.base.Numbers;
import daubline.base.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A block of cells from the clipboard: lines of texts with tabs between them, as spreadsheets and Daubline itself copy
 * them. A cell with a tab or a line break in it stands in quotation marks, which are doubled inside.
 *
 * @param lines the cells of each line; empty lines at the end are left out
 */
public record PastedBlock(List<List<String>> lines) {

  private static final Pattern DECIMAL = Pattern.compile("(?<![\\d.,])\\d+[.,]\\d+(?![\\d.,])");
  private static final Pattern SIGNS = Pattern.compile("[\\d\\s\u00A0\u202F\u2009±+\u2212\u2013\\-≥≤<>~≈()]+");
  private static final Pattern BETWEEN = Pattern.compile("^[/;]+|[/;]+$");

  public PastedBlock {
    lines = lines.stream().map(List::copyOf).toList();
  }

  /** Takes the text of a clipboard apart. */
  public static PastedBlock of(String text) {
    List<List<String>> lines = new ArrayList<>();
    List<String> line = new ArrayList<>();
    int at = 0;
    while (at <= text.length()) {
      int quoted = endOfQuoted(text, at);
      int end = quoted >= 0 ? quoted : endOfPlain(text, at);
      line.add(quoted >= 0 ? text.substring(at + 1, end - 1).replace("\"\"", "\"") : text.substring(at, end));
      if (end >= text.length() || text.charAt(end) != '\t') {
        lines.add(line);
        line = new ArrayList<>();
        end += text.startsWith("\r\n", end) ? 1 : 0;
      }
      at = end + 1;
    }
    while (!lines.isEmpty() && lines.get(lines.size() - 1).stream().allMatch(String::isBlank)) {
      lines.remove(lines.size() - 1);
    }
    return new PastedBlock(lines);
  }

  private static int endOfPlain(String text, int from) {
    int at = from;
    while (at < text.length() && "\t\r\n".indexOf(text.charAt(at)) < 0) {
      at++;
    }
    return at;
  }

  /** The place behind a cell in quotation marks; -1 when the cell is not one, such as “Ore” pile. */
  private static int endOfQuoted(String text, int from) {
    if (from >= text.length() || text.charAt(from) != '"') {
      return -1;
    }
    for (int at = from + 1; at < text.length(); at++) {
      if (text.charAt(at) == '"') {
        if (at + 1 == text.length() || "\t\r\n".indexOf(text.charAt(at + 1)) >= 0) {
          return at + 1;
        }
        if (text.charAt(at + 1) != '"') {
          return -1;
        }
        at++;
      }
    }
    return -1;
  }

  /** How many cells it has. */
  public int cells() {
    return lines.stream().mapToInt(List::size).sum();
  }

  /** The decimal sign that its numbers use; empty when they contradict each other, or when all are such as 1,234. */
  public Optional<DecimalSign> decimal() {
    return Numbers.decide(decimals());
  }

  /** Whether it has numbers such as 1,234 and none that says whether the sign in it is a decimal sign. */
  public boolean isAmbiguous(DecimalSign wanted) {
    return decimals().stream().anyMatch(d -> d.indexOf(wanted.other().sign()) >= 0) && decimals().stream().allMatch(Numbers::isAmbiguous);
  }

  private List<String> decimals() {
    return lines.stream().flatMap(List::stream).filter(PastedBlock::isNumber).flatMap(c -> DECIMAL.matcher(c).results()).map(r -> r.group()).toList();
  }

  /** Whether a cell is a number with whatever stands beside one: an uncertainty, a second one, signs and a unit. */
  private static boolean isNumber(String cell) {
    String rest = SIGNS.matcher(DECIMAL.matcher(cell).replaceAll(" ")).replaceAll(" ").strip();
    rest = BETWEEN.matcher(rest.replaceAll(" */ *", "/")).replaceAll("").strip();
    return cell.chars().anyMatch(Character::isDigit) && (rest.isEmpty() || rest.matches("[/;]+") || !Units.named(rest).isEmpty());
  }

  /** The same with another decimal sign in its numbers; words and dates stay as they are. */
  public PastedBlock with(DecimalSign sign) {
    return new PastedBlock(lines.stream().map(line -> line.stream().map(cell -> isNumber(cell) ? with(cell, sign) : cell).toList()).toList());
  }

  private static String with(String cell, DecimalSign sign) {
    return DECIMAL.matcher(cell).replaceAll(number -> Matcher.quoteReplacement(number.group().replace(sign.other().sign(), sign.sign())));
  }
}
