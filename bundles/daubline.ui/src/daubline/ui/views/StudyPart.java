package daubline.ui.views;

import daubline.ui.study.OpenStudy;
import daubline.ui.study.Studies;
import java.util.Optional;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.part.ViewPart;

/** A view of the current study: told whenever a study was changed, worked out or made current. */
public abstract class StudyPart extends ViewPart {

  private final Runnable refresher = this::refreshIfShown;
  private Composite parent;

  @Override
  public final void createPartControl(Composite area) {
    parent = area;
    fill(area);
    Studies.get().onChange(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(area, "daubline.help." + getSite().getId().replaceFirst(".*\\.", ""));
    show(study());
  }

  private void refreshIfShown() {
    if (!parent.isDisposed()) {
      show(study());
    }
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
    super.dispose();
  }
}
