package daubline.ui.views;

import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import daubline.ui.study.WhenSeen;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

/** A view of the current study: told whenever a study was changed, worked out or made current. */
public abstract class StudyPart extends ViewPart {

  private final Runnable refresher = this::refresh;
  private Composite parent;
  private WhenSeen seen;

  @Override
  public final void createPartControl(Composite area) {
    parent = area;
    fill(area);
    seen = new WhenSeen(this, this::showNow);
    Studies.get().onChange(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(area, "daubline.help." + getSite().getId().replaceFirst(".*\\.", ""));
    show(study());
  }

  private void refresh() {
    if (isAwake()) {
      showNow();
    } else {
      seen.ask();
    }
  }

  private void showNow() {
    if (!parent.isDisposed()) {
      show(study());
    }
  }

  /** Whether it must follow every change even where nobody sees the view itself, as when it feeds a window of its own. */
  protected boolean isAwake() {
    return false;
  }

  /** The current study. */
  protected final Optional<OpenStudy> study() {
    return Studies.get().current();
  }

  /** Makes the controls. */
  protected abstract void fill(Composite area);

  /** Shows a study, or that none is open. */
  protected abstract void show(Optional<OpenStudy> study);

  @Override
  public void dispose() {
    Studies.get().remove(refresher);
    seen.dispose();
    super.dispose();
  }
}
