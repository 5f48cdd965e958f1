package daubline.export.format;

import daubline.export.Table;
import java.io.IOException;

/** Writes one table as text. */
public interface TableWriter {

  /**
   * Writes a table.
   *
   * @param table what to write
   * @param out where to; not closed
   * @throws IOException when it cannot be written
   */
  void write(Table table, Appendable out) throws IOException;

  /** The table as one text. */
  default String text(Table table) {
    StringBuilder text = new StringBuilder();
    try {
      write(table, text);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return text.toString();
  }
}
