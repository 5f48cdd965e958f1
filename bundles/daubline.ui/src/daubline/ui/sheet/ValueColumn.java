package daubline.ui.sheet;

import daubline.base.Variable;
import daubline.model.Reading;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * One column of a sheet's values.
 *
 * @param key key of its heading in the messages
 * @param share its share of the width
 * @param isAsked whether a variable is asked for here
 * @param readings the values about one variable, in the order of the model
 * @param create makes a new value about a variable and puts it into the model; null when the column is only read
 * @param print how a value stands in the cell, given its variable
 */
record ValueColumn(String key, double share, Predicate<Variable> isAsked, Function<Variable, List<? extends Reading>> readings,
    Function<Variable, Reading> create, BiFunction<Reading, Variable, String> print) {

  /** Whether values can be typed into it. */
  boolean isWritten() {
    return create != null;
  }

  /** A text as long as they usually get, which is never cut off. */
  String widest() {
    return key.equals(Forms.DEVIATION) ? "-200.0 ± 10.0 mm" : key.equals(Forms.EVIDENCE) ? "mm 300 ± 10 mm" : isWritten() ? "300 ± 10 mm" : "";
  }
}
