package daubline.ui.runday;

import daubline.ui.Words;
import daubline.ui.look.FocusFrame;
import daubline.ui.look.Hue;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

/** Figures with a word under each, as large as the room allows; in colours of the theme. */
final class ClockFace extends Canvas {

  private static final double WORD_SHARE = 0.24;
  private static final int SMALLEST = 8;
  private static final int MARGIN = 16;

  private List<RunScreen.Figure> figures = List.of();
  private Font figureFont;
  private Font wordFont;
  private int fittedFor = -1;
  private String fittedText = "";

  ClockFace(Composite parent) {
    super(parent, SWT.DOUBLE_BUFFERED);
    addListener(SWT.Paint, e -> paint(e.gc));
    addListener(SWT.Dispose, e -> forget());
    addListener(SWT.FocusIn, e -> redraw());
    addListener(SWT.FocusOut, e -> redraw());
  }

  void show(List<RunScreen.Figure> now) {
    if (!isDisposed() && !now.equals(figures)) {
      figures = now;
      redraw();
    }
  }

  private void forget() {
    if (figureFont != null) {
      figureFont.dispose();
      wordFont.dispose();
      figureFont = null;
    }
  }

  private void paint(GC gc) {
    Rectangle area = getClientArea();
    gc.setBackground(Hue.PAPER.color());
    gc.fillRectangle(area);
    if (isFocusControl()) {
      FocusFrame.paint(gc, area);
    }
    if (figures.isEmpty() || area.height < 4) {
      return;
    }
    boolean stacked = area.height > area.width / 2;
    int columns = stacked ? 2 : figures.size();
    int rows = (figures.size() + columns - 1) / columns;
    int tall = area.height / rows;
    int[] edges = edges(gc, columns, area.width);
    int narrowest = IntStream.range(0, columns).map(i -> edges[i + 1] - edges[i]).min().orElseThrow();
    fit(gc, narrowest - MARGIN, tall - 8);
    for (int i = 0; i < figures.size(); i++) {
      int column = i % columns;
      cell(gc, figures.get(i), new Rectangle(area.x + edges[column], area.y + i / columns * tall, edges[column + 1] - edges[column], tall));
    }
  }

  /** Edges of the columns: of one width, but wider where a word would not fit at its smallest. */
  private int[] edges(GC gc, int columns, int width) {
    Font smallest = font(SMALLEST, SWT.NORMAL);
    gc.setFont(smallest);
    int[] needs = new int[columns];
    for (int i = 0; i < figures.size(); i++) {
      needs[i % columns] = Math.max(needs[i % columns], gc.textExtent(wordOf(figures.get(i))).x + MARGIN);
    }
    smallest.dispose();
    int[] edges = new int[columns + 1];
    int level = level(needs, width);
    for (int i = 0; i < columns; i++) {
      edges[i + 1] = edges[i] + Math.max(level, needs[i]);
    }
    return edges;
  }

  /** The width that all columns get whose need is less, when the others get what they need. */
  private static int level(int[] needs, int width) {
    int level = width / needs.length;
    for (int round = 0; round < needs.length; round++) {
      int now = level;
      int wide = Arrays.stream(needs).filter(n -> n > now).sum();
      int others = (int) Arrays.stream(needs).filter(n -> n <= now).count();
      level = others == 0 ? 0 : Math.max(0, (width - wide) / others);
    }
    return level;
  }

  private void cell(GC gc, RunScreen.Figure figure, Rectangle cell) {
    gc.setForeground(figure.due() ? Hue.LINING.color() : Hue.INK.color());
    gc.setFont(figureFont);
    int height = gc.getFontMetrics().getHeight();
    int width = gc.textExtent(figure.text()).x;
    gc.setFont(wordFont);
    int words = gc.getFontMetrics().getHeight();
    int top = cell.y + Math.max(0, (cell.height - height - words) / 2);
    gc.setFont(figureFont);
    gc.drawText(figure.text(), cell.x + (cell.width - width) / 2, top, true);
    gc.setFont(wordFont);
    gc.setForeground(Hue.QUIET.color());
    String word = wordOf(figure);
    gc.drawText(word, cell.x + (cell.width - gc.textExtent(word).x) / 2, top + height, true);
  }

  /** Finds the largest fonts in which every figure, and below it every word, fit a cell. */
  private void fit(GC gc, int wide, int tall) {
    String longest = figures.stream().map(f -> f.text().replaceAll("\\d", "0") + "\n" + wordOf(f)).collect(Collectors.joining("\n"));
    int key = wide * 10_000 + tall;
    if (figureFont != null && key == fittedFor && longest.equals(fittedText)) {
      return;
    }
    forget();
    fittedFor = key;
    fittedText = longest;
    int size = largest(gc, SWT.BOLD, tall, figures.stream().map(RunScreen.Figure::text).toList(), wide, (int) (tall * (1 - WORD_SHARE)));
    figureFont = font(size, SWT.BOLD);
    gc.setFont(figureFont);
    int left = tall - gc.getFontMetrics().getHeight();
    wordFont = font(largest(gc, SWT.NORMAL, (int) (2 * WORD_SHARE * size), figures.stream().map(ClockFace::wordOf).toList(), wide, left), SWT.NORMAL);
  }

  private static String wordOf(RunScreen.Figure figure) {
    return figure.due() ? Words.of("run.now", figure.word()) : figure.word();
  }

  /** The largest size, up to a most, in which each of the texts fits; never below the smallest that can be read. */
  private int largest(GC gc, int style, int most, List<String> texts, int wide, int tall) {
    int low = SMALLEST;
    int high = Math.max(SMALLEST, most) + 1;
    while (high - low > 1) {
      int middle = (low + high) / 2;
      Font font = font(middle, style);
      gc.setFont(font);
      boolean fits = gc.getFontMetrics().getHeight() <= tall && texts.stream().allMatch(t -> gc.textExtent(t).x <= wide);
      font.dispose();
      if (fits) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private Font font(int points, int style) {
    FontData data = JFaceResources.getDialogFont().getFontData()[0];
    return new Font(getDisplay(), data.getName(), points, style);
  }
}
