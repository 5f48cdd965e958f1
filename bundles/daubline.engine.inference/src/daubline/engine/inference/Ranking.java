package daubline.engine.inference;

import java.util.List;
import java.util.Map;

/**
 * The order of the trials against one evidence sheet, and how far it can be relied on when measurements and weights are
 * drawn within their uncertainty (stochastic multicriteria acceptability analysis, Lahdelma &amp; Salminen 2001, Operations
 * Research 49, 444–454).
 *
 * @param sheet id of the evidence sheet
 * @param sheetName its name as printed
 * @param places the trials, highest median agreement first
 * @param untested ids of the trials of which nothing could be tested
 * @param criteria how each criterion tells the trials apart
 */
public record Ranking(String sheet, String sheetName, List<Place> places, List<String> untested, List<Discrimination> criteria) {

  public Ranking {
    places = List.copyOf(places);
    untested = List.copyOf(untested);
    criteria = List.copyOf(criteria);
  }

  /**
   * One trial in the order.
   *
   * @param trial id of the trial
   * @param trialName its name as printed
   * @param rank 1 for the highest median agreement
   * @param agreement median agreement 0 to 100
   * @param coverage weight tested over weight that could have been tested
   * @param acceptability share of draws in which the trial takes each rank, first rank first; they sum to one
   * @param wins probability of a higher agreement than each other trial, by its id
   * @param centralWeights mean of the weights under which the trial comes first, by criterion; empty when it never does
   * @param confidence probability of coming first under its central weights, NaN when it never comes first
   */
  public record Place(String trial, String trialName, int rank, double agreement, double coverage, double[] acceptability,
      Map<String, Double> wins, Map<String, Double> centralWeights, double confidence) {

    public Place {
      acceptability = acceptability.clone();
      wins = Map.copyOf(wins);
      centralWeights = Map.copyOf(centralWeights);
    }

    @Override
    public double[] acceptability() {
      return acceptability.clone();
    }
  }

  /**
   * What one criterion does to the order.
   *
   * @param criterion id of the criterion
   * @param name its name as printed
   * @param share covariance of its weighted log agreement with the sum, over the variance of the sum, across trials; the
   *     shares sum to one, a negative one works against the others; NaN when fewer than two trials were tested
   * @param signal variance between trials over mean variance within a trial; below 1 it cannot tell the trials apart;
   *     infinite when nothing is uncertain
   * @param firstWithout id of the trial that comes first when it is left out, empty when none does
   * @param influence largest change of any trial's agreement when it is left out, in points of 100
   */
  public record Discrimination(String criterion, String name, double share, double signal, String firstWithout, double influence) {

    /** Whether it can tell the trials apart at all. */
    public boolean tellsApart() {
      return signal >= 1;
    }
  }
}
