package daubline.ui.compare;

import daubline.engine.inference.Comparison;
import daubline.ui.Words;
import daubline.ui.grid.BarCell;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;

/** The trials ranked against one evidence sheet: agreement with its interval as a bar, coverage beside it. */
public final class RankModel extends ListModel<Comparison> {

  private static final String[] HEADINGS = {"rank.place", "pair.trial", "rank.agreement", "rank.bar", "rank.coverage", "rank.counts"};
  private static final double[] SHARES = {0.6, 1.3, 1.3, 1.4, 0.9, 1.9};

  public RankModel() {
    super(HEADINGS, SHARES);
  }

  @Override
  protected GridCell cell(int column, int row, Comparison c) {
    String pair = c.isTested() ? Words.of("rank.interval", PairModel.whole(c.agreement()), PairModel.whole(c.low()), PairModel.whole(c.high())) : "–";
    return switch (column) {
      case 0 -> GridCell.of(c.isTested() ? String.valueOf(row + 1) : "–", Look.NUMBER);
      case 1 -> GridCell.of(c.trialName());
      case 2 -> GridCell.of(pair, Look.NUMBER);
      case 3 -> GridCell.of(BarCell.text(c.low(), c.agreement(), c.high(), c.coverage()));
      case 4 -> GridCell.of(PairModel.percent(c.coverage()) + " %", Look.NUMBER);
      default -> GridCell.of(PairModel.counts(c));
    };
  }
}
