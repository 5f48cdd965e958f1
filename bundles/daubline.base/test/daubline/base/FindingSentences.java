package daubline.base;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The sentences of findings as they stand in the sources: the last two texts of each call that makes a finding. What is put
 * together from variables is filled with a sample; a choice between two texts gives both.
 */
final class FindingSentences {

  /** What stands for a name or a number in a sentence. */
  static final String SAMPLE = "Xq 7";
  private static final Pattern MAKER = Pattern.compile("(?<![\\w.])(?:Finding\\.(?:error|warning|note)|Entry\\.wrong)\\(");
  private static final Pattern FORMATTED = Pattern.compile("(?:String\\.format\\([\\w.]+,|number\\()\\s*(\".*)", Pattern.DOTALL);
  private static final Pattern SPECIFIER = Pattern.compile("%[-+ 0,.\\d]*[a-zA-Z]");

  private FindingSentences() {
  }

  /** All sentences of the bundles but those that only commands print. */
  static Set<String> all(Path bundles) throws IOException {
    Set<String> sentences = new TreeSet<>();
    try (Stream<Path> files = Files.walk(bundles)) {
      for (Path file : files.filter(f -> f.toString().matches(".*[/\\\\]src[/\\\\].*\\.java") && !f.toString().contains("daubline.cli")).toList()) {
        String source = Files.readString(file);
        Matcher m = MAKER.matcher(source);
        while (m.find()) {
          List<String> parts = split(inside(source, m.end() - 1), ',');
          boolean takesSentences = parts.size() >= (m.group().startsWith("Entry") ? 3 : 4);
          if (takesSentences) {
            parts.subList(parts.size() - 2, parts.size()).forEach(p -> sentences.addAll(texts(p)));
          }
        }
      }
    }
    sentences.removeIf(s -> s.replace(SAMPLE, "").replaceAll("[^A-Za-z]", "").length() < 3);
    return sentences;
  }

  /** What stands between a bracket and the one that closes it. */
  private static String inside(String source, int open) {
    int depth = 0;
    boolean quoted = false;
    for (int i = open; i < source.length(); i++) {
      char c = source.charAt(i);
      if (quoted) {
        i += c == '\\' ? 1 : 0;
        quoted = c != '"';
      } else if (c == '"') {
        quoted = true;
      } else if (c == '(') {
        depth++;
      } else if (c == ')' && --depth == 0) {
        return source.substring(open + 1, i);
      }
    }
    return "";
  }

  /** Parts an expression where a sign stands outside of brackets and quotation marks. */
  private static List<String> split(String text, char sign) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    int begin = 0;
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted) {
        i += c == '\\' ? 1 : 0;
        quoted = c != '"';
      } else if (c == '\'') {
        i = text.indexOf('\'', i + (text.charAt(i + 1) == '\\' ? 3 : 2));
      } else if (c == '"') {
        quoted = true;
      } else if ("([{".indexOf(c) >= 0) {
        depth++;
      } else if (")]}".indexOf(c) >= 0) {
        depth--;
      } else if (c == sign && depth == 0) {
        parts.add(text.substring(begin, i));
        begin = i + 1;
      }
    }
    parts.add(text.substring(begin));
    return parts;
  }

  /** The texts that an expression can be. */
  private static List<String> texts(String expression) {
    String e = bare(expression.strip());
    if (e.matches("\"(?:[^\"\\\\]|\\\\.)*\"")) {
      return List.of(e.substring(1, e.length() - 1).translateEscapes());
    }
    List<String> asked = split(e, '?');
    if (asked.size() > 1) {
      return choice(e.substring(asked.get(0).length() + 1));
    }
    Matcher formatted = FORMATTED.matcher(e);
    if (formatted.matches()) {
      return texts(split(formatted.group(1), ',').get(0)).stream().map(t -> SPECIFIER.matcher(t.replace("%%", "\0")).replaceAll(SAMPLE).replace("\0", "%")).toList();
    }
    List<String> added = split(e, '+');
    if (added.size() == 1) {
      return List.of(SAMPLE);
    }
    List<String> all = List.of("");
    for (String part : added) {
      all = all.stream().flatMap(a -> texts(part).stream().map(b -> a + b)).toList();
    }
    return all.stream().map(t -> t.replace(SAMPLE + SAMPLE, SAMPLE)).toList();
  }

  /** Both sides of a choice; the first colon that no further question mark belongs to parts them. */
  private static List<String> choice(String sides) {
    int open = 0;
    int at = 0;
    for (String part : split(sides, ':')) {
      open += split(part, '?').size() - 1;
      at += part.length();
      if (open == 0) {
        List<String> both = new ArrayList<>(texts(sides.substring(0, at)));
        both.addAll(texts(sides.substring(at + 1)));
        return both;
      }
      open--;
      at++;
    }
    return List.of(SAMPLE);
  }

  private static String bare(String e) {
    return e.startsWith("(") && inside(e, 0).length() == e.length() - 2 ? bare(e.substring(1, e.length() - 1).strip()) : e;
  }
}
