package daubline.ui.record;

import daubline.model.Measurement;
import daubline.record.PictureLength;
import daubline.record.Pictures;
import daubline.ui.Words;
import daubline.ui.look.FocusFrame;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/**
 * A picture with the lines drawn on it. The mouse draws a line or drags an end; arrow keys move the chosen end by a pixel,
 * with Shift by ten, and the move becomes part of the study when the key is let go. The scale has ends like a beam, other
 * lines have crosses; each has its number.
 */
final class PictureCanvas extends Canvas {

  private static final int GRASP = 8;
  private static final int TICK = 6;
  private static final double FAR = 10;
  private static final double ZOOM_STEP = 1.25;
  private static final double MOST = 16;
  private static final double PAN = 0.2;

  /** What hands on the picture ask for. */
  interface Hands {
    /** A line between two points of the picture. */
    void draw(PictureLength.Line line);

    /** The points of a line elsewhere. */
    void move(Measurement m, PictureLength.Line line);

    /** Another line is meant. */
    void choose(Measurement m);

    /** The chosen line is to go. */
    void remove(Measurement m);
  }

  private final Hands hands;
  private Image image;
  private Point size = new Point(0, 0);
  private List<Measurement> lines = List.of();
  private Measurement chosen;
  private boolean second;
  /** The line as it is being drawn or moved; null when nothing moves. */
  private PictureLength.Line moving;
  private boolean drawing;
  private double zoom = 1;
  private double left;
  private double top;
  private boolean whole = true;
  private Point pan;

  PictureCanvas(Composite parent, Hands hands) {
    super(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
    this.hands = hands;
    setBackground(Hue.PAPER.color());
    addListener(SWT.Paint, e -> paint(e.gc));
    addListener(SWT.Resize, e -> fit());
    addListener(SWT.KeyDown, this::key);
    addListener(SWT.KeyUp, e -> settle());
    addListener(SWT.FocusOut, e -> {
      settle();
      redraw();
    });
    addListener(SWT.FocusIn, e -> redraw());
    addListener(SWT.MouseDown, this::press);
    addListener(SWT.MouseMove, this::drag);
    addListener(SWT.MouseUp, this::release);
    addListener(SWT.MouseVerticalWheel, e -> zoom(e.count > 0 ? ZOOM_STEP : 1 / ZOOM_STEP, e.x, e.y));
    addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    addListener(SWT.Dispose, e -> forget());
    getAccessible().addAccessibleListener(new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent e) {
        e.result = said();
      }

      @Override
      public void getDescription(AccessibleEvent e) {
        e.result = Words.of("picture.keys");
      }
    });
    setData("name", Words.of("picture.canvas"));
  }

  private String said() {
    if (chosen == null) {
      return Words.of("picture.canvas");
    }
    PictureLength.Line line = now(chosen);
    return Words.of("picture.end", lines.indexOf(chosen) + 1, second ? 2 : 1, Math.round(second ? line.x2() : line.x1()), Math.round(second ? line.y2() : line.y1()));
  }

  /** Shows a picture; null for none. */
  void show(ImageData data) {
    forget();
    image = data == null ? null : new Image(getDisplay(), data);
    size = data == null ? new Point(0, 0) : new Point(data.width, data.height);
    whole = true;
    fit();
  }

  private void forget() {
    if (image != null) {
      image.dispose();
      image = null;
    }
  }

  /** Shows lines, one of them chosen; null for none. */
  void show(List<Measurement> now, Measurement meant) {
    lines = List.copyOf(now);
    if (meant != chosen) {
      second = false;
      moving = null;
    }
    chosen = meant != null && lines.contains(meant) ? meant : null;
    redraw();
  }

  /** Makes the picture as large as its place. */
  void whole() {
    whole = true;
    fit();
  }

  private void fit() {
    Rectangle area = getClientArea();
    if (whole && size.x > 0 && area.width > 0) {
      zoom = Math.min((double) area.width / size.x, (double) area.height / size.y);
      left = (size.x - area.width / zoom) / 2;
      top = (size.y - area.height / zoom) / 2;
    }
    redraw();
  }

  /** Makes the picture larger or smaller around the chosen end, or around its middle. */
  void zoom(boolean in) {
    Rectangle area = getClientArea();
    PictureLength.Line line = chosen == null ? null : now(chosen);
    double x = line == null ? area.width / 2.0 : screenX(second ? line.x2() : line.x1());
    double y = line == null ? area.height / 2.0 : screenY(second ? line.y2() : line.y1());
    zoom(in ? ZOOM_STEP : 1 / ZOOM_STEP, x, y);
  }

  private void zoom(double factor, double x, double y) {
    if (image != null) {
      double px = left + x / zoom;
      double py = top + y / zoom;
      Rectangle area = getClientArea();
      double least = Math.min(1, Math.min((double) area.width / size.x, (double) area.height / size.y));
      zoom = Math.max(least, Math.min(MOST, zoom * factor));
      left = px - x / zoom;
      top = py - y / zoom;
      whole = zoom == least;
      fit();
    }
  }

  private double screenX(double x) {
    return (x - left) * zoom;
  }

  private double screenY(double y) {
    return (y - top) * zoom;
  }

  /** A point of the window as one of the picture, kept inside it. */
  private double[] inside(double x, double y) {
    return new double[] {Math.max(0, Math.min(size.x, left + x / zoom)), Math.max(0, Math.min(size.y, top + y / zoom))};
  }

  private PictureLength.Line now(Measurement m) {
    return m == chosen && moving != null && !drawing ? moving : Pictures.line(m);
  }

  private void press(Event e) {
    setFocus();
    settle();
    if (image == null) {
      return;
    }
    if (e.button != 1) {
      pan = new Point(e.x, e.y);
      return;
    }
    if (!grasp(e)) {
      double[] at = inside(e.x, e.y);
      drawing = true;
      moving = new PictureLength.Line(at[0], at[1], at[0], at[1], 0);
    }
  }

  /** Takes hold of the end of a line that lies under the mouse, first of the chosen one. */
  private boolean grasp(Event e) {
    List<Measurement> order = chosen == null ? lines : java.util.stream.Stream.concat(java.util.stream.Stream.of(chosen), lines.stream()).toList();
    for (Measurement m : order) {
      PictureLength.Line line = Pictures.line(m);
      boolean first = Math.hypot(screenX(line.x1()) - e.x, screenY(line.y1()) - e.y) <= GRASP;
      if (first || Math.hypot(screenX(line.x2()) - e.x, screenY(line.y2()) - e.y) <= GRASP) {
        choose(m, !first);
        moving = line;
        return true;
      }
    }
    return false;
  }

  private void choose(Measurement m, boolean end) {
    boolean other = m != chosen;
    chosen = m;
    second = end;
    moving = null;
    if (other) {
      hands.choose(m);
    }
    second = end;
    redraw();
  }

  private void drag(Event e) {
    if (pan != null) {
      left -= (e.x - pan.x) / zoom;
      top -= (e.y - pan.y) / zoom;
      pan = new Point(e.x, e.y);
      whole = false;
      redraw();
    } else if (moving != null && (e.stateMask & SWT.BUTTON1) != 0) {
      double[] at = inside(e.x, e.y);
      moving = drawing || second ? new PictureLength.Line(moving.x1(), moving.y1(), at[0], at[1], moving.pointing())
          : new PictureLength.Line(at[0], at[1], moving.x2(), moving.y2(), moving.pointing());
      redraw();
    }
  }

  private void release(Event e) {
    pan = null;
    if (drawing) {
      PictureLength.Line drawn = moving;
      drawing = false;
      moving = null;
      if (drawn.pixels() * zoom > GRASP) {
        hands.draw(drawn);
      }
      redraw();
    } else {
      settle();
    }
  }

  /** Makes what was moved part of the study. */
  private void settle() {
    if (moving != null && !drawing && chosen != null) {
      PictureLength.Line moved = moving;
      PictureLength.Line before = Pictures.line(chosen);
      moving = null;
      if (!moved.equals(before)) {
        hands.move(chosen, moved);
      }
      redraw();
    }
  }

  private void key(Event e) {
    if (image == null || drawing) {
      return;
    }
    switch (e.keyCode) {
      case SWT.ARROW_LEFT -> arrow(e, -1, 0);
      case SWT.ARROW_RIGHT -> arrow(e, 1, 0);
      case SWT.ARROW_UP -> arrow(e, 0, -1);
      case SWT.ARROW_DOWN -> arrow(e, 0, 1);
      case SWT.PAGE_DOWN -> other(1);
      case SWT.PAGE_UP -> other(-1);
      case SWT.HOME -> whole();
      case SWT.INSERT -> begin();
      case SWT.DEL -> {
        if (chosen != null) {
          hands.remove(chosen);
        }
      }
      default -> letter(e);
    }
  }

  private void letter(Event e) {
    switch (e.character) {
      case '+', '=' -> zoom(true);
      case '-' -> zoom(false);
      case ' ' -> {
        settle();
        second = !second;
        redraw();
      }
      case 'n', 'N' -> begin();
      default -> { }
    }
  }

  private void arrow(Event e, int x, int y) {
    if ((e.stateMask & SWT.MOD1) != 0 || chosen == null) {
      left += x * PAN * getClientArea().width / zoom;
      top += y * PAN * getClientArea().height / zoom;
      whole = false;
    } else {
      double far = (e.stateMask & SWT.SHIFT) != 0 ? FAR : 1;
      PictureLength.Line line = now(chosen);
      double px = Math.max(0, Math.min(size.x, (second ? line.x2() : line.x1()) + x * far));
      double py = Math.max(0, Math.min(size.y, (second ? line.y2() : line.y1()) + y * far));
      moving = second ? new PictureLength.Line(line.x1(), line.y1(), px, py, line.pointing()) : new PictureLength.Line(px, py, line.x2(), line.y2(), line.pointing());
    }
    redraw();
  }

  private void other(int step) {
    if (!lines.isEmpty()) {
      settle();
      int index = chosen == null ? 0 : Math.floorMod(lines.indexOf(chosen) + step, lines.size());
      choose(lines.get(index), false);
    }
  }

  /** A line across the middle half of what is in sight, to be moved by keys. */
  private void begin() {
    settle();
    Rectangle area = getClientArea();
    double[] from = inside(area.width / 4.0, area.height / 2.0);
    double[] to = inside(3 * area.width / 4.0, area.height / 2.0);
    hands.draw(new PictureLength.Line(from[0], from[1], to[0], to[1], 0));
  }

  private void paint(GC gc) {
    Rectangle area = getClientArea();
    gc.setBackground(Hue.PAPER.color());
    gc.fillRectangle(area);
    if (image != null) {
      int x = (int) Math.max(0, Math.floor(left));
      int y = (int) Math.max(0, Math.floor(top));
      int w = (int) Math.min(size.x - x, Math.ceil(area.width / zoom) + 2);
      int h = (int) Math.min(size.y - y, Math.ceil(area.height / zoom) + 2);
      gc.setInterpolation(zoom < 1 ? SWT.HIGH : SWT.NONE);
      if (w > 0 && h > 0) {
        gc.drawImage(image, x, y, w, h, (int) Math.round(screenX(x)), (int) Math.round(screenY(y)), (int) Math.round(w * zoom), (int) Math.round(h * zoom));
      }
      gc.setAntialias(SWT.ON);
      lines.forEach(m -> line(gc, now(m), m.isScale(), m == chosen, String.valueOf(lines.indexOf(m) + 1)));
      if (drawing) {
        line(gc, moving, lines.isEmpty(), false, "");
      }
    }
    if (isFocusControl()) {
      FocusFrame.paint(gc, area);
    }
  }

  private void line(GC gc, PictureLength.Line line, boolean scale, boolean meant, String number) {
    int x1 = (int) Math.round(screenX(line.x1()));
    int y1 = (int) Math.round(screenY(line.y1()));
    int x2 = (int) Math.round(screenX(line.x2()));
    int y2 = (int) Math.round(screenY(line.y2()));
    for (boolean halo : new boolean[] {true, false}) {
      gc.setForeground(halo ? Hue.PAPER.color() : scale ? Hue.OCHRE.color() : meant ? Hue.LINING.color() : Hue.INK.color());
      gc.setLineWidth((halo ? 4 : 0) + (meant ? 3 : 2));
      gc.drawLine(x1, y1, x2, y2);
      end(gc, x1, y1, x2 - x1, y2 - y1, scale);
      end(gc, x2, y2, x2 - x1, y2 - y1, scale);
      if (meant) {
        gc.drawOval((second ? x2 : x1) - GRASP, (second ? y2 : y1) - GRASP, 2 * GRASP, 2 * GRASP);
      }
    }
    gc.setFont(Fonts.STRONG.font());
    gc.setForeground(Hue.INK.color());
    gc.setBackground(Hue.PAPER.color());
    String text = scale ? number + " S" : number;
    Point room = gc.textExtent(text);
    Rectangle area = getClientArea();
    gc.drawText(text, Math.min((x1 + x2) / 2 + TICK, area.width - room.x - TICK), Math.min((y1 + y2) / 2 + TICK, area.height - room.y - TICK));
  }

  /** A cross, or for the scale a bar across the line. */
  private static void end(GC gc, int x, int y, int dx, int dy, boolean scale) {
    if (scale) {
      double length = Math.max(1, Math.hypot(dx, dy));
      int ox = (int) Math.round(-dy / length * TICK);
      int oy = (int) Math.round(dx / length * TICK);
      gc.drawLine(x - ox, y - oy, x + ox, y + oy);
    } else {
      gc.drawLine(x - TICK, y - TICK, x + TICK, y + TICK);
      gc.drawLine(x - TICK, y + TICK, x + TICK, y - TICK);
    }
  }

  /** Where a point of the picture lies on the canvas; for tests and tools that point. */
  Point at(double x, double y) {
    return new Point((int) Math.round(screenX(x)), (int) Math.round(screenY(y)));
  }
}
