package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.model.ModelFactory;
import daubline.model.ResidueMass;
import daubline.model.Trial;
import daubline.session.BlindRecordings;
import daubline.session.StudySession;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was recorded blind is listed, said by its trail and deposited. The demonstration study is invented. */
class BlindCommandTest {

  @TempDir
  Path folder;

  @Test
  void listsWhoRecordedWhatAndKeepsTrialsUnnamedWhileItIsOn() throws Exception {
    Path study = folder.resolve("study");
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      session.saveCopy(study);
    }
    Run none = Run.of("blind", study.toString());
    assertTrue(none.exit() == 0 && none.out().contains("nothing was recorded blind") && none.out().contains("stated as recorded blind"), none.out() + none.err());
    assertEquals(1, Run.of("blind", study.toString(), "--codes").exit());
    String claim;
    try (StudySession session = StudySession.open(study)) {
      session.hidesWhileBlind();
      BlindRecordings.begin(session, "begin", "Ann Tester", Instant.parse("2031-10-01T08:00:00Z"));
      Trial trial = session.study().getSeries().get(0).getTrials().get(0);
      var made = ModelFactory.eINSTANCE.createClaim();
      made.setVariable("standing_height");
      made.setTyped("333");
      made.setUnit("mm");
      made.setValue(0.333);
      session.edit("claim", () -> trial.getRemains().getClaims().add(made));
      claim = made.getId();
      session.save();
    }
    Run on = Run.of("blind", study.toString());
    assertTrue(on.out().contains("Ann Tester") && on.out().contains("still on"), on.out());
    assertFalse(on.out().contains("Aldervale"), on.out());
    Run codes = Run.of("blind", study.toString(), "--codes");
    assertTrue(codes.exit() == 0 && codes.out().contains("Aldervale 1"), codes.out());
    try (StudySession session = StudySession.open(study)) {
      BlindRecordings.end(session, "end", "Bo Tester", Instant.parse("2031-10-01T12:00:00Z"));
      session.save();
    }
    String listed = Run.of("blind", study.toString()).out();
    assertTrue(listed.contains("2031-10-01T12:00:00Z") && listed.contains("Bo Tester") && listed.contains("Aldervale 1"), listed);
    Run where = Run.of("where", study.toString(), claim);
    assertTrue(where.out().contains("recorded blind by: Ann Tester from 2031-10-01T08:00:00Z to 2031-10-01T12:00:00Z, ended by Bo Tester")
        || where.out().replaceAll("\\s+", " ").contains("recorded blind by"), where.out());
  }

  /** Every command that takes a study either shows nothing of run and evidence or says who records blind and how to end it. */
  @Test
  void commandsThatWouldTellDoNotRunWhileItIsOn() throws Exception {
    Path study = folder.resolve("study");
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      session.saveCopy(study);
    }
    String at = study.toString();
    assertEquals(1, Run.of("blind", at, "--begin").exit(), "somebody is to be named");
    assertTrue(Run.of("blind", at, "--begin", "--by", "Ann Tester").out().contains("still on"));
    assertEquals(1, Run.of("blind", at, "--begin", "--by", "Bo").exit());
    byte[] before = Files.readAllBytes(study.resolve("study.xmi"));
    List<List<String>> telling = List.of(List.of("check", at), List.of("compare", at), List.of("ranks", at), List.of("excluded", at), List.of("repeats", at),
        List.of("table", at, "products"), List.of("where", at, "bloom_mass"), List.of("effects", at, "--on", "bloom_mass"), List.of("next", at), List.of("reconstructions", at),
        List.of("predict", at), List.of("balance", at), List.of("lots", at), List.of("visits", at), List.of("labels", at, "--out", folder.resolve("l.pdf").toString()),
        List.of("sheets", at, "--out", folder.resolve("s.pdf").toString()),
        List.of("publish", at, "--to", folder.resolve("p").toString()), List.of("merge", at, "seeds/aldervale"),
        List.of("arc", "--chord", "380 mm", "--rise", "60 mm", "--into", at, "--sheet", "x"));
    for (List<String> command : telling) {
      Run run = Run.of(command.toArray(String[]::new));
      String said = (run.out() + run.err()).replaceAll("\\s+", " ");
      assertEquals(1, run.exit(), command + said);
      assertTrue(said.contains("Ann Tester records blind since") && said.contains("--end --by NAME"), command + said);
      assertFalse(said.contains("Aldervale 1"), command + said);
    }
    for (List<String> command : List.of(List.of("settings", at), List.of("words", at), List.of("variables", "--of", at), List.of("citations", at, folder.resolve("c.bib").toString()), List.of("backup", at))) {
      Run run = Run.of(command.toArray(String[]::new));
      assertEquals(0, run.exit(), command + run.err());
      assertFalse(run.out().contains("Aldervale 1"), command + run.out());
    }
    assertArrayEquals(before, Files.readAllBytes(study.resolve("study.xmi")));
    assertTrue(Run.of("blind", at, "--end", "--by", "Bo Tester").out().contains("Bo Tester"));
    assertEquals(1, Run.of("blind", at, "--end", "--by", "Bo Tester").exit());
    assertTrue(Run.of("compare", at).out().contains("Aldervale 1"));
  }

  @Test
  void theDepositCarriesTheMark() throws Exception {
    Path study = folder.resolve("study");
    try (StudySession session = StudySession.create(study, "Study")) {
      session.hidesWhileBlind();
      session.edit("series", () -> {
        var series = ModelFactory.eINSTANCE.createSeries();
        Trial trial = ModelFactory.eINSTANCE.createTrial();
        trial.setName("T 1");
        series.getTrials().add(trial);
        session.study().getSeries().add(series);
      });
      BlindRecordings.begin(session, "begin", "Ann Tester", Instant.parse("2031-10-01T08:00:00Z"));
      session.edit("residue", () -> {
        Trial trial = session.study().getSeries().get(0).getTrials().get(0);
        trial.setRemains(ModelFactory.eINSTANCE.createRemainsSheet());
        ResidueMass mass = ModelFactory.eINSTANCE.createResidueMass();
        mass.setTyped("1");
        mass.setValue(1.0);
        trial.getRemains().getResidues().add(mass);
      });
      BlindRecordings.end(session, "end", "Ann Tester", Instant.parse("2031-10-01T12:00:00Z"));
      session.save();
    }
    Path out = folder.resolve("out");
    Run published = Run.of("publish", study.toString(), "--draws", "200", "--formats", "svg", "--year", "2031", "--to", out.toString());
    StringBuilder all = new StringBuilder();
    try (var files = Files.walk(out)) {
      for (Path csv : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
        String text = Files.readString(csv);
        if (text.contains("blindly") && text.contains("blindrecording-")) {
          all.append(csv.getFileName()).append(' ');
        }
      }
    }
    assertTrue(all.toString().contains("residue"), all + published.out() + published.err());
  }
}
