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
}
