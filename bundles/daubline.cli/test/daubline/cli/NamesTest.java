package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Citation;
import daubline.model.DataFile;
import daubline.model.ModelFactory;
import daubline.model.Person;
import daubline.model.Site;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Somebody who did not consent stands everywhere in a study: as reader, author, in captions, questions and names. Nothing that goes out names them. */
class NamesTest {

  private static final String NAME = "Quirina Zwolle";
  private static final List<String> FORMS = List.of("quirina zwolle", "zwolle, quirina", "zwolle");
  private static final double LATITUDE = 51.234567;

  @TempDir
  static Path folder;
  private static Path study;
  private static Run published;

  @BeforeAll
  static void publish() throws Exception {
    study = folder.resolve("study");
    copy(Path.of("seeds/aldervale"), study);
    try (StudySession session = StudySession.open(study)) {
      session.edit("name", () -> name(session.study()));
      for (String file : List.of("scan.pdf", "plan.png", "dish.docx", "measured.csv")) {
        Files.writeString(study.resolve(file), "content of " + file);
      }
      session.save();
    }
    published = Run.of("publish", study.toString(), "--to", folder.resolve("out").toString(), "--draws", "200", "--formats", "svg");
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path target = to.resolve(from.relativize(file).toString());
        Files.createDirectories(target.getParent());
        Files.copy(file, target);
      }
    }
  }

  private static void name(Study study) {
    Person person = ModelFactory.eINSTANCE.createPerson();
    person.setId("quirina-zwolle");
    person.setName(NAME);
    study.getPeople().add(person);
    study.setQuestion("What " + NAME + " asked");
    Citation citation = ModelFactory.eINSTANCE.createCitation();
    citation.setId("notes-1998");
    citation.setName("notes-1998");
    citation.setAuthors("Zwolle, Quirina; Other, A.");
    citation.setTitle("Notes of quirina zwolle");
    study.getCitations().add(citation);
    Trial trial = study.getSeries().get(0).getTrials().get(0);
    trial.setName("Fire of " + NAME);
    trial.setConclusion(NAME + " was content");
    trial.setLeader(person);
    trial.getFiles().addAll(List.of(file("scan.pdf", "application/pdf", null, false), file("plan.png", null, "plan", false), file("dish.docx", null, "paper sheet", false),
        file("measured.csv", "text/csv", "lab", false)));
    study.getSites().get(0).getContexts().stream().flatMap(c -> c.getSheets().stream()).flatMap(s -> s.getClaims().stream()).forEach(c -> c.setBy(person));
    Site site = study.getSites().get(0);
    site.setSensitive(true);
    site.setLatitude(LATITUDE);
    site.setPlace("behind the third oak");
  }

  private static DataFile file(String path, String type, String kind, boolean consent) {
    DataFile file = ModelFactory.eINSTANCE.createDataFile();
    file.setId("file-" + path.replace('.', '-'));
    file.setName(path);
    file.setPath(path);
    file.setMediaType(type);
    file.setKind(kind);
    file.setCaption("taken by " + NAME);
    file.setConsent(consent);
    return file;
  }

  /** A file as text, the parts of workbooks and documents unpacked. */
  private static String text(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    if (!file.toString().matches(".*\\.(xlsx|docx)")) {
      return new String(bytes, StandardCharsets.UTF_8);
    }
    StringBuilder all = new StringBuilder();
    try (InputStream in = new ByteArrayInputStream(bytes); ZipInputStream zip = new ZipInputStream(in)) {
      for (ZipEntry part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        all.append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return all.toString();
  }

  private static List<Path> out() throws IOException {
    try (Stream<Path> files = Files.walk(folder.resolve("out"))) {
      return files.filter(Files::isRegularFile).toList();
    }
  }

  private static void assertSilent(String where, String text) {
    FORMS.forEach(form -> assertFalse(text.toLowerCase(java.util.Locale.ROOT).contains(form), () -> form + " stands in " + where));
    assertFalse(text.contains("51.23456"), () -> "the place stands in " + where);
    assertFalse(text.contains("third oak"), () -> "the place stands in " + where);
  }

  @Test
  void nothingPublishedNamesThemOrTheirPlace() throws Exception {
    assertTrue(Files.exists(folder.resolve("out/references.bib")), published.out() + published.err());
    assertTrue(Files.readString(folder.resolve("out/references.bib")).contains("Person "), "the citation stays, without the name");
    for (Path file : out()) {
      assertSilent(folder.relativize(file).toString(), folder.relativize(file) + "\n" + text(file));
    }
  }

  @Test
  void picturesAndScansWaitForConsentAndMeasurementsDoNot() throws Exception {
    List<String> names = out().stream().map(p -> p.getFileName().toString()).toList();
    assertEquals(List.of(), names.stream().filter(List.of("scan.pdf", "plan.png", "dish.docx")::contains).toList());
    assertTrue(names.contains("measured.csv"));
  }

  @Test
  void commandsThatHandOverDataDoNotNameThem() throws Exception {
    String at = study.toString();
    for (String table : List.of("people", "citations", "trials", "evidence", "checks", "record")) {
      assertSilent("table " + table, Run.of("table", at, table, "--csv", "--draws", "100").out());
    }
    assertSilent("compare", Run.of("compare", at, "--json", "--draws", "100").out());
    assertSilent("ranks", Run.of("ranks", at, "--json", "--draws", "100").out());
    assertSilent("balance", Run.of("balance", at, "--json").out());
    assertSilent("predict", Run.of("predict", at, "--json", "--draws", "0").out());
    for (String file : List.of("refs.bib", "refs.ris")) {
      assertEquals(0, Run.of("citations", at, folder.resolve(file).toString()).exit());
      assertSilent(file, Files.readString(folder.resolve(file)));
    }
  }
}
