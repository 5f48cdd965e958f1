package daubline.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.DecimalSign;
import daubline.base.Finding;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Kinds of a run log typed short from paper, in both languages. */
class KindTextTest {

  @TempDir
  Path folder;

  private Desk english;
  private Desk german;

  @BeforeEach
  void open() throws Exception {
    english = Desks.desk(folder);
    german = new Desk(english.session(), () -> DecimalSign.COMMA, new RecordWords(Locale.GERMAN));
  }

  @AfterEach
  void close() {
    english.session().close();
  }

  @ParameterizedTest
  @CsvSource({"te,TEMPERATURE", "TE,TEMPERATURE", "t,TEMPERATURE", "ta,TAP", "le,LEVEL", "ph,", "pho,PHOTOGRAPH", "pha,PHASE", "ch,CHARGE", "b,BLAST", "ex,EXTRACTION",
      "no,NOTE", "zz,", "'',"})
  void english(String typed, EventKind kind) {
    assertEquals(Optional.ofNullable(kind), new KindText(english).read(typed));
  }

  @ParameterizedTest
  @CsvSource({"te,TEMPERATURE", "g,CHARGE", "gi,CHARGE", "w,BLAST", "z,INCIDENT", "abst,TAP", "absc,PHASE", "ab,", "abl,RELIEF", "beo,LOOK", "fü,LEVEL", "fo,PHOTOGRAPH", "ta,TAP",
      "temperature,TEMPERATURE"})
  void german(String typed, EventKind kind) {
    assertEquals(Optional.ofNullable(kind), new KindText(german).read(typed), "a word of the study counts where no word of the language begins so");
  }

  /** Every beginning stands for the kind that alone has it, and for none when several have it. */
  @Test
  void eachBeginningOfEachWord() {
    for (Desk desk : List.of(english, german)) {
      KindText kinds = new KindText(desk);
      for (EventKind kind : EventKind.distinct()) {
        String word = kinds.word(kind);
        for (int n = 2; n <= word.length(); n++) {
          String beginning = word.substring(0, n);
          long others = kinds.words().stream().filter(w -> w.toLowerCase(Locale.ROOT).startsWith(beginning.toLowerCase(Locale.ROOT))).count();
          boolean whole = kinds.words().stream().anyMatch(w -> w.equalsIgnoreCase(beginning));
          assertEquals(whole || others == 1 ? Optional.of(kind) : Optional.empty(), kinds.read(beginning), beginning);
          assertEquals(whole || others == 1, kinds.complaint(beginning).isEmpty(), beginning);
        }
      }
    }
  }

  @Test
  void anAmbiguousBeginningIsKeptWithTheKindsItMayBe() {
    LogTable log = new LogTable(german, Desks.trial(german));
    int row = log.rows() - 1;
    assertEquals("value.several", Desks.type(log, row, "kind", "ab"));
    assertEquals("ab", Desks.cell(log, row, "kind"));
    Finding said = log.finding(row, log.columns().indexOf("kind")).orElseThrow();
    assertTrue(said.what().contains("Abstich, Abschnitt, Ablösung"), said.what());
    assertEquals(List.of("Abstich", "Abschnitt", "Ablösung"), log.choices(row, log.columns().indexOf("kind")), "the list offers these alone");
    assertEquals("", Desks.type(log, row, "kind", "abst"));
    assertEquals("tap", Desks.trial(german).getLog().get(0).getKind());
    assertEquals("value.category", Desks.type(log, 0, "kind", "xyz"));
    assertEquals("", Desks.type(log, 0, "kind", "te"));
    assertEquals("temperature", Desks.trial(german).getLog().get(0).getKind());
  }
}
