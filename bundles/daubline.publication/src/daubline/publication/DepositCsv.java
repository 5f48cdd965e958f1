package daubline.publication;

import daubline.export.format.CsvLines;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;

/** Lines of text as an archive file. */
final class DepositCsv {

  private DepositCsv() {
  }

  static String text(List<List<String>> lines) {
    StringBuilder text = new StringBuilder();
    CsvLines csv = new CsvLines(',');
    try {
      for (List<String> line : lines) {
        csv.line(line, text);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return text.toString();
  }
}
