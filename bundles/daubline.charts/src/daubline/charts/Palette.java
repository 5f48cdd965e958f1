package daubline.charts;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.List;

/**
 * The colours of figures. Six earth tones chosen so that the smallest CIEDE2000 distance between two of them stays at
 * 21 in normal and in simulated protan, deutan and tritan vision; each has a dash of its own, so that no meaning rests
 * on colour alone.
 *
 * @param paper background
 * @param ink text, axes and outlines
 * @param quiet grid lines and secondary text
 * @param series the colours of data series in order
 */
public record Palette(Color paper, Color ink, Color quiet, List<Color> series) {

  /** Black on white for print. */
  public static final Palette PRINT = new Palette(Color.WHITE, new Color(0x1A233D), new Color(0x6F6A5E),
      List.of(new Color(0x1A233D), new Color(0x9D6400), new Color(0x1B6659), new Color(0x512005), new Color(0x8871AC), new Color(0x739E7F)));

  /** For a dark window. */
  public static final Palette DARK = new Palette(new Color(0x14171C), new Color(0xE9E3D8), new Color(0x8A8578),
      List.of(new Color(0xE9E3D8), new Color(0xFFC56B), new Color(0x6FC3B2), new Color(0xD98A5B), new Color(0xB9A3DB), new Color(0xA5CFB0)));

  private static final float[][] DASHES = {null, {6, 3}, {6, 2, 1, 2}, {10, 3}, {1.5f, 2}, {2, 5}};

  public Palette {
    series = List.copyOf(series);
  }

  /** The colour of a series by its number from 0. */
  public Color color(int number) {
    return series.get(Math.floorMod(number, series.size()));
  }

  /** The line of a series by its number from 0: solid, then dashes of its own. */
  public BasicStroke stroke(int number, float width) {
    float[] dash = DASHES[Math.floorMod(number, DASHES.length)];
    return dash == null ? new BasicStroke(width) : new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash, 0);
  }
}
