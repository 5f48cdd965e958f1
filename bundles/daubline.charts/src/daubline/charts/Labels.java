package daubline.charts;

import daubline.analysis.design.Outcome;

/** Words beside the axes of effects. */
final class Labels {

  private Labels() {
  }

  /** The name of an outcome with its unit. */
  static String outcome(Outcome outcome) {
    return outcome.name() + (outcome.unit().isEmpty() ? "" : " (" + outcome.unit() + ")");
  }
}
