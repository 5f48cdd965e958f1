package daubline.validation;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.charts.Axis;
import daubline.charts.Plot;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ValidationTest {

  @TempDir
  Path temporary;

  /** A section that a colleague might add: a sentence, a table and a plot. */
  private static final class Sample implements Section {
    private final String plot;

    Sample(String plot) {
      this.plot = plot;
    }

    @Override
    public String title() {
      return "Sample";
    }

    @Override
    public void write(Page page) {
      page.text("A sentence.").table(List.of("a", "b"), List.of(List.of("1", "x|y")));
      List<Plot.Point> points = List.of(Plot.Point.of(1, 2, 1, 3, "one"), Plot.Point.of(10, 20));
      page.figure(plot, Plot.of("Caption.", Axis.around("x", 1, 10).onLogarithms(), Axis.around("y", 2, 20),
          List.of(new Plot.Series("points", Plot.Style.MARKS, points), new Plot.Series("line", Plot.Style.LINE, points))));
    }
  }

  @Test
  void writesTheSameBytesTwice() throws Exception {
    List<Section> sections = List.of(new WhereChecked(), new Sample("sample-plot"));
    List<Path> first = Validation.write(sections, temporary.resolve("one"));
    List<Path> second = Validation.write(sections, temporary.resolve("two"));
    assertEquals(2, first.size());
    for (int i = 0; i < first.size(); i++) {
      assertArrayEquals(Files.readAllBytes(first.get(i)), Files.readAllBytes(second.get(i)));
    }
    String page = Files.readString(first.get(0));
    assertTrue(page.contains("## Sample\n") && page.contains("| 1 | x\\|y |") && page.contains("](validation/sample-plot.svg)"), page);
  }

  @Test
  void leavesNoPlotOfAnEarlierRun() throws Exception {
    Validation.write(List.of(new Sample("old")), temporary);
    Validation.write(List.of(new Sample("new")), temporary);
    assertTrue(Files.exists(temporary.resolve("validation/new.svg")));
    assertFalse(Files.exists(temporary.resolve("validation/old.svg")));
  }

  @Test
  void refusesTwoPlotsOfOneName() {
    assertThrows(IllegalArgumentException.class, () -> Validation.write(List.of(new Sample("same"), new Sample("same")), temporary));
  }
}
