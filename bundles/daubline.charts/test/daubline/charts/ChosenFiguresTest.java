package daubline.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Against;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.Target;
import daubline.analysis.TrialData;
import daubline.engine.inference.Comparison;
import daubline.session.StudySession;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was chosen for the trials, drawn by agreement and by what was tried, and sections over each other. */
class ChosenFiguresTest {

  @TempDir
  Path folder;

  private static StudyResults results(String seed, Against against) throws Exception {
    ComparisonOptions usual = ComparisonOptions.standard();
    try (StudySession session = StudySession.read(Path.of("seeds", seed))) {
      return StudyComparison.of(session, new ComparisonOptions(false, List.of(), List.of(), 300, usual.seed(), 2, against, false));
    }
  }

  private StudyResults empty() throws Exception {
    StudySession.create(folder.resolve("empty"), "Empty").close();
    try (StudySession session = StudySession.read(folder.resolve("empty"))) {
      return StudyComparison.of(session, ComparisonOptions.standard());
    }
  }

  /** The colours of a painted figure. */
  private static Set<Color> colours(Figure figure, Palette palette) {
    BufferedImage image = new BufferedImage(480, (int) figure.height(480) + 1, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    figure.paint(g, new Rectangle2D.Double(0, 0, image.getWidth(), image.getHeight()), palette);
    g.dispose();
    Set<Color> colours = new HashSet<>();
    for (int x = 0; x < image.getWidth(); x++) {
      for (int y = 0; y < image.getHeight(); y++) {
        colours.add(new Color(image.getRGB(x, y)));
      }
    }
    return colours;
  }

  @Test
  void variablesAreDrawnByThirdsOfAgreement() throws Exception {
    StudyResults results = results("aldervale", Against.SHEET);
    for (var evidence : results.snapshot().sheets()) {
      Figure figure = ParallelFigure.of(results, evidence.sheet()).orElseThrow();
      assertTrue(figure.caption().contains(evidence.sheet().name()), figure.caption());
      long tested = results.ranked(evidence.sheet().id()).stream().filter(Comparison::isTested).count();
      assertTrue(figure.caption().contains(tested + " trials"), figure.caption());
      Set<Color> colours = colours(figure, Palette.PRINT);
      for (int series : new int[] {1, 2, 3}) {
        assertTrue(colours.contains(Palette.PRINT.color(series)), "each third has its colour: " + series);
      }
    }
    assertTrue(Figures.find("variables-by-agreement").orElseThrow().build(results).isPresent());
    assertFalse(Figures.find("variables-by-agreement").orElseThrow().build(empty()).isPresent());
  }

  @Test
  void whatWasTriedIsDrawnForEverySeedAndNotForAnEmptyStudy() throws Exception {
    for (String seed : List.of("aldervale", "open-smelts")) {
      Figure figure = Figures.find("tried").orElseThrow().build(results(seed, Against.SHEET)).orElseThrow();
      assertTrue(colours(figure, Palette.DARK).contains(Palette.DARK.color(2)), "burnt settings are marked");
    }
    assertFalse(Figures.find("tried").orElseThrow().build(empty()).isPresent());
  }

  @Test
  void sectionsLieOverEachOtherForSheetsAndTrialsButNotForGroups() throws Exception {
    int drawn = 0;
    for (Against against : List.of(Against.SHEET, Against.TRIAL, Against.SITE)) {
      StudyResults results = results("aldervale", against);
      ComparisonOptions options = ComparisonOptions.standard().against(against);
      TrialData trial = results.snapshot().trials().get(0);
      for (Target target : options.targets(results.snapshot())) {
        Optional<Figure> figure = SideBySide.of(trial, target);
        boolean drawable = !target.isGroup() && Profile.found(target.sheet()).isDrawable() && Profile.found(trial.found()).isDrawable();
        assertEquals(drawable, figure.isPresent(), target.heading());
        figure.ifPresent(f -> assertTrue(f.caption().contains(trial.name()) && f.caption().contains(target.sheet().name()) && f.height(400) > 100, f.caption()));
        drawn += figure.isPresent() ? 1 : 0;
      }
    }
    assertTrue(drawn > 5, "drawn: " + drawn);
  }

  @Test
  void theExcavatedFieldLiesUnderTheRatiosOfOxides() throws Exception {
    Figure figure = Figures.find("slag-biplot").orElseThrow().build(results("open-smelts", Against.SHEET)).orElseThrow();
    assertTrue(figure.caption().contains("hatched field"), figure.caption());
  }
}
