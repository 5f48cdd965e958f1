package daubline.ui.record;

import daubline.base.Finding;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.ListModel;

/** What was noticed about a file. */
final class FindingModel extends ListModel<Finding> {

  FindingModel() {
    super(new String[] {"checks.severity", "checks.where", "checks.what", "checks.remedy"}, new double[] {0.6, 1, 2.4, 2.4});
  }

  @Override
  protected GridCell cell(int column, int row, Finding f) {
    String tip = Words.said(f);
    return switch (column) {
      case 0 -> new GridCell(Words.of(f.severity()), Look.PLAIN, f.isError() ? Mark.NOT_CONSISTENT : Mark.CHECK_NEEDED, f.code());
      case 1 -> GridCell.of(f.where());
      case 2 -> new GridCell(Words.said(f.what()), f.isError() ? Look.REFUSED : Look.PLAIN, Mark.NONE, tip);
      default -> new GridCell(Words.said(f.remedy()), Look.PLAIN, Mark.NONE, tip);
    };
  }
}
