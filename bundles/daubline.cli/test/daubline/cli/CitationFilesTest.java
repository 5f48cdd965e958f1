package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.Citation;
import daubline.model.ModelFactory;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.emf.ecore.EAttribute;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Citations go out into a file and come back as they were, odd characters and all. */
class CitationFilesTest {

  @TempDir
  Path folder;

  private static Map<String, String> fields(Citation citation) {
    Map<String, String> fields = new TreeMap<>();
    for (EAttribute attribute : citation.eClass().getEAllAttributes()) {
      if (citation.eGet(attribute) != null) {
        fields.put(attribute.getName(), citation.eGet(attribute).toString());
      }
    }
    return fields;
  }

  private static List<Map<String, String>> all(Path study) throws Exception {
    try (StudySession session = StudySession.read(study)) {
      return session.study().getCitations().stream().map(CitationFilesTest::fields).toList();
    }
  }

  private Path odd() throws Exception {
    Path study = folder.resolve("odd");
    try (StudySession session = StudySession.create(study, "Odd")) {
      session.edit("citations", () -> {
        Citation c = ModelFactory.eINSTANCE.createCitation();
        c.setId("odd-1");
        c.setName("odd-1");
        c.setAuthors("Ørsted, Å.; {Brace}; \\Slash, 50%; 李, 明; O'Neill, S.");
        c.setYear("c. 1890/91");
        c.setTitle("100 % of $5 {iron} #1_a ~ ^2 `q' “ü” <b> שלום");
        c.setContainer("A & B");
        c.setVolume("12");
        c.setIssue("3–4");
        c.setPages("iv-12, 14");
        c.setPlace("Köln");
        c.setPublisher("O'Neill & Søn");
        c.setDoi("10.1234/a_b(c)%d");
        c.setIsbn("978-3-16-148410-0");
        c.setUrl("https://example.org/~x/a_b%20c#d");
        c.setKind("laboratory report");
        c.setNote("It ends in a backslash \\");
        session.study().getCitations().add(c);
        Citation bare = ModelFactory.eINSTANCE.createCitation();
        bare.setId("bare");
        bare.setName("bare");
        session.study().getCitations().add(bare);
      });
      session.save();
    }
    return study;
  }

  @ParameterizedTest
  @ValueSource(strings = {"refs.bib", "refs.ris"})
  void oddCharactersComeBack(String name) throws Exception {
    Path study = odd();
    Path file = folder.resolve(name);
    assertEquals(0, Run.of("citations", study.toString(), file.toString()).exit());
    Path other = folder.resolve("other-" + name);
    StudySession.create(other, "Other").close();
    Run run = Run.of("import", other.toString(), file.toString(), "--as", "citations", "--apply");
    assertEquals(0, run.exit(), run.out() + run.err() + Files.readString(file));
    List<Map<String, String>> back = all(other);
    assertEquals(all(study).get(0).get("title"), back.get(0).get("title"), Files.readString(file));
    assertEquals(all(study).get(0), back.get(0), Files.readString(file));
    Run again = Run.of("import", study.toString(), file.toString(), "--as", "citations", "--apply");
    assertTrue(again.out().contains("nothing to do"), again.out() + again.err());
  }

  @ParameterizedTest
  @ValueSource(strings = {"refs.bib", "refs.ris"})
  void theCitationsOfTheStudiesWeBringAreRecognisedAgain(String name) throws Exception {
    for (String seed : List.of("aldervale", "open-smelts")) {
      Path file = folder.resolve(seed + name);
      assertEquals(0, Run.of("citations", "seeds/" + seed, file.toString()).exit());
      Run again = Run.of("import", "seeds/" + seed, file.toString(), "--as", "citations");
      assertEquals(0, again.exit(), again.out() + again.err());
      assertTrue(again.out().contains("0 added") && again.out().contains("0 changed") || !again.out().contains("→"), again.out());
    }
  }

  @Test
  void anotherEndingIsRefused() throws Exception {
    Run run = Run.of("citations", odd().toString(), folder.resolve("refs.doc").toString());
    assertEquals(1, run.exit());
    assertTrue(run.err().contains(".bib"), run.err());
  }
}
