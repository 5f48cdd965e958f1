package daubline.session;

import java.time.Instant;
import java.util.List;
import java.util.function.Consumer;
import org.eclipse.emf.common.command.AbstractCommand;

/** One named change of the study, noted while it happens: it can be undone whatever it touched. */
final class Change extends AbstractCommand {

  private final Recorder recorder;
  private final Runnable doing;
  private final Consumer<Object> inspector;
  private final boolean undoable;
  private final Instant at = Instant.now();
  private List<Step> steps = List.of();

  /**
   * A change.
   *
   * @param inspector looks at each value and object that came in; it may complete it or refuse it by an exception
   * @param undoable whether a person may take it back later
   */
  Change(String label, Recorder recorder, Runnable doing, Consumer<Object> inspector, boolean undoable) {
    super(label);
    this.recorder = recorder;
    this.doing = doing;
    this.inspector = inspector;
    this.undoable = undoable;
  }

  @Override
  protected boolean prepare() {
    return true;
  }

  /** Does it; if a step fails or what came in is refused, everything is taken back. */
  @Override
  public void execute() {
    boolean done = false;
    recorder.begin();
    try {
      doing.run();
      steps = recorder.end();
      steps.forEach(step -> step.arrivals().forEach(inspector));
      done = true;
    } finally {
      if (!done) {
        steps = steps.isEmpty() ? recorder.end() : steps;
        undo();
      }
    }
  }

  /** When it was made. */
  Instant at() {
    return at;
  }

  /** What it did, in order. */
  List<Step> steps() {
    return steps;
  }

  @Override
  public boolean canUndo() {
    return undoable;
  }

  @Override
  public void undo() {
    for (int i = steps.size() - 1; i >= 0; i--) {
      steps.get(i).undo();
    }
  }

  @Override
  public void redo() {
    steps.forEach(Step::redo);
  }
}
