package daubline.intake;

import daubline.base.OxideFactors;
import daubline.intake.raw.RawRow;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is known of a table beside its cells.
 *
 * @param turned whether samples stood in columns, so that rows and columns are named the other way round
 * @param unitRow the number of the row that holds units, 0 for none
 * @param cells texts that count instead of those of the file, by row number and column of the form
 * @param oxides the oxide that an element is asked for as, by place of the column
 * @param joined further rows of which a row gives the mean, by its number
 */
record RowFacts(boolean turned, int unitRow, Map<Integer, Map<String, String>> cells, Map<Integer, String> oxides,
    Map<Integer, List<RawRow>> joined) {

  static final RowFacts NONE = new RowFacts(false, 0, Map.of(), Map.of(), Map.of());

  /** What a unit mass of a column weighs as what it is asked for as. */
  double factor(Bound column) {
    return Optional.ofNullable(oxides.get(column.index())).flatMap(o -> OxideFactors.factor(column.column().id(), o)).orElse(1.0);
  }

  static RowFacts of(boolean turned, int unitRow) {
    return new RowFacts(turned, unitRow, Map.of(), Map.of(), Map.of());
  }
}
