package daubline.base;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * What the catalogue says of its variables, in a language other than its own English: the rows of
 * shared/variables_de.csv. A study keeps ids and words in English, so what is read here is shown, and what is typed in the
 * other language is taken back to what the study keeps.
 */
public final class CatalogueWords {

  /** The language that is there besides English. */
  public static final String GERMAN = "de";

  private final Map<String, Text> byId;

  /**
   * What is said of one variable.
   *
   * @param name its name
   * @param group the group where forms place it
   * @param words the words of a category, in the order of the catalogue
   * @param meaning what it is, how it is measured and why it is asked
   * @param evidencedBy how remains can show it; empty when they cannot
   */
  public record Text(String name, String group, List<String> words, String meaning, String evidencedBy) {
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

  /** A variable with name, group and meaning in this language; its words stay as the study keeps them. */
  public Variable told(Variable v) {
    return find(v.id()).map(t -> new Variable(v.id(), t.name(), t.group(), v.type(), v.quantity(), v.unit(), v.plausibleLow(), v.plausibleHigh(), v.places(),
        v.words(), v.ordered(), t.evidencedBy(), t.meaning(), v.source())).orElse(v);
  }

  /**
   * A word of a category in this language.
   *
   * @param kept a word of the list, or words with probabilities; any other text comes back as it is
   */
  public String word(String variable, String kept) {
    Map<String, String> words = pairs(variable, false);
    return words.isEmpty() ? kept : each(kept, w -> words.getOrDefault(w.toLowerCase(Locale.ROOT), w));
  }

  /**
   * What the study keeps for a word typed in this language.
   *
   * @param typed a word of either language, or words with probabilities; any other text comes back as it is
   */
  public String kept(String variable, String typed) {
    Map<String, String> words = pairs(variable, true);
    return words.isEmpty() ? typed : each(typed, w -> words.getOrDefault(w.toLowerCase(Locale.ROOT), w));
  }

  private Map<String, String> pairs(String variable, boolean back) {
    Map<String, String> pairs = new HashMap<>();
    List<String> own = find(variable).map(Text::words).orElse(List.of());
    List<String> kept = own.isEmpty() ? List.of() : Variables.standard().get(variable).words();
    for (int i = 0; i < own.size(); i++) {
      pairs.put((back ? own : kept).get(i).toLowerCase(Locale.ROOT), (back ? kept : own).get(i));
    }
    return pairs;
  }

  /** Each word of a text such as "round" or "round:0.7; oval:0.3". */
  private static String each(String text, UnaryOperator<String> word) {
    List<String> parts = new ArrayList<>();
    for (String part : text.strip().split("\\s*;\\s*")) {
      int colon = part.lastIndexOf(':');
      parts.add(colon < 0 ? word.apply(part) : word.apply(part.substring(0, colon).strip()) + part.substring(colon));
    }
    return String.join("; ", parts);
  }

  /** Read once, when somebody first asks. */
  private static final class German {
    static final CatalogueWords WORDS = new CatalogueWords(SharedTable.rows("variables_de.csv").stream().collect(
        Collectors.toMap(row -> row.getField("id"), row -> new Text(row.getField("name"), row.getField("group"), list(row.getField("words")),
            row.getField("meaning"), row.getField("evidenced_by")))));

    private static List<String> list(String words) {
      return words.isBlank() ? List.of() : Arrays.stream(words.split(";")).map(String::strip).toList();
    }
  }
}
