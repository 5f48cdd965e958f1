package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables and logger files through the command line; data invented. */
class ImportingCommandsTest {

  @TempDir
  Path folder;

  private Path study;
  private String printed;

  @BeforeEach
  void aStudy() throws Exception {
    study = folder.resolve("study");
    StudySession.create(study, "Test").close();
  }

  private int run(Object... arguments) {
    Run run = Run.of(Arrays.stream(arguments).map(Object::toString).toArray(String[]::new));
    printed = run.out() + run.err();
    return run.exit();
  }

  private Path file(String name, String... lines) throws Exception {
    return Files.writeString(folder.resolve(name), String.join("\n", lines) + "\n");
  }

  @Test
  void trialsAndTheirLoggerFile() throws Exception {
    Path trials = file("trials.csv", "series,name,date,fired:ore_total [kg]", "Season 2031,T1,2031-08-16,12.5");
    String before = Files.readString(study.resolve("study.xmi"));
    assertEquals(0, run("import", study, trials, "--as", "trials"), printed);
    assertTrue(printed.contains("nothing was changed"), printed);
    assertEquals(before, Files.readString(study.resolve("study.xmi")));
    assertEquals(0, run("import", study, trials, "--as", "trials", "--apply"), printed);
    assertEquals(0, run("import", study, trials, "--as", "trials", "--apply"), printed);
    assertTrue(printed.contains("nothing to do"), printed);
    Path log = file("box.csv", "Time;T1", "10:00:00;1472,5", "10:00:01;open", "10:00:02;1490,0");
    assertEquals(0, run("logger", study, log, "--trial", "T1", "--set", "column:T1=temperature_base", "--set", "unit:T1=°F",
        "--set", "offset=-75", "--apply"), printed);
    assertTrue(printed.contains("temperature_base; states: open") && printed.contains("done and saved"), printed);
    try (StudySession session = StudySession.read(study)) {
      assertEquals(-75, session.study().getSeries().get(0).getTrials().get(0).getLoggers().get(0).getOffset());
    }
    assertTrue(Files.exists(study.resolve("logs/box.csv")));
  }

  @Test
  void whatIsWrongEndsWithOneAndChangesNothing() throws Exception {
    String before = Files.readString(study.resolve("study.xmi"));
    Path residues = file("residues.csv", "trial,class,mass [kg]", "T9,Tapped slag,-4");
    assertEquals(1, run("import", study, residues, "--as", "residues", "--apply"));
    assertTrue(printed.contains("value.negative") || printed.contains("negative"), printed);
    assertEquals(1, run("import", study, residues, "--as", "residues", "--set", "colour=red"));
    assertTrue(printed.contains("colour") && !printed.contains("Exception"), printed);
    assertEquals(1, run("logger", study, residues, "--trial", "T9"));
    assertEquals(1, run("template", "trials", residues));
    assertTrue(printed.contains("cannot be written") && !printed.contains("\tat "), printed);
    assertEquals(before, Files.readString(study.resolve("study.xmi")));
  }

  @Test
  void aLaboratorysTableIsRefusedUntilItsGuessesAreSaid() throws Exception {
    assertEquals(0, run("import", study, file("trials.csv", "series,name", "Season 2031,T1"), "--as", "trials", "--apply"), printed);
    String before = Files.readString(study.resolve("study.xmi"));
    Path table = file("lab.csv", "Sample;SiO2 [%];FeO [%];Cr", "T1 tap a;24,1;61,3;120", "T1 tap b;25,1;60,3;115");
    assertEquals(1, run("import", study, table, "--as", "analyses", "--apply"), printed);
    for (String said : new String[] {"to confirm units      Cr: mg/kg", "--set \"unit:Cr=…\"", "to confirm iron       all: all iron as FeO", "to confirm belonging  row 2, T1 tap a: trial T1",
        "to confirm replicates all: kept (T1 tap: 2", "usual      columns    Sample: name", "nothing was changed"}) {
      assertTrue(printed.contains(said), said + " is not in\n" + printed);
    }
    assertEquals(before, Files.readString(study.resolve("study.xmi")));
    assertEquals(1, run("import", study, table, "--as", "analyses", "--apply", "--confirm", "belonging,units", "--replicates", "kept"), printed);
    assertEquals(1, run("import", study, table, "--as", "analyses", "--apply", "--confirm", "all"), printed);
    assertEquals(0, run("import", study, table, "--as", "analyses", "--apply", "--confirm", "belonging,units", "--replicates", "kept", "--iron-basis", "all iron as FeO"), printed);
    assertTrue(printed.contains("done and saved"), printed);
    try (StudySession session = StudySession.read(study)) {
      var analyses = session.study().getSeries().get(0).getTrials().get(0).getAnalyses();
      assertEquals("T1 tap", analyses.get(1).getReplicate());
      assertEquals("lab/lab.csv", analyses.get(1).getFile().getPath());
    }
  }
}
