package daubline.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.Snapshots;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.StudySnapshot;
import daubline.analysis.checks.Checks;
import daubline.base.Amount;
import daubline.base.Finding;
import daubline.engine.inference.Progress;
import daubline.model.Claim;
import daubline.session.Readings;
import daubline.session.StudyImage;
import daubline.session.StudySession;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * How long the results of a study take after one cell was edited, on the way the window takes: picture, second copy, snapshot,
 * checks, comparison of what changed. Every edit is also compared anew from nothing, and both must be equal. On the clock and in
 * processor time of the whole process, in which a busy machine is felt less. Usage: EditTimes STUDY
 */
public final class EditTimes {

  private static final int EDITS = 40;
  private static final String[] STEPS = {"picture", "copy", "snapshot", "checks", "comparison"};
  private static final OperatingSystemMXBean SYSTEM = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private static Optional<StudyResults> before = Optional.empty();

  private EditTimes() {
  }

  /** Prints median and worst of each step. */
  public static void main(String[] arguments) throws Exception {
    double[][] millis = new double[STEPS.length + 2][EDITS];
    try (StudySession session = StudySession.read(Path.of(arguments[0]))) {
      List<Claim> claims = session.study().getSeries().get(0).getTrials().stream().filter(t -> t.getRemains() != null)
          .flatMap(t -> t.getRemains().getClaims().stream()).filter(c -> Readings.amount(c).isNumber()).toList();
      for (int i = -EDITS; i < EDITS; i++) {
        Claim claim = claims.get(Math.floorMod(i, claims.size()));
        Amount before = Readings.amount(claim);
        double factor = i % 2 == 0 ? 1.01 : 0.99;
        session.edit("Edit", () -> Readings.put(claim, Amount.plusMinus(before.value() * factor, before.sigmaOr(0))));
        double[] one = update(session);
        for (int s = 0; i >= 0 && s < one.length; s++) {
          millis[s][i] = one[s];
        }
      }
    }
    for (int s = 0; s < millis.length; s++) {
      Arrays.sort(millis[s]);
      System.out.printf(Locale.ROOT, "%-11s median %6.1f ms, worst of %d %6.1f ms%n", s < STEPS.length ? STEPS[s] : s == STEPS.length ? "altogether" : "processor", millis[s][EDITS / 2], EDITS,
          millis[s][EDITS - 1]);
    }
  }

  private static double[] update(StudySession session) throws Exception {
    long[] at = new long[STEPS.length + 1];
    long processor = SYSTEM.getProcessCpuTime();
    at[0] = System.nanoTime();
    StudyImage image = session.image();
    at[1] = System.nanoTime();
    try (StudySession copy = image.read()) {
      at[2] = System.nanoTime();
      StudySnapshot snapshot = Snapshots.of(copy);
      at[3] = System.nanoTime();
      List<Finding> checks = Checks.run(copy);
      at[4] = System.nanoTime();
      StudyResults results = StudyComparison.of(snapshot, checks, ComparisonOptions.standard(), before, Progress.NONE);
      at[5] = System.nanoTime();
      processor = SYSTEM.getProcessCpuTime() - processor;
      if (!results.comparisons().equals(StudyComparison.of(snapshot, checks, ComparisonOptions.standard(), Progress.NONE).comparisons())) {
        throw new IllegalStateException("what was kept differs from what is worked out anew");
      }
      before = Optional.of(results);
    }
    double[] millis = new double[STEPS.length + 2];
    millis[STEPS.length + 1] = processor / 1e6;
    for (int s = 0; s < STEPS.length; s++) {
      millis[s] = (at[s + 1] - at[s]) / 1e6;
      millis[STEPS.length] += millis[s];
    }
    return millis;
  }
}
