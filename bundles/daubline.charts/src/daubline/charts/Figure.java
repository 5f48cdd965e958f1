package daubline.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;

/** A figure ready to be painted at any size. */
public interface Figure {

  /** The caption, in full sentences. */
  String caption();

  /** Height over width at which it looks best. */
  double aspect();

  /**
   * The height it wants at a width, both in points. Lettering keeps its size when a figure is made narrower, so figures
   * made of rows keep their height.
   */
  default double height(double width) {
    return width * aspect();
  }

  /** The width in millimetres at which it is printed unless somebody chooses another. */
  default double widthMm() {
    return 140;
  }

  /**
   * Paints it.
   *
   * @param g where to
   * @param area the area in points (1/72 inch)
   * @param palette the colours of paper or of the window's theme
   */
  void paint(Graphics2D g, Rectangle2D area, Palette palette);
}
