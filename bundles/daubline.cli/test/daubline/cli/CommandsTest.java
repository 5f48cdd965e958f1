package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import daubline.base.Version;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class CommandsTest {

  @TempDir
  Path temporary;

  @Test
  void helpListsEveryCommandAndEachExplainsItself() {
    String help = Run.of("--help").out();
    List<String> names = new CommandLine(new Daubline()).getSubcommands().keySet().stream().toList();
    assertTrue(names.size() > 5);
    for (String name : names) {
      assertTrue(help.contains(name), name);
      Run explained = Run.of(name, "--help");
      assertEquals(0, explained.exit(), name);
      assertTrue(explained.out().contains("Usage"), name);
    }
  }

  @Test
  void answersItsVersionWithAndWithoutTheParser() {
    assertEquals(Version.line(), Run.of("--version").out().strip());
  }

  @Test
  void makesChecksAndRefusesToOverwriteAStudy() {
    String folder = temporary.resolve("mine").toString();
    assertEquals(0, Run.of("new", folder, "My valley").exit());
    assertEquals(0, Run.of("check", folder).exit());
    Run again = Run.of("new", folder, "My valley");
    assertEquals(1, again.exit());
    assertTrue(again.err().contains("holds files already"), again.err());
    Run nothing = Run.of("compare", folder);
    assertEquals(1, nothing.exit());
    assertTrue(nothing.out().contains("nothing to compare"));
  }

  @Test
  void saysWhatIsWrongWithAFolderOrAnArgument() throws Exception {
    Run nowhere = Run.of("check", temporary.resolve("nowhere").toString());
    assertEquals(1, nowhere.exit());
    assertTrue(nowhere.err().contains("holds no study") && !nowhere.err().contains("\tat "), nowhere.err());
    assertEquals(2, Run.of("compare").exit());
    assertEquals(2, Run.of("no-such-command").exit());
    Files.createDirectories(temporary.resolve("broken"));
    Files.writeString(temporary.resolve("broken/study.xmi"), "<x");
    assertEquals(1, Run.of("check", temporary.resolve("broken").toString()).exit());
  }

  @Test
  void explainsVariables() {
    assertTrue(Run.of("variables").out().contains("base_internal_diameter"));
    assertTrue(Run.of("variables", "base_internal_diameter").out().contains("source:"));
    assertEquals(1, Run.of("variables", "zzzz").exit());
    assertTrue(Run.of("variables", "moss", "--of", "seeds/aldervale").out().contains("moss_cover"), "variables of the study's own");
  }

  @Test
  void comparesPublishedTrialsTheSameWayInEveryLocaleAndOnAnyCores() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.ENGLISH);
      Run one = Run.of("compare", "seeds/open-smelts", "--draws", "200", "--threads", "1", "--json");
      Locale.setDefault(Locale.GERMANY);
      Run two = Run.of("compare", "seeds/open-smelts", "--draws", "200", "--threads", "2", "--json");
      assertEquals(0, one.exit(), one.err());
      assertEquals(one.out(), two.out());
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void writesValidJsonWithATrailForEveryCriterion() throws Exception {
    Run json = Run.of("compare", "seeds/open-smelts", "--draws", "100", "--json");
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
    String text = (Run.of("compare", "seeds/open-smelts", "--draws", "100", "--reasons", "--trail").out()).toLowerCase(Locale.ROOT);
    for (String word : List.of("proved", "proven", "match", " true ")) {
      assertFalse(text.contains(word), word);
    }
    assertTrue(text.contains("coverage") && text.contains("not tested"));
  }

  @Test
  void takesATableOverOnlyWhenAsked() throws Exception {
    String study = temporary.resolve("mine").toString();
    Path table = temporary.resolve("trials.csv");
    Run.of("new", study, "My valley");
    assertEquals(0, Run.of("template", "trials", temporary.resolve("empty.xlsx").toString()).exit());
    Files.writeString(table, "series,name,found:base_internal_diameter [mm]\nSummer,G1,255\n");
    Run looked = Run.of("import", study, table.toString(), "--as", "trials");
    assertTrue(looked.out().contains("nothing was changed; --apply takes it over"), looked.out() + looked.err());
    assertFalse(Run.of("where", study, "base_internal_diameter").out().contains("255"));
    assertTrue(Run.of("import", study, table.toString(), "--as", "trials", "--apply").out().contains("done and saved"));
    assertTrue(Run.of("where", study, "base_internal_diameter").out().contains("255"));
    assertTrue(Run.of("import", study, table.toString(), "--as", "trials", "--apply").out().contains("nothing to do"));
    Files.writeString(table, "series,name,found:base_internal_diameter [mm]\nSummer,G2,25x\n");
    Run refused = Run.of("import", study, table.toString(), "--as", "trials", "--apply");
    assertEquals(1, refused.exit());
    assertTrue(refused.out().contains("mend the errors first"), refused.out());
  }

  @Test
  void publishesTwiceAlikeAndReadsTheDepositAgain() throws Exception {
    String to = temporary.resolve("out").toString();
    Run first = Run.of("publish", "seeds/aldervale", "--draws", "200", "--formats", "svg", "--year", "2031", "--to", to);
    assertEquals(0, first.exit(), first.err());
    List<String> lines = first.out().lines().toList();
    assertTrue(lines.get(lines.size() - 1).endsWith("out"), first.out());
    assertTrue(lines.subList(lines.size() - 30, lines.size()).toString().contains("coverage"), "the ranking stands at the end");
    assertTrue(lines.size() < 80, "a line for each file would bury the ranking");
    String sums = Files.readString(temporary.resolve("out/SHA256SUMS"));
    assertEquals(0, Run.of("publish", "seeds/aldervale", "--draws", "200", "--formats", "svg", "--year", "2031", "--to", to).exit());
    assertEquals(sums, Files.readString(temporary.resolve("out/SHA256SUMS")));
    Run read = Run.of("read-deposit", temporary.resolve("out/deposit").toString(), temporary.resolve("again").toString());
    assertEquals(0, read.exit(), read.out() + read.err());
    assertEquals(0, Run.of("check", temporary.resolve("again").toString()).exit());
  }

  @Test
  void predictsOneTrialASeriesAndAGrid() throws Exception {
    Run one = Run.of("predict", "seeds/aldervale", "--trial", "Aldervale 7", "--draws", "40", "--used");
    assertEquals(0, one.exit(), one.err());
    assertTrue(one.out().contains("slag reaches the air inlet after") && one.out().contains("depends on") && one.out().contains("carbon monoxide"), one.out());
    Run series = Run.of("predict", "seeds/aldervale", "--series", "Season 2031", "--draws", "0");
    assertTrue(series.out().contains("the earliest first"), series.out());
    Run grid = Run.of("predict", "seeds/aldervale", "--trial", "Aldervale 7", "--vary", "air_flow=400,800 L/min", "--vary", "ore_total=0,20 kg", "--draws", "0");
    assertEquals(0, grid.exit(), grid.err());
    assertTrue(grid.out().contains("air_flow 400 L/min, ore_total 20 kg") && grid.out().contains("cannot be 0"), grid.out());
    assertEquals(1, Run.of("predict", "seeds/aldervale", "--vary", "no_such=1").exit());
    assertEquals(1, Run.of("predict", "seeds/aldervale", "--trial", "Nobody").exit());
  }

  @Test
  void predictionAndBalanceAreValidJsonWithoutNaN() throws Exception {
    for (String[] command : new String[][] {{"predict", "seeds/aldervale", "--draws", "40", "--json"}, {"balance", "seeds/aldervale", "--draws", "20", "--json"}}) {
      Run json = Run.of(command);
      assertEquals(0, json.exit(), json.err());
      assertFalse(json.out().contains("NaN"), command[0]);
      int names = 0;
      try (JsonParser parser = new JsonFactory().createParser(json.out())) {
        while (parser.nextToken() != null) {
          names += "name".equals(parser.currentName()) ? 1 : 0;
        }
      }
      assertTrue(names >= 8);
    }
  }

  /** The sentence that says which trial chokes first stands in the text and in the JSON. */
  @Test
  void theJsonSaysWhichTrialChokesFirstAndWhy() {
    String text = Run.of("predict", "seeds/aldervale", "--draws", "0").out();
    String json = Run.of("predict", "seeds/aldervale", "--draws", "0", "--json").out();
    String first = text.lines().filter(l -> l.contains("having no tap: ")).findFirst().orElseThrow();
    assertTrue(first.contains("because") && json.contains("\"says\" : \"" + first) || json.contains("\"says\":\"" + first), first + json.substring(json.length() - 600));
  }

  @Test
  void balancesShowWhatIsLeftOver() {
    Run balance = Run.of("balance", "seeds/aldervale", "--trial", "Aldervale 2", "--draws", "50");
    assertEquals(0, balance.exit(), balance.err());
    assertTrue(balance.out().contains("left over kg") && balance.out().contains("backward: ore") && balance.out().contains("[bloom / ore]"), balance.out());
  }

  @Test
  void validationWritesThePageThatStandsInTheDocuments() throws Exception {
    Run validate = Run.of("validate", "--to", temporary.toString());
    assertEquals(0, validate.exit(), validate.err());
    assertEquals(Files.readString(Path.of("docs/validation.md")), Files.readString(temporary.resolve("validation.md")), "run releng/run validate and commit it");
    for (String plot : new String[] {"duration-published", "recovery-of-recipes", "recovery-published", "viscosity-measured"}) {
      assertEquals(Files.readString(Path.of("docs/validation", plot + ".svg")), Files.readString(temporary.resolve("validation/" + plot + ".svg")), plot);
    }
  }

  /** A whole series says in one sentence which trial must be seen to first, with the reason. */
  @Test
  void aSeriesSaysWhichTrialChokesFirstAndWhy() {
    Run predict = Run.of("predict", "seeds/aldervale", "--draws", "0");
    assertEquals(0, predict.exit(), predict.err());
    assertTrue(predict.out().lines().anyMatch(l -> l.startsWith("to be tapped first: Aldervale 2") && l.contains("because")), predict.out());
    assertTrue(predict.out().lines().anyMatch(l -> l.contains("having no tap: Aldervale") && l.contains("kg of slag an hour")), predict.out());
  }
}
