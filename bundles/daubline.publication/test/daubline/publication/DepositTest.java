package daubline.publication;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Snapshots;
import daubline.analysis.StudySnapshot;
import daubline.analysis.checks.Checks;
import daubline.analysis.deposit.DepositData;
import daubline.analysis.deposit.Disclosure;
import daubline.analysis.deposit.StudyRows;
import daubline.base.Finding;
import daubline.export.Discretion;
import daubline.export.Provenance;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Deposits written, checked and read again. */
class DepositTest {

  @TempDir
  Path folder;

  private static final DepositOptions OPTIONS = new DepositOptions(List.of(), "An archive", 2031, "CC-BY-4.0", "");

  /** Writes a deposit alone; what is wrong with it. */
  static List<Finding> write(String study, Path to) throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds", study))) {
      return write(session, to);
    }
  }

  static List<Finding> write(StudySession session, Path to) throws Exception {
    StudySnapshot snapshot = Snapshots.of(session);
    DepositMetadata metadata = new DepositMetadata(snapshot, new Discretion(snapshot.record().people()), OPTIONS,
        new Provenance(snapshot.name(), snapshot.digest(), "0.0", List.of(), Provenance.NO_TIME));
    return new Deposit(DepositData.of(session, Disclosure.standard()), metadata, new Output(to)).write(Checks.run(session));
  }

  @ParameterizedTest
  @ValueSource(strings = {"aldervale", "open-smelts"})
  void itPassesItsOwnCheckAndComesBackIntoAnEmptyStudy(String study) throws Exception {
    assertEquals(List.of(), write(study, folder.resolve("deposit")).stream().filter(Finding::isError).toList());
    try (StudySession again = StudySession.create(folder.resolve("again"), "")) {
      assertEquals(List.of(), DepositReader.read(folder.resolve("deposit"), again));
      again.save();
      try (StudySession original = StudySession.read(Path.of("seeds", study))) {
        assertEquals(DepositData.of(original, Disclosure.standard()).tables(), StudyRows.of(again.study()));
      }
    }
    try (StudySession saved = StudySession.read(folder.resolve("again")); StudySession original = StudySession.read(Path.of("seeds", study))) {
      assertEquals(DepositData.of(original, Disclosure.standard()).tables(), StudyRows.of(saved.study()), "after saving");
    }
  }

  @Test
  void twoDepositsAreAlikeToTheByte() throws Exception {
    write("aldervale", folder.resolve("a"));
    write("aldervale", folder.resolve("b"));
    assertEquals(PublicationTest.hashes(folder.resolve("a")), PublicationTest.hashes(folder.resolve("b")));
  }

  @Test
  void nobodyIsNamedAndNoPictureShownWithoutConsent() throws Exception {
    write("aldervale", folder.resolve("d"));
    List<String> hidden;
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      hidden = session.study().getPeople().stream().filter(p -> !p.isMayPublishName()).map(p -> p.getName()).toList();
    }
    assertFalse(hidden.isEmpty());
    try (Stream<Path> files = Files.walk(folder.resolve("d"))) {
      for (Path file : files.filter(f -> f.toString().matches(".*\\.(csv|json|md|txt|cff)")).toList()) {
        String text = Files.readString(file);
        hidden.forEach(name -> assertFalse(text.contains(name), name + " stands in " + file.getFileName()));
      }
    }
    assertTrue(Files.readString(folder.resolve("d/README.md")).contains("Pictures and scans without consent"));
  }

  @Test
  void rawFilesAreUntouched() throws Exception {
    write("aldervale", folder.resolve("d"));
    assertEquals(-1, Files.mismatch(Path.of("seeds/aldervale/logs/aldervale-7-station.csv"), folder.resolve("d/raw/logs/aldervale-7-station.csv")));
  }

  @Test
  void theKindsOfMissingAreLabelledAndStandInTheNumbers() throws Exception {
    write("aldervale", folder.resolve("d"));
    String descriptor = Files.readString(folder.resolve("d/datapackage.json"));
    for (String kind : List.of("NOT_PRESERVED", "NOT_LOOKED_FOR", "NOT_RECORDED", "NOT_WEIGHED", "NOT_ANALYSED", "NOT_DETECTED")) {
      assertTrue(descriptor.replace(" ", "").contains("\"value\":\"" + kind + "\""), kind);
    }
    assertTrue(Files.readString(folder.resolve("d/data/claim.csv")).contains(",NOT_PRESERVED"));
  }

  @Test
  void everyColumnIsDescribed() {
    Descriptions descriptions = new Descriptions();
    List<String> missing = StudyRows.forms().stream().flatMap(t -> t.fields().stream().filter(f -> !descriptions.knows(t.name(), f)).map(f -> t.name() + "." + f.name()))
        .toList();
    assertEquals(List.of(), missing);
  }

  @Test
  void aChangedCellIsFound() throws Exception {
    write("aldervale", folder.resolve("d"));
    Path claims = folder.resolve("d/data/claim.csv");
    Files.writeString(claims, Files.readString(claims).replaceFirst("EXACT", "EXACTLY"));
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale")); StudySession again = StudySession.create(folder.resolve("again"), "")) {
      List<String> said = DepositCheck.of(folder.resolve("d"), DepositData.of(session, Disclosure.standard()).tables()).stream().map(Finding::what).toList();
      assertTrue(said.stream().anyMatch(w -> w.equals("“EXACTLY” does not fit the column kind")), said.toString());
      assertTrue(said.stream().anyMatch(w -> w.contains("differs from its checksum")), said.toString());
      assertTrue(DepositReader.read(folder.resolve("d"), again).stream().anyMatch(Finding::isError));
      assertTrue(again.study().getSites().isEmpty(), "nothing is taken over");
    }
  }
}
