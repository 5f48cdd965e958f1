package daubline.base;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The tables of the folder shared/, which are part of the program. */
final class SharedTable {

  private SharedTable() {
  }

  /** The rows of a table, by its file name. */
  static List<NamedCsvRecord> rows(String name) {
    try (Reader text = new InputStreamReader(SharedTable.class.getResourceAsStream("/daubline/shared/" + name), StandardCharsets.UTF_8);
        CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
      return rows.stream().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
