package daubline.charts;

import daubline.base.Wording;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.function.UnaryOperator;

/**
 * A figure with caption and lettering in another language. It is laid out anew for the words that are drawn.
 *
 * @param figure the figure as it is made, in English
 * @param wording the words to draw instead
 */
public record WordedFigure(Figure figure, UnaryOperator<String> wording) implements Figure {

  /** A figure in a language; the same where that is English. */
  public static Figure of(Figure figure, Wording wording) {
    return wording.isEnglish() || figure instanceof WordedFigure ? figure : new WordedFigure(figure, wording);
  }

  /** A figure with title, caption and lettering in a language; its id stays. */
  public static NamedFigure of(NamedFigure named, Wording wording) {
    return new NamedFigure(named.id(), wording.apply(named.title()), of(named.figure(), wording));
  }

  @Override
  public String caption() {
    return wording.apply(figure.caption());
  }

  @Override
  public double aspect() {
    return Lettering.in(wording, figure::aspect);
  }

  @Override
  public double height(double width) {
    return Lettering.in(wording, () -> figure.height(width));
  }

  @Override
  public double widthMm() {
    return figure.widthMm();
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Lettering.in(wording, () -> {
      figure.paint(g, area, palette);
      return null;
    });
  }
}
