package daubline.ui.study;

import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.IWorkbenchPartReference;

/**
 * Shows what changed in a part only while a person can see it. What changes meanwhile is shown once, as soon as the part comes to
 * the front: parts that nobody sees must not keep the window busy after every typed value.
 */
public final class WhenSeen implements IPartListener2 {

  private final IWorkbenchPart part;
  private final Runnable action;
  private boolean isOld;

  /** Listens until it is disposed. */
  public WhenSeen(IWorkbenchPart part, Runnable action) {
    this.part = part;
    this.action = action;
    part.getSite().getPage().addPartListener(this);
  }

  /** Runs the action now, or when the part is seen again. */
  public void ask() {
    if (part.getSite().getPage().isPartVisible(part)) {
      isOld = false;
      action.run();
    } else {
      isOld = true;
    }
  }

  @Override
  public void partVisible(IWorkbenchPartReference reference) {
    if (isOld && reference.getPart(false) == part) {
      isOld = false;
      action.run();
    }
  }

  /** Ends listening. */
  public void dispose() {
    part.getSite().getPage().removePartListener(this);
  }
}
