package daubline.intake.raw;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Puts the fields of a BibTeX entry into the columns of the form of citations. */
final class BibTexFields {

  private static final Map<String, String> KINDS = Map.ofEntries(Map.entry("article", "article"), Map.entry("book", "book"), Map.entry("inbook", "chapter"),
      Map.entry("incollection", "chapter"), Map.entry("inproceedings", "conference paper"), Map.entry("conference", "conference paper"),
      Map.entry("phdthesis", "thesis"), Map.entry("mastersthesis", "thesis"), Map.entry("thesis", "thesis"), Map.entry("techreport", "report"),
      Map.entry("report", "report"), Map.entry("online", "web page"), Map.entry("electronic", "web page"), Map.entry("unpublished", "unpublished"),
      Map.entry("dataset", "data set"));
  private static final List<String> VERBATIM = List.of("doi", "url");
  private static final Map<String, List<String>> COLUMNS = columns();

  private final Set<String> unread;
  private final Map<String, Map<String, String>> byKey;
  private Set<String> unknown = Set.of();

  BibTexFields(Set<String> unread, Map<String, Map<String, String>> byKey) {
    this.unread = unread;
    this.byKey = byKey;
  }

  /** The fields that fill each column, the first that is there. */
  private static Map<String, List<String>> columns() {
    Map<String, List<String>> columns = new LinkedHashMap<>();
    columns.put("title", List.of("title"));
    columns.put("container", List.of("journal", "journaltitle", "booktitle", "series"));
    columns.put("volume", List.of("volume"));
    columns.put("issue", List.of("number", "issue"));
    columns.put("publisher", List.of("publisher", "institution", "school", "organization"));
    columns.put("place", List.of("address", "location"));
    columns.put("doi", List.of("doi"));
    columns.put("isbn", List.of("isbn"));
    columns.put("url", List.of("url"));
    columns.put("kind", List.of("type"));
    columns.put("note", List.of("note"));
    return columns;
  }

  /** The commands of the last entry that are not known. */
  Set<String> unknownCommands() {
    return unknown;
  }

  void fill(BibEntry entry, Map<String, String> raw) {
    unknown = new TreeSet<>();
    Map<String, String> fields = new HashMap<>(raw);
    inherit(fields);
    entry.put("key", fields.get("@key"));
    entry.put("authors", names(fields.get("author")));
    entry.put("editors", names(fields.get("editor")));
    String date = fields.getOrDefault("date", "");
    entry.put("year", plain(fields.getOrDefault("year", date.matches("\\d{4}.*") ? date.substring(0, 4) : date)));
    entry.put("pages", plain(fields.getOrDefault("pages", "")).replaceAll("\\s*[–—]\\s*|\\s*--+\\s*", "-"));
    COLUMNS.forEach((column, sources) -> sources.stream().filter(fields::containsKey).findFirst()
        .ifPresent(f -> entry.put(column, VERBATIM.contains(f) ? verbatim(fields.get(f)) : plain(fields.get(f)))));
    entry.put("kind", KINDS.getOrDefault(fields.get("@type"), ""));
    Set<String> known = Stream.concat(COLUMNS.values().stream().flatMap(List::stream), Stream.of("@type", "@key", "author", "editor", "year", "date", "pages",
        "crossref")).collect(Collectors.toSet());
    fields.keySet().stream().filter(f -> !known.contains(f)).forEach(unread::add);
  }

  /** Takes from the entry that crossref names what is missing; its title is the title of the book. */
  private void inherit(Map<String, String> fields) {
    Map<String, String> parent = byKey.getOrDefault(fields.getOrDefault("crossref", "").strip().toLowerCase(Locale.ROOT), Map.of());
    if (parent.containsKey("title") && parent != fields) {
      fields.putIfAbsent("booktitle", parent.get("title"));
    }
    parent.forEach((field, text) -> {
      if (!field.startsWith("@") && !field.equals("title") && !field.equals("author")) {
        fields.putIfAbsent(field, text);
      }
    });
  }

  /** Names parted by "and" outside braces, parted by semicolons. */
  private String names(String field) {
    if (field == null) {
      return "";
    }
    StringBuilder names = new StringBuilder();
    int depth = 0;
    String text = field.replaceAll("\\s+", " ");
    for (int i = 0; i < text.length(); i++) {
      depth += text.charAt(i) == '{' ? 1 : text.charAt(i) == '}' ? -1 : 0;
      if (depth == 0 && text.regionMatches(true, i, " and ", 0, 5)) {
        names.append(" ; ");
        i += 4;
      } else {
        names.append(text.charAt(i));
      }
    }
    return Stream.of(names.toString().split(" ; ")).map(this::plain).map(String::strip).filter(n -> !n.isEmpty()).collect(Collectors.joining("; "));
  }

  private String plain(String text) {
    return TexText.plain(text, unknown);
  }

  /** Addresses are written as they are; only the signs that TeX makes people escape lose their backslash. */
  private static String verbatim(String text) {
    return text.replaceAll("\\\\([_%&#~$])", "$1").replaceAll("[{}\\s]", "");
  }
}
