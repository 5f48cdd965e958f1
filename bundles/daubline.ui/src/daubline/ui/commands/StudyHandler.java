package daubline.ui.commands;

import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;

/** A command on the current study, enabled only when it can succeed. */
abstract class StudyHandler extends AbstractHandler {

  private final Runnable listener = this::refresh;

  StudyHandler() {
    Studies.get().onChange(listener);
    refresh();
  }

  private void refresh() {
    setBaseEnabled(Studies.get().current().filter(this::can).isPresent());
    noticeState();
  }

  /** Told after each change of the studies; for handlers whose label changes. */
  void noticeState() {
    // most labels stay the same
  }

  /** Whether it can do anything for this study now. */
  boolean can(OpenStudy study) {
    return true;
  }

  @Override
  public final Object execute(ExecutionEvent event) throws ExecutionException {
    Studies.get().current().filter(this::can).ifPresent(this::run);
    return null;
  }

  abstract void run(OpenStudy study);

  @Override
  public void dispose() {
    Studies.get().remove(listener);
    super.dispose();
  }
}
