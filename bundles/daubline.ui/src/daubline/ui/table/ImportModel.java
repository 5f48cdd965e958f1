package daubline.ui.table;

import daubline.base.Finding;
import daubline.intake.Preview;
import daubline.intake.PreviewRow;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.ListModel;
import java.util.ArrayList;
import java.util.List;

/** What an import would do: first everything noticed, then row by row what becomes of it. */
final class ImportModel extends ListModel<GridCell[]> {

  private static final String[] HEADINGS = {"import.row", "import.state", "import.what"};
  private static final double[] SHARES = {1.2, 0.7, 4};

  ImportModel() {
    super(HEADINGS, SHARES);
  }

  void show(Preview preview) {
    List<GridCell[]> lines = new ArrayList<>();
    if (preview != null) {
      preview.findings().forEach(f -> lines.add(line(f)));
      preview.rows().forEach(r -> lines.add(line(r)));
    }
    show(lines);
  }

  private static GridCell[] line(Finding f) {
    Mark mark = f.isError() ? Mark.NOT_CONSISTENT : Mark.CHECK_NEEDED;
    return new GridCell[] {GridCell.of(f.where()), new GridCell(Words.of(f.severity()), Look.PLAIN, mark, f.code()),
        new GridCell(Words.said(f), f.isError() ? Look.REFUSED : Look.PLAIN, Mark.NONE, Words.said(f))};
  }

  private static GridCell[] line(PreviewRow r) {
    String changes = String.join("; ", r.changes());
    return new GridCell[] {GridCell.of(Words.of("import.line", r.number(), r.name())), GridCell.of(Words.of(r.state())),
        new GridCell(changes, Look.PLAIN, Mark.NONE, changes)};
  }

  @Override
  protected GridCell cell(int column, int row, GridCell[] line) {
    return line[column];
  }
}
