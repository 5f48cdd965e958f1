package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a referee can ask of a comparison, on both studies that come with the tool. */
class ComparisonCommandsTest {

  private static final String DEMONSTRATION = "seeds/aldervale";
  private static final List<String> STUDIES = List.of(DEMONSTRATION, "seeds/open-smelts");
  private static final Pattern VERDICT_WORDS = Pattern.compile("\\b(prove[dns]?|proof|true|match(es|ed)?)\\b");

  @TempDir
  Path temporary;

  private static void saysNothingItMustNot(String text) {
    var found = VERDICT_WORDS.matcher(text.toLowerCase(Locale.ROOT));
    assertFalse(found.find(), () -> found.group());
  }

  @Test
  void everyCommandAnswersOnBothStudiesInPlainWordsAndWidth() {
    for (String study : STUDIES) {
      for (String[] command : new String[][] {{"compare"}, {"compare", "--reasons"}, {"compare", "--against", "site"}, {"compare", "--against", "period"},
          {"compare", "--against", "region"}, {"compare", "--against", "phase"}, {"compare", "--against", "trial"}, {"ranks", "--pairs", "--weights"}, {"excluded"}}) {
        String[] arguments = new String[command.length + 3];
        arguments[0] = command[0];
        arguments[1] = study;
        System.arraycopy(command, 1, arguments, 2, command.length - 1);
        arguments[command.length + 1] = "--draws";
        arguments[command.length + 2] = "100";
        Run run = Run.of(arguments);
        assertEquals(0, run.exit(), String.join(" ", arguments) + run.err() + run.out());
        saysNothingItMustNot(run.out());
        run.out().lines().forEach(line -> assertTrue(line.length() <= 130, line));
      }
    }
  }

  @Test
  void reasonsNameAgreementDifferenceCompatibilityAndTolerance() {
    String out = Run.of("compare", DEMONSTRATION, "--sheet", "Kiln Acre furnace 1", "--trial", "Aldervale 1", "--draws", "200", "--reasons").out();
    String flat = out.replaceAll("\\s+", " ").replace('\u00A0', ' ');
    assertTrue(flat.contains("consistent: Wall thickness agreement"), flat);
    assertTrue(flat.contains(" u, p ") && flat.contains("tolerance 25 mm") && flat.contains("not tested: Slag pit diameter"), flat);
    assertTrue(flat.contains("the claims differ and none is picked, so each was tried"), flat);
  }

  @Test
  void jsonHoldsWhatTheDocumentPromises() throws Exception {
    Set<String> names = names(Run.of("compare", DEMONSTRATION, "--draws", "100", "--json").out());
    for (String name : List.of("format", "study", "digest", "version", "options", "against", "demonstrations", "draws", "seed", "limit", "criteria", "id", "meaning",
        "settings", "value", "standard", "source", "sources", "comparisons", "trial", "sheet", "place", "features", "agreement", "low", "high", "coverage",
        "boundLow", "boundHigh", "bandLow", "bandHigh", "ruledOutBy", "chanceOfSuchAList", "verdict", "reason", "sigmas", "compatibility", "weight", "evidence",
        "found", "trail", "what", "subject", "from")) {
      assertTrue(names.contains(name), name);
    }
    Set<String> ranks = names(Run.of("ranks", DEMONSTRATION, "--draws", "100", "--json").out());
    for (String name : List.of("rankings", "places", "rank", "acceptability", "wins", "centralWeights", "confidence", "untested", "share", "signal", "firstWithout",
        "influence", "equallyGood", "recipes")) {
      assertTrue(ranks.contains(name), name);
    }
  }

  private static Set<String> names(String json) throws Exception {
    saysNothingItMustNot(json);
    Set<String> names = new TreeSet<>();
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      while (parser.nextToken() != null) {
        if (parser.currentName() != null) {
          names.add(parser.currentName());
        }
      }
    }
    return names;
  }

  @Test
  void groupsAreComparedFeatureByFeatureAndTogether() {
    String out = Run.of("compare", DEMONSTRATION, "--against", "site", "--sheet", "Kiln Acre", "--draws", "100").out();
    assertTrue(out.contains("Kiln Acre furnace 1") && out.contains("Kiln Acre furnace 2") && out.contains("Kiln Acre, 2 features together"), out);
    assertFalse(out.contains("Wether Sike"), out);
  }

  @Test
  void demonstrationsAreLeftOutUnlessAskedFor() {
    assertFalse(Run.of("compare", DEMONSTRATION, "--draws", "100").out().contains("Aldervale 6"));
    assertTrue(Run.of("compare", DEMONSTRATION, "--draws", "100", "--with-demonstrations").out().contains("Aldervale 6"));
  }

  @Test
  void repeatsBecomeTheToleranceOnlyWhenSaid() throws Exception {
    Path mine = temporary.resolve("mine");
    try (StudySession session = StudySession.read(Path.of(DEMONSTRATION))) {
      session.saveCopy(mine);
    }
    String study = mine.toString();
    assertTrue(Run.of("repeats", study, "--draws", "100").out().contains("Aldervale 7 against Aldervale 8"));
    String usual = Run.of("compare", study, "--draws", "100").out();
    assertEquals(usual, Run.of("compare", study, "--draws", "100").out());
    String once = Run.of("compare", study, "--draws", "100", "--repeats-as-tolerance").out();
    assertFalse(usual.equals(once));
    Run kept = Run.of("repeats", study, "--draws", "100", "--keep");
    assertTrue(kept.out().contains("kept as tolerance and saved: base_internal_diameter"), kept.out() + kept.err());
    assertEquals(once, Run.of("compare", study, "--draws", "100").out());
    assertTrue(Run.of("compare", study, "--draws", "100", "--trail").out().replaceAll("\\s+", " ").contains("spread of repeats within 1 recipe"));
    assertEquals(1, Run.of("repeats", "seeds/open-smelts").exit());
  }

  @Test
  void settingsAreShownChangedWithAReasonAndRefused() throws Exception {
    String study = temporary.resolve("settings").toString();
    Run.of("new", study, "Settings");
    String key = "criterion.base_internal_diameter.tolerance";
    Run set = Run.of("settings", study, key, "3.5 cm", "--because", "our own repeats");
    assertEquals(0, set.exit(), set.err());
    String shown = Run.of("settings", study).out().replace('\u00A0', ' ');
    assertTrue(shown.contains("35 mm, standard 20 mm") && shown.contains("source: our own repeats"), shown);
    Run refused = Run.of("settings", study, key, "3.5 kg");
    assertEquals(1, refused.exit());
    assertTrue(refused.err().contains("not a number of zero or more in mm"), refused.err());
    assertTrue(Run.of("settings", study, "comparison.alpha", "0.7").err().contains("between 0 and 0.5"));
    assertTrue(Run.of("settings", study, "no.such.key", "1").err().contains("There is no setting"));
    Run.of("settings", study, key, "--standard");
    assertTrue(Run.of("settings", study).out().contains("standard value of every setting"));
  }

  /** What ranks, excluded and repeats say is also in the tables that are published. */
  @Test
  void ranksExclusionsAndRepeatsArePublishedAsTables() {
    String ranks = Run.of("table", DEMONSTRATION, "ranks").out();
    assertTrue(ranks.contains("First at best weights") && ranks.contains("1 of 3"), ranks);
    String influence = Run.of("table", DEMONSTRATION, "influence").out();
    assertTrue(influence.contains("cannot tell them apart") && influence.contains("Bulk slag composition"), influence);
    String excluded = Run.of("excluded", DEMONSTRATION).out();
    String exclusions = Run.of("table", DEMONSTRATION, "exclusions").out();
    assertTrue(excluded.contains("ruled out by Residue classes by mass") && exclusions.contains("Residue classes by mass"), exclusions);
    String repeats = Run.of("table", DEMONSTRATION, "repeats").out();
    assertTrue(repeats.contains("Base internal diameter") && repeats.contains("9.2"), repeats);
    List.of(ranks, influence, exclusions, repeats).forEach(ComparisonCommandsTest::saysNothingItMustNot);
    for (String table : List.of("ranks", "influence", "exclusions", "repeats")) {
      assertEquals(0, Run.of("table", "seeds/open-smelts", table).exit(), table);
    }
  }
}
