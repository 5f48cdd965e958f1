package daubline.analysis;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.criteria.Repeats;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What has been tried of a variable, and settings kept several at a time. */
class TriedVariableTest {

  @TempDir
  Path folder;

  private static TriedVariable tried(Variable variable, Map<String, Double> numbers, List<Double> planned) {
    return new TriedVariable(variable, numbers, Map.of(), planned, List.of(), new double[0]);
  }

  @Test
  void theWidestStretchLiesBetweenTriedSettingsOrAtAnEndOfTheScale() {
    Variable height = Variables.standard().get("furnace_height");
    double low = height.plausibleLow();
    double high = height.plausibleHigh();
    assertTrue(low < high, "the catalogue states a plausible range");
    double a = low + 0.1 * (high - low);
    double b = low + 0.7 * (high - low);
    TriedVariable between = tried(height, Map.of("1", a, "2", b, "3", b), List.of(low + 0.5 * (high - low)));
    assertEquals(List.of(a, b), between.settings(), "the same setting counts once");
    assertArrayEquals(new double[] {a, b}, between.widestGap(), 1e-12, "a planned setting is not tried yet");
    assertArrayEquals(new double[] {a, high}, tried(height, Map.of("1", a), List.of()).widestGap(), 1e-12);
    assertArrayEquals(new double[] {low, high}, tried(height, Map.of(), List.of()).widestGap(), 1e-12);
    assertTrue(tried(height, Map.of(), List.of()).isByFactors(), "the catalogue's range spans a factor of twelve");
    assertEquals(0.5, tried(height, Map.of(), List.of()).share(Math.sqrt(low * high)), 1e-12, "the geometric mean stands in the middle");
    assertEquals(2 * high, tried(height, Map.of("1", 2 * high), List.of()).scale()[1], 1e-12, "the scale holds the implausible too");
  }

  @Test
  void wordsThatNobodyTriedAreNamedInTheirOrder() {
    Variable variable = Variables.standard().all().stream().filter(v -> v.type() == ValueType.CATEGORY && v.isAt(Variable.Place.PLANNED) && v.words().size() > 2)
        .findFirst().orElseThrow();
    TriedVariable tried = new TriedVariable(variable, Map.of(), Map.of("1", variable.words().get(1)), List.of(), List.of(), new double[0]);
    List<String> expected = new java.util.ArrayList<>(variable.words());
    expected.remove(1);
    assertEquals(expected, tried.untriedWords());
  }

  @Test
  void plannedTrialsAreNotTriedAndUnknownsComeFirst() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds", "aldervale"))) {
      StudySnapshot snapshot = Snapshots.of(session);
      List<TriedVariable> all = TriedVariable.of(snapshot);
      long burnt = snapshot.trials().stream().filter(t -> t.isCompared(true) || t.excluded()).count();
      assertTrue(all.stream().allMatch(t -> t.numbers().size() + t.words().size() <= burnt));
      int firstKnown = (int) all.stream().filter(t -> !t.isEvidenced()).count();
      assertTrue(firstKnown > 0 && firstKnown < all.size(), "some are evidenced and some are not");
      assertFalse(all.subList(0, firstKnown).stream().anyMatch(TriedVariable::isEvidenced));
      TriedVariable known = all.get(firstKnown);
      assertTrue(known.evidence()[0] <= known.evidence()[1] && known.scale()[0] <= known.evidence()[0], known.variable().id());
    }
  }

  @Test
  void severalSettingsAreKeptAsOneChangeOrNotAtAll() throws Exception {
    try (StudySession session = StudySession.create(folder.resolve("s"), "Settings")) {
      SettingEditor editor = new SettingEditor(session);
      String before = session.digest();
      String a = "criterion.base_internal_diameter.tolerance";
      assertThrows(IllegalArgumentException.class, () -> editor.set("Both", List.of(new SettingEditor.Entry(a, "3 cm", ""), new SettingEditor.Entry("weight.group.fire", "much", ""))));
      assertEquals(before, session.digest());
      StudyRepeats.keep(editor, "Both", List.of(new Repeats("base_internal_diameter", 0.01, 2, 0.006, 0.03, 1), new Repeats("wall_thickness", 0.005, 2, 0.003, 0.02, 1)));
      assertEquals(0.01 * 4.302653 / 1.959964, Double.parseDouble(editor.kept(a).orElseThrow().value()), 1e-7, "Student's 97.5 % point for 2 degrees of freedom, printed tables");
      assertTrue(editor.kept("criterion.wall_thickness.tolerance").orElseThrow().source().startsWith("spread of repeats"));
      editor.source("Source", a, "our bases");
      assertEquals("our bases", editor.kept(a).orElseThrow().source());
      session.undo();
      session.undo();
      assertEquals(before, session.digest(), "one change for both");
    }
  }
}
