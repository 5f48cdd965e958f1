package daubline.ui.views;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import java.util.List;

/** The findings of the checks as a grid. */
final class ChecksModel implements GridModel {

  private static final String[] HEADINGS = {"checks.severity", "checks.where", "checks.what", "checks.remedy"};
  private static final double[] SHARES = {0.7, 1.4, 2.4, 2.4};

  private List<Finding> findings = List.of();

  void show(List<Finding> now) {
    findings = now;
  }

  Finding finding(int row) {
    return findings.get(row);
  }

  @Override
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return findings.size();
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
    Finding finding = findings.get(row);
    return switch (column) {
      case 0 -> new GridCell(Words.of(finding.severity()), Look.PLAIN, mark(finding.severity()), finding.code());
      case 1 -> GridCell.of(finding.where());
      case 2 -> GridCell.of(finding.what());
      default -> GridCell.of(finding.remedy());
    };
  }

  private static Mark mark(Severity severity) {
    return switch (severity) {
      case ERROR -> Mark.NOT_CONSISTENT;
      case WARNING -> Mark.CHECK_NEEDED;
      case NOTE -> Mark.NOT_TESTED;
    };
  }
}
