package daubline.app.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All texts stand outside the code, in both languages; menus are in headline case, nothing is left over. */
class WordsTest {

  private static final Path BUNDLES = Path.of(System.getProperty("daubline.bundles"));
  private static final Pattern USED = Pattern.compile("\"([a-z]+(?:\\.[A-Za-z_-]+)+)\"");
  private static final Set<String> SMALL = Set.of("on", "to", "the", "of", "and", "a", "an", "in", "as", "at", "by", "for", "from", "or");

  private static Map<Object, Object> texts(String file) throws IOException {
    Properties texts = new Properties();
    try (Reader in = Files.newBufferedReader(BUNDLES.resolve(file))) {
      texts.load(in);
    }
    return texts;
  }

  @Test
  void bothLanguagesAreComplete() throws IOException {
    for (String file : new String[] {"daubline.ui/src/daubline/ui/messages", "daubline.ui/src/daubline/ui/explain/columns", "daubline.ui/plugin", "daubline.app/plugin"}) {
      Map<Object, Object> english = texts(file + ".properties");
      Map<Object, Object> german = texts(file + "_de.properties");
      assertEquals(new TreeSet<>(english.keySet().stream().map(Object::toString).toList()), new TreeSet<>(german.keySet().stream().map(Object::toString).toList()), file);
      english.forEach((key, text) -> assertEquals(places(text), places(german.get(key)), file + " " + key));
    }
  }

  /** The places for names and numbers in a text. */
  private static Set<String> places(Object text) {
    Set<String> places = new TreeSet<>();
    Matcher m = Pattern.compile("\\{\\d}").matcher(text.toString());
    while (m.find()) {
      places.add(m.group());
    }
    return places;
  }

  @Test
  void everyTextThatTheCodeNamesIsThere() throws IOException {
    Set<String> known = new TreeSet<>(texts("daubline.ui/src/daubline/ui/messages.properties").keySet().stream().map(Object::toString).toList());
    Set<String> prefixes = new TreeSet<>(known.stream().map(k -> k.substring(0, k.indexOf('.') < 0 ? k.length() : k.indexOf('.'))).toList());
    texts("daubline.ui/src/daubline/ui/explain/columns.properties").keySet().forEach(k -> known.add(k.toString()));
    Set<String> missing = new TreeSet<>();
    try (Stream<Path> files = Files.walk(BUNDLES.resolve("daubline.ui/src"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
        Matcher m = USED.matcher(Files.readString(file));
        while (m.find()) {
          String key = m.group(1);
          if (prefixes.contains(key.substring(0, key.indexOf('.'))) && !known.contains(key) && known.stream().noneMatch(k -> k.startsWith(key))) {
            missing.add(file.getFileName() + ": " + key);
          }
        }
      }
    }
    assertTrue(missing.isEmpty(), missing.toString());
  }

  @Test
  void menusAndViewsAreInHeadlineCase() throws IOException {
    texts("daubline.ui/plugin.properties").forEach((key, text) -> {
      if (key.toString().startsWith("hue.")) {
        return;
      }
      for (String word : text.toString().replace("&", "").split("[ …]+")) {
        assertTrue(SMALL.contains(word) || word.isEmpty() || Character.isUpperCase(word.charAt(0)), key + ": " + text);
      }
    });
  }
}
