package daubline.ui.record;

import daubline.ui.look.FocusFrame;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * Shows a logger's channels in strips, one a unit. Arrow keys and Page Up and Down move, plus and minus zoom, Home shows all,
 * Shift with an arrow moves the cursor; a mouse drags, and its wheel zooms.
 */
final class TraceCanvas extends Canvas {

  private static final double STEP = 0.1;
  private static final double PAGE = 0.9;

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
      case SWT.PAGE_UP -> act(() -> trace.pan(-PAGE));
      case SWT.PAGE_DOWN -> act(() -> trace.pan(PAGE));
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
    if (trace != null && dragged < 0) {
      setToolTipText(TraceCanvas.clock(time(e.x) + trace.lit().orElse(0)) + "\n" + trace.told(time(e.x)));
    }
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

  private Rectangle plot() {
    Rectangle all = getClientArea();
    int line = lineHeight();
    int names = Math.min(all.width / 3, 14 * line);
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
    if (trace != null && !trace.strips().isEmpty()) {
      new TracePainter(gc, trace, plot()).paint(charges);
    }
    if (isFocusControl()) {
      FocusFrame.paint(gc, getClientArea());
    }
  }

  /** Hours, minutes and seconds, such as 1:05:00. */
  static String clock(double seconds) {
    long s = Math.round(Math.abs(seconds));
    return (seconds < -0.5 ? "\u2212" : "") + String.format(java.util.Locale.ROOT, "%d:%02d:%02d", s / 3600, s / 60 % 60, s % 60);
  }
}
