package daubline.intake.raw;

import daubline.base.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads tagged lines: an entry begins with TY and ends with ER; a line without a tag goes on with the one before. */
final class RisReader {

  private static final Pattern LINE = Pattern.compile("([A-Z][A-Z0-9]) {1,2}-(?: (.*))?");
  private static final Map<String, String> KINDS = Map.ofEntries(Map.entry("JOUR", "article"), Map.entry("MGZN", "article"), Map.entry("BOOK", "book"),
      Map.entry("EDBOOK", "book"), Map.entry("CHAP", "chapter"), Map.entry("CONF", "conference paper"), Map.entry("CPAPER", "conference paper"),
      Map.entry("THES", "thesis"), Map.entry("RPRT", "report"), Map.entry("ELEC", "web page"), Map.entry("UNPB", "unpublished"), Map.entry("DATA", "data set"));
  private static final Map<String, String> COLUMNS = Map.ofEntries(Map.entry("ID", "key"), Map.entry("TI", "title"), Map.entry("T1", "title"),
      Map.entry("T2", "container"), Map.entry("JO", "container"), Map.entry("JF", "container"), Map.entry("BT", "container"), Map.entry("JA", "container"),
      Map.entry("VL", "volume"), Map.entry("IS", "issue"), Map.entry("PB", "publisher"), Map.entry("CY", "place"), Map.entry("PP", "place"),
      Map.entry("DO", "doi"), Map.entry("SN", "isbn"), Map.entry("UR", "url"), Map.entry("M3", "kind"));

  private final String name;
  private final List<Finding> findings;
  private final Set<String> unread;
  private final List<BibEntry> entries = new ArrayList<>();
  private BibEntry entry;
  private String type = "";
  private String tag = "";
  private StringBuilder value = new StringBuilder();

  RisReader(String name, List<Finding> findings, Set<String> unread) {
    this.name = name;
    this.findings = findings;
    this.unread = unread;
  }

  List<BibEntry> read(String text) {
    String[] lines = text.split("\r\n|\r|\n", -1);
    for (int i = 0; i < lines.length; i++) {
      Matcher m = LINE.matcher(lines[i].stripTrailing());
      if (m.matches()) {
        flush();
        begin(m.group(1), m.group(2) == null ? "" : m.group(2), i + 1);
      } else if (!lines[i].isBlank()) {
        goOn(lines[i], i + 1);
      }
    }
    flush();
    if (entry != null) {
      error(entry.line(), "the entry has no end", "add a line “ER  - ” after its last line");
    }
    return entries;
  }

  private void begin(String newTag, String text, int line) {
    if (newTag.equals("TY")) {
      if (entry != null) {
        error(line, "an entry begins before the one of line " + entry.line() + " has ended", "add a line “ER  - ” before it");
      }
      entry = new BibEntry(line);
      type = text.strip();
    } else if (entry == null) {
      error(line, "“" + newTag + "” stands outside an entry", "begin the entry with a line “TY  - ” and its type");
    } else if (newTag.equals("ER")) {
      entry.put("kind", KINDS.getOrDefault(type, ""));
      entries.add(entry);
      entry = null;
    } else {
      tag = newTag;
      value = new StringBuilder(text);
    }
  }

  private void goOn(String text, int line) {
    if (tag.isEmpty()) {
      error(line, "“" + (text.length() > 40 ? text.substring(0, 40) + "…" : text) + "” is no tagged line",
          "write two letters or digits, two spaces, a hyphen and a space before the text");
    } else {
      value.append(' ').append(text.strip());
    }
  }

  private void error(int line, String what, String remedy) {
    findings.add(Finding.error("bib.line", name + ", line " + line, what, remedy));
  }

  private void flush() {
    String text = value.toString();
    String known = tag;
    tag = "";
    value = new StringBuilder();
    if (known.isEmpty() || entry == null || text.isBlank()) {
      return;
    }
    switch (known) {
      case "AU", "A1" -> entry.add("authors", text, "; ");
      case "A2", "ED" -> entry.add("editors", text, "; ");
      case "N1" -> entry.add("note", text, " ");
      case "PY", "Y1" -> entry.put("year", text.matches("\\d{4}/(\\d\\d)?/.*") ? text.substring(0, 4) : text);
      case "SP" -> entry.put("pages", text);
      case "EP" -> entry.parts().merge("pages", text.strip(), (from, to) -> from.contains("-") || from.contains("–") ? from : from + "-" + to);
      case "SN" -> {
        if (text.strip().matches("(?i)(issn:?\\s*)?\\d{4}-?\\d{3}[\\dX].*")) {
          unread.add("SN (ISSN)");
        } else {
          entry.put("isbn", text);
        }
      }
      default -> {
        String column = COLUMNS.getOrDefault(known, "");
        if (column.isEmpty() || entry.parts().containsKey(column) && !entry.get(column).equals(text.strip())) {
          unread.add(known);
        } else {
          entry.put(column, text);
        }
      }
    }
  }
}
