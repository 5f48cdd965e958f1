package daubline.benchmarks;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.Snapshots;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.StudySnapshot;
import daubline.engine.inference.Progress;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The whole comparison of a real study, from snapshot to results. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class ComparisonBenchmark {

  @Param({"1", "2"})
  private int threads;

  @Param({"1000", "10000"})
  private int draws;

  private StudySnapshot snapshot;

  /** Reads the study once. */
  @Setup
  public void read() throws Exception {
    try (StudySession session = StudySession.read(Path.of(System.getProperty("study", "seeds/open-smelts")))) {
      snapshot = Snapshots.of(session);
    }
  }

  /** Every trial against every sheet. */
  @Benchmark
  public StudyResults compareAll() {
    ComparisonOptions standard = ComparisonOptions.standard();
    ComparisonOptions options = new ComparisonOptions(true, List.of(), List.of(), draws, standard.seed(), threads);
    return StudyComparison.of(snapshot, List.of(), options, Progress.NONE);
  }
}
