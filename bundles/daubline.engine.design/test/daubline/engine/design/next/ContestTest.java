package daubline.engine.design.next;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.engine.design.next.Contest.Claimant;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What one more trial would teach about which reconstruction holds, against Bayes' rule by hand and by simulation. */
class ContestTest {

  private static Contest contest(double evidence, int trials) {
    return new Contest(evidence, 15, 20, List.of(new Claimant("shaft", trials, 313), new Claimant("pit", 3, 264)));
  }

  @Test
  void beliefIsBayesRule() {
    // Bayes' rule by hand: variances 400·(1 + 1/5) + 225 = 705 and 400·(1 + 1/3) + 225 = 758.3; densities ∝ exp(−23²/1410)/√705, exp(−26²/1516.7)/√758.3
    double shaft = Math.exp(-529.0 / 1410) / Math.sqrt(705);
    double pit = Math.exp(-676 / 1516.6667) / Math.sqrt(758.33333);
    assertArrayEquals(new double[] {shaft / (shaft + pit), pit / (shaft + pit)}, contest(290, 5).beliefs(), 1e-6);
  }

  @Test
  void theTrialLeastKnownTeachesMost() {
    assertTrue(contest(290, 12).lesson(1).bits() > contest(290, 12).lesson(0).bits(), "the pit was burnt three times only");
    assertTrue(contest(290, 5).lesson(1).bits() > new Contest(290, 15, 20, List.of(new Claimant("shaft", 5, 313), new Claimant("pit", 30, 264))).lesson(1).bits());
    Contest.Lesson lesson = contest(290, 5).lesson(1);
    assertTrue(lesson.afterHigh()[1] > contest(290, 5).beliefs()[1] && lesson.afterLow()[1] < contest(290, 5).beliefs()[1], "nearer to 290 mm speaks for the pit");
    assertTrue(lesson.bits() > 0 && lesson.bits() < 1);
  }

  /** The information of a lesson is that of drawn worlds: which holds, its middle, the excavated value, the next trial. */
  @Test
  void expectedInformationAgreesWithDrawnWorlds() {
    Contest contest = contest(290, 5);
    double[] now = contest.beliefs();
    java.util.random.RandomGenerator random = new SplittableRandom(5);
    double sum = 0;
    int draws = 200_000;
    for (int i = 0; i < draws; i++) {
      boolean holds = random.nextDouble() < now[1];
      // the middle of the pit given its three trials, and given the excavated value too where it holds: precision 3/400 and 1/625
      double precision = 3 / 400.0 + (holds ? 1 / 625.0 : 0);
      double mean = (3 / 400.0 * 264 + (holds ? 290 / 625.0 : 0)) / precision;
      double next = mean + random.nextGaussian() / Math.sqrt(precision) + 20 * random.nextGaussian();
      double[] after = new Contest(290, 15, 20, List.of(new Claimant("shaft", 5, 313), new Claimant("pit", 4, (3 * 264 + next) / 4))).beliefs();
      sum += Math.log(after[holds ? 1 : 0] / now[holds ? 1 : 0]) / Math.log(2);
    }
    assertEquals(sum / draws, contest.lesson(1).bits(), 0.003);
  }

  @Test
  void nothingIsWeighedWithoutScatter() {
    assertThrows(IllegalArgumentException.class, () -> new Contest(1, 0, 0, List.of(new Claimant("a", 1, 1), new Claimant("b", 1, 2))));
  }
}
