package daubline.analysis.record;

import java.util.List;

/**
 * A series of trials.
 *
 * @param seed seed of its random order, or empty
 * @param factors what it varies
 * @param trials ids of its trials
 * @param planning how it is planned
 */
public record SeriesData(String id, String name, String question, String plan, boolean frozen, String seed, List<FactorData> factors,
    List<String> trials, PlanningData planning) {

  /** A factor of a series: the variable's id, its levels as typed, whether it is set with the furnace or with the day. */
  public record FactorData(String variable, String levels, boolean hardToChange, boolean daily) {
  }

  public SeriesData {
    factors = List.copyOf(factors);
    trials = List.copyOf(trials);
  }
}
