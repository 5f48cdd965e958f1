package daubline.intake.raw;

import daubline.base.Finding;
import java.util.List;

/**
 * One table as it stands in a file.
 *
 * @param name the sheet's name in a workbook; empty for a CSV file
 * @param rows its rows, empty ones among them
 * @param findings what was noticed while it was read: formulas, merged cells, hidden rows
 */
public record RawSheet(String name, List<RawRow> rows, List<Finding> findings) {

  public RawSheet {
    rows = List.copyOf(rows);
    findings = List.copyOf(findings);
  }

  /** Whether no row holds anything. */
  public boolean isEmpty() {
    return rows.stream().allMatch(RawRow::isEmpty);
  }
}
