package daubline.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.ValueKind;
import daubline.model.Citation;
import daubline.model.Claim;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudySessionTest {

  private static final ModelFactory NEW = ModelFactory.eINSTANCE;

  @TempDir
  Path temporary;
  private Path folder;

  @BeforeEach
  void makeStudy() throws StudyException {
    folder = temporary.resolve("valley");
    try (StudySession session = StudySession.create(folder, "Valley")) {
      session.edit("Fill", () -> fill(session.study()));
      session.save();
    }
  }

  static void fill(Study study) {
    Citation report = NEW.createCitation();
    report.setTitle("Report & plan");
    study.getCitations().add(report);
    Claim claim = NEW.createClaim();
    claim.setVariable("base_internal_diameter");
    claim.setKind(ValueKind.PLUS_MINUS);
    claim.setTyped("25,5 ± 1");
    claim.setUnit("cm");
    claim.setValue(0.255);
    claim.setSigma(0.01);
    claim.setCitation(report);
    EvidenceSheet sheet = NEW.createEvidenceSheet();
    sheet.setName("Furnace 1");
    sheet.getClaims().add(claim);
    Context context = NEW.createContext();
    context.getSheets().add(sheet);
    Site site = NEW.createSite();
    site.setName("Glen");
    site.getContexts().add(context);
    study.getSites().add(site);
    Series series = NEW.createSeries();
    series.setName("Summer");
    series.getTrials().add(trial("G1"));
    study.getSeries().add(series);
  }

  static Trial trial(String name) {
    Trial trial = NEW.createTrial();
    trial.setName(name);
    return trial;
  }

  static Map<String, String> content(Path folder) throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (var all = Files.walk(folder)) {
      for (Path file : all.filter(f -> f.toString().endsWith(".xmi") && !f.toString().contains(".daubline")).toList()) {
        files.put(folder.relativize(file).toString(), Files.readString(file));
      }
    }
    return files;
  }

  @Test
  void writesOneFileForEachSiteAndSeries() throws Exception {
    Map<String, String> files = content(folder);
    assertEquals(3, files.size());
    assertEquals(1, files.keySet().stream().filter(f -> f.startsWith("sites")).count());
    assertEquals(1, files.keySet().stream().filter(f -> f.startsWith("series")).count());
    assertFalse(files.get("study.xmi").contains("G1"));
  }

  @Test
  void savesTheSameBytesAgain() throws Exception {
    Map<String, String> before = content(folder);
    try (StudySession session = StudySession.open(folder)) {
      assertEquals(List.of(), session.findings());
      session.edit("Rename", () -> session.study().setName("Other"));
      session.save();
      session.edit("Rename", () -> session.study().setName("Valley"));
      session.save();
    }
    assertEquals(before, content(folder));
  }

  @Test
  void keepsReferencesAcrossFiles() throws Exception {
    try (StudySession session = StudySession.read(folder)) {
      Claim claim = session.study().getSites().get(0).getContexts().get(0).getSheets().get(0).getClaims().get(0);
      assertEquals("Report & plan", claim.getCitation().getTitle());
      assertEquals(ValueKind.PLUS_MINUS, claim.getKind());
      assertEquals(claim, session.find(claim.getId(), Claim.class).orElseThrow());
    }
  }

  @Test
  void addingATrialChangesFewLines() throws Exception {
    List<String> before = content(folder).values().stream().flatMap(String::lines).toList();
    try (StudySession session = StudySession.open(folder)) {
      session.edit("Add trial", () -> session.study().getSeries().get(0).getTrials().add(trial("G2")));
      session.save();
    }
    List<String> after = content(folder).values().stream().flatMap(String::lines).toList();
    assertEquals(1, after.stream().filter(line -> !before.contains(line)).count());
    assertEquals(0, before.stream().filter(line -> !after.contains(line)).count());
  }

  @Test
  void undoesAndRedoesAnythingByItsName() throws Exception {
    try (StudySession session = StudySession.open(folder)) {
      String digest = session.digest();
      session.delete("Delete site Glen", List.of(session.study().getSites().get(0)));
      session.delete("Delete report", List.of(session.study().getCitations().get(0)));
      String changed = session.digest();
      assertEquals("Delete report", session.undoLabel().orElseThrow());
      session.undo();
      session.undo();
      assertEquals(digest, session.digest());
      assertFalse(session.isDirty());
      session.redo();
      session.redo();
      assertEquals(changed, session.digest());
      session.save();
      assertEquals(2, content(folder).size());
      session.undo();
      session.undo();
      session.save();
      assertEquals(digest, session.digest());
    }
    try (StudySession session = StudySession.read(folder)) {
      assertEquals("Glen", session.study().getSites().get(0).getName());
    }
  }

  @Test
  void takesBackAChangeThatFailsHalfWay() throws Exception {
    try (StudySession session = StudySession.open(folder)) {
      String digest = session.digest();
      assertThrows(IllegalStateException.class, () -> session.edit("Fail", () -> {
        session.study().setName("Half");
        throw new IllegalStateException("stop");
      }));
      assertEquals(digest, session.digest());
      assertThrows(IllegalArgumentException.class, () -> session.edit("Control character", () -> session.study().setNote("a\u0002b")));
      assertEquals(digest, session.digest());
      assertFalse(session.isDirty());
    }
  }

  @Test
  void noticesChangesFromOutside() throws Exception {
    try (StudySession session = StudySession.open(folder)) {
      Path file = folder.resolve("study.xmi");
      Files.writeString(file, Files.readString(file).replace("Valley", "Dale"));
      session.edit("Rename", () -> session.study().setName("Mine"));
      StudyException refused = assertThrows(StudyException.class, session::save);
      assertEquals("study.changed", refused.finding().code());
      session.saveOverOutsideChanges();
      assertTrue(Files.readString(file).contains("Mine"));
    }
  }

  @Test
  void refusesASecondWindow() throws Exception {
    try (StudySession first = StudySession.open(folder)) {
      StudyException refused = assertThrows(StudyException.class, () -> StudySession.open(folder));
      assertEquals("study.open", refused.finding().code());
      assertEquals(first.digest(), StudySession.read(folder).digest());
    }
    StudySession.open(folder).close();
  }

  @Test
  void recoversWhatWasNotSaved() throws Exception {
    StudySession lost = StudySession.open(folder);
    lost.edit("Add trial", () -> lost.study().getSeries().get(0).getTrials().add(trial("G2")));
    lost.delete("Delete site", List.of(lost.study().getSites().get(0)));
    String digest = lost.digest();
    lost.close();
    Recovery recovery = Recovery.of(folder).orElseThrow();
    assertEquals(3, recovery.summary().size());
    try (StudySession session = StudySession.open(recovery)) {
      assertEquals(digest, session.digest());
      assertTrue(session.isDirty());
      session.save();
    }
    assertTrue(Recovery.of(folder).isEmpty());
    assertEquals(digest, StudySession.read(folder).digest());
  }

  @Test
  void copiesTheStudyWithItsDataFiles() throws Exception {
    Files.createDirectories(folder.resolve("logs"));
    Files.writeString(folder.resolve("logs/a.csv"), "t,T\n");
    try (StudySession session = StudySession.open(folder)) {
      session.saveCopy(temporary.resolve("copy"));
      assertEquals(session.digest(), StudySession.read(temporary.resolve("copy")).digest());
      assertTrue(Files.exists(temporary.resolve("copy/logs/a.csv")));
    }
  }

  @Test
  void refusesEntitiesTruncatedFilesAndNewerFormats() throws Exception {
    Path file = folder.resolve("study.xmi");
    String good = Files.readString(file);
    assertRefused("study.doctype", good.replaceFirst("\\?>", "?><!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>"));
    assertRefused("study.broken", good.substring(0, good.length() / 2));
    assertRefused("study.broken", "");
    assertRefused("study.newer", good.replaceFirst("format=\"\\d+\"", "format=\"99\""));
    assertRefused("study.newer", good.replaceFirst("format=", "unheardOf=\"1\" format="));
    Files.writeString(file, good);
    Files.delete(Files.list(folder.resolve("sites")).findFirst().orElseThrow());
    assertEquals("study.part", assertThrows(StudyException.class, () -> StudySession.read(folder)).finding().code());
  }

  private void assertRefused(String code, String content) throws IOException {
    Files.write(folder.resolve("study.xmi"), content.getBytes(StandardCharsets.UTF_8));
    StudyException refused = assertThrows(StudyException.class, () -> StudySession.read(folder));
    assertEquals(code, refused.finding().code(), refused.getMessage());
    assertFalse(refused.finding().remedy().isEmpty());
  }

  @Test
  void reportsReferencesThatLeadNowhere() throws Exception {
    Path file = folder.resolve("study.xmi");
    Files.writeString(file, Files.readString(file).replaceAll("<citations [^>]*/>", ""));
    try (StudySession session = StudySession.read(folder)) {
      assertEquals(List.of("study.dangling"), session.findings().stream().map(f -> f.code()).toList());
    }
  }

  @Test
  void changesWithinAChangeArePartOfIt() throws Exception {
    try (StudySession session = StudySession.open(folder)) {
      String before = session.digest();
      int[] told = {0};
      session.addListener(() -> told[0]++);
      session.edit("Paste", () -> {
        session.edit("First", () -> session.study().setQuestion("how high?"));
        session.delete("Second", List.of(session.study().getSeries().get(0).getTrials().get(0)));
      });
      assertEquals(1, told[0]);
      assertEquals("Paste", session.undoLabel().orElseThrow());
      session.undo();
      assertEquals(before, session.digest());
      assertTrue(session.undoLabel().isEmpty());
      assertThrows(IllegalStateException.class, () -> session.edit("Paste", () -> {
        session.edit("First", () -> session.study().setQuestion("how wide?"));
        throw new IllegalStateException("no more");
      }));
      assertEquals(before, session.digest());
      session.edit("After", () -> session.study().setQuestion("again"));
      assertEquals("After", session.undoLabel().orElseThrow());
      session.discardChanges();
    }
  }
}
