package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.base.Wording;
import daubline.charts.Figures;
import daubline.charts.NamedFigure;
import daubline.charts.SvgWriter;
import daubline.charts.WordedFigure;
import daubline.export.Cell;
import daubline.export.Column;
import daubline.export.Table;
import daubline.export.Tables;
import daubline.session.StudySession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A publication in German: what people read is told in German, what programs read is the same to the byte, and names stay. */
class GermanPublicationTest {

  private static final Wording GERMAN = Wording.of("de");
  /** Words that are the same in both languages. */
  private static final Set<String> SAME = Set.of("Material", "Element", "Form", "Standards", "Rate", "Person", "In", "DOI", "Cu", "Si", "Fe", "Mn");

  @TempDir
  static Path folder;

  private static StudyResults results;

  @BeforeAll
  static void publishTwice() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds", "aldervale"))) {
      results = StudyComparison.of(session, ComparisonOptions.standard());
      for (String language : PublicationOptions.LANGUAGES) {
        PublicationOptions options = PublicationOptions.standard("0", List.of()).with(new FigureOptions(Set.of("svg"), 72, Double.NaN)).told(language)
            .with(new DepositOptions(List.of("Anna"), "", 2031, "CC-BY-4.0", ""));
        Publication.write(results, Optional.of(DepositData.of(session, new Disclosure(0.1, false))), folder.resolve(language), options, Progress.NONE);
      }
    }
  }

  private static Map<String, String> files(String language, String part) throws IOException {
    Path at = folder.resolve(language).resolve(part);
    try (Stream<Path> files = Files.walk(at)) {
      Map<String, String> all = new TreeMap<>();
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        all.put(at.relativize(file).toString(), new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1));
      }
      return all;
    }
  }

  @Test
  void whatProgramsReadIsTheSame() throws IOException {
    assertEquals(files("en", "archive"), files("de", "archive"));
    assertEquals(files("en", "deposit"), files("de", "deposit"));
    assertEquals(files("en", "figures").keySet(), files("de", "figures").keySet(), "names of files");
  }

  /** Every title, heading, caption and footnote, and every word of the tool in a cell. */
  @Test
  void tablesAreToldWhole() {
    TreeSet<String> untold = new TreeSet<>();
    for (Table table : Tables.all().stream().map(t -> t.build(results)).toList()) {
      Stream.concat(Stream.of(table.title(), table.caption()), table.notes().stream()).forEach(t -> check(t, untold));
      for (int c = 0; c < table.columns().size(); c++) {
        check(table.columns().get(c).heading(), untold);
        if (table.columns().get(c).kind() == Column.Kind.WORDS && !Set.of("what", "remedy", "class").contains(table.columns().get(c).id())) {
          table.cells(c).stream().map(Cell::text).filter(t -> t.matches(".*\\b(the|of|is|no|not|and|at|below|present|absent|yes)\\b.*")).forEach(t -> check(t, untold));
        }
      }
    }
    assertEquals(new TreeSet<>(), untold, "add them to shared/results_de.csv");
  }

  private static void check(String text, Set<String> untold) {
    boolean words = text.matches("(?s).*[a-z]{2,}.*") && !text.matches("([A-Z][a-z]?[₀-₉]*)+") && !SAME.contains(text);
    if (words && GERMAN.apply(text).equals(text)) {
      untold.add(text);
    }
  }

  /** Titles, captions and lettering of every figure; a word of the tool that is drawn is drawn in German. */
  @Test
  void figuresAreToldWhole() {
    TreeSet<String> untold = new TreeSet<>();
    Set<String> names = results.snapshot().names();
    Wording wording = GERMAN.keeping(names);
    for (NamedFigure named : Figures.all().stream().flatMap(f -> f.all(results).stream()).toList()) {
      check(named.title(), untold);
      Stream.of(named.figure().caption().split("(?<=\\.) (?=[A-Z])")).filter(s -> s.matches(".*\\b(the|of|is|are)\\b.*")).filter(s -> GERMAN.apply(s).equals(s))
          .filter(s -> named.figure().caption().equals(GERMAN.apply(named.figure().caption()))).forEach(untold::add);
      String lettering = SvgWriter.lettering(WordedFigure.of(named.figure(), wording));
      Stream.of("agreement", "coverage", "wall time", "hours of charging", "excavated", "trials", "consistent", "burnt", "settings", "Furnace height", "Air flow", "Ore charged",
          "expected", "observed", "not found", "dashed", "solid", "built", "years since").filter(w -> lettering.matches("(?s).*\\b" + w + "\\b.*"))
          .forEach(w -> untold.add(named.id() + ": " + w));
    }
    assertEquals(new TreeSet<>(), untold);
  }

  @Test
  void peopleReadGermanAndNamesStay() throws IOException {
    String report = Files.readString(folder.resolve("de/report.html"));
    String handout = Files.readString(folder.resolve("de/handout.html"));
    assertTrue(report.contains("lang=\"de\"") && report.contains("<h2>Ziele</h2>") && report.contains("Tabelle 1. Quellen") && report.contains("Abbildung 1. "));
    assertTrue(handout.contains("Was ausgegraben wurde") && handout.contains("Kiln Acre furnace 1") && !handout.contains("The circle is"));
    assertTrue(Files.readString(folder.resolve("de/spreadsheet/evidence.csv")).contains("Standardunsicherheit"));
    assertTrue(Files.readString(folder.resolve("de/figures/captions.txt")).startsWith("Abbildung 1 (ranking)"));
    String english = Files.readString(folder.resolve("en/report.html"));
    assertTrue(english.contains("lang=\"en\"") && english.contains("<h2>Aims</h2>"));
    assertFalse(english.contains("Abbildung"));
    for (String name : results.snapshot().names().stream().filter(n -> n.length() > 3).collect(Collectors.toSet())) {
      assertEquals(english.contains(name), report.contains(name), name);
    }
  }

  @Test
  void anotherLanguageIsRefused() {
    assertTrue(assertThrows(IllegalArgumentException.class, () -> PublicationOptions.standard("0", List.of()).told("fr")).getMessage().contains("en, de"));
  }
}
