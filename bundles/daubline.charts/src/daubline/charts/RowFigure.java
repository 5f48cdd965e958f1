package daubline.charts;

/** A figure of rows of text height: as high as its rows whatever its width. */
abstract class RowFigure implements Figure {

  private static final double DESIGN_WIDTH = FigureWriter.points(170);

  private final String caption;
  private final double height;

  /**
   * A figure of rows.
   *
   * @param caption its caption
   * @param height its height in points
   */
  RowFigure(String caption, double height) {
    this.caption = caption;
    this.height = height;
  }

  @Override
  public final String caption() {
    return caption;
  }

  @Override
  public final double aspect() {
    return height / DESIGN_WIDTH;
  }

  @Override
  public final double height(double width) {
    return height;
  }

  @Override
  public final double widthMm() {
    return 170;
  }
}
