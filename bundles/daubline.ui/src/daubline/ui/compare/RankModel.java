package daubline.ui.compare;

import daubline.engine.inference.Comparison;
import daubline.ui.Words;
import daubline.ui.grid.BarCell;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridModel;
import java.util.List;

/** The trials ranked against one evidence sheet: agreement with its interval as a bar, coverage beside it. */
public final class RankModel implements GridModel {

  private static final String[] HEADINGS = {"rank.place", "pair.trial", "rank.agreement", "rank.bar", "rank.coverage", "rank.counts"};
  private static final double[] SHARES = {0.6, 1.3, 1.3, 1.4, 0.9, 1.9};

  private List<Comparison> ranked = List.of();

  void show(List<Comparison> now) {
    ranked = now;
  }

  Comparison comparison(int row) {
    return ranked.get(row);
  }

  @Override
  public int columns() {
    return HEADINGS.length;
  }

  @Override
  public int rows() {
    return ranked.size();
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
    Comparison c = ranked.get(row);
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
