package daubline.engine.design;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ModelTest {

  private static final Factor ORE = Factor.category("ore", "ore", "bog", "rock", "sand");
  private static final Factor HEIGHT = Factor.measured("h", "height", "m", 0.6, 1.2).changing(Change.EACH_FURNACE);

  @Test
  void spreadsCategoriesSoThatTheySumToZero() {
    Model model = Model.quadratic(List.of(ORE, HEIGHT));
    assertEquals(List.of("mean", "ore", "height", "ore × height", "height²"), model.terms().stream().map(t -> t.name(model.factors())).toList());
    assertArrayEquals(new double[] {1, 1, 0, 0.5, 0.5, 0, 0.25}, model.row(new double[] {0, 0.5}));
    assertArrayEquals(new double[] {1, -1, -1, 0.5, -0.5, -0.5, 0.25}, model.row(new double[] {2, 0.5}));
    assertEquals("ore × height [rock]", model.name(5));
    assertThrows(IllegalArgumentException.class, () -> new Model(List.of(ORE), List.of(Term.of(0, 0))));
  }

  @Test
  void codesAndShowsSettings() {
    assertEquals(0.9, HEIGHT.decode(0), 1e-12);
    assertEquals(-1, HEIGHT.code(0.6), 1e-12);
    assertEquals("0.75\u00A0m", HEIGHT.show(-0.5));
    assertEquals("sand", ORE.show(2));
    assertThrows(IllegalArgumentException.class, () -> Factor.measured("x", "x", "", 2, 1));
    assertThrows(IllegalArgumentException.class, () -> HEIGHT.on(0.5));
  }

  @Test
  void rulesForbidAndReadAsSentences() {
    Rule rule = Rule.never("would choke", Condition.is("ore", "sand"), Condition.atLeast("h", 1.0));
    Space space = new Space(List.of(ORE, HEIGHT), List.of(rule));
    assertEquals("Never ore is sand and height at least 1 m: would choke", rule.text(space.factors()));
    assertFalse(space.allows(new double[] {2, 0.5}));
    assertTrue(space.allows(new double[] {1, 0.5}));
    assertTrue(space.region().stream().allMatch(space::allows));
    assertThrows(IllegalArgumentException.class, () -> new Space(List.of(ORE), List.of(rule)));
    Space nothing = new Space(List.of(ORE), List.of(Rule.judged("all", s -> true)));
    assertEquals("design.nothing-allowed", nothing.findings().get(0).code());
  }
}
