package daubline.validation;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The published data that validation carries with it, as printed in their sources. */
public final class Csv {

  private Csv() {
  }

  /**
   * Reads a table of this bundle.
   *
   * @param name the name of the file in {@code daubline/validation/data}, without its ending
   */
  public static List<NamedCsvRecord> rows(String name) {
    try (InputStream in = Csv.class.getResourceAsStream("data/" + name + ".csv")) {
      if (in == null) {
        throw new IllegalArgumentException("there is no table " + name + " among the data of validation");
      }
      return CsvReader.builder().ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8)).stream().toList();
    } catch (IOException e) {
      throw new UncheckedIOException("the table " + name + " cannot be read", e);
    }
  }

  /** A number, or NaN where the cell is empty. */
  static double number(NamedCsvRecord row, String column) {
    String text = row.getField(column).strip();
    return text.isEmpty() ? Double.NaN : Double.parseDouble(text);
  }
}
