package daubline.base;

import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the catalogue says of its variables, in a language other than its own English: the rows of
 * shared/variables_de.csv. A study keeps ids and words in English, so this is for reading only.
 */
public final class CatalogueWords {

  /** The language that is there besides English. */
  public static final String GERMAN = "de";

  private final Map<String, Text> byId;

  /**
   * What is said of one variable.
   *
   * @param name its name
   * @param meaning what it is, how it is measured and why it is asked
   * @param evidencedBy how remains can show it; empty when they cannot
   */
  public record Text(String name, String meaning, String evidencedBy) {
  }

  private CatalogueWords(Map<String, Text> byId) {
    this.byId = byId;
  }

  /**
   * The words of a language.
   *
   * @param language a two-letter code; there are none for one that the catalogue is not written in
   */
  public static CatalogueWords of(String language) {
    return language.equals(GERMAN) ? German.WORDS : new CatalogueWords(Map.of());
  }

  /** What is said of a variable of the catalogue; empty for one that a study added. */
  public Optional<Text> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** Read once, when somebody first asks. */
  private static final class German {
    static final CatalogueWords WORDS = new CatalogueWords(SharedTable.rows("variables_de.csv").stream().collect(
        Collectors.toMap(row -> row.getField("id"), row -> new Text(row.getField("name"), row.getField("meaning"), row.getField("evidenced_by")))));
  }
}
