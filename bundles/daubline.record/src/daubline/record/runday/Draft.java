package daubline.record.runday;

import daubline.record.EventKind;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * An entry whose key was pressed and which is not written yet; its time is that of the key.
 *
 * @param kind what it is
 * @param at wall time with offset
 * @param elapsed seconds since the fire was lit; NaN before
 * @param columns the columns of the log that it asks for, in the order of the screen
 * @param offered a text for each that stands there already: as last time, as planned, or empty
 */
public record Draft(EventKind kind, OffsetDateTime at, double elapsed, List<String> columns, List<String> offered) {

  public Draft {
    columns = List.copyOf(columns);
    offered = List.copyOf(offered);
  }

  /** Whether there is nothing to type: the key alone writes it. */
  public boolean isComplete() {
    return columns.isEmpty();
  }
}
