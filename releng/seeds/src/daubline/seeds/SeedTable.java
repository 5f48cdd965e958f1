package daubline.seeds;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The tables of one seed study, read from the generator's resources. */
final class SeedTable {

  private final String study;

  /** The tables of the study with this folder. */
  SeedTable(String study) {
    this.study = study;
  }

  /** One row; a cell by the name of its column. */
  static final class Row {

    private final NamedCsvRecord cells;

    private Row(NamedCsvRecord cells) {
      this.cells = cells;
    }

    /** The cell; empty text when nothing stands in it. */
    String get(String column) {
      return cells.getField(column).strip();
    }

    /** The cell, or null when nothing stands in it or the table has no such column. */
    String orNull(String column) {
      String cell = cells.findField(column).map(String::strip).orElse("");
      return cell.isEmpty() ? null : cell;
    }

    /** The cell as a word of an enumeration, or null when nothing stands in it. */
    <E extends Enum<E>> E word(String column, Class<E> type) {
      String cell = orNull(column);
      return cell == null ? null : Enum.valueOf(type, cell.toUpperCase(java.util.Locale.ROOT).replace(' ', '_'));
    }
  }

  /** The rows of a table. */
  List<Row> rows(String table) {
    try (Reader text = new InputStreamReader(open(table + ".csv"), StandardCharsets.UTF_8);
        CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
      return rows.stream().map(Row::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A text file of the study as it is. */
  byte[] file(String name) {
    try (InputStream in = open(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private InputStream open(String name) throws IOException {
    InputStream in = SeedTable.class.getResourceAsStream("/daubline/seeds/" + study + "/" + name);
    if (in == null) {
      throw new IOException("The generator has no " + study + "/" + name);
    }
    return in;
  }
}
