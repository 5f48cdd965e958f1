package daubline.export.format;

import daubline.analysis.record.CitationData;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Citations in BibTeX, in UTF-8 (O. Patashnik, BibTeXing, 1988), so that reading them again gives the same. */
public final class BibTex {

  private static final Map<String, String> TYPES = Map.of("article", "article", "book", "book", "chapter", "incollection", "conference paper",
      "inproceedings", "thesis", "phdthesis", "report", "techreport", "web page", "online", "unpublished", "unpublished", "data set", "dataset");

  private BibTex() {
  }

  /** The whole file. */
  public static String of(List<CitationData> citations) {
    return citations.stream().map(BibTex::entry).collect(Collectors.joining("\n"));
  }

  private static String entry(CitationData c) {
    String type = TYPES.getOrDefault(c.kind(), "misc");
    Map<String, String> fields = new LinkedHashMap<>();
    fields.put("author", names(c.authors()));
    fields.put("year", escape(c.year()));
    fields.put("title", c.title().isEmpty() ? "" : "{" + escape(c.title()) + "}");
    fields.put("editor", names(c.editors()));
    fields.put(type.equals("article") ? "journal" : "booktitle", escape(c.container()));
    fields.put("volume", escape(c.volume()));
    fields.put("number", escape(c.issue()));
    fields.put("pages", escape(c.pages()).replaceAll("(?<=\\d)[-–](?=\\d)", "--"));
    fields.put(type.equals("techreport") ? "institution" : type.equals("phdthesis") ? "school" : "publisher", escape(c.publisher()));
    fields.put("address", escape(c.place()));
    fields.put("doi", address(c.doi()));
    fields.put("isbn", escape(c.isbn()));
    fields.put("url", address(c.url()));
    fields.put("type", type.equals("misc") ? escape(c.kind()) : "");
    fields.put("note", escape(c.note()));
    String body = fields.entrySet().stream().filter(f -> !f.getValue().isEmpty()).map(f -> "  " + f.getKey() + " = {" + f.getValue() + "}")
        .collect(Collectors.joining(",\n"));
    return "@" + type + "{" + c.id() + (body.isEmpty() ? "" : ",\n" + body) + "\n}\n";
  }

  /** Persons as "family, initials"; bodies, whose names are not taken apart, in braces. */
  private static String names(String printed) {
    return Stream.of(printed.split("\\s*;\\s*|\\s+(?:and|und|&)\\s+")).map(String::strip).filter(n -> !n.isEmpty()).map(BibTex::name)
        .collect(Collectors.joining(" and "));
  }

  private static String name(String name) {
    if (name.contains(",")) {
      return escape(name);
    }
    return name.matches(".+ (\\p{Lu}\\p{Ll}?\\.[ -]?)+") ? escape(name.replaceFirst(" (?=(\\p{Lu}\\p{Ll}?\\.[ -]?)+$)", ", ")) : "{" + escape(name) + "}";
  }

  private static String escape(String text) {
    StringBuilder escaped = new StringBuilder();
    text.replaceAll("\\s+", " ").codePoints().forEach(c -> escaped.append(switch (c) {
      case '\\' -> "{\\textbackslash}";
      case '{' -> "{\\textbraceleft}";
      case '}' -> "{\\textbraceright}";
      case '~' -> "{\\textasciitilde}";
      case '^' -> "{\\textasciicircum}";
      case '–' -> "--";
      case '—' -> "---";
      case '`' -> "{\\textasciigrave}";
      case '&', '%', '$', '#', '_' -> "\\" + (char) c;
      default -> Character.toString(c);
    }));
    return escaped.toString().replace("''", "'{}'");
  }

  /** An address as it is; braces, which would part the field, in the form that addresses allow. */
  private static String address(String text) {
    return text.strip().replace("{", "%7B").replace("}", "%7D");
  }
}
