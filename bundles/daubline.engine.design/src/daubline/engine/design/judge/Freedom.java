package daubline.engine.design.judge;

import daubline.engine.design.Design;
import daubline.engine.design.Within;
import daubline.engine.stats.LeastSquares;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The degrees of freedom left for the error between trials, between furnaces and between days.
 *
 * @param trials between the trials of a furnace and day
 * @param furnaces between furnaces
 * @param days between days
 * @param ofColumn for each column of the model the freedom of the error that judges it
 * @param stratum for each column what it changes with: "trial", "furnace" or "day"
 */
public record Freedom(int trials, int furnaces, int days, int[] ofColumn, List<String> stratum) {

  /**
   * Counts them. A column the same for all trials of a furnace is judged between furnaces, likewise for days when days
   * count as a stratum.
   *
   * @param useDays whether days resemble themselves
   */
  public static Freedom of(Design design, double[][] x, boolean useDays) {
    int p = x[0].length;
    boolean useFurnaces = design.sharesFurnaces();
    List<String> stratum = new ArrayList<>();
    for (int c = 0; c < p; c++) {
      int[] one = {c};
      boolean furnace = useFurnaces && Within.between(x, one, design.furnaces());
      boolean day = useDays && Within.between(x, one, design.days());
      stratum.add(furnace || c == 0 && useFurnaces ? "furnace" : day ? "day" : "trial");
    }
    int furnaces = useFurnaces ? between(x, stratum, "furnace", design.furnaces()) : 0;
    int days = useDays ? between(x, stratum, "day", design.days()) : 0;
    int trials = inside(design, x, useFurnaces, useDays);
    int[] of = stratum.stream().mapToInt(s -> s.equals("furnace") ? furnaces : s.equals("day") ? days : trials).toArray();
    return new Freedom(trials, furnaces, days, of, List.copyOf(stratum));
  }

  private static int between(double[][] x, List<String> stratum, String which, int[] groups) {
    int count = (int) Arrays.stream(groups).distinct().count();
    double[][] part = Arrays.stream(x).map(row -> {
      double[] kept = new double[row.length];
      for (int c = 0; c < row.length; c++) {
        kept[c] = c == 0 || stratum.get(c).equals(which) ? row[c] : 0;
      }
      return kept;
    }).toArray(double[][]::new);
    return Math.max(0, count - LeastSquares.rank(part));
  }

  private static int inside(Design design, double[][] x, boolean useFurnaces, boolean useDays) {
    List<double[]> columns = new ArrayList<>();
    if (useFurnaces) {
      columns.addAll(Within.indicators(design.furnaces()));
    }
    if (useDays) {
      columns.addAll(Within.indicators(design.days()));
    }
    columns.addAll(Arrays.asList(daubline.engine.stats.Matrices.transpose(x)));
    return x.length - LeastSquares.rank(daubline.engine.stats.Matrices.transpose(columns.toArray(double[][]::new)));
  }
}
