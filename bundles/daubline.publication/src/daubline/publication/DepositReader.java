package daubline.publication;

import daubline.analysis.deposit.DepositImport;
import daubline.analysis.deposit.Rows;
import daubline.analysis.deposit.StudyRows;
import daubline.base.Finding;
import daubline.session.StudySession;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a deposit into an empty study, with its files. */
public final class DepositReader {

  private DepositReader() {
  }

  /**
   * Reads a deposit.
   *
   * @param deposit the folder of the deposit
   * @param session an open study without content; one change that can be undone, the files beside
   * @return what is wrong; when it holds an error, nothing was taken over
   */
  public static List<Finding> read(Path deposit, StudySession session) throws IOException {
    List<Finding> findings = new ArrayList<>();
    List<Rows> tables = new ArrayList<>();
    for (Rows form : StudyRows.forms()) {
      Path file = deposit.resolve("data/" + form.name() + ".csv");
      if (Files.isRegularFile(file)) {
        read(form, file, findings).ifPresent(tables::add);
      }
    }
    if (findings.isEmpty()) {
      findings.addAll(DepositImport.into(session, tables));
    }
    if (findings.stream().noneMatch(Finding::isError)) {
      copyFiles(deposit, session, tables);
    }
    return findings;
  }

  private static Optional<Rows> read(Rows form, Path file, List<Finding> findings) throws IOException {
    List<List<String>> lines = new ArrayList<>();
    try (CsvReader<CsvRecord> csv = CsvReader.builder().skipEmptyLines(false).ofCsvRecord(file)) {
      csv.forEach(line -> lines.add(line.getFields()));
    }
    List<String> heading = form.fields().stream().map(Rows.Field::name).toList();
    Optional<List<String>> uneven = lines.stream().filter(line -> line.size() != heading.size()).findFirst();
    if (lines.isEmpty() || !lines.get(0).equals(heading) || uneven.isPresent()) {
      findings.add(Finding.error("deposit.heading", file.getFileName().toString(), "its columns are not those of a deposit of this version",
          "the columns must be " + String.join(", ", heading)));
      return Optional.empty();
    }
    return Optional.of(Archived.read(form, lines));
  }

  private static void copyFiles(Path deposit, StudySession session, List<Rows> tables) throws IOException {
    for (DepositFile file : DepositFile.of(tables)) {
      Path from = deposit.resolve(file.deposited()).normalize();
      Path to = session.folder().resolve(file.path()).normalize();
      if (from.startsWith(deposit.normalize()) && to.startsWith(session.folder().normalize()) && Files.isRegularFile(from) && !Files.exists(to)) {
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
      }
    }
  }
}
