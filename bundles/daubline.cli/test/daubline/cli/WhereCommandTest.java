package daubline.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The command says where values, entries, cells of tables and marks of figures come from, in any study. */
class WhereCommandTest {

  private static final String DEMO = "seeds/aldervale";
  private static final String PUBLISHED = "seeds/open-smelts";

  private static String out(String... arguments) {
    Run run = Run.of(arguments);
    assertEquals(0, run.exit(), run.out() + run.err());
    return run.out();
  }

  @Test
  void aVariableIsToldInEveryPlaceWithItsSource() {
    String said = out("where", PUBLISHED, "base_internal_diameter");
    assertTrue(said.contains("as typed:") && said.contains("citation:"), said);
  }

  @Test
  void aRowAndColumnOfATableAreToldWithTheFormula() {
    String said = out("where", DEMO, "yields", "--row", "1", "--column", "bloom_per_ore");
    assertTrue(said.startsWith("Yields · row 1 · Bloom ÷ ore"), said);
    assertTrue(said.contains("worked out as: Bloom ÷ ore: mass of the bloom as extracted") && said.contains("Values as fired") && said.contains("as typed:"), said);
    assertEquals(1, said.lines().filter(l -> !l.startsWith(" ")).count(), "one cell");
  }

  @Test
  void marksOfAFigureAreToldInAStudyThatIsNotTheDemonstration() {
    String said = out("where", PUBLISHED, "slag-ternary", "--holding", "FeO");
    assertTrue(said.contains("Shares of three oxides: FeO") && said.contains("citation:"), said);
    String row = out("where", DEMO, "ranking", "--row", "1", "--depth", "1");
    assertTrue(row.contains("more below") && row.lines().allMatch(l -> l.indexOf(l.strip()) <= 6), row);
  }

  @Test
  void anyEntryIsFoundByItsId() {
    String lot = out("where", DEMO, "trial-g02");
    assertTrue(lot.startsWith("Trial") && lot.contains("recorded by") || lot.contains("led by"), lot);
  }

  @Test
  void whatIsNotThereIsSaid() {
    Run nothing = Run.of("where", DEMO, "no_such_thing");
    assertEquals(1, nothing.exit());
    assertTrue(nothing.out().contains("no value, variable, entry, table or figure “no_such_thing”"), nothing.out());
    Run row = Run.of("where", DEMO, "yields", "--row", "999");
    assertEquals(1, row.exit());
    assertFalse(row.out().isBlank());
    assertTrue(row.out().contains("nothing of it is as asked"), row.out());
  }
}
