package daubline.intake;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.Finding;
import daubline.base.Identifiers;
import daubline.model.Citation;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Bibliographic files as other programs write them; entries invented unless said. */
class BibliographyTest {

  @TempDir
  Path folder;

  private Preview preview(StudySession session, String name, String text) throws Exception {
    return Intake.preview(session, Files.writeString(folder.resolve(name), text), Target.CITATIONS, IntakeOptions.none());
  }

  private static Citation citation(StudySession session, String key) {
    return session.study().getCitations().stream().filter(c -> key.equals(c.getName())).findFirst().orElseThrow();
  }

  @Test
  void bibtexAsOtherProgramsWriteIt() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      String before = session.digest();
      Preview preview = preview(session, "refs.bib", """
          % a comment line with an at sign: me@example.org
          @comment{anything}
          @preamble{ "\\newcommand{\\x}{y}" }
          @string{ jas = "Journal of Arch{\\ae}ological Slag" }
          @Article{Muller:2012,
            author = {M{\\"u}ller, J{\\'o}zef and {\\O}rsted, \\AA se and {Iron Group and Friends}},
            title = {{The} furnace at $5^{\\circ}$ \\& ``R\\'{e}n\\v{c}e''},
            journal = jas, volume = 12, number = "3", pages = {101--118}, year = 2012,
            doi = {https://doi.org/10.1234/abc_def}, keywords = {slag, iron}
          }
          @incollection(chapter1, title = "A chapter " # "in two", crossref = {thebook}, author = {Sly, Anna})
          @book{thebook, title = {The Book}, editor = {Wray, Tom}, publisher = {Press}, address = {Ovenby}, isbn = {978-3-16-148410-0}, year = {1998}}
          """);
      assertTrue(preview.canApply(), preview.findings().toString());
      assertTrue(preview.findings().stream().anyMatch(f -> f.code().equals("bib.unread") && f.what().contains("keywords")));
      preview.apply(session);
      Citation muller = citation(session, "Muller:2012");
      assertEquals("Müller, Józef; Ørsted, Åse; Iron Group and Friends", muller.getAuthors());
      assertEquals("The furnace at 5° & “Rénče”", muller.getTitle());
      assertEquals("Journal of Archæological Slag", muller.getContainer());
      assertEquals("101-118", muller.getPages());
      assertEquals("3", muller.getIssue());
      assertEquals("article", muller.getKind());
      Citation chapter = citation(session, "chapter1");
      assertEquals("A chapter in two", chapter.getTitle());
      assertEquals("The Book", chapter.getContainer());
      assertEquals("Wray, Tom", chapter.getEditors());
      assertEquals("1998", chapter.getYear());
      assertEquals("Sly, Anna", chapter.getAuthors());
      Preview again = preview(session, "refs.bib", Files.readString(folder.resolve("refs.bib")));
      assertFalse(again.changesAnything(), again.rows().toString());
      session.undo();
      assertEquals(before, session.digest());
    }
  }

  @Test
  void whatIsMalformedIsSaidWithItsLine() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      Preview preview = preview(session, "broken.bib", """
          @book{good, title = {Good}}

          @article{open,
            title = {never closed,
            year = 2001
          }
          @book{next, title = {Next}, publisher = undefinedword}
          @book{last title = {No comma}}
          @misc{fine, title = {Fine}, doi = {11.22/x}, isbn = {978-3-16-148410-1}}
          """);
      List<String> places = preview.findings().stream().filter(Finding::isError).map(Finding::where).toList();
      assertEquals(List.of("broken.bib, line 7", "broken.bib, line 7", "broken.bib, line 8"), places, preview.findings().toString());
      assertFalse(preview.canApply());
      Preview mended = preview(session, "mended.bib", "@misc{fine, title = {Fine}, doi = {11.22/x}, isbn = {978-3-16-148410-1}}\n");
      assertTrue(mended.canApply());
      assertEquals(List.of("doi.form", "isbn.form"), Studies.codes(mended));
      assertTrue(Studies.finding(mended, "doi.form").where().contains("row 1"));
    }
  }

  @Test
  void taggedLinesAsOtherProgramsWriteThem() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      Preview preview = preview(session, "refs.ris", """
          TY  - JOUR
          AU  - Sly, Anna
          AU  - Wray, Tom
          TI  - Slags of
            Kiln Acre
          T2  - Aldervale Papers
          PY  - 2016/05/12/
          VL  - 11
          SP  - 12
          EP  - 29
          DO  - 10.5555/Slags.1
          SN  - 0034-5678
          KW  - slag
          ER  -

          TY  - GEN
          ID  - letter-7
          A1  - Thorne, B.
          M3  - message
          N1  - first
          N1  - second
          ER  -
          """);
      assertTrue(preview.canApply(), preview.findings().toString());
      preview.apply(session);
      Citation slags = citation(session, "sly-2016-slags");
      assertEquals("Sly, Anna; Wray, Tom", slags.getAuthors());
      assertEquals("Slags of Kiln Acre", slags.getTitle());
      assertEquals("12-29", slags.getPages());
      assertEquals("2016", slags.getYear());
      assertEquals("first second", citation(session, "letter-7").getNote());
      assertEquals("message", citation(session, "letter-7").getKind());
      Preview other = preview(session, "other.bib", "@article{anotherkey, title = {Slags of Kiln Acre}, doi = {10.5555/SLAGS.1}}");
      assertEquals(0, other.count(PreviewRow.State.ADDED), "recognised by its DOI");
    }
  }

  @Test
  void taggedLinesThatAreBrokenAreSaidWithTheirLine() throws Exception {
    try (StudySession session = Studies.fresh(folder)) {
      Preview preview = preview(session, "broken.ris", "AU  - Nobody, N.\nTY  - BOOK\nTI  - One\nTY  - BOOK\nTI  - Two\n");
      List<String> places = preview.findings().stream().filter(f -> f.code().equals("bib.line")).map(Finding::where).toList();
      assertEquals(List.of("broken.ris, line 1", "broken.ris, line 4", "broken.ris, line 4"), places, preview.findings().toString());
    }
  }

  @Test
  void numbersAreCheckedByTheirForm() {
    // ISBN 978-3-16-148410-0 is the example of ISO 2108 as printed on Wikipedia's page on ISBN (from memory); 0-306-40615-2 its ten-digit one.
    assertTrue(Identifiers.isIsbn("978-3-16-148410-0") && Identifiers.isIsbn("0-306-40615-2") && Identifiers.isIsbn("ISBN 080442957X"));
    assertFalse(Identifiers.isIsbn("978-3-16-148410-1") || Identifiers.isIsbn("0-306-40615-3") || Identifiers.isIsbn("12345"));
    assertTrue(Identifiers.isDoi("10.1000/182") && Identifiers.isDoi("doi:10.1234.5/x") && Identifiers.isDoi("https://doi.org/10.3390/met13050984"));
    assertFalse(Identifiers.isDoi("10.1000") || Identifiers.isDoi("11.1000/1") || Identifiers.isDoi("10.1000/a b"));
  }

  @Test
  void theNumberOfAJournalIsSaidNotToBeTaken() throws Exception {
    try (StudySession session = StudySession.create(folder.resolve("issn"), "")) {
      Preview preview = preview(session, "issn.ris", "TY  - JOUR\nID  - a-1\nTI  - Slags\nSN  - 1234-567X\nER  - \n");
      assertTrue(preview.findings().stream().anyMatch(f -> f.code().equals("bib.unread") && f.what().contains("ISSN")), preview.findings().toString());
    }
  }

  @Test
  void linesAreCountedOnce() throws Exception {
    StringBuilder many = new StringBuilder();
    for (int i = 0; i < 20_000; i++) {
      many.append("@misc{k").append(i).append(",\n title = {T").append(i).append("},\n year = 1990\n}\n\n");
    }
    many.append("@misc{broken, title = {x\n");
    long before = System.nanoTime();
    try (StudySession session = StudySession.create(folder.resolve("many"), "")) {
      preview(session, "many.bib", many.toString());
    }
    double seconds = (System.nanoTime() - before) / 1e9;
    assertTrue(seconds < 5, "20 000 entries took " + seconds + " s");
  }

  @Test
  void keptFilesSayWhatTheyAre() throws Exception {
    for (String[] pair : new String[][] {{"a.bib", "application/x-bibtex"}, {"a.ris", "application/x-research-info-systems"}, {"a.CSV", "text/csv"}, {"a.dat", "application/octet-stream"}}) {
      daubline.model.DataFile entry = daubline.model.ModelFactory.eINSTANCE.createDataFile();
      KeptFile.of(folder, "lab", pair[0], new byte[] {1}).describe(entry, "table");
      assertEquals(pair[1], entry.getMediaType());
    }
  }

}
