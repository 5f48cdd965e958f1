package daubline.charts;

import daubline.analysis.design.Calendar;
import daubline.base.Trail;
import daubline.engine.design.stock.Timetable;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** When furnaces are built, dried, burnt and mended, and how many people each day has at work. */
public final class TimetableFigure extends RowFigure {

  private static final double ROW = 16;
  private static final double HEAD = 14;
  private static final double LOAD = 46;
  private static final double LEFT = 58;
  /** The kinds of work and their hatches; a burn is solid. */
  private static final List<String> KINDS = List.of("burn", "build", "mend", "dry");

  private final Timetable table;
  private final Optional<Calendar> calendar;
  private final int furnaces;
  private final int days;

  /** The figure of a timetable, with dates when the calendar is known. */
  public TimetableFigure(Timetable table, Optional<Calendar> calendar) {
    super("Timetable: solid, burns with the number of the trial in the order of the plan; hatched, building and mending; open, drying, which wants "
        + "nobody. Below, people at work each day. " + table.personDays() + " days of work of one person in all; the last burn is done on day " + table.days() + ".",
        HEAD + ROW * (1 + table.bars().stream().mapToInt(Timetable.Bar::furnace).max().orElse(0)) + LOAD + 40);
    this.table = table;
    this.calendar = calendar;
    furnaces = 1 + table.bars().stream().mapToInt(Timetable.Bar::furnace).max().orElse(0);
    days = Math.max(1, Math.max(table.people().length, table.days()));
  }

  @Override
  public void paint(Graphics2D g, Rectangle2D area, Palette palette) {
    Pen pen = new Pen(g, palette);
    double width = area.getWidth() - LEFT - 6;
    double left = area.getX() + LEFT;
    double top = area.getY() + HEAD;
    double bottom = top + furnaces * ROW;
    key(pen, left, area.getY() + 8);
    dates(pen, left, top, width, bottom + LOAD);
    for (int f = 0; f < furnaces; f++) {
      pen.color(palette.ink()).text("furnace " + (f + 1), left - 5, top + f * ROW + ROW * 0.65, Pen.NORMAL, Pen.At.RIGHT);
    }
    for (Timetable.Bar bar : table.bars()) {
      bar(pen, bar, new Rectangle2D.Double(left + bar.start() * width / days, top + bar.furnace() * ROW + 2.5, Math.max(1, bar.length() * width / days), ROW - 5));
    }
    load(pen, left, bottom + 8, width, LOAD - 12);
  }

  private static void key(Pen pen, double x, double y) {
    double at = x;
    for (String kind : KINDS) {
      area(pen, kind, new Rectangle2D.Double(at, y - 6, 12, 7));
      pen.color(pen.palette().ink()).text(kind, at + 15, y, Pen.SMALL, Pen.At.LEFT);
      at += 52;
    }
  }

  private static void area(Pen pen, String kind, Rectangle2D area) {
    pen.color(kind.equals("burn") ? pen.palette().ink() : pen.palette().paper()).fill(area);
    pen.color(pen.palette().ink()).line(0.4f);
    switch (kind) {
      case "build" -> pen.hatch(area, 1, 3);
      case "mend" -> pen.hatch(area, 2, 2.2);
      default -> {
        // burns are solid, drying is open
      }
    }
    pen.draw(area);
  }

  private void bar(Pen pen, Timetable.Bar bar, Rectangle2D area) {
    String days = bar.length() + (bar.length() == 1 ? " day" : " days") + " from " + calendar.map(c -> c.date(bar.start()).toString()).orElse("day " + (bar.start() + 1));
    pen.spot(area, () -> Trail.reckoned(bar.what() + ", furnace " + (bar.furnace() + 1) + ", trial " + (bar.trial() + 1), days, "timetable of the plan: people, days and furnaces stated for the series", List.of()));
    area(pen, bar.what(), area);
    if (bar.what().equals("burn")) {
      String number = Integer.toString(bar.trial() + 1);
      boolean fits = area.getWidth() > Pen.width(number, Pen.SMALL) + 2;
      pen.color(fits ? pen.palette().paper() : pen.palette().ink()).text(number, fits ? area.getCenterX() : area.getMaxX() + 2, area.getMaxY() - 2.4, Pen.SMALL,
          fits ? Pen.At.CENTRE : Pen.At.LEFT);
    }
  }

  private void dates(Pen pen, double left, double top, double width, double bottom) {
    for (double tick : Axes.ticks(0, days)) {
      double x = left + tick * width / days;
      pen.color(pen.palette().quiet()).line(0.25f).line(x, top, x, bottom);
      pen.color(pen.palette().ink()).text(calendar.map(c -> c.date((int) tick).toString().substring(5)).orElse(Integer.toString((int) tick)), x, bottom + 10, Pen.SMALL, Pen.At.CENTRE);
    }
    pen.text(calendar.map(c -> "month and day, from " + c.first()).orElse("days from the first"), left + width / 2, bottom + 22, Pen.NORMAL, Pen.At.CENTRE);
  }

  private void load(Pen pen, double left, double top, double width, double height) {
    int most = Math.max(1, Arrays.stream(table.people()).max().orElse(1));
    pen.color(pen.palette().ink()).line(0.4f);
    for (int d = 0; d < table.people().length; d++) {
      double h = height * table.people()[d] / most;
      int day = d;
      pen.spot(new Rectangle2D.Double(left + d * width / days, top, width / days, height), () -> Trail.reckoned("People at work on " + calendar.map(c -> c.date(day).toString()).orElse("day " + (day + 1)),
          Integer.toString(table.people()[day]), "timetable of the plan", List.of()));
      if (h > 0) {
        pen.fill(new Rectangle2D.Double(left + d * width / days, top + height - h, Math.max(0.7, width / days - 0.4), h));
      }
    }
    pen.line(left, top + height, left + width, top + height);
    pen.text(most + " people", left - 5, top + 6, Pen.SMALL, Pen.At.RIGHT);
    pen.text("at work", left - 5, top + 15, Pen.SMALL, Pen.At.RIGHT);
  }
}
