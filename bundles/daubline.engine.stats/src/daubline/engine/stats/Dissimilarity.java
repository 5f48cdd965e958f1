package daubline.engine.stats;

/** Distances between rows of mixed columns. */
public final class Dissimilarity {

  private Dissimilarity() {
  }

  /**
   * Mean over the columns that both rows have of |difference| / range for numbers and of 0 or 1 for words (Gower 1971,
   * Biometrics 27, 857–871); NaN when no column is shared.
   *
   * @param numbers numbers of both rows, NaN where missing
   * @param ranges range of each number, zero or less when all rows are equal
   * @param words words of both rows, null where missing
   */
  public static double gower(double[][] numbers, double[] ranges, String[][] words) {
    double sum = 0;
    int shared = 0;
    for (int i = 0; i < ranges.length; i++) {
      double difference = Math.abs(numbers[0][i] - numbers[1][i]);
      if (!Double.isNaN(difference)) {
        sum += ranges[i] > 0 ? difference / ranges[i] : 0;
        shared++;
      }
    }
    for (int i = 0; i < words[0].length; i++) {
      if (words[0][i] != null && words[1][i] != null) {
        sum += words[0][i].equals(words[1][i]) ? 0 : 1;
        shared++;
      }
    }
    return shared == 0 ? Double.NaN : sum / shared;
  }
}
