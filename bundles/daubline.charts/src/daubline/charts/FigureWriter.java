package daubline.charts;

import java.io.IOException;
import java.io.OutputStream;

/** Writes a figure as a file of one format. The same figure gives the same bytes. */
public interface FigureWriter {

  /** Millimetres in an inch. */
  double MM_PER_INCH = 25.4;

  /** Points in an inch. */
  double POINTS_PER_INCH = 72;

  /** The ending of file names, without the dot. */
  String ending();

  /**
   * Writes a figure.
   *
   * @param figure what to write
   * @param title its title, for programs that read files aloud
   * @param widthMm the width in millimetres
   * @param out where to; not closed
   */
  void write(Figure figure, String title, double widthMm, OutputStream out) throws IOException;

  /** A width in millimetres as points. */
  public static double points(double mm) {
    return mm / MM_PER_INCH * POINTS_PER_INCH;
  }
}
