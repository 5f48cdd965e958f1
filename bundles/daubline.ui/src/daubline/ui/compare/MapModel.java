package daubline.ui.compare;

import daubline.engine.inference.Comparison;
import daubline.ui.grid.GridModel;
import java.util.Optional;

/** A map of the comparison: trials down, something across; each cell leads to the reasons of a pair. */
interface MapModel extends GridModel {

  /** The pair of a cell. */
  Optional<Comparison> pair(int column, int row);

  /** The id of the criterion of a column; empty when a column is no criterion. */
  default String criterion(int column) {
    return "";
  }
}
