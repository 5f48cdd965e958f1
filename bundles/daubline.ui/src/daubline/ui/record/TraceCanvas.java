package daubline.ui.record;

import daubline.base.Printed;
import daubline.intake.logger.ChannelSeries;
import daubline.intake.logger.Envelope;
import daubline.intake.logger.Gap;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * Draws a logger's channels in strips, one a unit, told apart by dashes and names; gaps stay open and hatched. Arrow keys
 * move, plus and minus zoom, Home shows all, Shift with an arrow moves the cursor; a mouse drags and its wheel zooms.
 */
final class TraceCanvas extends Canvas {

  private static final int[][] DASHES = {{}, {8, 4}, {2, 3}, {8, 3, 2, 3}, {14, 4}, {4, 4}};
  private static final Hue[] INKS = {Hue.INK, Hue.LINING, Hue.POND, Hue.OCHRE, Hue.HEATHER, Hue.QUIET};
  private static final double STEP = 0.1;
  private static final int PAD = 6;

  private final Runnable cursorMoved;
  private Trace trace;
  private List<Double> charges = List.of();
  private int dragged = -1;

  TraceCanvas(Composite parent, Runnable cursorMoved) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
    this.cursorMoved = cursorMoved;
    setBackground(Hue.PAPER.color());
    addListener(SWT.Paint, e -> paint(e.gc));
    addListener(SWT.KeyDown, this::key);
    addListener(SWT.MouseDown, e -> {
      setFocus();
      dragged = e.x;
      put(time(e.x));
    });
    addListener(SWT.MouseUp, e -> dragged = -1);
    addListener(SWT.MouseMove, this::drag);
    addListener(SWT.MouseVerticalWheel, e -> act(() -> trace.zoom(e.count > 0 ? 0.8 : 1.25, time(e.x))));
    addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    addListener(SWT.FocusIn, e -> redraw());
    addListener(SWT.FocusOut, e -> redraw());
  }

  /**
   * Shows a file.
   *
   * @param chargeTimes seconds since the fire was lit of the charges of the log
   */
  void show(Trace now, List<Double> chargeTimes) {
    trace = now;
    charges = chargeTimes;
    redraw();
  }

  private void act(Runnable change) {
    if (trace != null) {
      change.run();
      redraw();
    }
  }

  private void put(double time) {
    act(() -> trace.cursor(time));
    cursorMoved.run();
  }

  private void key(Event e) {
    if (trace == null) {
      return;
    }
    boolean shift = (e.stateMask & SWT.SHIFT) != 0;
    double point = (trace.until() - trace.from()) / Math.max(1, plot().width);
    double cursor = Double.isNaN(trace.cursor()) ? (trace.from() + trace.until()) / 2 : trace.cursor();
    switch (e.keyCode) {
      case SWT.ARROW_LEFT -> move(shift, cursor - point, -STEP);
      case SWT.ARROW_RIGHT -> move(shift, cursor + point, STEP);
      case SWT.HOME -> act(trace::whole);
      case SWT.KEYPAD_ADD -> act(() -> trace.zoom(0.8, cursor));
      case SWT.KEYPAD_SUBTRACT -> act(() -> trace.zoom(1.25, cursor));
      default -> {
        if (e.character == '+' || e.character == '-') {
          act(() -> trace.zoom(e.character == '+' ? 0.8 : 1.25, cursor));
        }
      }
    }
  }

  private void move(boolean shift, double cursor, double share) {
    if (shift) {
      put(cursor);
    } else {
      act(() -> trace.pan(share));
    }
  }

  private void drag(Event e) {
    if (dragged >= 0 && trace != null && e.x != dragged) {
      int by = dragged - e.x;
      dragged = e.x;
      act(() -> trace.pan(by / (double) Math.max(1, plot().width)));
    }
  }

  private double time(int x) {
    Rectangle plot = plot();
    return trace == null ? 0 : trace.from() + (x - plot.x) * (trace.until() - trace.from()) / Math.max(1, plot.width);
  }

  private int x(double time, Rectangle plot) {
    return plot.x + (int) Math.round((time - trace.from()) / (trace.until() - trace.from()) * plot.width);
  }

  private Rectangle plot() {
    Rectangle all = getClientArea();
    int line = lineHeight();
    int names = Math.min(all.width / 4, 14 * line);
    return new Rectangle(4 * line, line, Math.max(10, all.width - 4 * line - names), Math.max(10, all.height - 3 * line));
  }

  private int lineHeight() {
    GC gc = new GC(this);
    gc.setFont(Fonts.PLAIN.font());
    int line = gc.getFontMetrics().getHeight();
    gc.dispose();
    return line;
  }

  private void paint(GC gc) {
    gc.setBackground(Hue.PAPER.color());
    gc.fillRectangle(getClientArea());
    if (isFocusControl()) {
      Rectangle a = getClientArea();
      gc.setForeground(Hue.OCHRE.color());
      gc.drawRectangle(0, 0, a.width - 1, a.height - 1);
    }
    if (trace == null || trace.strips().isEmpty()) {
      return;
    }
    gc.setFont(Fonts.PLAIN.font());
    Rectangle plot = plot();
    gaps(gc, plot);
    int channels = trace.strips().values().stream().mapToInt(List::size).sum();
    int strips = trace.strips().size();
    int top = plot.y;
    for (Map.Entry<String, List<ChannelSeries>> strip : trace.strips().entrySet()) {
      int tall = plot.height * (strip.getValue().size() + 1) / (channels + strips);
      strip(gc, strip.getKey(), strip.getValue(), new Rectangle(plot.x, top + PAD, plot.width, Math.max(4, tall - 2 * PAD)));
      top += tall;
    }
    times(gc, plot);
  }

  private void gaps(GC gc, Rectangle plot) {
    gc.setForeground(Hue.HAIRLINE.color());
    for (Gap gap : trace.gaps()) {
      int left = Math.max(plot.x, x(gap.from(), plot));
      int right = Math.min(plot.x + plot.width, x(gap.until(), plot));
      for (int x = left; x < right; x += 4) {
        gc.drawLine(x, plot.y, x, plot.y + plot.height);
      }
    }
  }

  private void strip(GC gc, String unit, List<ChannelSeries> channels, Rectangle area) {
    List<Envelope> envelopes = channels.stream().map(c -> trace.envelope(c, area.width)).toList();
    double low = envelopes.stream().flatMapToDouble(e -> java.util.Arrays.stream(e.low())).filter(v -> !Double.isNaN(v)).min().orElse(0);
    double high = envelopes.stream().flatMapToDouble(e -> java.util.Arrays.stream(e.high())).filter(v -> !Double.isNaN(v)).max().orElse(1);
    double span = high > low ? high - low : 1;
    gc.setForeground(Hue.HAIRLINE.color());
    gc.drawRectangle(area);
    gc.setForeground(Hue.INK.color());
    int line = gc.getFontMetrics().getHeight();
    label(gc, number(channels.get(0), high), area.x - 4, area.y - 2);
    label(gc, number(channels.get(0), low), area.x - 4, area.y + area.height - line + 2);
    if (area.height > 3 * line) {
      label(gc, unit, area.x - 4, area.y + area.height / 2 - line / 2);
    }
    for (int i = 0; i < channels.size(); i++) {
      gc.setForeground(INKS[i % INKS.length].color());
      gc.setLineDash(DASHES[i % DASHES.length].length == 0 ? null : DASHES[i % DASHES.length]);
      draw(gc, envelopes.get(i), area, low, span);
      name(gc, channels.get(i), area, i, line);
    }
    gc.setLineDash(null);
  }

  private static String number(ChannelSeries channel, double value) {
    return Printed.number(channel.layout().unit().map(u -> u.fromCanonical(value)).orElse(value), 3);
  }

  private static void label(GC gc, String text, int right, int y) {
    gc.drawText(text, Math.max(0, right - gc.textExtent(text).x), y, true);
  }

  private void draw(GC gc, Envelope e, Rectangle area, double low, double span) {
    int before = -1;
    for (int i = 0; i < e.low().length; i++) {
      if (!Double.isNaN(e.low()[i])) {
        int y1 = area.y + area.height - (int) Math.round((e.low()[i] - low) / span * area.height);
        int y2 = area.y + area.height - (int) Math.round((e.high()[i] - low) / span * area.height);
        if (e.joined()[i] && before >= 0) {
          gc.drawLine(area.x + before, level(e, before, low, span, area), area.x + i, (y1 + y2) / 2);
        }
        gc.drawLine(area.x + i, y1, area.x + i, y2);
        before = i;
      }
    }
  }

  private static int level(Envelope e, int column, double low, double span, Rectangle area) {
    return area.y + area.height - (int) Math.round(((e.low()[column] + e.high()[column]) / 2 - low) / span * area.height);
  }

  /** The name of a channel beside its strip, with a stroke in its dashes and its value at the cursor. */
  private void name(GC gc, ChannelSeries channel, Rectangle area, int number, int line) {
    int y = area.y + Math.min(number * line, Math.max(0, area.height - line));
    int x = area.x + area.width + PAD;
    gc.drawLine(x, y + line / 2, x + 2 * line, y + line / 2);
    int row = trace.cursorRow();
    String value = row < 0 ? "" : Double.isNaN(channel.value(row)) ? channel.state(row) + " " : number(channel, channel.value(row)) + " ";
    gc.drawText(value + channel.layout().name(), x + 2 * line + PAD, y, true);
  }

  private void times(GC gc, Rectangle plot) {
    gc.setForeground(Hue.INK.color());
    double shift = trace.lit().orElse(0);
    double step = step((trace.until() - trace.from()) / Math.max(2, plot.width / 90));
    int bottom = plot.y + plot.height;
    for (double t = Math.ceil((trace.from() + shift) / step) * step; t <= trace.until() + shift; t += step) {
      int x = x(t - shift, plot);
      gc.drawLine(x, bottom, x, bottom + 4);
      String text = clock(t);
      gc.drawText(text, x - gc.textExtent(text).x / 2, bottom + 5, true);
    }
    for (double charge : trace.lit().isPresent() ? charges : List.<Double>of()) {
      int x = x(charge - shift, plot);
      if (x >= plot.x && x <= plot.x + plot.width) {
        gc.drawLine(x, plot.y - 6, x, plot.y);
      }
    }
    if (!Double.isNaN(trace.cursor())) {
      int x = x(trace.cursor(), plot);
      gc.setForeground(Hue.OCHRE.color());
      gc.drawLine(x, plot.y, x, bottom);
    }
  }

  private static double step(double least) {
    double[] steps = {1, 2, 5, 10, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 21600, 86400};
    for (double step : steps) {
      if (step >= least) {
        return step;
      }
    }
    return steps[steps.length - 1];
  }

  /** Hours, minutes and seconds, such as 1:05:00. */
  static String clock(double seconds) {
    long s = Math.round(Math.abs(seconds));
    return (seconds < -0.5 ? "\u2212" : "") + String.format(java.util.Locale.ROOT, "%d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
  }
}
