package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.CatalogueWords;
import daubline.publication.PublicationOptions;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The guide in the window: every link leads somewhere, every part has its help, and in both languages the pages say the same with the words of the window. */
class GuideTest {

  private static final Path ENGLISH = CriterionPagesTest.guide(PublicationOptions.ENGLISH);
  private static final Path GERMAN = CriterionPagesTest.guide(CatalogueWords.GERMAN);
  private static final Path WINDOW = Path.of("bundles/daubline.ui");
  private static final Pattern TAG = Pattern.compile("<(/?[a-z0-9]+)([^>]*)>");
  private static final Pattern KEPT = Pattern.compile("\\b(?:href|id|src|class)=\"[^\"]*\"");
  private static final Pattern CODE = Pattern.compile("<code>(.*?)</code>", Pattern.DOTALL);
  private static final Pattern BOLD = Pattern.compile("<b>(.*?)</b>", Pattern.DOTALL);
  private static final Pattern LINK = Pattern.compile("href=\"([^\"#:]+)(?:#[^\"]*)?\"");
  private static final Pattern CONTEXT = Pattern.compile("<context id=\"([^\"]+)\"");
  private static final Pattern ASKED = Pattern.compile("\"daubline\\.help\\.([A-Za-z]+)\"");

  static List<String> pages() throws IOException {
    try (Stream<Path> files = Files.list(ENGLISH.resolve("html"))) {
      return files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(".html")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void aPageSaysTheSameInGerman(String name) throws IOException {
    String english = Files.readString(ENGLISH.resolve("html").resolve(name));
    String german = Files.readString(GERMAN.resolve("html").resolve(name));
    assertAll(name, () -> assertEquals(all(TAG, english, GuideTest::tag), all(TAG, german, GuideTest::tag), "what it is built of"),
        () -> assertEquals(all(CODE, english, m -> m.group(1)), all(CODE, german, m -> m.group(1)), "commands"),
        () -> assertTrue(german.contains("<html lang=\"de\">") && !CODE.matcher(german).replaceAll("").contains(" the "), "German"));
  }

  private static String tag(Matcher m) {
    return m.group(1) + all(KEPT, m.group(2), Matcher::group);
  }

  private static List<String> all(Pattern pattern, String text, Function<Matcher, String> what) {
    List<String> found = new ArrayList<>();
    for (Matcher m = pattern.matcher(text); m.find();) {
      found.add(what.apply(m));
    }
    return found;
  }

  /** What is bold and stands in the window is in German as it stands in the German window. */
  @Test
  void theWordsOfTheWindowAreThoseOfTheGuide() throws IOException {
    Map<String, Set<String>> words = words();
    List<String> complaints = new ArrayList<>();
    for (String name : pages()) {
      List<String> english = all(BOLD, Files.readString(ENGLISH.resolve("html").resolve(name)), m -> m.group(1));
      List<String> german = all(BOLD, Files.readString(GERMAN.resolve("html").resolve(name)), m -> m.group(1));
      for (int i = 0; i < Math.min(english.size(), german.size()); i++) {
        Set<String> told = words.getOrDefault(english.get(i), Set.of());
        if (!told.isEmpty() && !told.contains(german.get(i))) {
          complaints.add(name + ": " + english.get(i) + " is " + told + ", not " + german.get(i));
        }
      }
    }
    assertEquals("", String.join("\n", complaints));
  }

  /** What the window says in English and German, as it is read: without the sign of the letter that is underlined, points and keys. */
  private static Map<String, Set<String>> words() throws IOException {
    Map<String, Set<String>> words = new HashMap<>();
    for (String file : List.of("daubline.ui/src/daubline/ui/messages", "daubline.ui/plugin", "daubline.app/plugin")) {
      Properties english = properties(Path.of("bundles", file + ".properties"));
      Properties german = properties(Path.of("bundles", file + "_de.properties"));
      english.stringPropertyNames().forEach(key -> words.computeIfAbsent(plain(english.getProperty(key)), k -> new HashSet<>()).add(plain(german.getProperty(key, ""))));
    }
    return words;
  }

  private static Properties properties(Path file) throws IOException {
    Properties properties = new Properties();
    try (Reader reader = Files.newBufferedReader(file)) {
      properties.load(reader);
    }
    return properties;
  }

  private static String plain(String text) {
    return text.split("\t")[0].replace("&", "").replaceAll("…$", "").strip();
  }

  static List<Path> folders() {
    return List.of(ENGLISH, GERMAN);
  }

  @ParameterizedTest
  @MethodSource("folders")
  void everyLinkLeadsToAPage(Path folder) throws IOException {
    List<String> lost = new ArrayList<>();
    try (Stream<Path> files = Stream.concat(Files.walk(folder.resolve("html")), Stream.of(folder.resolve("toc.xml"), folder.resolve("contexts.xml")))) {
      for (Path file : files.filter(f -> f.toString().matches(".*\\.(html|xml)")).toList()) {
        // a page is served under the address of the English one
        Path served = ENGLISH.resolve(folder.relativize(file)).getParent();
        all(LINK, Files.readString(file), m -> m.group(1)).stream().filter(link -> !Files.exists(served.resolve(link).normalize())).map(link -> file + " → " + link).forEach(lost::add);
      }
    }
    assertEquals(List.of(), lost);
  }

  @Test
  void contentsAndContextsAreTheSameInBothLanguages() throws IOException {
    for (String name : List.of("toc.xml", "contexts.xml")) {
      assertEquals(all(TAG, Files.readString(ENGLISH.resolve(name)), GuideTest::tag), all(TAG, Files.readString(GERMAN.resolve(name)), GuideTest::tag), name);
    }
    String contents = Files.readString(ENGLISH.resolve("toc.xml"));
    assertEquals(List.of(), pages().stream().filter(p -> !contents.contains("\"html/" + p + "\"")).toList(), "pages that the contents lack");
  }

  /** Each place of the window that names a context finds it. */
  @Test
  void everyContextThatIsAskedForIsThere() throws IOException {
    Set<String> there = Set.copyOf(all(CONTEXT, Files.readString(ENGLISH.resolve("contexts.xml")), m -> m.group(1)));
    try (Stream<Path> files = Files.walk(WINDOW.resolve("src"))) {
      String code = files.filter(f -> f.toString().endsWith(".java")).map(GuideTest::read).collect(Collectors.joining());
      TreeSet<String> asked = new TreeSet<>(all(ASKED, code, m -> m.group(1)));
      assertTrue(asked.size() > 10, asked.toString());
      asked.removeAll(there);
      assertEquals(Set.of(), asked);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
