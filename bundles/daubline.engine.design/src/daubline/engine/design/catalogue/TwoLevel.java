package daubline.engine.design.catalogue;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import java.util.ArrayList;
import java.util.List;

/** Turns tables of −1, 0 and +1 into designs. */
final class TwoLevel {

  private TwoLevel() {
  }

  /** The design; centre trials spread the categories evenly, since a category has no middle. */
  static Design design(String name, List<Factor> factors, int[][] signs, int centres, List<String> notes) {
    check(factors, signs[0].length);
    List<double[]> settings = new ArrayList<>();
    for (int[] row : signs) {
      double[] setting = new double[factors.size()];
      for (int j = 0; j < setting.length; j++) {
        setting[j] = factors.get(j).isCategory() ? (row[j] > 0 ? 1 : 0) : row[j];
      }
      settings.add(setting);
    }
    for (int c = 0; c < centres; c++) {
      double[] setting = new double[factors.size()];
      for (int j = 0; j < setting.length; j++) {
        setting[j] = factors.get(j).isCategory() ? c % 2 : 0;
      }
      settings.add(setting);
    }
    return Design.independent(name + (centres > 0 ? " with " + centres + " centre trials" : ""), factors,
        settings.toArray(double[][]::new), notes.toArray(String[]::new));
  }

  private static void check(List<Factor> factors, int columns) {
    if (factors.size() != columns) {
      throw new IllegalArgumentException("the table has " + columns + " columns for " + factors.size() + " factors");
    }
    for (Factor f : factors) {
      if (f.isCategory() && f.names().size() > 2) {
        throw new IllegalArgumentException("factor " + f.name() + " has " + f.names().size() + " categories; this "
            + "design takes two, so leave one out or choose an optimal design");
      }
    }
  }
}
