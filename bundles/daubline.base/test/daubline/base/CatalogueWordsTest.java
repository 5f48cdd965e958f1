package daubline.base;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The catalogue says in German what it says in English: of every variable, with the same figures. */
class CatalogueWordsTest {

  private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.,]\\d+)?");

  static Stream<Variable> all() {
    return Variables.standard().all().stream();
  }

  @ParameterizedTest
  @MethodSource("all")
  void everyVariableIsExplainedInGerman(Variable v) {
    CatalogueWords.Text german = CatalogueWords.of("de").find(v.id()).orElseThrow(() -> new AssertionError("shared/variables_de.csv lacks " + v.id()));
    assertAll(v.id(),
        () -> assertTrue(german.name().length() > 2 && Character.isUpperCase(german.name().charAt(0)), "name"),
        () -> assertTrue(german.meaning().length() > 10 && german.meaning().endsWith("."), "meaning"),
        () -> assertFalse(german.meaning().equals(v.meaning()), "the English text"),
        () -> assertEquals(v.evidencedBy().isEmpty(), german.evidencedBy().isEmpty(), "evidenced by"),
        () -> assertEquals(figures(v.meaning()), figures(german.meaning()), "figures"));
  }

  private static Set<String> figures(String text) {
    Set<String> figures = new TreeSet<>();
    Matcher m = FIGURE.matcher(text);
    while (m.find()) {
      figures.add(m.group().replace(',', '.'));
    }
    return figures;
  }

  @Test
  void namesAreToldApartAndOtherLanguagesFallBack() {
    assertEquals(all().count(), all().map(v -> CatalogueWords.of("de").find(v.id()).orElseThrow().name()).distinct().count(), "two variables of one name");
    assertTrue(CatalogueWords.of("en").find("bloom_mass").isEmpty());
    assertTrue(CatalogueWords.of("de").find("one of a study").isEmpty());
  }

  /** Group and words are told too, each word by one of its own, and lead back to what the study keeps. */
  @ParameterizedTest
  @MethodSource("all")
  void wordsLeadBackToWhatIsKept(Variable v) {
    CatalogueWords german = CatalogueWords.of("de");
    CatalogueWords.Text text = german.find(v.id()).orElseThrow();
    assertEquals(v.words().size(), text.words().size(), v.id() + ": as many words in shared/variables_de.csv");
    assertTrue(!text.group().isBlank());
    for (String word : v.words()) {
      String told = german.word(v.id(), word);
      assertEquals(word, german.kept(v.id(), told), v.id());
      assertEquals(word, german.kept(v.id(), word), "the English word is understood too");
      assertEquals(word, german.kept(v.id(), told.toUpperCase(java.util.Locale.GERMAN)), "in any case");
    }
  }

  @Test
  void wordsWithSharesAndOwnWordsComeThrough() {
    CatalogueWords german = CatalogueWords.of("de");
    assertEquals("rund:0.7; D-förmig:0,3", german.word("base_profile_shape", "round:0.7; D-shaped:0,3"));
    assertEquals("round:0.7; D-shaped:0,3", german.kept("base_profile_shape", "rund:0.7; D-förmig:0,3"));
    assertEquals("wie ein Herz", german.kept("base_profile_shape", "wie ein Herz"), "the study says what is wrong with it");
    assertEquals("round", CatalogueWords.of("en").word("base_profile_shape", "round"));
    Variable told = german.told(Variables.standard().get("base_profile_shape"));
    assertEquals(Variables.standard().get("base_profile_shape").words(), told.words(), "a study reads and keeps the English words");
  }
}
