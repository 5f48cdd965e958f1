package daubline.ui.views;

import daubline.base.Trail;
import daubline.charts.Figure;
import daubline.charts.Palette;
import daubline.charts.Spots;
import daubline.charts.WordedFigure;
import daubline.ui.Words;
import daubline.ui.look.FocusFrame;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Themes;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.PaletteData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** Shows a figure; it is drawn behind, at twice the size on the screen so that it stays sharp, and then painted. */
public final class FigureCanvas extends Canvas {

  private static final int FINE = 200;
  /** Points of a line of a figure's usual lettering. */
  private static final double POINTS_OF_A_LINE = 13;

  private final FigureMarks marks = new FigureMarks(this);
  private Figure figure;
  private ImageData drawn;
  private int request;
  private FigureSource source = FigureSource.NONE;

  /** An empty canvas. */
  public FigureCanvas(Composite parent) {
    super(parent, SWT.DOUBLE_BUFFERED);
    setData("id", "figure-canvas");
    FigureMenu.on(this);
    addListener(SWT.Resize, e -> draw());
    Themes.onChange(this, this::draw);
    addListener(SWT.Paint, e -> {
      Rectangle area = getClientArea();
      e.gc.setBackground(Hue.PAPER.color());
      e.gc.fillRectangle(area);
      if (drawn != null) {
        ImageData now = drawn;
        Image image = new Image(getDisplay(), (ImageDataProvider) zoom -> zoom == FINE ? now : now.scaledTo(now.width * zoom / FINE, now.height * zoom / FINE));
        e.gc.setInterpolation(SWT.HIGH);
        e.gc.drawImage(image, (area.width - now.width * 100 / FINE) / 2, (area.height - now.height * 100 / FINE) / 2);
        image.dispose();
      }
      marks.paint(e.gc);
      if (isFocusControl()) {
        FocusFrame.paint(e.gc, area);
      }
    });
    addListener(SWT.FocusIn, e -> redraw());
    addListener(SWT.FocusOut, e -> redraw());
    getAccessible().addAccessibleListener(new AccessibleAdapter() {
      @Override
      public void getName(AccessibleEvent e) {
        e.result = figure == null ? Words.of("figures.nothing") : marks.told().isEmpty() ? figure.caption() : marks.told();
      }
    });
  }

  /** Shows a figure; null clears. */
  public void show(Figure now) {
    figure = now == null ? null : WordedFigure.of(now, Words.wording());
    drawn = null;
    marks.show(List.of(), 1, 0, 0);
    redraw();
    draw();
  }

  /** Whether the figure was drawn as it is shown now. */
  public boolean isDrawn() {
    return figure == null || drawn != null;
  }

  /** Adds what the whole figure rests on to the origin of each of its marks. */
  public void rest(Supplier<List<Trail>> on) {
    marks.rest(on);
  }

  /** The marks of the figure as drawn, in their order; empty until it is drawn. */
  public List<Spots.Spot> marks() {
    return marks.all();
  }

  /** The middle of a mark in pixels of the canvas. */
  public org.eclipse.swt.graphics.Point middle(int mark) {
    return marks.middle(mark);
  }

  /** Says what the figure is called and where its numbers stand. */
  public void from(FigureSource now) {
    source = now;
  }

  /** What the figure is called and where its numbers stand. */
  FigureSource source() {
    return source;
  }

  /** What is shown; null for nothing. */
  Figure figure() {
    return figure;
  }

  /** The picture as it is on the screen; null while it is being drawn. */
  ImageData drawn() {
    return drawn;
  }

  /** Whether no figure is shown. */
  boolean isEmpty() {
    return figure == null;
  }

  /** The height that suits the figure at a width; none without a figure. */
  public int heightFor(int width) {
    return figure == null ? 0 : (int) Math.ceil(figure.height(width / unit()) * unit());
  }

  /** The pixels that so many points take. */
  int widthOf(double points) {
    return (int) Math.ceil(points * unit());
  }

  /** Pixels of a point, so that the lettering of figures follows the size of writing that the desktop gives. */
  private double unit() {
    GC gc = new GC(this);
    gc.setFont(Fonts.PLAIN.font());
    double height = gc.getFontMetrics().getHeight();
    gc.dispose();
    return Math.max(1, height / POINTS_OF_A_LINE);
  }

  private void draw() {
    Rectangle area = getClientArea();
    Figure wanted = figure;
    if (wanted == null || area.width < 40 || area.height < 40) {
      return;
    }
    double unit = unit();
    double most = area.width / unit;
    double width = wanted.height(most) <= area.height / unit + 1 ? most : Math.min(most, area.height / unit / wanted.aspect());
    double height = wanted.height(width);
    Palette palette = palette();
    int number = ++request;
    Job.createSystem("figure", monitor -> {
      ImageData image = render(wanted, width, height, unit, palette);
      List<Spots.Spot> spots = Spots.of(wanted, new Rectangle2D.Double(0, 0, width, height));
      getDisplayIfAlive().ifPresent(d -> d.asyncExec(() -> {
        if (!isDisposed() && number == request) {
          drawn = image;
          marks.show(spots, unit, (area.width - image.width * 100 / FINE) / 2, (area.height - image.height * 100 / FINE) / 2);
          redraw();
        }
      }));
      return Status.OK_STATUS;
    }).schedule();
  }

  private java.util.Optional<org.eclipse.swt.widgets.Display> getDisplayIfAlive() {
    return isDisposed() ? java.util.Optional.empty() : java.util.Optional.of(getDisplay());
  }

  private static ImageData render(Figure figure, double width, double height, double unit, Palette palette) {
    double scale = unit * FINE / 100.0;
    int w = (int) Math.round(width * scale);
    int h = (int) Math.round(height * scale);
    BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(palette.paper());
    g.fillRect(0, 0, w, h);
    g.scale(scale, scale);
    figure.paint(g, new Rectangle2D.Double(0, 0, width, height), palette);
    g.dispose();
    ImageData data = new ImageData(w, h, 24, new PaletteData(0xFF0000, 0xFF00, 0xFF));
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    for (int y = 0; y < h; y++) {
      data.setPixels(0, y, w, pixels, y * w);
    }
    return data;
  }

  private static Palette palette() {
    Palette base = Hue.isDark() ? Palette.DARK : Palette.PRINT;
    return new Palette(awt(Hue.PAPER), awt(Hue.INK), awt(Hue.QUIET), base.series());
  }

  private static Color awt(Hue hue) {
    RGB rgb = hue.color().getRGB();
    return new Color(rgb.red, rgb.green, rgb.blue);
  }
}
