package daubline.ui.study;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.Snapshots;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudyResults;
import daubline.analysis.StudySnapshot;
import daubline.analysis.checks.Checks;
import daubline.base.Finding;
import daubline.engine.inference.Progress;
import daubline.session.StudyException;
import daubline.session.StudyImage;
import daubline.session.StudySession;
import daubline.ui.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Checks and compares a study behind, on a picture of it; starts again when the study changes meanwhile. */
final class ResultsJob extends Job {

  private static final long REST_MILLIS = 20;

  private final OpenStudy study;
  private volatile StudyImage image;
  private volatile Optional<StudyResults> before = Optional.empty();

  ResultsJob(OpenStudy study) {
    super(Words.of("job.results", study.folder().getFileName()));
    this.study = study;
    setPriority(DECORATE);
  }

  /** Takes a new picture of the study and begins anew after a short rest, so that typing on does not pile up work. */
  void restart() {
    image = study.session().image();
    before = study.results();
    cancel();
    schedule(REST_MILLIS);
  }

  void stop() {
    image = null;
    cancel();
  }

  boolean isIdle() {
    return getState() == Job.NONE && image == null;
  }

  @Override
  protected IStatus run(IProgressMonitor monitor) {
    StudyImage taken = image;
    if (taken == null) {
      return Status.CANCEL_STATUS;
    }
    try (StudySession copy = taken.read()) {
      Outcome outcome = workOut(copy, monitor);
      if (monitor.isCanceled() || taken != image) {
        return Status.CANCEL_STATUS;
      }
      Display.getDefault().asyncExec(() -> hand(outcome, taken));
      return Status.OK_STATUS;
    } catch (CancellationException e) {
      return Status.CANCEL_STATUS;
    } catch (StudyException e) {
      return Status.warning(e.getMessage(), e);
    }
  }

  /** What was worked out: for publication against each sheet, and against what the person chose. */
  private record Outcome(StudyResults results, Compared compared) {
  }

  /** Checks and compares; with settings that cannot be read there are the checks, but no comparison. */
  private Outcome workOut(StudySession copy, IProgressMonitor monitor) {
    StudySnapshot snapshot = Snapshots.of(copy);
    List<Finding> checks = Checks.run(copy);
    ComparisonOptions asked = Comparing.options();
    try {
      StudyResults usual = StudyComparison.of(snapshot, checks, ComparisonOptions.standard(), before, new Watched(monitor));
      StudyResults chosen = asked.equals(ComparisonOptions.standard()) ? usual : StudyComparison.of(snapshot, checks, asked, new Watched(monitor));
      return new Outcome(usual, Compared.of(chosen, asked));
    } catch (IllegalArgumentException e) {
      List<Finding> all = new ArrayList<>(checks);
      all.add(0, Finding.error("comparison.settings", copy.folder().toString(), String.valueOf(e.getMessage()), Words.of("job.settings.remedy")));
      StudyResults none = new StudyResults(snapshot, asked, List.of(), all);
      return new Outcome(none, new Compared(none, asked, List.of(), snapshot.settings()));
    }
  }

  private void hand(Outcome outcome, StudyImage taken) {
    if (taken == image) {
      image = null;
      study.put(outcome.results(), outcome.compared());
    }
  }

  private record Watched(IProgressMonitor monitor) implements Progress {
    @Override
    public void done(int part, int all) {
      // the work is short; the progress view shows that it runs
    }

    @Override
    public boolean isCancelled() {
      return monitor.isCanceled();
    }
  }
}
