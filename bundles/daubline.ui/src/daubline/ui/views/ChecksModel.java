package daubline.ui.views;

import daubline.base.Finding;
import daubline.base.Severity;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.ListModel;
import java.util.Arrays;
import java.util.Comparator;

/** The findings of the checks as a grid. */
final class ChecksModel extends ListModel<Finding> {

  private static final String[] HEADINGS = {"checks.severity", "checks.where", "checks.what", "checks.remedy"};
  private static final double[] SHARES = {0.7, 1.4, 2.4, 2.4};

  ChecksModel() {
    super(HEADINGS, SHARES);
  }

  @Override
  public String widest(int column) {
    // room for the mark before the word
    return column == 0 ? Arrays.stream(Severity.values()).map(s -> "mm " + Words.of(s)).max(Comparator.comparing(String::length)).orElseThrow() : "";
  }

  @Override
  protected GridCell cell(int column, int row, Finding finding) {
    return switch (column) {
      case 0 -> new GridCell(Words.of(finding.severity()), Look.PLAIN, mark(finding.severity()), finding.code());
      case 1 -> GridCell.of(finding.where());
      case 2 -> GridCell.of(Words.said(finding.what()));
      default -> GridCell.of(Words.said(finding.remedy()));
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
