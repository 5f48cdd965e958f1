package daubline.benchmarks;

import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Provenance;
import daubline.export.Table;
import daubline.export.format.ArchiveCsv;
import daubline.export.format.WorkbookWriter;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a table of invented trials once and prints the seconds that the writing took: xlsx or csv, rows, columns, file. Every tenth
 * column is text, the others are numbers; the peers in releng/benchmarks/peers/export.* write the same cells.
 */
public final class ExportTimes {

  private ExportTimes() {
  }

  /** The benchmark. */
  public static void main(String[] args) throws IOException {
    Table table = table(Integer.parseInt(args[1]), Integer.parseInt(args[2]));
    Path file = Path.of(args[3]);
    long from = System.nanoTime();
    if (args[0].equals("xlsx")) {
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
        new WorkbookWriter(new Provenance("Benchmark", "sha256:0", "0", List.of(), Provenance.NO_TIME)).write(List.of(table), out);
      }
    } else {
      try (Writer out = new OutputStreamWriter(new BufferedOutputStream(Files.newOutputStream(file)), StandardCharsets.UTF_8)) {
        new ArchiveCsv().write(table, out);
      }
    }
    System.out.println((System.nanoTime() - from) / 1e9);
  }

  private static Table table(int rows, int columns) {
    List<Column> heads = new ArrayList<>();
    for (int c = 0; c < columns; c++) {
      heads.add(c % 10 == 0 ? Column.text("c" + c, "Column " + c) : Column.number("c" + c, "Column " + c, "kg"));
    }
    List<List<Cell>> cells = new ArrayList<>(rows);
    for (int r = 0; r < rows; r++) {
      List<Cell> row = new ArrayList<>(columns);
      for (int c = 0; c < columns; c++) {
        row.add(c % 10 == 0 ? Cell.text("trial " + (r * 31 + c) % 997) : Cell.fixed((r * 7919L + c * 104729L) % 1_000_003 / 1000.0, 3));
      }
      cells.add(row);
    }
    return new Table("trials", "Trials", "Invented.", heads, cells, List.of());
  }
}
