package daubline.ui.compare;

import daubline.base.Printed;
import daubline.engine.inference.CriterionResult;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridModel;
import daubline.ui.look.MarkShape;
import daubline.ui.prefs.Preferred;
import java.util.List;

/** Why a pair agrees as it does: each criterion with both values, the difference and the verdict in words. */
final class ReasonsModel implements GridModel {

  private static final String[] HEADINGS = {"reasons.verdict", "reasons.criterion", "reasons.evidence", "reasons.found", "reasons.sigmas", "reasons.agreement",
      "reasons.weight", "reasons.reason"};
  private static final double[] SHARES = {1.1, 1.4, 1.2, 1.2, 0.7, 0.8, 0.6, 3};

  private List<CriterionResult> results = List.of();

  void show(List<CriterionResult> now) {
    results = now;
  }

  CriterionResult result(int row) {
    return results.get(row);
  }

  @Override
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return results.size();
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
    CriterionResult r = results.get(row);
    return switch (column) {
      case 0 -> new GridCell(Words.of(r.verdict()), Look.PLAIN, MarkShape.of(r.verdict()), r.reason());
      case 1 -> GridCell.of(r.name());
      case 2 -> GridCell.of(r.evidence());
      case 3 -> GridCell.of(r.found());
      case 4 -> number(r.sigmas(), 1);
      case 5 -> number(r.agreement(), 2);
      case 6 -> number(r.weight() * 100, 0);
      default -> new GridCell(r.reason(), Look.PLAIN, GridCell.Mark.NONE, r.reason());
    };
  }

  private static GridCell number(double value, int decimals) {
    return GridCell.of(Double.isNaN(value) ? "–" : Preferred.sign(Printed.fixed(value, decimals)), Look.NUMBER);
  }
}
