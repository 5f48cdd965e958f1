package daubline.engine.stats;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RankAcceptabilityTest {

  private static final int DRAWS = 200_000;

  /** Closed form of Lahdelma & Salminen 2001 for two alternatives under uniform weights. */
  @Test
  void closedForm() {
    assertEquals(0.6, RankAcceptability.exactWin(new double[] {0.3, -0.2}), 1e-12);
    assertEquals(0.533333333333, RankAcceptability.exactWin(new double[] {0.4, -0.1, -0.2}), 1e-10);
    assertEquals(0.421527777777, RankAcceptability.exactWin(new double[] {0.5, 0.1, -0.4, -0.3}), 1e-8);
    assertEquals(0.302521008, RankAcceptability.exactWin(new double[] {0.6, -0.1, -0.2, -0.3, -0.25}), 1e-8);
  }

  /** Drawn uniform weights against the closed form. */
  @Test
  void drawnWeightsApproachTheClosedForm() {
    double[] differences = {0.5, 0.1, -0.4, -0.3};
    double[][] weights = weights(4);
    double[][] values = new double[2][DRAWS];
    for (int m = 0; m < DRAWS; m++) {
      for (int c = 0; c < 4; c++) {
        values[0][m] += weights[m][c] * differences[c];
      }
    }
    assertEquals(0.4215277, RankAcceptability.of(values).win(0, 1), 0.005);
  }

  /** Three trials on three criteria; exact first-rank shares .4 .3 .3, the rest from 4 million draws in R. */
  @Test
  void threeByThree() {
    double[][] table = {{0.9, 0.2, 0.4}, {0.5, 0.6, 0.5}, {0.2, 0.9, 0.3}};
    double[][] weights = weights(3);
    double[][] values = new double[3][DRAWS];
    for (int t = 0; t < 3; t++) {
      for (int m = 0; m < DRAWS; m++) {
        for (int c = 0; c < 3; c++) {
          values[t][m] += weights[m][c] * table[t][c];
        }
      }
    }
    RankAcceptability ranks = RankAcceptability.of(values);
    double tolerance = 0.005;
    assertEquals(0.4, ranks.acceptability(0)[0], tolerance);
    assertEquals(0.3, ranks.acceptability(1)[0], tolerance);
    assertEquals(0.3, ranks.acceptability(2)[0], tolerance);
    assertEquals(0.164, ranks.acceptability(0)[1], tolerance);
    assertEquals(0.699, ranks.acceptability(1)[1], tolerance);
    assertEquals(0.137, ranks.acceptability(2)[1], tolerance);
    assertArrayEquals(new double[] {0.5666, 0.1669, 0.2665}, ranks.centralWeights(0, weights), tolerance);
    assertArrayEquals(new double[] {0.1891, 0.2556, 0.5553}, ranks.centralWeights(1, weights), tolerance);
    assertArrayEquals(new double[] {0.1668, 0.6333, 0.1999}, ranks.centralWeights(2, weights), tolerance);
  }

  /**
   * Heparin against enoxaparin: proximal and distal thrombosis and major bleeding of 136 and 129 patients, Geerts et al. 1996,
   * New England Journal of Medicine 335, 701–707, as beta distributions of the counts on scales of 0–25, 15–40 and 0–10 per
   * cent. Expected figures: acceptabilities and central weights of the 10 000 draws stored with the R package smaa 0.3-3
   * (Heparin, Enoxaparin), which these distributions reproduce; three standard errors of 10 000 draws are 0.015.
   */
  @Test
  void publishedDrugs() {
    int[][] events = {{20, 40, 1}, {8, 32, 5}};
    int[] patients = {136, 129};
    double[][] scales = {{0, 0.25}, {0.15, 0.40}, {0, 0.10}};
    double[][] weights = weights(3);
    double[][] uniform = new double[2][DRAWS];
    double[][] fixed = new double[2][DRAWS];
    double[] given = {0.5, 0.2, 0.3};
    RandomStream stream = new RandomStream(RandomStream.key(12, "drugs"));
    for (int m = 0; m < DRAWS; m++) {
      for (int drug = 0; drug < 2; drug++) {
        for (int c = 0; c < 3; c++) {
          double rate = stream.dirichlet(new double[] {events[drug][c], patients[drug] - events[drug][c]})[0];
          double value = (scales[c][1] - rate) / (scales[c][1] - scales[c][0]);
          uniform[drug][m] += weights[m][c] * value;
          fixed[drug][m] += given[c] * value;
        }
      }
    }
    RankAcceptability ranks = RankAcceptability.of(uniform);
    assertEquals(0.3504, ranks.acceptability(0)[0], 0.015);
    assertEquals(0.6496, ranks.acceptability(1)[0], 0.015);
    assertArrayEquals(new double[] {0.18650974, 0.27722047, 0.53626979}, ranks.centralWeights(0, weights), 0.012);
    assertEquals(0.1279, RankAcceptability.of(fixed).acceptability(0)[0], 0.012);
    assertEquals(0.8721, RankAcceptability.of(fixed).win(1, 0), 0.012);
  }

  /** Alternatives of equal values in every draw share every rank alike, and shares are those of a square table, over seeded cases. */
  @Test
  void duplicatesAreAlike() {
    RandomStream r = new RandomStream(RandomStream.key(13, "duplicates"));
    for (int i = 0; i < 10_000; i++) {
      int n = 3 + r.below(4);
      double[][] values = new double[n][20];
      for (double[] row : values) {
        Arrays.setAll(row, m -> r.below(5));
      }
      int twin = 1 + r.below(n - 1);
      values[twin] = values[0].clone();
      RankAcceptability ranks = RankAcceptability.of(values);
      assertArrayEquals(ranks.acceptability(0), ranks.acceptability(twin), 1e-12);
      assertEquals(0.5, ranks.win(0, twin), 1e-12);
      assertEquals(ranks.acceptability(twin)[0], RankAcceptability.first(values, twin), 1e-12);
      for (int rank = 0; rank < n; rank++) {
        double sum = 0;
        for (int a = 0; a < n; a++) {
          sum += ranks.acceptability(a)[rank];
        }
        assertEquals(1, sum, 1e-9);
      }
    }
  }

  @Test
  void equalValuesShareTheirRanks() {
    RankAcceptability ranks = RankAcceptability.of(new double[][] {{2, 1}, {2, 3}, {1, 0}});
    assertArrayEquals(new double[] {0.25, 0.75, 0}, ranks.acceptability(0), 1e-12);
    assertArrayEquals(new double[] {0.75, 0.25, 0}, ranks.acceptability(1), 1e-12);
    assertEquals(0.25, ranks.win(0, 1), 1e-12);
  }

  private static double[][] weights(int criteria) {
    RandomStream stream = new RandomStream(RandomStream.key(11, "weights"));
    double[] ones = new double[criteria];
    Arrays.fill(ones, 1);
    double[][] weights = new double[DRAWS][];
    for (int m = 0; m < DRAWS; m++) {
      weights[m] = stream.dirichlet(ones);
    }
    return weights;
  }
}
