package daubline.ui.grid;

import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.MarkShape;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.nebula.widgets.nattable.painter.cell.AbstractCellPainter;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;

/** Paints the cells of a grid in the colours of the theme. */
class GridPainter extends AbstractCellPainter {

  static final int PADDING = 6;
  /** Opacity of the deepest tint, so light that letters keep their contrast. */
  private static final int DEEPEST = 70;

  @Override
  public void paintCell(ILayerCell cell, GC gc, Rectangle bounds, IConfigRegistry registry) {
    GridCell content = cell.getDataValue() instanceof GridCell c ? c : GridCell.of(String.valueOf(cell.getDataValue()));
    boolean chosen = DisplayMode.SELECT.equals(cell.getDisplayMode());
    gc.setBackground(chosen ? Hue.CHOSEN.color() : ground(content));
    gc.fillRectangle(bounds);
    if (!chosen && content.shade() > 0) {
      gc.setBackground(Hue.POND.color());
      gc.setAlpha((int) Math.round(DEEPEST * Math.min(1, content.shade())));
      gc.fillRectangle(bounds);
      gc.setAlpha(255);
    }
    if (content.look() == GridCell.Look.VOID && !chosen) {
      hatch(gc, bounds);
    }
    if (BarCell.isBar(content.text())) {
      BarCell.paint(gc, content.text(), bounds);
      return;
    }
    gc.setFont(isStrong(content) ? Fonts.STRONG.font() : Fonts.PLAIN.font());
    gc.setForeground(ink(content));
    int x = bounds.x + PADDING;
    if (content.mark() != GridCell.Mark.NONE) {
      int size = Math.min(gc.getFontMetrics().getAscent() + 2, bounds.height - 4);
      MarkShape.paint(gc, content.mark(), x, bounds.y + (bounds.height - size) / 2, size);
      gc.setForeground(ink(content));
      x += size + PADDING;
    }
    write(gc, content, x, bounds);
  }

  private static void write(GC gc, GridCell content, int x, Rectangle bounds) {
    int room = bounds.x + bounds.width - PADDING - x;
    String[] lines = content.text().split("\n", -1);
    int height = gc.getFontMetrics().getHeight();
    int y = bounds.y + Math.max(0, (bounds.height - height * lines.length) / 2);
    for (String line : lines) {
      String shown = shorten(gc, line, room);
      int indent = content.look() == GridCell.Look.NUMBER ? Math.max(0, room - gc.textExtent(shown).x) : 0;
      gc.drawText(shown, x + indent, y, SWT.DRAW_TRANSPARENT);
      y += height;
    }
  }

  /** The text, or as much of it as fits with an ellipsis; the tip shows all of it. */
  static String shorten(GC gc, String text, int room) {
    if (gc.textExtent(text).x <= room) {
      return text;
    }
    int low = 0;
    int high = text.length();
    while (low < high) {
      int middle = (low + high + 1) / 2;
      if (gc.textExtent(text.substring(0, middle) + "…").x <= room) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low == 0 ? "" : text.substring(0, low) + "…";
  }

  private static void hatch(GC gc, Rectangle bounds) {
    gc.setForeground(Hue.HAIRLINE.color());
    for (int x = bounds.x + 4 - bounds.y % 8; x < bounds.x + bounds.width; x += 8) {
      gc.drawPoint(x, bounds.y + bounds.height / 2);
    }
  }

  private static Color ground(GridCell content) {
    return content.look() == GridCell.Look.GROUP ? Hue.BAND.color() : Hue.PAPER.color();
  }

  private static Color ink(GridCell content) {
    return switch (content.look()) {
      case QUIET -> Hue.QUIET.color();
      case GUESS -> Hue.HEATHER.color();
      case REFUSED -> Hue.LINING.color();
      default -> Hue.INK.color();
    };
  }

  private static boolean isStrong(GridCell content) {
    return content.look() == GridCell.Look.GROUP;
  }

  @Override
  public int getPreferredWidth(ILayerCell cell, GC gc, IConfigRegistry registry) {
    gc.setFont(Fonts.PLAIN.font());
    return gc.textExtent(String.valueOf(cell.getDataValue())).x + 3 * PADDING;
  }

  @Override
  public int getPreferredHeight(ILayerCell cell, GC gc, IConfigRegistry registry) {
    gc.setFont(Fonts.PLAIN.font());
    return gc.getFontMetrics().getHeight() + PADDING;
  }
}
