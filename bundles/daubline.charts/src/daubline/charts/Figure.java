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
   * Paints it.
   *
   * @param g where to
   * @param area the area in points (1/72 inch)
   * @param palette the colours of paper or of the window's theme
   */
  void paint(Graphics2D g, Rectangle2D area, Palette palette);
}
