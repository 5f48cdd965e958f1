package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** The day of the fire: clock, keys and totals take the room of the editors; what is safe stands beside them. */
public final class RunDayPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.74f, layout.getEditorArea());
    right.addView(Parts.SAFETY);
    right.addView(Parts.CHECKS);
    layout.addView(Parts.RUN_DAY, IPageLayout.TOP, 0.9f, layout.getEditorArea());
    layout.setEditorAreaVisible(false);
  }
}
