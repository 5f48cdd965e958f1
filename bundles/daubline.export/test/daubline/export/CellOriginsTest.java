package daubline.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.base.Trail;
import daubline.model.Identified;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number of every table leads to an entry of the study. */
class CellOriginsTest {

  private static final int DEEPEST = 12;

  private static StudyResults results(StudySession session) {
    return StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 100, 1, 1));
  }

  private static boolean reaches(Trail trail, StudySession session, int depth) {
    return session.find(trail.subject(), Identified.class).isPresent() || depth < DEEPEST && trail.from().stream().anyMatch(t -> reaches(t, session, depth + 1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"seeds/aldervale", "seeds/open-smelts"})
  void everyNumberOfEveryTableLeadsToAnEntry(String study) throws Exception {
    List<String> wrong = new ArrayList<>();
    try (StudySession session = StudySession.read(Path.of(study))) {
      StudyResults results = results(session);
      for (TableSpec spec : Tables.all()) {
        Table table = spec.build(results);
        for (int row = 0; row < table.rows().size(); row++) {
          for (int column = 0; column < table.columns().size(); column++) {
            String text = table.rows().get(row).get(column).text();
            boolean number = CellOrigins.isNumber(text) && table.columns().get(column).kind() == Column.Kind.NUMBER;
            if (number && CellOrigins.of(results, table, row, column).filter(t -> reaches(t, session, 0)).isEmpty()) {
              wrong.add(spec.id() + ", " + table.columns().get(column).heading());
            }
          }
        }
      }
    }
    assertEquals("", wrong.stream().distinct().collect(Collectors.joining("\n")));
  }

  /** A yield says its formula and leads to the masses of its own trial, not of another. */
  @Test
  void aYieldSaysItsFormulaAndItsTrial() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      StudyResults results = results(session);
      Table table = Tables.find("yields").orElseThrow().build(results);
      int column = table.columns().stream().map(Column::id).toList().indexOf("bloom_per_ore");
      String trail = CellOrigins.of(results, table, 0, column).orElseThrow().asText();
      assertTrue(trail.contains("mass of the bloom as extracted, slag included, over ore as charged"), trail);
      String trial = table.rows().get(0).get(0).text();
      assertTrue(trail.contains("Trial " + trial) && trail.contains("as typed") && trail.contains("worked out by: Daubline"), trail);
      String other = table.rows().get(1).get(0).text();
      assertTrue(!trail.contains("Trial " + other), trail);
    }
  }
}
