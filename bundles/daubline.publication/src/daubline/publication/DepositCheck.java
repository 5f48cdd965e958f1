package daubline.publication;

import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Rows;
import daubline.analysis.deposit.Rows.Field;
import daubline.base.Finding;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads a deposit as it stands on disk and holds it against its own rules: types, words, keys, checksums, and no loss. */
final class DepositCheck {

  private static final String NUMBER = "[-+]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][-+]?[0-9]+)?|NaN|INF|-INF";

  private final Path folder;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Set<String>> ids = new HashMap<>();

  private DepositCheck(Path folder) {
    this.folder = folder;
  }

  /**
   * Checks a deposit.
   *
   * @param folder where it stands
   * @param tables the form of its tables
   */
  static List<Finding> of(Path folder, List<Rows> tables) throws IOException {
    DepositCheck check = new DepositCheck(folder);
    List<Rows> read = new ArrayList<>();
    for (Rows form : tables) {
      Rows rows = check.read(form);
      check.ids.put(rows.name(), new HashSet<>(rows.cells(rows.column(Rows.ID).orElseThrow())));
      read.add(rows);
    }
    read.forEach(check::table);
    check.sums();
    check.findings.addAll(DepositData.losses(read));
    return check.findings;
  }

  private Rows read(Rows form) throws IOException {
    List<List<String>> lines = new ArrayList<>();
    try (CsvReader<CsvRecord> csv = CsvReader.builder().skipEmptyLines(false).ofCsvRecord(folder.resolve("data/" + form.name() + ".csv"))) {
      csv.forEach(line -> lines.add(line.getFields()));
    }
    List<String> heading = form.fields().stream().map(Field::name).toList();
    if (lines.isEmpty() || !lines.get(0).equals(heading)) {
      complain(form.name(), 1, "the heading is not " + heading);
    }
    return Archived.read(form, lines);
  }

  private void table(Rows table) {
    Set<String> seen = new HashSet<>();
    for (int r = 0; r < table.rows().size(); r++) {
      for (int c = 0; c < table.fields().size(); c++) {
        cell(table, r, table.fields().get(c), table.rows().get(r).get(c));
      }
      String id = table.rows().get(r).get(0);
      if (id.isEmpty() || !seen.add(id)) {
        complain(table.name(), r + 2, "the id “" + id + "” is empty or stands twice");
      }
    }
  }

  private void cell(Rows table, int row, Field field, String text) {
    boolean fits = text.isEmpty() || switch (field.type()) {
      case NUMBER -> text.matches(NUMBER);
      case INTEGER -> text.matches("-?[0-9]+");
      case BOOLEAN -> text.equals("true") || text.equals("false");
      case WORD -> field.words().contains(text);
      case REFERENCE -> field.target().isEmpty() || ids.getOrDefault(field.target(), Set.of()).contains(text);
      case STRING, REFERENCES -> true;
    };
    if (!fits) {
      complain(table.name(), row + 2, "“" + text + "” does not fit the column " + field.name());
    }
  }

  private void sums() throws IOException {
    for (Map.Entry<String, String> sum : Checksums.read(folder).entrySet()) {
      if (!DepositFile.hash(folder.resolve(sum.getKey())).equals(sum.getValue())) {
        findings.add(Finding.error("deposit.sum", sum.getKey(), "the file differs from its checksum", "write the deposit again"));
      }
    }
  }

  private void complain(String table, int line, String what) {
    findings.add(Finding.error("deposit.check", "data/" + table + ".csv, line " + line, what, "correct the study and write the deposit again"));
  }
}
