package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class DissimilarityTest {

  /** Gower 1971 by hand: (20/90 + 100/450 + 0.2/1.5 + 0 + 1) / 5. */
  @Test
  void mixedColumns() {
    double[][] numbers = {{90, 300, 1}, {110, 400, 1.2}};
    String[][] words = {{"bog", "clay"}, {"bog", "stone"}};
    assertEquals(0.315555556, Dissimilarity.gower(numbers, new double[] {90, 450, 1.5}, words), 1e-9);
    double[][] missing = {{90, Double.NaN}, {110, 400}};
    assertEquals(20 / 90.0, Dissimilarity.gower(missing, new double[] {90, 450}, new String[][] {{null}, {"a"}}), 1e-12);
    assertTrue(Double.isNaN(Dissimilarity.gower(new double[][] {{Double.NaN}, {1}}, new double[] {1}, new String[2][0])));
  }

  /** Points 0, 1, 5 and 7 on a line: complete linkage merges at 1, 2 and 7. */
  @Test
  void completeLinkage() {
    double[] x = {0, 1, 5, 7};
    double[][] d = new double[4][4];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        d[i][j] = Math.abs(x[i] - x[j]);
      }
    }
    Clusters clusters = Clusters.of(d, Clusters.Linkage.COMPLETE);
    assertEquals(List.of(1.0, 2.0, 7.0), clusters.heights());
    assertEquals(List.of(List.of(0, 1), List.of(2, 3)), clusters.cut(2));
    assertEquals(List.of(List.of(0, 1), List.of(2), List.of(3)), clusters.cutAt(1.5));
  }
}
