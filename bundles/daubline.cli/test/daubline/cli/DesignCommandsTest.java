package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty study to printed run sheets by commands alone, and effects of published trials. */
class DesignCommandsTest {

  @TempDir
  Path temporary;

  /** Runs a command that must end with this exit code; what it printed. */
  private static String run(int exit, String... arguments) {
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    System.setErr(System.out);
    try {
      int was = Commands.run(arguments);
      String text = printed.toString(StandardCharsets.UTF_8);
      assertEquals(exit, was, text);
      return text;
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
  }

  private static void json(String text) throws Exception {
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      while (parser.nextToken() != null) {
        // reading to the end shows that it is well formed
      }
    }
  }

  private String planned() {
    String study = temporary.resolve("s").toString();
    run(0, "new", study, "Brackenfold");
    run(0, "design", "series", study, "Spring", "--aim", "which-matter");
    run(0, "design", "factor", study, "Spring", "Furnace height", "600 to 900 mm");
    run(0, "design", "factor", study, "Spring", "air_flow", "400 to 800");
    run(0, "design", "stock", study, "Spring", "charcoal", "--available", "400", "--per-trial", "45", "--losses", "fines 8 %");
    run(0, "design", "labour", study, "Spring", "--team", "4", "--from", "2031-05-03", "--until", "2031-09-28", "--weekdays", "Saturday");
    return study;
  }

  @Test
  void theDemonstrationSaysWhatLimitsIt() {
    // 235 kg of ore, 2 % held back: 230 kg, at 22 kg a trial for 10; 475 kg of charcoal at 42 kg for 11
    String said = run(0, "design", "capacity", "seeds/aldervale", "Season 2031");
    assertTrue(said.contains("at most 10 trials in 4 furnaces"), said);
    assertTrue(said.contains("because of Graded ore"), said);
    assertTrue(said.contains("Graded charcoal would stop you at 11 trials"), said);
  }

  @Test
  void aSeasonAfterTheDemonstrationIsPlannedFromItsLots() throws Exception {
    Path study = copy(Path.of("seeds/aldervale"), temporary.resolve("a"));
    run(0, "design", "series", study.toString(), "Season 2032", "--aim", "which-matter");
    run(0, "design", "factor", study.toString(), "Season 2032", "air_flow", "500 to 800");
    String said = run(0, "design", "stock", study.toString(), "Season 2032", "--from-lots");
    // charcoal left: 32.5 of the first and 332.5 of the second delivery, 365 kg; ten trials took 41 kg each on average
    assertTrue(said.contains("at most 8 trials") && said.contains("because of charcoal"), said);
    assertTrue(said.contains("ore would stop you"), said);
    try (var files = Files.list(study.resolve("series"))) {
      Path planned = files.filter(f -> !f.getFileName().toString().equals("series-2031.xmi")).findFirst().orElseThrow();
      String provided = Files.readString(planned);
      assertTrue(provided.contains("charcoal-graded-2") && provided.contains("ore-graded-autumn"), provided);
      assertFalse(provided.contains("ore-fines"), "fines that nobody took are left alone");
    }
  }

  private static Path copy(Path from, Path to) throws Exception {
    try (var files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
    return to;
  }

  @Test
  void anEmptySeriesBecomesABudgetedRandomisedPrintablePlan() throws Exception {
    String study = planned();
    assertTrue(run(0, "design", "capacity", study).contains("at most 8 trials"));
    String proposed = run(0, "design", "propose", study, "--seed", "11", "--starts", "5");
    assertTrue(proposed.contains("Beside it") && proposed.contains("Plackett–Burman") && proposed.contains("seed 11"), proposed);
    json(run(0, "design", "propose", study, "--seed", "11", "--starts", "5", "--json"));
    assertEquals(proposed, run(0, "design", "propose", study, "--seed", "11", "--starts", "5"), "the same seed gives the same plan");
    String frozen = run(0, "design", "freeze", study, "--seed", "11", "--starts", "5", "--draws", "20");
    assertTrue(frozen.contains("assumed for the predictions: ") && !frozen.contains("nothing is predicted") && !frozen.contains(" 0 predictions"), frozen);
    assertTrue(run(1, "design", "freeze", study).contains("still has trials to burn"));
    Path sheets = temporary.resolve("out/sheets.pdf");
    run(0, "design", "sheet", study, "--to", sheets.toString());
    try (PDDocument pdf = Loader.loadPDF(sheets.toFile())) {
      assertEquals(16, pdf.getNumberOfPages(), "two pages for each of eight trials");
      assertEquals(595, pdf.getPage(0).getMediaBox().getWidth(), 1, "A4");
    }
    Path map = temporary.resolve("out/map.svg");
    run(0, "design", "review", study, "--map", map.toString());
    assertTrue(Files.size(map) > 1000);
    String review = run(0, "design", "review", study);
    assertTrue(review.contains("seed 11") && review.contains("0 deviations from it so far"), review);
    assertTrue(run(0, "design", "deviations", study).contains("0 deviations"));
    run(0, "check", study);
  }

  @Test
  void theDemonstrationIsContinuedAfterWhatWasBurnt() throws Exception {
    String added = run(0, "design", "propose", "seeds/aldervale", "Season 2031", "--trials", "6", "--seed", "3", "--starts", "5");
    assertTrue(added.contains("trials burnt already count") && added.contains("Together with the"), added);
    json(run(0, "design", "propose", "seeds/aldervale", "Season 2031", "--trials", "6", "--seed", "3", "--starts", "5", "--json"));
    // six trials in three furnaces leave one comparison to judge what changes with the furnace by: the plan comes, and says so
    String anew = run(0, "design", "propose", "seeds/aldervale", "Season 2031", "--leave-burnt", "--trials", "6", "--seed", "3", "--starts", "5");
    assertTrue(anew.contains("Slag management cannot be separated from furnace-to-furnace variation: 1 degrees of freedom"), anew);
  }

  @Test
  void aRefusedFactorChangesNothing() {
    String study = planned();
    assertTrue(run(1, "design", "factor", study, "Spring", "ore_total", "25 to 15").contains("not below"));
    assertTrue(!run(0, "design", "propose", study, "--trials", "6").contains("Ore charged"));
    assertTrue(run(1, "design", "capacity", study, "Autumn").contains("it has: Spring"));
    assertTrue(run(1, "effects", study).contains("0 trials burnt"));
    assertTrue(run(0, "next", study).contains("trials needed before all"));
  }

  @Test
  void publishedTrialsAnswerOrSayWhatIsMissing() throws Exception {
    String study = "seeds/aldervale";
    Path figures = temporary.resolve("figures");
    String text = run(0, "effects", study, "--on", "bloom_mass", "--vary", "air_flow", "--vary", "ore_total", "--demonstrations", "--figures", figures.toString());
    assertTrue(text.contains("95 % interval") && !text.matches("(?s).*on 0\\.\\d+ degrees.*"), text);
    assertTrue(Files.exists(figures.resolve("contour.svg")) && Files.exists(figures.resolve("residuals.svg")));
    json(run(0, "effects", study, "--on", "bloom_mass", "--vary", "air_flow", "--json"));
    String next = run(0, "next", study);
    assertTrue(next.contains("this trial tells reconstructions apart: by the ") && next.contains("it separates Tapping shaft (left ") && next.contains("bit"), next);
  }
}
