package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file that is missing, a folder in its place, a name that nobody knows: each is said in words, never as the name of a program's fault. */
class FaultsTest {

  private static final String STUDY = "seeds/aldervale";

  @TempDir
  Path folder;

  @ParameterizedTest
  @ValueSource(strings = {
      "citations STUDY NONE/refs.bib", "citations STUDY DIR/d.bib", "citations STUDY DIR/refs.txt", "citations NONE DIR/refs.bib", "citations FILE DIR/refs.bib",
      "labels STUDY -o NONE/l.pdf", "labels STUDY -o DIR", "labels STUDY -o DIR/l.pdf --trial nobody", "sheets STUDY -o NONE/s.pdf", "sheets STUDY -o DIR/s.pdf --trial nobody",
      "template NOSUCH", "template trials -o NONE/t.xlsx", "template trials NONE/t.csv", "template trials DIR",
      "import STUDY NONE", "import STUDY DIR", "import STUDY EMPTY", "import STUDY FILE --as nothing", "logger STUDY NONE --trial nobody", "logger STUDY DIR --trial nobody",
      "table STUDY nothing", "table NONE people", "where STUDY nothing", "lots STUDY nothing", "lots NONE", "balance STUDY --trial nobody", "balance STUDY nobody",
      "predict STUDY nobody", "predict STUDY --vary nothing=1,2", "effects STUDY --on nothing", "effects STUDY --series nothing", "next STUDY --series nothing",
      "reconstructions STUDY nothing nobody", "variables nothing", "criteria nothing", "settings STUDY nothing", "settings STUDY nothing 1", "compare STUDY --trial nobody --draws 100",
      "compare NONE", "compare DIR", "compare EMPTY", "ranks STUDY --sheet nobody --draws 100", "moisture x --basis dry", "moisture 5 --basis none", "moisture < --basis wet",
      "arc --chord x --rise y", "arc --chord 1", "new STUDY", "new FILE", "new FILE/below", "read-deposit NONE DIR/x", "read-deposit DIR DIR/x", "read-deposit FILE DIR/x",
      "publish NONE --to DIR/o", "publish STUDY --to FILE --draws 100 --formats svg", "publish STUDY --to DIR/o --template NONE --draws 100 --formats svg",
      "publish STUDY --to DIR/o --template DIR --draws 100 --formats svg", "publish STUDY --to DIR/o --formats gif", "publish STUDY --to DIR/o --coarsen 99",
      "validate --to FILE", "validate FILE", "design capacity STUDY --series nothing", "design sheet STUDY -o NONE/s.pdf", "check NONE", "check FILE", "check DIR"})
  void isSaidInWords(String command) throws Exception {
    Files.writeString(folder.resolve("file.txt"), "text");
    Files.writeString(folder.resolve("empty.csv"), "");
    Files.createDirectories(folder.resolve("d.bib"));
    String[] words = command.split(" ");
    for (int i = 0; i < words.length; i++) {
      words[i] = words[i].replace("STUDY", STUDY).replace("NONE", folder.resolve("none").toString()).replace("FILE", folder.resolve("file.txt").toString())
          .replace("EMPTY", folder.resolve("empty.csv").toString()).replace("DIR", folder.toString());
    }
    Run run = Run.of(words);
    String said = run.out() + run.err();
    assertFalse(said.matches("(?s).*(Exception|\\bat (java|daubline)[.]|java[.](io|nio|lang|util)).*"), said);
    assertFalse(said.isBlank(), "something is said");
  }

  @Test
  void tablesOfRanksSayHowTheyWereMade() {
    for (String table : new String[] {"ranks", "influence"}) {
      Run run = Run.of("table", STUDY, table, "--draws", "250", "--seed", "7", "--repeats-as-tolerance");
      assertTrue(run.out().contains("250 draws, seed 7; tolerances: the spread of repeats"), run.out());
    }
    String few = Run.of("table", STUDY, "ranks", "--draws", "100", "--seed", "1", "--csv").out();
    assertEquals(few, Run.of("table", STUDY, "ranks", "--draws", "100", "--seed", "1", "--csv").out());
    assertNotEquals(few, Run.of("table", STUDY, "ranks", "--draws", "150", "--seed", "2", "--csv").out(), "the draws and the seed count");
  }
}
