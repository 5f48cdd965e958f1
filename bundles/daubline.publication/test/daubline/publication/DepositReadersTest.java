package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.analysis.deposit.Rows;
import daubline.base.ValueKind;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The deposit of the demonstration study in the hands of other programs. */
class DepositReadersTest {

  private static final String MISSING = Arrays.stream(ValueKind.values()).filter(ValueKind::isMissing).map(Enum::name).collect(Collectors.joining(" "));

  @TempDir
  static Path folder;
  private static Path deposit;
  private static List<Rows> tables;

  @BeforeAll
  static void write() throws Exception {
    deposit = folder.resolve("deposit");
    DepositTest.write("aldervale", deposit);
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      tables = DepositData.of(session, Disclosure.standard()).tables();
    }
  }

  /** What a reader should find: numbers as numbers, nothing where nothing stands or a reason stands for a number. */
  private static List<String> expected() {
    List<String> lines = new ArrayList<>();
    for (Rows table : tables) {
      for (int r = 0; r < table.rows().size(); r++) {
        for (int c = 0; c < table.fields().size(); c++) {
          String text = table.rows().get(r).get(c);
          boolean number = table.fields().get(c).type() == Rows.Type.NUMBER || table.fields().get(c).type() == Rows.Type.INTEGER;
          if (!text.isEmpty()) {
            lines.add(number ? Cells.number(table.name(), r, c, Double.parseDouble(text)) : Cells.text(table.name(), r, c, text));
          }
        }
      }
    }
    lines.sort(null);
    assertTrue(lines.size() > 10_000, "only " + lines.size() + " values");
    return lines;
  }

  @Test
  void theDescriptorKeepsThePublishedSchema() throws Exception {
    Programs.needPython("jsonschema");
    assertEquals("", Programs.run(folder, Programs.PYTHON, Programs.SCRIPTS.resolve("read.py").toString(), "schema",
        Programs.SCRIPTS.resolve("datapackage-2.0.json").toString(), deposit.resolve("datapackage.json").toString()));
    Path wrong = folder.resolve("wrong.json");
    Files.writeString(wrong, Files.readString(deposit.resolve("datapackage.json")).replaceFirst("\"fields\"", "\"felds\""));
    assertTrue(!Programs.run(folder, Programs.PYTHON, Programs.SCRIPTS.resolve("read.py").toString(), "schema",
        Programs.SCRIPTS.resolve("datapackage-2.0.json").toString(), wrong.toString()).isEmpty(), "the validator finds what is wrong");
  }

  @Test
  void pythonReadsTheSameValuesAndTypes() throws Exception {
    Programs.needPython("csv");
    String read = Programs.run(folder, Programs.PYTHON, Programs.SCRIPTS.resolve("read.py").toString(), "deposit", deposit.toString());
    assertEquals(List.of(), Programs.differences(expected(), Cells.printed(read)));
  }

  @Test
  void rReadsTheSameValuesAndTypes() throws Exception {
    Programs.needR("utils");
    StringBuilder plan = new StringBuilder();
    for (Rows table : tables) {
      boolean reasons = table.column("kind").isPresent() && table.column("value").isPresent();
      for (Rows.Field field : table.fields()) {
        String type = field.type() == Rows.Type.NUMBER ? "number" : field.type() == Rows.Type.INTEGER ? "integer" : "string";
        plan.append(table.name()).append('\t').append(field.name()).append('\t').append(type).append('\t')
            .append(reasons && type.equals("number") ? MISSING : "").append('\n');
      }
    }
    Path file = Files.writeString(folder.resolve("plan.tsv"), plan);
    String read = Programs.run(folder, "Rscript", Programs.SCRIPTS.resolve("read.R").toString(), "deposit", deposit.toString(), file.toString());
    assertEquals(List.of(), Programs.differences(expected(), Cells.printed(read)));
  }

  @Test
  void theChecksumProgramAgrees() throws Exception {
    Programs.need("sha256sum", "sha256sum", "--version");
    assertTrue(!Programs.run(folder, "sh", "-c", "cd '" + deposit + "' && sha256sum --check --strict SHA256SUMS").contains("FAILED"));
  }
}
