package daubline.charts;

import daubline.analysis.design.RunSheet;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A run sheet as two black A4 pages: what is planned with room for what was done, and the log. Lettering of eleven points,
 * so that it can be read at arm's length and filled in with gloves.
 */
public final class RunSheetPage implements Figure {

  /** Millimetres of an A4 page. */
  public static final double WIDTH_MM = 210;
  private static final double HEIGHT_MM = 297;
  private static final double TEXT = 11;
  private static final double LINE = 20;
  private static final double MARGIN = 40;
  private static final double LOG_LINE = 24;
  private static final List<String> LOG = List.of("clock", "ore kg", "charcoal kg", "air", "what was seen or done");
  private static final double[] LOG_WIDTH = {0.11, 0.11, 0.14, 0.11, 0.53};

  private final RunSheet sheet;
  private final boolean log;

  private RunSheetPage(RunSheet sheet, boolean log) {
    this.sheet = sheet;
    this.log = log;
  }

  /** The two pages of a sheet. */
  public static List<Figure> of(RunSheet sheet) {
    return List.of(new RunSheetPage(sheet, false), new RunSheetPage(sheet, true));
  }

  @Override
  public String caption() {
    return "Run sheet of " + sheet.trial();
  }

  @Override
  public double aspect() {
    return HEIGHT_MM / WIDTH_MM;
  }

  @Override
  public double widthMm() {
    return WIDTH_MM;
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    new Page(g, area).paint();
  }

  /** Draws one page from top to bottom. */
  private final class Page {
    private final Pen pen;
    private final double left;
    private final double right;
    private final double bottom;
    private double y;

    Page(Graphics2D g, Rectangle2D area) {
      pen = new Pen(g, new Palette(Color.WHITE, Color.BLACK, Color.BLACK, List.of(Color.BLACK)));
      left = area.getX() + MARGIN;
      right = area.getMaxX() - MARGIN;
      bottom = area.getMaxY() - MARGIN;
      y = area.getY() + MARGIN + 6;
    }

    void paint() {
      head();
      if (log) {
        log();
      } else {
        plan();
      }
      pen.text(Pen.fit(sheet.plan() + (log ? " Page 2 of 2." : " Page 1 of 2."), 9, right - left), left, bottom + 16, 9, Pen.At.LEFT);
    }

    private void head() {
      pen.text(Pen.fit(sheet.trial(), 18, right - left - 120), left, y + 6, 18, Pen.At.LEFT);
      pen.text(sheet.place() > 0 ? "trial " + sheet.place() + " of " + sheet.of() : "", right, y + 6, 14, Pen.At.RIGHT);
      y += 26;
      pen.text(Pen.fit(sheet.series() + (sheet.furnace().isBlank() ? "" : " · " + sheet.furnace()), TEXT, right - left), left, y, TEXT, Pen.At.LEFT);
      y += LINE;
      pen.text("date planned: " + (sheet.on().isBlank() ? "–" : sheet.on()), left, y, TEXT, Pen.At.LEFT);
      blank("burnt on", left + 190, left + 330);
      blank("filled in by", left + 345, right);
      y += 10;
      pen.line(1.2f).line(left, y, right, y);
      y += LINE;
    }

    private void blank(String what, double from, double to) {
      pen.text(what, from, y, TEXT, Pen.At.LEFT);
      pen.line(0.5f).line(from + Pen.width(what, TEXT) + 4, y + 2, to, y + 2);
    }

    private void plan() {
      table("what is varied", sheet.settings(), "planned", "as built or as fired", 30);
      table("what else is planned", sheet.others(), "planned", "as built or as fired", 8);
      table("who", sheet.roles(), "name", "from – until", 9);
      paragraph("stop when", sheet.stop().isEmpty() ? List.of("no stop criteria were agreed: agree them before lighting, and write them here", "") : sheet.stop());
      paragraph("mind (a memory aid, not advice: local rules and a competent person on site decide)", sheet.cautions());
      rules("done otherwise than planned, and why");
    }

    private void heading(String text) {
      pen.text(text, left, y, 12, Pen.At.LEFT);
      y += 6;
      pen.line(0.8f).line(left, y, right, y);
      y += LINE - 4;
    }

    private void table(String title, List<RunSheet.Line> lines, String second, String third, int most) {
      if (lines.isEmpty()) {
        return;
      }
      double two = left + (right - left) * 0.42;
      double three = left + (right - left) * 0.68;
      pen.text(second, two, y, TEXT, Pen.At.LEFT).text(third, three, y, TEXT, Pen.At.LEFT);
      heading(title);
      for (RunSheet.Line line : lines.subList(0, Math.min(most, lines.size()))) {
        if (y > bottom - LINE) {
          return;
        }
        pen.text(Pen.fit(line.what(), TEXT, two - left - 6), left, y, TEXT, Pen.At.LEFT).text(Pen.fit(line.planned(), TEXT, three - two - 6), two, y, TEXT, Pen.At.LEFT);
        pen.line(0.4f).line(three, y + 3, right, y + 3);
        y += LINE;
      }
      y += 6;
    }

    private void paragraph(String title, List<String> sentences) {
      if (sentences.isEmpty() || y > bottom - 3 * LINE) {
        return;
      }
      heading(title);
      for (String sentence : sentences) {
        List<String> lines = Pen.wrap("– " + sentence, TEXT, right - left);
        for (String line : lines) {
          if (y > bottom) {
            return;
          }
          pen.text(line, left, y, TEXT, Pen.At.LEFT);
          y += 14;
        }
      }
      y += 12;
    }

    private void rules(String title) {
      if (y < bottom - 2 * LINE) {
        heading(title);
        while (y < bottom) {
          pen.line(0.4f).line(left, y, right, y);
          y += LINE;
        }
      }
    }

    private void log() {
      List<Double> edges = new ArrayList<>(List.of(left));
      double at = left;
      for (int c = 0; c < LOG.size(); c++) {
        pen.text(LOG.get(c), at + 3, y, TEXT, Pen.At.LEFT);
        at += LOG_WIDTH[c] * (right - left);
        edges.add(at);
      }
      double top = y - 14;
      y += 8;
      pen.graphics().setStroke(new BasicStroke(0.5f));
      int row = 1;
      while (y + LOG_LINE < bottom) {
        pen.line(left, y, right, y);
        y += LOG_LINE;
        pen.text(Integer.toString(row++), left - 4, y - 7, 9, Pen.At.RIGHT);
      }
      pen.line(left, y, right, y);
      for (double edge : edges) {
        pen.line(edge, top, edge, y);
      }
    }
  }
}
