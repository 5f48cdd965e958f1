package daubline.base;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Findings in German: every sentence of the sources is there, and what stands in its places comes through. */
class WordingTest {

  private static final Wording GERMAN = Wording.of("de");
  private static final Pattern PLACE = Pattern.compile("\\{\\d#?}");

  private static Path bundles() {
    Path at = Path.of("").toAbsolutePath();
    while (!Files.isDirectory(at.resolve("bundles"))) {
      at = at.getParent();
    }
    return at.resolve("bundles");
  }

  @Test
  void everySentenceOfTheSourcesIsThere() throws IOException {
    Set<String> all = FindingSentences.all(bundles());
    assertTrue(all.size() > 500, "sentences found: " + all.size());
    Set<String> missing = new TreeSet<>(all);
    missing.removeIf(GERMAN::knows);
    assertEquals(new TreeSet<>(), missing, "add them to shared/findings_de.csv, with {0}, {1} … for “" + FindingSentences.SAMPLE + "”");
  }

  @Test
  void bothSidesHaveTheSamePlaces() throws IOException {
    List<String> wrong = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder()
        .ofNamedCsvRecord(new InputStreamReader(Wording.class.getResourceAsStream("/daubline/shared/findings_de.csv"), StandardCharsets.UTF_8))) {
      for (NamedCsvRecord row : rows) {
        String english = row.getField("english");
        String german = row.getField("german");
        if (!places(english).equals(places(german)) || german.isBlank() || german.equals(english) || !seen.add(english)) {
          wrong.add(english + " | " + german);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static Set<String> places(String text) {
    return new TreeSet<>(PLACE.matcher(text).results().map(MatchResult::group).toList());
  }

  @Test
  void whatStandsInAPlaceComesThrough() {
    Finding odd = new AmountReader(DecimalSign.POINT).number("4,20 mm", Units.canonical(Quantity.LENGTH)).finding();
    assertTrue(GERMAN.apply(odd.what()).contains("4,20"), GERMAN.apply(odd.what()));
    assertEquals("„$1 {0}“ ist kein Datum", GERMAN.apply("“$1 {0}” is no date"), "whatever was typed");
    assertEquals("die Summe ist 90.1 %", GERMAN.apply("the total is 90.1 %"));
    assertEquals("er ist als bereit gekennzeichnet, aber keine Abbruchregeln wurden vereinbart", GERMAN.apply("it is marked ready, but no stop criteria were agreed"),
        "a sentence in a sentence");
    assertEquals("Ofen 3: Wind", GERMAN.apply("Ofen 3: Wind"), "what is not known stays");
    Finding f = Finding.warning("a.b", "Site › Sheet", "two are named “Ofen”", "rename one").about("x", "y");
    assertEquals(new Finding(Severity.WARNING, "a.b", "Site › Sheet", "zwei heißen „Ofen“", "eines umbenennen", "x", "y"), GERMAN.in(f));
    assertEquals("rename one", Wording.of("en").apply("rename one"));
    assertSame(odd.what(), Wording.of("fr").apply(odd.what()));
  }

  /** Names that people gave stay, even where they look like words of the tool; numbers, lists and names with their unit are told by their parts. */
  @Test
  void partsAreToldAndNamesStay() {
    assertEquals("Erz", GERMAN.apply("Ore"));
    assertEquals("Ore", GERMAN.keeping(Set.of("Ore")).apply("Ore"));
    assertEquals("Masse der Luppe (kg)", GERMAN.apply("Bloom mass (kg)"));
    assertEquals("Güte der Luppe dicht; Art des Metalls weiches Eisen", GERMAN.apply("Bloom quality dense; Kind of metal soft iron"));
    assertEquals("Ofenhöhe, Zahl der Lufteinlässe", GERMAN.apply("furnace height, number of air inlets"));
    assertEquals("First ore", GERMAN.apply("First ore"), "what a person wrote is not put together from known words");
    assertEquals("Anna, slag", GERMAN.apply("Anna, slag"));
    assertEquals("2 von 3", GERMAN.apply("2 of 3"));
    assertEquals("House of Anna", GERMAN.apply("House of Anna"), "a place for a number takes no words");
    assertEquals("", GERMAN.apply(""));
  }

  @Test
  void resultsHaveTheSamePlacesOnBothSides() throws IOException {
    List<String> wrong = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder()
        .ofNamedCsvRecord(new InputStreamReader(Wording.class.getResourceAsStream("/daubline/shared/results_de.csv"), StandardCharsets.UTF_8))) {
      for (NamedCsvRecord row : rows) {
        String english = row.getField("english");
        if (!places(english).equals(places(row.getField("german"))) || row.getField("german").isBlank() || !seen.add(english)) {
          wrong.add(english + " | " + row.getField("german"));
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  /** A reason for no number is known in either language; another word is none. */
  @Test
  void aReasonForNoNumberIsKnownInBothLanguages() {
    Wording german = Wording.of("de");
    for (ValueKind kind : ValueKind.values()) {
      Optional<ValueKind> known = kind.isMissing() || kind.isYesNo() ? Optional.of(kind) : Optional.empty();
      assertEquals(known, german.kind(kind.word()), kind.word());
      assertEquals(known, german.kind(german.apply(kind.word())), german.apply(kind.word()));
      assertEquals(known, Wording.ENGLISH.kind(" " + kind.word().toUpperCase(java.util.Locale.ROOT)), kind.word());
    }
    assertEquals(Optional.empty(), Wording.ENGLISH.kind("nicht erhalten"));
  }
}
