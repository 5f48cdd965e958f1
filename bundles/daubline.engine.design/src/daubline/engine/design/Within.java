package daubline.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/** What changes within a furnace and what only from one to the next. */
public final class Within {

  private static final double SAME = 1e-9;

  private Within() {
  }

  /** Whether these columns are the same for all trials of a group, and some group has more than one trial. */
  public static boolean between(double[][] x, int[] columns, int[] groups) {
    boolean shared = false;
    for (int i = 0; i < groups.length; i++) {
      for (int j = 0; j < i; j++) {
        if (groups[i] == groups[j]) {
          shared = true;
          for (int c : columns) {
            if (Math.abs(x[i][c] - x[j][c]) > SAME) {
              return false;
            }
          }
        }
      }
    }
    return shared;
  }

  /** A column of zeros and ones for each group. */
  public static List<double[]> indicators(int[] groups) {
    LinkedHashSet<Integer> ids = new LinkedHashSet<>();
    for (int g : groups) {
      ids.add(g);
    }
    List<double[]> columns = new ArrayList<>();
    for (int id : ids) {
      double[] column = new double[groups.length];
      for (int i = 0; i < column.length; i++) {
        column[i] = groups[i] == id ? 1 : 0;
      }
      columns.add(column);
    }
    return columns;
  }
}
