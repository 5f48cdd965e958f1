package daubline.ui.views;

import daubline.base.Trail;
import daubline.charts.Spots;
import daubline.charts.Spots.Spot;
import daubline.ui.Words;
import daubline.ui.explain.WhereFrom;
import daubline.ui.look.Hue;
import daubline.ui.study.Chosen;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;

/**
 * The marks of the figure on a canvas: the pointer tells each with its value, a press or the arrow keys choose one, Enter or F8
 * opens Where From on it.
 */
final class FigureMarks {

  private static final double REACH = 3;

  private final Canvas canvas;
  private List<Spot> spots = List.of();
  private Supplier<List<Trail>> rests = List::of;
  private double unit = 1;
  private int left;
  private int top;
  private int chosen = -1;

  FigureMarks(Canvas canvas) {
    this.canvas = canvas;
    canvas.addListener(SWT.MouseMove, this::point);
    canvas.addListener(SWT.MouseDown, this::press);
    canvas.addListener(SWT.MouseDoubleClick, e -> open());
    canvas.addListener(SWT.KeyDown, this::key);
    canvas.addListener(SWT.Traverse, e -> e.doit = switch (e.detail) {
      case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS, SWT.TRAVERSE_PAGE_NEXT, SWT.TRAVERSE_PAGE_PREVIOUS, SWT.TRAVERSE_ESCAPE -> true;
      default -> false;
    });
    WhereFrom.byKey(canvas, this::origin);
  }

  /** What the whole figure rests on, besides what each mark says. */
  void rest(Supplier<List<Trail>> on) {
    rests = on;
  }

  /**
   * The marks of what is drawn now.
   *
   * @param points pixels of a point
   * @param x the left edge of the drawing on the canvas, pixels
   * @param y the upper edge
   */
  void show(List<Spot> now, double points, int x, int y) {
    chosen = now.size() == spots.size() ? chosen : -1;
    spots = now;
    unit = points;
    left = x;
    top = y;
  }

  /** The marks, in the order in which they are drawn. */
  List<Spot> all() {
    return spots;
  }

  /** The middle of a mark on the canvas. */
  org.eclipse.swt.graphics.Point middle(int number) {
    Rectangle2D box = spots.get(number).shape().getBounds2D();
    return new org.eclipse.swt.graphics.Point((int) Math.round(left + box.getCenterX() * unit), (int) Math.round(top + box.getCenterY() * unit));
  }

  /** Where the number of the chosen mark comes from. */
  Optional<Trail> origin() {
    return chosen < 0 || chosen >= spots.size() ? Optional.empty() : Optional.of(trail(spots.get(chosen)));
  }

  /** What is chosen, for a screen reader; empty when nothing is. */
  String told() {
    return chosen < 0 || chosen >= spots.size() ? "" : Words.of("figure.mark", chosen + 1, spots.size(), spots.get(chosen).told());
  }

  private Trail trail(Spot spot) {
    Trail own = spot.from().get();
    List<Trail> more = rests.get();
    if (more.isEmpty()) {
      return own;
    }
    List<Trail> from = new ArrayList<>(own.from());
    from.addAll(more);
    return new Trail(own.what(), own.value(), own.subject(), from);
  }

  private Optional<Spot> at(Event e) {
    return Spots.at(spots, (e.x - left) / unit, (e.y - top) / unit, REACH);
  }

  private void point(Event e) {
    String tip = at(e).map(Spot::told).orElse(null);
    if (!java.util.Objects.equals(tip, canvas.getToolTipText())) {
      canvas.setToolTipText(tip);
    }
  }

  private void press(Event e) {
    canvas.setFocus();
    choose(at(e).map(spots::indexOf).orElse(-1));
  }

  private void key(Event e) {
    int last = spots.size() - 1;
    switch (e.keyCode) {
      case SWT.ARROW_RIGHT, SWT.ARROW_DOWN -> choose(Math.min(last, chosen + 1));
      case SWT.ARROW_LEFT, SWT.ARROW_UP -> choose(Math.max(Math.min(0, last), chosen - 1));
      case SWT.HOME -> choose(Math.min(0, last));
      case SWT.END -> choose(last);
      case SWT.CR, SWT.KEYPAD_CR -> open();
      default -> {
        // other keys are not for the marks
      }
    }
  }

  private void choose(int number) {
    chosen = number;
    canvas.redraw();
    Chosen.set(origin().orElse(null));
    if (chosen >= 0) {
      canvas.getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
      show(middle(chosen));
    }
  }

  /** Scrolls so that a mark is seen where the figure is larger than its place. */
  private void show(org.eclipse.swt.graphics.Point at) {
    for (org.eclipse.swt.widgets.Composite c = canvas.getParent(); c != null; c = c.getParent()) {
      if (c instanceof org.eclipse.swt.custom.ScrolledComposite scroll) {
        Rectangle seen = scroll.getClientArea();
        org.eclipse.swt.graphics.Point place = canvas.getDisplay().map(canvas, scroll.getContent(), at);
        org.eclipse.swt.graphics.Point origin = scroll.getOrigin();
        if (place.y < origin.y || place.y > origin.y + seen.height) {
          scroll.setOrigin(origin.x, Math.max(0, place.y - seen.height / 2));
        }
        return;
      }
    }
  }

  private void open() {
    origin().ifPresent(WhereFrom::show);
  }

  /** Frames the chosen mark. */
  void paint(GC gc) {
    if (chosen >= 0 && chosen < spots.size()) {
      Rectangle2D box = spots.get(chosen).shape().getBounds2D();
      gc.setForeground(Hue.OCHRE.color());
      gc.setLineWidth(2);
      gc.drawRectangle((int) (left + box.getX() * unit) - 3, (int) (top + box.getY() * unit) - 3, (int) Math.ceil(box.getWidth() * unit) + 6, (int) Math.ceil(box.getHeight() * unit) + 6);
    }
  }
}
