package daubline.ui.compare;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyRanking;
import daubline.analysis.StudyRepeats;
import daubline.analysis.StudySnapshot;
import daubline.analysis.Target;
import daubline.analysis.TrialData;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Progress;
import daubline.engine.inference.Ranking;
import daubline.ui.Words;
import daubline.ui.study.Compared;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.IJobChangeEvent;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.jobs.JobChangeAdapter;
import org.eclipse.swt.widgets.Display;

/** Ranks the trials against one target behind, and compares repeats with each other; can be watched and stopped. */
final class RankJob extends Job {

  /**
   * What came out.
   *
   * @param ranking the order and how far it can be relied on
   * @param equal different recipes that agree equally well
   * @param repeats how far repeats differ
   * @param among the comparisons of the trials of each recipe with each other
   */
  record Outcome(Ranking ranking, Equifinality equal, StudyRepeats repeats, List<List<Comparison>> among) {
  }

  private final Compared compared;
  private final Target target;
  private final IntConsumer percent;
  private volatile Outcome outcome;

  /**
   * A job.
   *
   * @param done takes the outcome, null when it was stopped, on the window's thread
   * @param percent told how far it has come, on the window's thread
   */
  RankJob(Compared compared, Target target, Consumer<Outcome> done, IntConsumer percent) {
    super(Words.of("ranks.reckoning", target.sheet().name()));
    this.compared = compared;
    this.target = target;
    this.percent = percent;
    setPriority(LONG);
    // a job that is stopped before it runs ends too
    addJobChangeListener(new JobChangeAdapter() {
      @Override
      public void done(IJobChangeEvent event) {
        Display.getDefault().asyncExec(() -> done.accept(outcome));
      }
    });
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    monitor.beginTask(getName(), 100);
    try {
      Outcome worked = workOut(new Watched(monitor));
      if (!monitor.isCanceled()) {
        outcome = worked;
        return Status.OK_STATUS;
      }
    } catch (CancellationException e) {
      // stopped as asked
    } finally {
      monitor.done();
    }
    return Status.CANCEL_STATUS;
  }

  private Outcome workOut(Progress progress) {
    StudySnapshot snapshot = compared.results().snapshot();
    ComparisonOptions options = compared.options();
    Ranking ranking = StudyRanking.of(snapshot, options, target, progress);
    StudyRepeats repeats = StudyRepeats.of(snapshot, options);
    List<List<Comparison>> among = new ArrayList<>();
    for (List<TrialData> recipe : repeats.recipes()) {
      among.add(StudyRepeats.among(snapshot, options, recipe, new Stopped(progress)));
    }
    return new Outcome(ranking, StudyRanking.equallyGood(snapshot, ranking), repeats, among);
  }

  /** Passes on whether to stop, but no progress: the last, short part of the work. */
  private record Stopped(Progress progress) implements Progress {
    @Override
    public void done(int part, int all) {
      // short
    }

    @Override
    public boolean isCancelled() {
      return progress.isCancelled();
    }
  }

  private final class Watched implements Progress {
    private final IProgressMonitor monitor;
    private int told;

    Watched(IProgressMonitor monitor) {
      this.monitor = monitor;
    }

    @Override
    public synchronized void done(int part, int all) {
      int now = all == 0 ? 0 : 100 * part / all;
      if (now > told) {
        monitor.worked(now - told);
        told = now;
        Display.getDefault().asyncExec(() -> percent.accept(now));
      }
    }

    @Override
    public boolean isCancelled() {
      return monitor.isCanceled();
    }
  }
}
