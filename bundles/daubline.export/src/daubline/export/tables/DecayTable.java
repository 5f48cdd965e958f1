package daubline.export.tables;

import daubline.analysis.StudyResults;
import daubline.analysis.record.DecayCurve;
import daubline.engine.stats.DecayFit;
import daubline.export.Cell;
import daubline.export.Column;
import java.util.List;
import java.util.stream.Stream;

/** How fast the walls of furnaces left to decay go, by two simple laws. */
public final class DecayTable extends Spec {

  /** The table. */
  public DecayTable() {
    super("decay", "Decay of the Walls", "How fast the standing wall of each furnace left to decay goes: by the same share or by the same height each year, "
        + "fitted by least squares, with the 95 % range of the rate by Student’s t, which needs three observations. Walls fall in steps; neither law is more than a summary.");
  }

  @Override
  public List<Column> columns(StudyResults results) {
    return List.of(Column.text("trial", "Trial"), Column.number("observations", "Observations", ""), Column.number("years", "Years watched", "a"),
        Column.words("law", "Goes each year"), Column.number("rate", "Rate", ""), Column.words("unit", "Unit"), Column.number("low", "From", ""), Column.number("high", "To", ""),
        Column.number("misses", "Root mean square miss", "mm"), Column.text("ended", "Watching ended because"));
  }

  @Override
  public List<List<Cell>> rows(StudyResults results) {
    return DecayCurve.of(results.snapshot()).stream().flatMap(c -> Stream.of(c.share(), c.amount()).flatMap(f -> f.stream()).map(f -> row(c, f))).toList();
  }

  private static List<Cell> row(DecayCurve c, DecayFit f) {
    double factor = f.exponential() ? 100 : 1000;
    return List.of(Cell.text(c.name()), Cell.fixed(c.points().size(), 0), Cell.fixed(c.points().get(c.points().size() - 1).years(), 2),
        Cell.text(f.exponential() ? "a share" : "a height"), number(factor * f.goes(f.rate())), Cell.text(f.exponential() ? "% per year" : "mm per year"), number(factor * f.goes(f.low())),
        number(factor * f.goes(f.high())), number(1000 * f.misses()), Cell.text(c.ended()));
  }

  private static Cell number(double value) {
    return Double.isFinite(value) ? Cell.fixed(value, 1) : Cell.text("–");
  }
}
