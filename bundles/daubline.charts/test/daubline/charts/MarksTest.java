package daubline.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.base.Trail;
import daubline.model.Identified;
import daubline.session.StudySession;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every figure of a study names its marks, and each mark leads to an entry of the study. */
class MarksTest {

  /** Steps into a trail after which an entry must have been met. */
  private static final int DEEPEST = 12;

  private static List<Spots.Spot> spots(Figure figure) {
    double width = FigureWriter.points(figure.widthMm());
    return Spots.of(figure, new Rectangle2D.Double(0, 0, width, figure.height(width)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"seeds/aldervale", "seeds/open-smelts"})
  void everyMarkOfEveryFigureLeadsToAnEntry(String study) throws Exception {
    List<String> wrong = new ArrayList<>();
    try (StudySession session = StudySession.read(Path.of(study))) {
      StudyResults results = StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 100, 1, 1));
      for (NamedFigure figure : Figures.all().stream().flatMap(s -> s.all(results).stream()).toList()) {
        List<Spots.Spot> spots = spots(figure.figure());
        if (spots.isEmpty()) {
          wrong.add(figure.id() + ": no mark says where it comes from");
        }
        for (Spots.Spot spot : spots) {
          Trail trail = spot.from().get();
          if (trail.what().isBlank() || trail.value().isBlank()) {
            wrong.add(figure.id() + ": a mark without name or value: " + trail.what());
          }
          if (!reaches(trail, session, 0)) {
            wrong.add(figure.id() + ": leads to no entry: " + spot.told());
          }
        }
      }
    }
    assertEquals("", wrong.stream().distinct().limit(60).collect(Collectors.joining("\n")));
  }

  private static boolean reaches(Trail trail, StudySession session, int depth) {
    return session.find(trail.subject(), Identified.class).isPresent() || depth < DEEPEST && trail.from().stream().anyMatch(t -> reaches(t, session, depth + 1));
  }

  /** Marks overlap; the smallest one under the pointer is meant, and a pointer beside a mark still finds it. */
  @Test
  void theSmallestMarkUnderThePointerIsMeant() {
    Spots.Spot large = new Spots.Spot(new Rectangle2D.Double(0, 0, 100, 100), () -> Trail.of("large", "1"));
    Spots.Spot small = new Spots.Spot(new Rectangle2D.Double(40, 40, 4, 4), () -> Trail.of("small", "2"));
    assertEquals("small: 2", Spots.at(List.of(large, small), 41, 41, 3).orElseThrow().told());
    assertEquals("large: 1", Spots.at(List.of(large, small), 60, 60, 3).orElseThrow().told());
    assertEquals("large: 1", Spots.at(List.of(large), 102, 50, 3).orElseThrow().told());
    assertTrue(Spots.at(List.of(large), 104, 50, 3).isEmpty());
  }

  /** A file of a figure is drawn without anybody asking for marks, and is the same for it. */
  @Test
  void marksStandInsideTheirFigure() throws Exception {
    try (StudySession session = StudySession.read(Path.of("seeds/aldervale"))) {
      StudyResults results = StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 100, 1, 1));
      for (NamedFigure figure : Figures.all().stream().flatMap(s -> s.all(results).stream()).toList()) {
        double width = FigureWriter.points(figure.figure().widthMm());
        Rectangle2D area = new Rectangle2D.Double(-6, -6, width + 12, figure.figure().height(width) + 12);
        assertFalse(spots(figure.figure()).stream().anyMatch(s -> !area.contains(s.shape().getBounds2D().getCenterX(), s.shape().getBounds2D().getCenterY())), figure.id());
      }
    }
  }
}
