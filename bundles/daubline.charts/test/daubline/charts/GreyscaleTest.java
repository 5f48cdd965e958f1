package daubline.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;

/** What tells series apart does so without colour: in grey, and with every colour of series the same. */
class GreyscaleTest {

  private static final int SIZE = 64;
  private static final int SCALE = 4;
  private static final Palette ONE_INK = new Palette(Palette.PRINT.paper(), Palette.PRINT.ink(), Palette.PRINT.quiet(), List.of(Palette.PRINT.ink()));
  /** Share of the area that two samples must differ in at least, counted in full steps from white to black. */
  private static final double DIFFERENT = 0.012;

  private static double[] grey(Palette palette, int number, BiConsumer<Pen, Integer> draw) {
    BufferedImage image = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(palette.paper());
    g.fillRect(0, 0, SIZE, SIZE);
    g.scale(SCALE, SCALE);
    draw.accept(new Pen(g, palette), number);
    g.dispose();
    return image.getData().getPixels(0, 0, SIZE, SIZE, (double[]) null);
  }

  private static List<String> alike(Palette palette, int count, BiConsumer<Pen, Integer> draw) {
    List<double[]> samples = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      samples.add(grey(palette, i, draw));
    }
    List<String> alike = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      for (int j = 0; j < i; j++) {
        double difference = 0;
        for (int k = 0; k < samples.get(i).length; k++) {
          difference += Math.abs(samples.get(i)[k] - samples.get(j)[k]) / 255;
        }
        if (difference / (SIZE * SIZE) < DIFFERENT) {
          alike.add(j + " and " + i);
        }
      }
    }
    return alike;
  }

  @Test
  void marksOfEighteenSeriesDifferInShape() {
    assertEquals(List.of(), alike(ONE_INK, 18, (pen, number) -> Mark.series(pen, number, 8, 8)));
  }

  @Test
  void linesOfSixSeriesDifferInDash() {
    assertEquals(List.of(), alike(ONE_INK, 6, (pen, number) -> pen.color(pen.palette().color(number)).stroke(pen.palette().stroke(number, 3)).line(0, 8, 16, 8)));
  }

  @Test
  void areasOfThirtyClassesDifferInGrey() {
    assertEquals(List.of(), alike(Palette.PRINT, 30, (pen, number) -> ResidueShares.Drawing.area(pen, number, new Rectangle2D.Double(1, 1, 14, 14))));
  }
}
