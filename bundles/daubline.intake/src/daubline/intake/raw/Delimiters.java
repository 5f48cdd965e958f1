package daubline.intake.raw;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds out the sign between the cells of a text: the one that parts most rows into the same number of cells. */
public final class Delimiters {

  /** The signs that are tried. */
  public static final List<Character> KNOWN = List.of(';', '\t', ',', '|');

  private static final int ROWS = 60;

  private Delimiters() {
  }

  private record Trial(char sign, int cells, double agreement) {
    double score() {
      return cells < 2 ? 0 : agreement * Math.min(cells, 12);
    }
  }

  /** The sign that fits best; empty when none parts the rows. */
  public static Optional<Character> find(String text) {
    String start = start(text);
    return KNOWN.stream().map(sign -> tryOut(start, sign)).filter(t -> t.cells() > 1)
        .max(Comparator.comparingDouble(Trial::score)).map(Trial::sign);
  }

  private static Trial tryOut(String text, char sign) {
    try (CsvReader<CsvRecord> reader = reader(text, sign)) {
      List<Integer> counts = reader.stream().limit(ROWS).map(CsvRecord::getFieldCount).filter(n -> n > 0).toList();
      long rows = counts.stream().filter(n -> n > 1).count();
      int usual = counts.stream().filter(n -> n > 1).collect(Collectors.groupingBy(n -> n,
          Collectors.counting())).entrySet().stream()
          .max(Comparator.<Map.Entry<Integer, Long>>comparingLong(Map.Entry::getValue)
              .thenComparing(Map.Entry::getKey)).map(Map.Entry::getKey).orElse(1);
      long agreeing = counts.stream().filter(n -> n == usual).count();
      return new Trial(sign, usual, rows == 0 ? 0 : (double) agreeing / counts.size());
    } catch (IOException | RuntimeException e) {
      return new Trial(sign, 1, 0);
    }
  }

  /** A reader that leaves rows of unequal length for the table's own checks. */
  static CsvReader<CsvRecord> reader(String text, char sign) {
    return CsvReader.builder().allowExtraFields(true).allowMissingFields(true).fieldSeparator(sign).ofCsvRecord(text);
  }

  private static String start(String text) {
    int end = 0;
    for (int row = 0; row < ROWS && end >= 0; row++) {
      int next = text.indexOf('\n', end);
      if (next < 0) {
        return text;
      }
      end = next + 1;
    }
    return text.substring(0, end);
  }

  /** The sign in words. */
  public static String name(char sign) {
    return switch (sign) {
      case '\t' -> "tab";
      case ';' -> "semicolon";
      case ',' -> "comma";
      case '|' -> "bar";
      default -> "“" + sign + "”";
    };
  }
}
