package daubline.intake.raw;

import daubline.base.Finding;
import daubline.intake.raw.Encodings.Decoded;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads text with delimited cells. */
final class CsvFiles {

  private static final int LINES_IN_A_CELL = 20;

  private CsvFiles() {
  }

  static RawFile read(String name, byte[] content, RawOptions options) {
    Decoded decoded = Encodings.decode(content, options.charset());
    if (decoded.text().indexOf('\0') >= 0) {
      return RawFile.refused(name, Finding.error("file.kind", name, "this is neither text nor a workbook",
          "save the table as .xlsx or CSV; for a text in an unusual encoding, state the encoding"));
    }
    if (decoded.text().isBlank()) {
      return RawFile.refused(name, Finding.error("file.empty", name, "the file holds nothing but spaces",
          "export it again, or choose another file"));
    }
    List<Finding> findings = new ArrayList<>();
    Optional<Character> likely = Delimiters.find(decoded.text());
    char delimiter = options.delimiter().or(() -> likely).orElse(',');
    likely.filter(l -> l != delimiter).ifPresent(l -> findings.add(Finding.warning("csv.delimiter", name,
        "the cells seem to be parted by "
        + Delimiters.name(l) + ", not by " + Delimiters.name(delimiter) + " as stated", "state delimiter="
        + Delimiters.name(l) + ", or none")));
    findings.add(Finding.note("file.read", name, "read as " + decoded.how() + ", cells parted by " + Delimiters.name(delimiter),
        "state the encoding or the delimiter if characters or columns look wrong"));
    if (!decoded.certain()) {
      findings.add(Finding.warning("file.encoding", name, "the encoding is not marked; it is read as " + decoded.how(),
          "look at accents and units such as °C; if they are wrong, state the encoding"));
    }
    if (decoded.text().indexOf('\uFFFD') >= 0) {
      findings.add(Finding.error("file.characters", name, "some characters cannot be read in this encoding",
          "state another encoding, such as windows-1252"));
    }
    return table(name, decoded, delimiter, findings);
  }

  private static RawFile table(String name, Decoded decoded, char delimiter, List<Finding> findings) {
    List<RawRow> rows = new ArrayList<>();
    try (CsvReader<CsvRecord> reader = Delimiters.reader(decoded.text(), delimiter)) {
      for (CsvRecord record : reader) {
        rows.add(new RawRow((int) record.getStartingLineNumber(), record.getFields().stream().map(RawCell::text).toList()));
        record.getFields().stream().filter(f -> f.chars().filter(c -> c == '\n').count() > LINES_IN_A_CELL).findFirst()
            .ifPresent(f -> findings.add(unclosed(name, record.getStartingLineNumber())));
      }
    } catch (IOException | RuntimeException e) {
      findings.add(Finding.error("csv.broken", name, "the rows cannot be told apart: " + e.getMessage(),
          "look for a quotation mark that is not closed, or state the delimiter"));
    }
    if (rows.stream().allMatch(r -> r.cells().size() <= 1) && findings.stream().noneMatch(f ->
        f.code().equals("csv.delimiter"))) {
      findings.add(Finding.warning("csv.delimiter", name, "no row has more than one cell when parted by "
          + Delimiters.name(delimiter),
          "state the delimiter that the file uses: semicolon, comma, tab or bar"));
    }
    String how = decoded.how() + ", " + Delimiters.name(delimiter);
    return new RawFile(name, how, List.of(new RawSheet("", rows, List.of())), findings);
  }

  private static Finding unclosed(String name, long line) {
    return Finding.error("csv.quote", name + ", row " + line, "a cell runs over more than " + LINES_IN_A_CELL
        + " lines; a quotation mark is not closed",
        "close the quotation mark, or write two of them where one is meant");
  }
}
