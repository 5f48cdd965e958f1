package daubline.intake.raw;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One entry of a bibliographic file, its parts named as the form of citations names its columns.
 *
 * @param line the line it begins in
 * @param parts text by column; what the file does not say is left out
 */
record BibEntry(int line, Map<String, String> parts) {

  /** The columns of the form of citations, in its order. */
  static final List<String> COLUMNS = List.of("key", "authors", "year", "title", "editors", "container", "volume", "issue", "pages", "publisher", "place",
      "doi", "isbn", "url", "kind", "note");

  /** Words that say nothing about what a title is about. */
  private static final Pattern SMALL = Pattern.compile("(?i)(the|an?|of|on|in|der|die|das|les?|la|zur?)\\b\\s*");

  BibEntry(int line) {
    this(line, new LinkedHashMap<>());
  }

  String get(String column) {
    return parts.getOrDefault(column, "");
  }

  /** Sets a part that is not stated yet; text without content says nothing. */
  void put(String column, String text) {
    String plain = text.replaceAll("\\s+", " ").strip();
    if (!plain.isEmpty()) {
      parts.putIfAbsent(column, plain);
    }
  }

  /** Adds a name or note after those that are there. */
  void add(String column, String text, String between) {
    String plain = text.replaceAll("\\s+", " ").strip();
    if (!plain.isEmpty()) {
      parts.merge(column, plain, (before, more) -> before + between + more);
    }
  }

  /** A key made of the first author, the year and the first word of the title, for an entry that has none. */
  String ownKey() {
    String author = get("authors").isEmpty() ? get("editors") : get("authors");
    String family = author.split("[,;]| and ")[0].strip();
    String title = SMALL.matcher(get("title")).replaceFirst("").split("\\s")[0];
    String key = String.join("-", Stream.of(family, get("year"), title).map(BibEntry::letters).filter(s -> !s.isEmpty()).toList());
    return key.isEmpty() ? "" : Character.isLetter(key.charAt(0)) ? key : "c-" + key;
  }

  private static String letters(String text) {
    String plain = Normalizer.normalize(text.replace("ß", "ss"), Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    return plain.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
  }
}
