package daubline.ui.table;

import daubline.base.Finding;
import daubline.intake.Preview;
import daubline.intake.PreviewRow;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import java.util.ArrayList;
import java.util.List;

/** What an import would do: first everything noticed, then row by row what becomes of it. */
final class ImportModel implements GridModel {

  private static final String[] HEADINGS = {"import.row", "import.state", "import.what"};
  private static final double[] SHARES = {1.2, 0.7, 4};

  private final List<GridCell[]> lines = new ArrayList<>();

  void show(Preview preview) {
    lines.clear();
    if (preview != null) {
      preview.findings().forEach(f -> lines.add(line(f)));
      preview.rows().forEach(r -> lines.add(line(r)));
    }
  }

  private static GridCell[] line(Finding f) {
    Mark mark = f.isError() ? Mark.NOT_CONSISTENT : Mark.CHECK_NEEDED;
    return new GridCell[] {GridCell.of(f.where()), new GridCell(Words.of(f.severity()), Look.PLAIN, mark, f.code()),
        new GridCell(f.what() + " – " + f.remedy(), f.isError() ? Look.REFUSED : Look.PLAIN, Mark.NONE, f.what() + " – " + f.remedy())};
  }

  private static GridCell[] line(PreviewRow r) {
    String changes = String.join("; ", r.changes());
    return new GridCell[] {GridCell.of(Words.of("import.line", r.number(), r.name())), GridCell.of(Words.of(r.state())),
        new GridCell(changes, Look.PLAIN, Mark.NONE, changes)};
  }

  @Override
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return lines.size();
  }

  @Override
  public String heading(int column) {
    return Words.of(HEADINGS[column]);
  }

  @Override
  public double share(int column) {
    return SHARES[column];
  }

  @Override
  public GridCell cell(int column, int row) {
    return lines.get(row)[column];
  }
}
