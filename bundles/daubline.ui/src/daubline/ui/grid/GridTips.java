package daubline.ui.grid;

import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.layer.cell.ILayerCell;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Rectangle;

/** Shows under the pointer what a cell says in full. */
final class GridTips {

  private final NatTable table;

  GridTips(NatTable table) {
    this.table = table;
  }

  void install() {
    table.addListener(SWT.MouseMove, e -> {
      int column = table.getColumnPositionByX(e.x);
      int row = table.getRowPositionByY(e.y);
      ILayerCell cell = column < 0 || row < 0 ? null : table.getCellByPosition(column, row);
      String tip = cell == null ? null : tip(cell);
      if (!java.util.Objects.equals(tip, table.getToolTipText())) {
        table.setToolTipText(tip);
      }
    });
  }

  private static String tip(ILayerCell cell) {
    if (!(cell.getDataValue() instanceof GridCell content) || content.text().isEmpty() && content.tip().isEmpty()) {
      return null;
    }
    Rectangle bounds = cell.getBounds();
    boolean cut = bounds != null && content.text().length() * 6 > bounds.width;
    String text = cut ? content.text() : "";
    String both = text.isEmpty() || content.tip().isEmpty() ? text + content.tip() : text + "\n" + content.tip();
    return both.isEmpty() ? null : both;
  }
}
