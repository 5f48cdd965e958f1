package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TimeZone;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The whole set of files from the studies that come with the tool. */
class PublicationTest {

  private static final PublicationOptions OPTIONS = PublicationOptions.standard("0.0", List.of());

  @TempDir
  Path folder;

  static StudyResults results(String study, int threads) throws Exception {
    ComparisonOptions usual = ComparisonOptions.standard();
    try (StudySession session = StudySession.read(Path.of("seeds", study))) {
      return StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 300, usual.seed(), threads));
    }
  }

  static Map<String, String> hashes(Path folder) throws Exception {
    Map<String, String> hashes = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
        hashes.put(folder.relativize(file).toString(), HexFormat.of().formatHex(digest));
      }
    }
    return hashes;
  }

  private static Publication.Written write(StudyResults results, Path to) throws Exception {
    return Publication.write(results, Optional.empty(), to, OPTIONS, Progress.NONE);
  }

  @ParameterizedTest
  @ValueSource(strings = {"aldervale", "open-smelts"})
  void itWritesWhatItSays(String study) throws Exception {
    Publication.Written written = write(results(study, 2), folder);
    assertEquals(hashes(folder).keySet(), new TreeSet<>(written.files()));
    for (String file : written.files()) {
      assertTrue(Files.size(folder.resolve(file)) > 0, file + " is empty");
    }
  }

  @Test
  void twoRunsAnywhereGiveTheSameBytes() throws Exception {
    write(results("aldervale", 1), folder.resolve("a"));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("de-AT"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      write(results("aldervale", 2), folder.resolve("b"));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    Map<String, String> first = hashes(folder.resolve("a"));
    Map<String, String> second = hashes(folder.resolve("b"));
    assertEquals(first.keySet(), second.keySet());
    assertEquals(List.of(), first.keySet().stream().filter(file -> !first.get(file).equals(second.get(file))).toList());
  }

  @Test
  void aStudyWithoutContentStillGivesAWorkbook() throws Exception {
    StudySession.create(folder.resolve("empty"), "Empty").close();
    try (StudySession session = StudySession.read(folder.resolve("empty"))) {
      Publication.Written written = write(StudyComparison.of(session, ComparisonOptions.standard()), folder.resolve("out"));
      assertTrue(Files.exists(folder.resolve("out/tables.xlsx")));
      assertTrue(written.remarks().stream().anyMatch(r -> r.contains("nothing to draw")), written.remarks().toString());
    }
  }
}
