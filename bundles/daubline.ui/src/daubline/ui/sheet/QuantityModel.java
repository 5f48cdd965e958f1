package daubline.ui.sheet;

import daubline.analysis.Origins;
import daubline.analysis.forecast.Figures;
import daubline.analysis.forecast.Outcome;
import daubline.analysis.forecast.TrialForecast;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.Forecast;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The figures of a forecast, one a row: middle, interval, what was observed, what it is worth, where it comes from, what it hangs on. */
final class QuantityModel extends ListModel<Forecast> {

  private static final int MOST = 3;
  private TrialForecast trial;

  QuantityModel() {
    super(new String[] {"before.what", "before.mid", "before.interval", "before.observed", "before.source"}, new double[] {2.6, 0.8, 1.1, 0.9, 2});
  }

  void show(TrialForecast now) {
    trial = now;
    show(now.forecast().map(f -> f.quantities()).orElse(List.of()));
  }

  /** The figure of the row with what it is worth and hangs on, and then what the column holds. */
  @Override
  public List<Explanation> explain(int column, int row) {
    return Stream.concat(Stream.of(Explanations.said(name(item(row).quantity()), about(row))), super.explain(column, row).stream()).toList();
  }

  @Override
  protected GridCell cell(int column, int row, Forecast f) {
    BurnQuantity q = f.quantity();
    return switch (column) {
      case 0 -> told(name(q), Look.PLAIN);
      case 1 -> GridCell.of(Figures.text(q, Double.isNaN(f.median()) ? f.central() : f.median()), Look.NUMBER);
      case 2 -> GridCell.of(Double.isNaN(f.low()) ? "…" : Figures.text(q, f.low()) + "–" + Figures.text(q, f.high()), Look.NUMBER);
      case 3 -> GridCell.of(observed(q).map(o -> Figures.text(q, o.value())).orElse(""), Look.NUMBER);
      default -> told(Words.said(q.source().text()), Look.QUIET);
    };
  }

  @Override
  protected Optional<Trail> origin(int column, int row, Forecast f) {
    BurnQuantity q = f.quantity();
    String said = cell(1, row).text() + " (" + cell(2, row).text() + ")";
    return column == 3 ? observed(q).map(o -> Origins.observed(trial, q, Figures.text(q, o.value()))) : Optional.of(Origins.forecast(trial, q, said));
  }

  private static String name(BurnQuantity q) {
    String symbol = Figures.symbol(q);
    return symbol.isEmpty() ? Words.of(q) : Words.of(q) + " [" + symbol + "]";
  }

  /** Everything about the figure of a row: what it is worth, its source, what it hangs on, and where the observed value is from. */
  String about(int row) {
    Forecast f = item(row);
    String depends = depends(f);
    return Words.of("before.about", Words.of(f.quantity()), Words.of(f.quantity().standing()), Words.said(f.quantity().source().text()))
        + (depends.isEmpty() ? "" : " " + Words.of("before.depends", depends)) + observed(f.quantity()).map(o -> " " + Words.of("before.from", Words.said(o.where()))).orElse("");
  }

  /** A text that may be longer than its cell: the tip has it whole. */
  private static GridCell told(String text, Look look) {
    return new GridCell(text, look, GridCell.Mark.NONE, text);
  }

  private Optional<Outcome> observed(BurnQuantity q) {
    return trial.outcome(q);
  }

  private static String depends(Forecast f) {
    return f.shares().entrySet().stream().limit(MOST).map(e -> Words.said(e.getKey()) + " " + Printed.fixed(100 * e.getValue(), 0) + " %").collect(Collectors.joining(", "));
  }
}
