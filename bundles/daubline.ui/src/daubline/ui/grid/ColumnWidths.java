package daubline.ui.grid;

import daubline.ui.look.Fonts;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.resize.event.ColumnResizeEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Composite;

/**
 * Shares the width of a grid among its columns. No column gets less than its words need; what is left goes by the shares
 * of the model, and where there is too little room the grid scrolls. Widths drawn by hand are remembered and stay.
 */
final class ColumnWidths {

  private static final int LEAST_LETTERS = 8;

  /** A share so small that a column stays as wide as it was drawn. */
  private static final double FIXED = 1e-9;

  private final ArrangedModel model;
  private final DataLayer data;
  private double[] least = {};
  private int room = -1;
  private double letter = 1;
  private boolean fitting;
  /** What a person chose; null until it is known which grid this is. */
  private GridMemory memory;

  ColumnWidths(ArrangedModel model, DataLayer data) {
    this.model = model;
    this.data = data;
    data.addLayerListener(e -> {
      if (e instanceof ColumnResizeEvent resized && !fitting && memory != null) {
        resized.getColumnPositionRanges().forEach(range -> IntStream.range(range.start, range.end).forEach(this::drawn));
      }
    });
  }

  /** Takes the widths that a person chose earlier. */
  void remember(GridMemory kept) {
    memory = kept;
    room = -1;
  }

  /** Shares the room anew the next time, as when a column came or went. */
  void forget() {
    room = -1;
  }

  private void drawn(int column) {
    if (column < model.columns()) {
      memory.width(model.columnId(column), Math.round(data.getColumnWidthByPosition(column) / letter * 10) / 10.0);
      memory.keep(model);
    }
  }

  /** Sets the widths anew when the room or the words have changed. */
  void fit(Composite table) {
    double[] needed = needed(table);
    int width = table.getClientArea().width;
    if (width == room && Arrays.equals(needed, least)) {
      return;
    }
    room = width;
    least = needed;
    double[] shares = new double[needed.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = Double.isNaN(chosen(i)) ? model.share(i) : FIXED;
    }
    int[] widths = widths(width, needed, shares);
    boolean same = IntStream.range(0, widths.length).allMatch(i -> data.getColumnWidthByPosition(i) == widths[i]);
    fitting = true;
    for (int i = 0; !same && i < widths.length; i++) {
      // told once, by the last column: otherwise a grid that grew is painted only as wide as it was
      data.setColumnWidthByPosition(i, widths[i], i == widths.length - 1);
    }
    fitting = false;
  }

  private double chosen(int column) {
    return memory == null ? Double.NaN : memory.width(model.columnId(column));
  }

  private double[] needed(Composite table) {
    GC gc = new GC(table);
    double[] needed = new double[model.columns()];
    gc.setFont(Fonts.PLAIN.font());
    letter = gc.getFontMetrics().getAverageCharacterWidth();
    for (int i = 0; i < needed.length; i++) {
      gc.setFont(Fonts.STRONG.font());
      int heading = gc.textExtent(model.signed(i)).x;
      gc.setFont(Fonts.PLAIN.font());
      int words = Math.max(heading, gc.textExtent(model.widest(i)).x);
      needed[i] = Double.isNaN(chosen(i)) ? Math.max(LEAST_LETTERS * letter, words + 2 * GridPainter.PADDING + letter) : chosen(i) * letter;
    }
    gc.dispose();
    return needed;
  }

  /**
   * Whole pixels that fill the room exactly, unless the columns need more.
   *
   * @param room pixels
   * @param least what each column needs, pixels
   * @param shares in which ratio the columns want the room, each greater than zero
   */
  static int[] widths(int room, double[] least, double[] shares) {
    boolean[] fixed = new boolean[least.length];
    double scale = scale(room, least, shares, fixed);
    for (boolean again = true; again;) {
      again = false;
      for (int i = 0; i < least.length; i++) {
        if (!fixed[i] && shares[i] * scale < least[i]) {
          fixed[i] = true;
          again = true;
        }
      }
      scale = scale(room, least, shares, fixed);
    }
    int[] widths = new int[least.length];
    double end = 0;
    for (int i = 0; i < widths.length; i++) {
      double begin = end;
      end += fixed[i] ? least[i] : shares[i] * scale;
      widths[i] = (int) (Math.round(end) - Math.round(begin));
    }
    return widths;
  }

  /** Pixels to a share, of the room that the columns at their least leave. */
  private static double scale(int room, double[] least, double[] shares, boolean[] fixed) {
    double left = room;
    double wanted = 0;
    for (int i = 0; i < least.length; i++) {
      left -= fixed[i] ? least[i] : 0;
      wanted += fixed[i] ? 0 : shares[i];
    }
    return wanted == 0 ? 0 : Math.max(0, left) / wanted;
  }
}
