package daubline.session;

import org.eclipse.emf.common.command.AbstractCommand;
import org.eclipse.emf.ecore.change.ChangeDescription;
import org.eclipse.emf.ecore.change.util.ChangeRecorder;
import org.eclipse.emf.ecore.resource.ResourceSet;

/** One named change of the study, recorded while it happens: it can be undone whatever it touched. */
final class Change extends AbstractCommand {

  private final ResourceSet study;
  private final Runnable steps;
  private final Runnable afterwards;
  private ChangeDescription recorded;

  Change(String label, ResourceSet study, Runnable steps, Runnable afterwards) {
    super(label);
    this.study = study;
    this.steps = steps;
    this.afterwards = afterwards;
  }

  @Override
  protected boolean prepare() {
    return true;
  }

  /** Does the steps; if one fails, what the others did is taken back. */
  @Override
  public void execute() {
    ChangeRecorder recorder = new ChangeRecorder(study);
    boolean done = false;
    try {
      steps.run();
      afterwards.run();
      done = true;
    } finally {
      recorded = recorder.endRecording();
      recorder.dispose();
      if (!done) {
        recorded.apply();
      }
    }
  }

  /** Whether anything was changed at all. */
  boolean isEmpty() {
    return recorded.getObjectChanges().isEmpty() && recorded.getResourceChanges().isEmpty();
  }

  ChangeDescription recorded() {
    return recorded;
  }

  @Override
  public void undo() {
    recorded.applyAndReverse();
  }

  @Override
  public void redo() {
    recorded.applyAndReverse();
  }
}
