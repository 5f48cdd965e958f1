package daubline.charts;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.function.UnaryOperator;

/**
 * A figure with its names.
 *
 * @param id the name of its files
 * @param title its title
 * @param figure the figure
 */
public record NamedFigure(String id, String title, Figure figure) {

  /** The same with title and caption worded otherwise. */
  public NamedFigure reading(UnaryOperator<String> wording) {
    String caption = wording.apply(figure.caption());
    return new NamedFigure(id, wording.apply(title), caption.equals(figure.caption()) ? figure : new Captioned(figure, caption));
  }

  /** A figure with another caption. */
  private record Captioned(Figure figure, String caption) implements Figure {

    @Override
    public double aspect() {
      return figure.aspect();
    }

    @Override
    public double height(double width) {
      return figure.height(width);
    }

    @Override
    public double widthMm() {
      return figure.widthMm();
    }

    @Override
    public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
      figure.paint(g, area, palette);
    }
  }
}
