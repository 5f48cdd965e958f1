package daubline.analysis.deposit;

import daubline.model.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The one rule by which the names of people who did not consent are kept out of what leaves a study: whole words, in any
 * case, as they are written in the list of people and with the family name first, as lists of authors have it.
 */
public final class HiddenNames {

  private final Map<Pattern, String> hidden = new LinkedHashMap<>();
  private final List<String> spellings;
  /** Ids often hold a name too; only a text that is an id as a whole stands for one. */
  private final Map<String, String> ids = new LinkedHashMap<>();

  /**
   * The names of people.
   *
   * @param names the names in the order of the study; null or blank for somebody who may be named or has no name
   * @param known the ids in the same order; null or blank as above
   */
  public HiddenNames(List<String> names, List<String> known) {
    for (int i = 0; i < known.size(); i++) {
      if (known.get(i) != null && !known.get(i).isBlank()) {
        ids.put(known.get(i), standInId(i));
      }
    }
    List<Map.Entry<String, String>> all = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      String standIn = standIn(i);
      spellings(names.get(i)).forEach(spelling -> all.add(Map.entry(spelling, standIn)));
    }
    // a longer name may hold a shorter one
    all.sort(Comparator.comparingInt((Map.Entry<String, String> e) -> e.getKey().length()).reversed());
    all.forEach(e -> hidden.put(pattern(e.getKey()), Matcher.quoteReplacement(e.getValue())));
    spellings = all.stream().map(Map.Entry::getKey).toList();
  }

  /** The names of the people of a study who did not consent. */
  public static HiddenNames of(Study study) {
    return new HiddenNames(study.getPeople().stream().map(p -> p.isMayPublishName() ? "" : p.getName()).toList(),
        study.getPeople().stream().map(p -> p.isMayPublishName() ? "" : p.getId()).toList());
  }

  /** What stands in place of a name, by the place of the person in the study. */
  static String standIn(int index) {
    return "Person " + (index + 1);
  }

  /** What stands in place of an id. */
  static String standInId(int index) {
    return "person-without-name-" + (index + 1);
  }

  private static List<String> spellings(String name) {
    String plain = Objects.requireNonNullElse(name, "").strip().replaceAll("\\s+", " ");
    if (plain.isEmpty()) {
      return List.of();
    }
    int comma = plain.indexOf(',');
    int space = plain.lastIndexOf(' ');
    String turned = comma > 0 ? plain.substring(comma + 1).strip() + " " + plain.substring(0, comma).strip()
        : space > 0 ? plain.substring(space + 1) + ", " + plain.substring(0, space) : plain;
    return Stream.of(plain, turned.strip()).distinct().toList();
  }

  private static Pattern pattern(String spelling) {
    String words = Stream.of(spelling.split(" ")).map(Pattern::quote).reduce((a, b) -> a + "\\s+" + b).orElseThrow();
    return Pattern.compile("(?<![\\p{L}\\p{N}])" + words + "(?![\\p{L}\\p{N}])", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  /** Whether there is nobody to hide. */
  public boolean isEmpty() {
    return hidden.isEmpty();
  }

  /** Every way in which the names may be written, the longest first. */
  public List<String> spellings() {
    return spellings;
  }

  /** Whether a text holds one of the names. */
  public boolean isIn(String text) {
    return hidden.keySet().stream().anyMatch(name -> name.matcher(text).find());
  }

  /** A text with “Person” and a number in place of each name. */
  public String replaced(String text) {
    String shown = ids.getOrDefault(text, text);
    for (Map.Entry<Pattern, String> name : hidden.entrySet()) {
      shown = name.getKey().matcher(shown).replaceAll(name.getValue());
    }
    return shown;
  }
}
