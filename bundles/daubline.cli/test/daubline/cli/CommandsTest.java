package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import daubline.base.Version;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CommandsTest {

  /** What a command printed, and its exit code. */
  private record Run(int exit, String out, String err) {
  }

  @TempDir
  Path temporary;

  private static Run run(String... arguments) {
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
    try {
      int exit = Commands.run(arguments);
      return new Run(exit, printed.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
  }

  @Test
  void helpListsEveryCommandAndEachExplainsItself() {
    String help = run("--help").out();
    List<String> names = new CommandLine(new Daubline()).getSubcommands().keySet().stream().toList();
    assertTrue(names.size() > 5);
    for (String name : names) {
      assertTrue(help.contains(name), name);
      Run explained = run(name, "--help");
      assertEquals(0, explained.exit(), name);
      assertTrue(explained.out().contains("Usage"), name);
    }
  }

  @Test
  void answersItsVersionWithAndWithoutTheParser() {
    assertEquals(Version.line(), run("--version").out().strip());
  }

  @Test
  void makesChecksAndRefusesToOverwriteAStudy() {
    String folder = temporary.resolve("mine").toString();
    assertEquals(0, run("new", folder, "My valley").exit());
    assertEquals(0, run("check", folder).exit());
    Run again = run("new", folder, "My valley");
    assertEquals(1, again.exit());
    assertTrue(again.err().contains("holds files already"), again.err());
    Run nothing = run("compare", folder);
    assertEquals(1, nothing.exit());
    assertTrue(nothing.out().contains("nothing to compare"));
  }

  @Test
  void saysWhatIsWrongWithAFolderOrAnArgument() throws Exception {
    Run nowhere = run("check", temporary.resolve("nowhere").toString());
    assertEquals(1, nowhere.exit());
    assertTrue(nowhere.err().contains("holds no study") && !nowhere.err().contains("\tat "), nowhere.err());
    assertEquals(2, run("compare").exit());
    assertEquals(2, run("no-such-command").exit());
    Files.createDirectories(temporary.resolve("broken"));
    Files.writeString(temporary.resolve("broken/study.xmi"), "<x");
    assertEquals(1, run("check", temporary.resolve("broken").toString()).exit());
  }

  @Test
  void explainsVariables() {
    assertTrue(run("variables").out().contains("base_internal_diameter"));
    assertTrue(run("variables", "base_internal_diameter").out().contains("source:"));
    assertEquals(1, run("variables", "zzzz").exit());
  }

  @Test
  void comparesPublishedTrialsTheSameWayInEveryLocaleAndOnAnyCores() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ENGLISH);
      Run one = run("compare", "seeds/open-smelts", "--draws", "200", "--threads", "1", "--json");
      Locale.setDefault(Locale.GERMANY);
      Run two = run("compare", "seeds/open-smelts", "--draws", "200", "--threads", "2", "--json");
      assertEquals(0, one.exit(), one.err());
      assertEquals(one.out(), two.out());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void writesValidJsonWithATrailForEveryCriterion() throws Exception {
    Run json = run("compare", "seeds/open-smelts", "--draws", "100", "--json");
    int criteria = 0;
    int trails = 0;
    try (JsonParser parser = new JsonFactory().createParser(json.out())) {
      while (parser.nextToken() != null) {
        criteria += "criterion".equals(parser.currentName()) && parser.currentToken().isScalarValue() ? 1 : 0;
        trails += "trail".equals(parser.currentName()) && parser.currentToken().isStructStart() ? 1 : 0;
      }
    }
    assertTrue(criteria > 8);
    assertEquals(criteria, trails);
  }

  @Test
  void neverSaysThatAnythingWasProved() {
    String text = (run("compare", "seeds/open-smelts", "--draws", "100", "--reasons", "--trail").out()).toLowerCase(Locale.ROOT);
    for (String word : List.of("proved", "proven", "match", " true ")) {
      assertFalse(text.contains(word), word);
    }
    assertTrue(text.contains("coverage") && text.contains("not tested"));
  }

  @Test
  void takesATableOverOnlyWhenAsked() throws Exception {
    String study = temporary.resolve("mine").toString();
    Path table = temporary.resolve("trials.csv");
    run("new", study, "My valley");
    assertEquals(0, run("template", "trials", temporary.resolve("empty.xlsx").toString()).exit());
    Files.writeString(table, "series,name,found:base_internal_diameter [mm]\nSummer,G1,255\n");
    Run looked = run("import", study, table.toString(), "--as", "trials");
    assertTrue(looked.out().contains("nothing was changed; --apply takes it over"), looked.out() + looked.err());
    assertFalse(run("where", study, "base_internal_diameter").out().contains("255"));
    assertTrue(run("import", study, table.toString(), "--as", "trials", "--apply").out().contains("done and saved"));
    assertTrue(run("where", study, "base_internal_diameter").out().contains("255"));
    assertTrue(run("import", study, table.toString(), "--as", "trials", "--apply").out().contains("nothing to do"));
    Files.writeString(table, "series,name,found:base_internal_diameter [mm]\nSummer,G2,25x\n");
    Run refused = run("import", study, table.toString(), "--as", "trials", "--apply");
    assertEquals(1, refused.exit());
    assertTrue(refused.out().contains("mend the errors first"), refused.out());
  }

  @Test
  void publishesTwiceAlikeAndReadsTheDepositAgain() throws Exception {
    String to = temporary.resolve("out").toString();
    Run first = run("publish", "seeds/aldervale", "--draws", "200", "--formats", "svg", "--year", "2031", "--to", to);
    assertEquals(0, first.exit(), first.err());
    List<String> lines = first.out().lines().toList();
    assertTrue(lines.get(lines.size() - 1).endsWith("out"), first.out());
    assertTrue(lines.subList(lines.size() - 30, lines.size()).toString().contains("coverage"), "the ranking stands at the end");
    assertTrue(lines.size() < 80, "a line for each file would bury the ranking");
    String sums = Files.readString(temporary.resolve("out/SHA256SUMS"));
    assertEquals(0, run("publish", "seeds/aldervale", "--draws", "200", "--formats", "svg", "--year", "2031", "--to", to).exit());
    assertEquals(sums, Files.readString(temporary.resolve("out/SHA256SUMS")));
    Run read = run("read-deposit", temporary.resolve("out/deposit").toString(), temporary.resolve("again").toString());
    assertEquals(0, read.exit(), read.out() + read.err());
    assertEquals(0, run("check", temporary.resolve("again").toString()).exit());
  }
}
