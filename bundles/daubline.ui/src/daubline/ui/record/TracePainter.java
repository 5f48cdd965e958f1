package daubline.ui.record;

import daubline.base.Printed;
import daubline.base.SensorState;
import daubline.intake.logger.ChannelSeries;
import daubline.intake.logger.Envelope;
import daubline.intake.logger.Gap;
import daubline.intake.logger.StateRun;
import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;

/**
 * Draws the strips of a trace. Every curve carries the number of its channel, so that curves are told apart without colour;
 * times without rows are hatched; what a sensor said in place of numbers is a bar with its word below the curves.
 */
final class TracePainter {

  private static final Hue[] INKS = {Hue.INK, Hue.LINING, Hue.POND, Hue.OCHRE, Hue.HEATHER, Hue.QUIET};
  private static final int PAD = 6;
  private static final int BETWEEN_NUMBERS = 180;
  private static final int BETWEEN_TIMES = 90;
  private static final int HATCH = 4;
  private static final int BAR = 3;
  private static final double[] TIME_STEPS = {1, 2, 5, 10, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 21600, 86400};

  private final GC gc;
  private final Trace trace;
  private final Rectangle plot;
  private final int line;
  private final List<ChannelSeries> named = new ArrayList<>();
  private final List<Integer> places = new ArrayList<>();

  TracePainter(GC gc, Trace trace, Rectangle plot) {
    this.gc = gc;
    this.trace = trace;
    this.plot = plot;
    gc.setFont(Fonts.PLAIN.font());
    line = gc.getFontMetrics().getHeight();
  }

  /** Draws all; the times of charges are seconds since the fire was lit. */
  void paint(List<Double> charges) {
    gaps();
    int channels = trace.strips().values().stream().mapToInt(List::size).sum();
    int strips = trace.strips().size();
    int top = plot.y;
    for (Map.Entry<String, List<ChannelSeries>> strip : trace.strips().entrySet()) {
      int tall = plot.height * (strip.getValue().size() + 1) / (channels + strips);
      strip(strip.getKey(), strip.getValue(), new Rectangle(plot.x, top + PAD, plot.width, Math.max(4, tall - 2 * PAD)));
      top += tall;
    }
    names();
    times();
    charges(charges);
    cursor();
  }

  private int x(double time) {
    return plot.x + (int) Math.round((time - trace.from()) / (trace.until() - trace.from()) * plot.width);
  }

  private boolean isInView(double from, double until) {
    return until >= trace.from() && from <= trace.until();
  }

  private void gaps() {
    for (Gap gap : trace.gaps()) {
      if (isInView(gap.from(), gap.until())) {
        int left = Math.max(plot.x, x(gap.from()));
        int right = Math.min(plot.x + plot.width, x(gap.until()));
        gc.setForeground(Hue.HAIRLINE.color());
        for (int x = left; x <= right; x += HATCH) {
          gc.drawLine(x, plot.y, x, plot.y + plot.height);
        }
        String word = Words.of("loggers.gap");
        if (gc.textExtent(word).x < right - left) {
          gc.setForeground(Hue.QUIET.color());
          tag(word, (left + right) / 2, plot.y + plot.height / 2);
        }
      }
    }
  }

  /** A word about a point, on a ground of paper. */
  private void tag(String text, int x, int y) {
    Point size = gc.textExtent(text);
    gc.setBackground(Hue.PAPER.color());
    gc.drawText(text, x - size.x / 2, y - size.y / 2, false);
  }

  private void strip(String unit, List<ChannelSeries> channels, Rectangle area) {
    List<ChannelSeries> stated = channels.stream().filter(c -> trace.states(c).stream().anyMatch(r -> isInView(r.from(), r.until()))).toList();
    gc.setForeground(Hue.HAIRLINE.color());
    gc.drawRectangle(area);
    int lanes = area.height > (stated.size() + 2) * line ? stated.size() * line : 0;
    Rectangle curves = new Rectangle(area.x, area.y, area.width, area.height - lanes);
    List<Envelope> envelopes = channels.stream().map(c -> trace.envelope(c, area.width)).toList();
    Trace.Scale scale = trace.scale(unit, envelopes);
    scale(unit, channels.get(0), scale, curves);
    for (int i = 0; i < channels.size(); i++) {
      ink(channels.get(i));
      curve(envelopes.get(i), scale, curves);
      named.add(channels.get(i));
      places.add(area.y + i * line);
    }
    for (int i = 0; i < channels.size(); i++) {
      ink(channels.get(i));
      numbers(channels.get(i), envelopes.get(i), scale, curves);
    }
    for (int i = 0; i < stated.size(); i++) {
      ink(stated.get(i));
      states(stated.get(i), lanes == 0 ? area.y + area.height - BAR - 1 : curves.y + curves.height + i * line + line / 2, lanes > 0);
    }
  }

  private void ink(ChannelSeries channel) {
    gc.setForeground(INKS[(trace.number(channel) - 1) % INKS.length].color());
    gc.setBackground(INKS[(trace.number(channel) - 1) % INKS.length].color());
  }

  private void scale(String unit, ChannelSeries first, Trace.Scale scale, Rectangle area) {
    gc.setForeground(Hue.INK.color());
    if (area.height < 2 * line) {
      // no room for one above the other
      label(number(first, scale.low()) + "–" + number(first, scale.high()), area.x - HATCH, area.y + (area.height - line) / 2);
      return;
    }
    label(number(first, scale.high()), area.x - HATCH, area.y - 2);
    label(number(first, scale.low()), area.x - HATCH, area.y + area.height - line + 2);
    if (area.height > 3 * line) {
      label(unit, area.x - HATCH, area.y + area.height / 2 - line / 2);
    }
  }

  private static String number(ChannelSeries channel, double value) {
    return Printed.number(channel.layout().unit().map(u -> u.fromCanonical(value)).orElse(value), 3);
  }

  private void label(String text, int right, int y) {
    gc.drawText(text, Math.max(0, right - gc.textExtent(text).x), y, true);
  }

  private static int y(double value, Trace.Scale scale, Rectangle area) {
    return area.y + area.height - (int) Math.round((value - scale.low()) / scale.span() * area.height);
  }

  /** One line through the lowest and highest value of each column, broken where the rows break off. */
  private void curve(Envelope e, Trace.Scale scale, Rectangle area) {
    int[] points = new int[4 * e.low().length];
    int used = 0;
    for (int i = 0; i < e.low().length; i++) {
      if (!Double.isNaN(e.low()[i])) {
        if (!e.joined()[i]) {
          stroke(points, used);
          used = 0;
        }
        int low = y(e.low()[i], scale, area);
        int high = y(e.high()[i], scale, area);
        boolean upward = used == 0 || Math.abs(points[used - 1] - low) < Math.abs(points[used - 1] - high);
        points[used++] = area.x + i;
        points[used++] = upward ? low : high;
        if (low != high) {
          points[used++] = area.x + i;
          points[used++] = upward ? high : low;
        }
      }
    }
    stroke(points, used);
  }

  private void stroke(int[] points, int used) {
    if (used == 2) {
      gc.drawPoint(points[0], points[1]);
    } else if (used > 2) {
      gc.drawPolyline(Arrays.copyOf(points, used));
    }
  }

  /** The number of the channel on its curve, again and again, each channel at places of its own. */
  private void numbers(ChannelSeries channel, Envelope e, Trace.Scale scale, Rectangle area) {
    int number = trace.number(channel);
    int channels = trace.strips().values().stream().mapToInt(List::size).sum();
    for (int column = BETWEEN_NUMBERS * number / (channels + 1); column < e.low().length; column += BETWEEN_NUMBERS) {
      if (!Double.isNaN(e.low()[column])) {
        tag(String.valueOf(number), area.x + column, y((e.low()[column] + e.high()[column]) / 2, scale, area));
      }
    }
  }

  private void states(ChannelSeries channel, int y, boolean words) {
    int free = plot.x;
    for (StateRun run : trace.states(channel)) {
      if (isInView(run.from(), run.until())) {
        int left = Math.max(plot.x, x(run.from()));
        int right = Math.max(left + BAR, Math.min(plot.x + plot.width, x(run.until())));
        ink(channel);
        gc.fillRectangle(left, y - 1, right - left, BAR);
        gc.drawLine(left, y - line / 3, left, y + line / 3);
        gc.drawLine(right, y - line / 3, right, y + line / 3);
        String word = trace.number(channel) + " " + word(run.word());
        int wide = gc.textExtent(word).x + 2 * PAD;
        int at = right + wide <= plot.x + plot.width ? right : left - wide;
        if (words && at >= free) {
          tag(word, at + wide / 2, y);
          free = at + wide;
        }
      }
    }
  }

  /** A known state in the language of the window, otherwise the sensor's own word. */
  private static String word(String state) {
    return SensorState.find(state).map(Words::of).orElse(state);
  }

  /** The names of all channels, each beside its strip where there is room, and otherwise as near to it as no two stand on each other. */
  private void names() {
    int last = named.size() - 1;
    int bottom = plot.y + plot.height + line;
    int step = Math.min(line, (bottom - plot.y) / Math.max(1, last));
    for (int i = 1; i <= last; i++) {
      places.set(i, Math.max(places.get(i), places.get(i - 1) + step));
    }
    for (int i = last; i >= 0; i--) {
      places.set(i, Math.min(places.get(i), bottom - (last - i) * step));
      ink(named.get(i));
      name(named.get(i), places.get(i));
    }
  }

  /** The number and name of a channel, with its value at the cursor. */
  private void name(ChannelSeries channel, int y) {
    int x = plot.x + plot.width + PAD;
    int row = trace.cursorRow();
    String value = row < 0 ? "" : (Double.isNaN(channel.value(row)) ? word(channel.state(row)) : number(channel, channel.value(row))) + " ";
    gc.drawLine(x, y + line / 2, x + line / 2, y + line / 2);
    gc.drawText(trace.number(channel) + "  " + value + channel.layout().name(), x + line / 2 + PAD, y, true);
  }

  private void times() {
    gc.setForeground(Hue.INK.color());
    double shift = trace.lit().orElse(0);
    double step = step((trace.until() - trace.from()) / Math.max(2, plot.width / BETWEEN_TIMES));
    int bottom = plot.y + plot.height;
    for (double t = Math.ceil((trace.from() + shift) / step) * step; t <= trace.until() + shift; t += step) {
      int x = x(t - shift);
      gc.drawLine(x, bottom, x, bottom + HATCH);
      String text = TraceCanvas.clock(t);
      gc.drawText(text, x - gc.textExtent(text).x / 2, bottom + HATCH + 1, true);
    }
  }

  private static double step(double least) {
    return Arrays.stream(TIME_STEPS).filter(s -> s >= least).findFirst().orElse(TIME_STEPS[TIME_STEPS.length - 1]);
  }

  private void charges(List<Double> charges) {
    for (double charge : trace.lit().isPresent() ? charges : List.<Double>of()) {
      double at = charge - trace.lit().getAsDouble();
      if (isInView(at, at)) {
        gc.drawLine(x(at), plot.y - PAD, x(at), plot.y);
      }
    }
  }

  private void cursor() {
    if (!Double.isNaN(trace.cursor())) {
      gc.setForeground(Hue.OCHRE.color());
      gc.drawLine(x(trace.cursor()), plot.y, x(trace.cursor()), plot.y + plot.height);
    }
  }
}
