package daubline.engine.inference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How each criterion tells trials apart, and what leaving it out would do. */
final class DiscriminationTable {

  private final List<Criterion> criteria;
  private final double[] weights;

  DiscriminationTable(List<Criterion> criteria, double[] weights) {
    this.criteria = criteria;
    this.weights = weights;
  }

  List<Ranking.Discrimination> of(List<SheetData> trials, List<RankingInput> inputs) {
    double[][] parts = new double[inputs.size()][];
    for (int t = 0; t < parts.length; t++) {
      parts[t] = contributions(inputs.get(t).score());
    }
    double[] shares = shares(parts, criteria.size());
    List<Ranking.Discrimination> table = new ArrayList<>();
    for (int c = 0; c < criteria.size(); c++) {
      double[] without = weights.clone();
      without[c] = 0;
      table.add(new Ranking.Discrimination(criteria.get(c).id(), criteria.get(c).name(), shares[c], signal(inputs, c),
          first(trials, inputs, without), influence(inputs, without)));
    }
    return table;
  }

  /** Weighted floored log agreement of each criterion as it enters the pool; 0 when it is not tested. */
  private double[] contributions(PairScore score) {
    double tested = 0;
    for (int c = 0; c < weights.length; c++) {
      tested += Double.isNaN(score.logs()[c]) ? 0 : weights[c];
    }
    double[] parts = new double[weights.length];
    for (int c = 0; c < weights.length; c++) {
      parts[c] = Double.isNaN(score.logs()[c]) || tested <= 0 ? 0 : weights[c] * Math.max(score.logs()[c], Pool.LOG_FLOOR) / tested;
    }
    return parts;
  }

  /**
   * Share of each column in the variance of the row sums, cov(column, sum) / var(sum); they sum to one.
   *
   * @param rows one row for each trial
   * @param columns how many columns each has; without rows there is no share
   */
  static double[] shares(double[][] rows, int columns) {
    double[] means = new double[columns];
    for (double[] row : rows) {
      for (int c = 0; c < columns; c++) {
        means[c] += row[c] / rows.length;
      }
    }
    double[] covariances = new double[columns];
    double variance = 0;
    for (double[] row : rows) {
      double sum = 0;
      for (int c = 0; c < columns; c++) {
        sum += row[c] - means[c];
      }
      variance += sum * sum;
      for (int c = 0; c < columns; c++) {
        covariances[c] += (row[c] - means[c]) * sum;
      }
    }
    for (int c = 0; c < columns; c++) {
      covariances[c] = rows.length > 1 && variance > 0 ? covariances[c] / variance : Double.NaN;
    }
    return covariances;
  }

  private static double signal(List<RankingInput> inputs, int c) {
    double[] means = inputs.stream().mapToDouble(i -> i.score().mean()[c]).filter(m -> !Double.isNaN(m)).toArray();
    double within = inputs.stream().mapToDouble(i -> i.score().variance()[c]).filter(v -> !Double.isNaN(v)).average().orElse(Double.NaN);
    if (means.length < 2) {
      return Double.NaN;
    }
    double between = 0;
    double mean = Arrays.stream(means).average().orElseThrow();
    for (double m : means) {
      between += (m - mean) * (m - mean) / (means.length - 1);
    }
    return between == 0 ? 0 : between / within;
  }

  private String first(List<SheetData> trials, List<RankingInput> inputs, double[] without) {
    String first = "";
    double best = Double.NEGATIVE_INFINITY;
    for (int t = 0; t < trials.size(); t++) {
      double score = Pool.score(inputs.get(t).score().logs(), without);
      if (score > best) {
        best = score;
        first = trials.get(t).id();
      }
    }
    return first;
  }

  private double influence(List<RankingInput> inputs, double[] without) {
    double largest = 0;
    for (RankingInput input : inputs) {
      double change = Pool.score(input.score().logs(), without) - Pool.score(input.score().logs(), weights);
      largest = Math.max(largest, Double.isNaN(change) ? 0 : Math.abs(change));
    }
    return largest;
  }
}
