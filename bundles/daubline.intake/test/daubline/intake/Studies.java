package daubline.intake;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.session.StudySession;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Studies for tests, and what is looked at in them. */
final class Studies {

  private Studies() {
  }

  static StudySession fresh(Path folder) throws Exception {
    return StudySession.create(folder.resolve("study"), "Test");
  }

  /** A study with the trials T1 to T3 in one series and the lots of an ore and a charcoal, invented. */
  static StudySession withTrials(Path folder) throws Exception {
    StudySession session = fresh(folder);
    take(session, Books.csv(folder, "trials-for-test.csv", "series,name,date", "Season 2031,T1,2031-05-10",
        "Season 2031,T2,2031-06-14", "Season 2031,T3,"), Target.TRIALS);
    take(session, Books.csv(folder, "lots-for-test.csv", "name,material", "Bog ore,ore", "Oak charcoal,charcoal"), Target.LOTS);
    session.save();
    return session;
  }

  static Preview take(StudySession session, Path file, Target target) throws IntakeException {
    Preview preview = Intake.preview(session, file, target, IntakeOptions.none());
    preview.apply(session);
    return preview;
  }

  static List<String> codes(Preview preview) {
    return preview.findings().stream().filter(f -> f.severity() != Severity.NOTE).map(Finding::code).toList();
  }

  static Finding finding(Preview preview, String code) {
    return preview.findings().stream().filter(f -> f.code().equals(code)).findFirst()
        .orElseThrow(() -> new AssertionError("no " + code + " in " + preview.findings()));
  }

  /** The bytes of the study's own files after saving. */
  static Map<String, String> saved(StudySession session) throws Exception {
    session.save();
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(session.folder())) {
      for (Path file : all.filter(f -> f.toString().endsWith(".xmi") && !f.toString().contains(".daubline")).toList()) {
        files.put(session.folder().relativize(file).toString(), read(file));
      }
    }
    return files;
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file);
  }
}
