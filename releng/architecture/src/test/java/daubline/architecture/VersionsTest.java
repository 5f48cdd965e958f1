package daubline.architecture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The flat class path and the target definition name the same versions, and nothing unsteady. */
class VersionsTest {

  private static final Pattern LIBRARY = Pattern.compile("<groupId>([^<]*)</groupId>\\s*<artifactId>([^<]*)</artifactId>\\s*<version>([^<]*)</version>");

  @Test
  void theFlatClassPathHasTheVersionsOfTheTarget() throws IOException {
    Map<String, String> target = libraries(Path.of("releng/daubline.target/daubline.target"));
    List<String> wrong = new ArrayList<>();
    String flat = Files.readString(Path.of("releng/flat/pom.xml"));
    String dependencies = flat.substring(flat.indexOf("<dependencies>"), flat.indexOf("</dependencies>"));
    Matcher m = LIBRARY.matcher(dependencies.replaceAll("(?s)<exclusions>.*?</exclusions>", ""));
    while (m.find()) {
      String known = target.get(m.group(1) + ":" + m.group(2));
      if (!m.group(2).equals("junit-jupiter") && !m.group(3).equals(known)) {
        wrong.add(m.group(2) + " " + m.group(3) + ", target " + known);
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void nothingFloats() throws IOException {
    Map<String, String> target = libraries(Path.of("releng/daubline.target/daubline.target"));
    assertTrue(target.size() > 100);
    target.forEach((library, version) -> assertTrue(version.matches("[0-9][0-9A-Za-z.-]*") && !version.contains("SNAPSHOT"), library + " " + version));
  }

  private static Map<String, String> libraries(Path file) throws IOException {
    Map<String, String> libraries = new TreeMap<>();
    Matcher m = LIBRARY.matcher(Files.readString(file));
    while (m.find()) {
      libraries.put(m.group(1) + ":" + m.group(2), m.group(3));
    }
    return libraries;
  }
}
