package daubline.intake.raw;

import daubline.base.Finding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Reads BibTeX: entries, abbreviations defined by string, values in braces or quotation marks, joined by #. What cannot be
 * read is said with its line, and reading goes on at the next entry.
 */
final class BibTexReader {

  private final String name;
  private final List<Finding> findings;
  private final Set<String> unread;
  private final Map<String, String> abbreviations = new HashMap<>();
  private final Map<String, Map<String, String>> byKey = new HashMap<>();
  private final List<Map<String, String>> contents = new ArrayList<>();
  private int[] lineEnds = {};
  private String text = "";
  private int at;
  private int start;

  BibTexReader(String name, List<Finding> findings, Set<String> unread) {
    this.name = name;
    this.findings = findings;
    this.unread = unread;
    List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec").forEach(m -> abbreviations.put(m, m));
  }

  /** Ends one entry that cannot be read. */
  private static final class Broken extends Exception {
    private static final long serialVersionUID = 1;

    Broken(String what) {
      super(what);
    }
  }

  List<BibEntry> read(String whole) {
    text = whole;
    lineEnds = IntStream.range(0, whole.length()).filter(i -> whole.charAt(i) == '\n').toArray();
    List<BibEntry> entries = new ArrayList<>();
    BibTexFields fields = new BibTexFields(unread, byKey);
    for (at = text.indexOf('@'); at >= 0 && at < text.length(); at = text.indexOf('@', at)) {
      start = at++;
      try {
        Map<String, String> raw = entry();
        if (raw != null) {
          BibEntry entry = new BibEntry(line(start));
          entries.add(entry);
          contents.add(raw);
          byKey.putIfAbsent(raw.get("@key").toLowerCase(Locale.ROOT), raw);
        }
      } catch (Broken e) {
        findings.add(Finding.error("bib.entry", name + ", line " + line(Math.min(at, text.length() - 1)), "in the entry of line " + line(start) + ": "
            + e.getMessage(), "mend the entry in the file"));
        at = next(start + 1);
      }
    }
    for (int i = 0; i < entries.size(); i++) {
      fields.fill(entries.get(i), contents.get(i));
      Set<String> unknown = fields.unknownCommands();
      if (!unknown.isEmpty()) {
        findings.add(Finding.warning("bib.command", name + ", line " + entries.get(i).line(), "not understood and left as it stands: "
            + String.join(", ", unknown), "write the character itself"));
      }
    }
    return entries;
  }

  /** The next line that begins an entry. */
  private int next(int from) {
    for (int i = from; i < text.length(); i++) {
      if (text.charAt(i) == '@' && text.substring(text.lastIndexOf('\n', i) + 1, i).isBlank()) {
        return i;
      }
    }
    return text.length();
  }

  /** The line of a position, found among the line ends, which are looked for once. */
  private int line(int position) {
    int before = Arrays.binarySearch(lineEnds, position);
    return 1 + (before < 0 ? -before - 1 : before);
  }

  /** The fields of an entry with its type and key; null for what is no entry. */
  private Map<String, String> entry() throws Broken {
    String type = word().toLowerCase(Locale.ROOT);
    space();
    if (type.isEmpty() || at >= text.length() || type.equals("comment")) {
      return null;
    }
    char open = text.charAt(at);
    if (open != '{' && open != '(') {
      return null;
    }
    if (type.equals("preamble")) {
      at++;
      value();
      return null;
    }
    at++;
    char close = open == '{' ? '}' : ')';
    Map<String, String> fields = new LinkedHashMap<>();
    if (type.equals("string")) {
      fields(fields, close);
      abbreviations.putAll(fields);
      return null;
    }
    fields.put("@type", type);
    fields.put("@key", key(close));
    fields(fields, close);
    return fields;
  }

  private String key(char close) throws Broken {
    space();
    int from = at;
    while (at < text.length() && ",\n=".indexOf(text.charAt(at)) < 0 && text.charAt(at) != close) {
      at++;
    }
    if (at >= text.length()) {
      throw new Broken("it does not end");
    }
    if (text.charAt(at) == '=') {
      at = from;
      return "";
    }
    String key = text.substring(from, at).strip();
    space();
    if (at < text.length() && text.charAt(at) == ',') {
      at++;
    }
    return key;
  }

  private void fields(Map<String, String> fields, char close) throws Broken {
    while (true) {
      space();
      if (at >= text.length()) {
        throw new Broken("it does not end; a brace or quotation mark is not closed");
      }
      if (text.charAt(at) == close) {
        at++;
        return;
      }
      String field = word().toLowerCase(Locale.ROOT);
      space();
      if (field.isEmpty() || at >= text.length() || text.charAt(at) != '=') {
        throw new Broken(field.isEmpty() ? "“" + text.charAt(at) + "” stands where a field should begin" : "“" + field + "” is not followed by =");
      }
      at++;
      fields.putIfAbsent(field, value());
      space();
      if (at < text.length() && text.charAt(at) == ',') {
        at++;
      } else if (at < text.length() && text.charAt(at) != close) {
        throw new Broken("no comma after the field “" + field + "”");
      }
    }
  }

  private String value() throws Broken {
    StringBuilder value = new StringBuilder();
    while (true) {
      space();
      value.append(piece());
      space();
      if (at >= text.length() || text.charAt(at) != '#') {
        return value.toString();
      }
      at++;
    }
  }

  private String piece() throws Broken {
    char first = at < text.length() ? text.charAt(at) : 0;
    if (first == '{' || first == '"') {
      return delimited(first == '{' ? '}' : '"');
    }
    String word = word();
    if (word.isEmpty()) {
      throw new Broken("a field has no value");
    }
    if (Character.isDigit(word.charAt(0))) {
      return word;
    }
    String known = abbreviations.get(word.toLowerCase(Locale.ROOT));
    if (known == null) {
      throw new Broken("the abbreviation “" + word + "” is not defined; put the text into braces");
    }
    return known;
  }

  /** A text up to its end at the outermost level of braces. */
  private String delimited(char end) throws Broken {
    int from = ++at;
    int depth = 0;
    for (; at < text.length(); at++) {
      char c = text.charAt(at);
      if (depth == 0 && c == end) {
        return text.substring(from, at++);
      }
      if (c == '@' && text.substring(text.lastIndexOf('\n', at) + 1, at).isBlank() && text.substring(at).matches("(?s)@\\w+\\s*\\{[^,=}]*,.*")) {
        break;
      }
      depth += c == '{' ? 1 : c == '}' ? -1 : 0;
    }
    int stop = at;
    at = from;
    throw new Broken("the text that begins here is not closed before line " + line(stop));
  }

  private String word() {
    int from = at;
    while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || "_-:+./".indexOf(text.charAt(at)) >= 0)) {
      at++;
    }
    return text.substring(from, at);
  }

  private void space() {
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
  }
}
