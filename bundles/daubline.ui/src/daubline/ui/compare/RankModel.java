package daubline.ui.compare;

import daubline.analysis.Origins;
import daubline.base.Trail;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Exclusion;
import daubline.ui.Words;
import daubline.ui.grid.BarCell;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The trials ranked against one target: agreement with its interval as a bar, coverage beside it, what a faithful repeat scores, what rules them out. */
public final class RankModel extends ListModel<Comparison> {

  private static final String[] HEADINGS = {"rank.place", "pair.trial", "rank.agreement", "rank.bar", "rank.coverage", "rank.counts", "rank.repeat", "rank.bounds",
      "rank.ruledout"};
  private static final double[] SHARES = {0.6, 1.3, 1.3, 1.4, 0.9, 1.7, 1, 1, 1.8};

  private double alpha = Double.NaN;

  public RankModel() {
    super(HEADINGS, SHARES);
  }

  /** Shows other comparisons, with the limit of compatibility that they were judged by. */
  void show(List<Comparison> now, double limit) {
    alpha = limit;
    show(now);
  }

  @Override
  public String widest(int column) {
    return switch (column) {
      case 1 -> longest(column, 24);
      case 5 -> longest(column, 40);
      case 8 -> Words.of("rank.notruledout");
      default -> heading(column);
    };
  }

  private String longest(int column, int most) {
    String longest = heading(column);
    for (int row = 0; row < rows(); row++) {
      String text = cell(column, row).text();
      longest = text.length() > longest.length() ? text : longest;
    }
    return longest.substring(0, Math.min(most, longest.length()));
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
      case 5 -> GridCell.of(PairModel.counts(c));
      case 6 -> GridCell.of(PairModel.span(c.bandLow(), c.bandHigh()), Look.NUMBER);
      case 7 -> GridCell.of(PairModel.span(c.boundLow(), c.boundHigh()), Look.NUMBER);
      default -> ruledOut(c);
    };
  }

  @Override
  protected Optional<Trail> origin(int column, int row, Comparison c) {
    return Optional.of(Origins.agreement(c));
  }

  private GridCell ruledOut(Comparison c) {
    Exclusion exclusion = Exclusion.of(c, alpha);
    String names = exclusion.criteria().stream().map(CriterionResult::name).map(Words::said).collect(Collectors.joining(", "));
    return exclusion.isRuledOut() ? new GridCell(names, Look.PLAIN, GridCell.Mark.NOT_CONSISTENT, Words.of("rank.ruledout.by", names))
        : GridCell.of(Words.of("rank.notruledout"), Look.QUIET);
  }
}
