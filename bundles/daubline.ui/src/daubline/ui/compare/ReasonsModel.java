package daubline.ui.compare;

import daubline.base.Printed;
import daubline.engine.inference.CriterionResult;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;
import daubline.ui.look.MarkShape;
import daubline.ui.prefs.Preferred;

/** Why a pair agrees as it does: each criterion with both values, the difference and the verdict in words. */
final class ReasonsModel extends ListModel<CriterionResult> {

  private static final String[] HEADINGS = {"reasons.verdict", "reasons.criterion", "reasons.evidence", "reasons.found", "reasons.sigmas", "reasons.agreement",
      "reasons.weight", "reasons.reason"};
  private static final double[] SHARES = {1.15, 1.3, 1.1, 1.1, 1.2, 1.4, 1.1, 2};

  ReasonsModel() {
    super(HEADINGS, SHARES);
  }

  @Override
  protected GridCell cell(int column, int row, CriterionResult r) {
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
