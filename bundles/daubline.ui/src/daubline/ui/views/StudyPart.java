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
  private Veil veil;
  private WhenSeen seen;

  @Override
  public final void createPartControl(Composite area) {
    parent = area;
    veil = new Veil(area);
    fill(veil.body());
    seen = new WhenSeen(this, this::showNow);
    Studies.get().onChange(refresher);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(area, "daubline.help." + getSite().getId().replaceFirst(".*\\.", ""));
    showNow();
  }

  /** The veil falls and lifts at once, so that nothing hidden is there when a view comes to the front. */
  private void refresh() {
    cover();
    if (isAwake()) {
      showNow();
    } else {
      seen.ask();
    }
  }

  private void showNow() {
    if (!parent.isDisposed()) {
      cover();
      show(study());
    }
  }

  private void cover() {
    if (!parent.isDisposed()) {
      veil.fall(isShownBlind() ? Optional.empty() : Studies.get().current());
    }
  }

  /** Whether it must follow every change even where nobody sees the view itself, as when it feeds a window of its own. */
  protected boolean isAwake() {
    return false;
  }

  /** The current study; none while somebody records blind and this view would show run or evidence. */
  protected final Optional<OpenStudy> study() {
    return Studies.get().current().filter(s -> isShownBlind() || s.blind().isEmpty());
  }

  /** Whether it shows neither run nor evidence, so that it may be seen while somebody records blind. */
  protected boolean isShownBlind() {
    return false;
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
