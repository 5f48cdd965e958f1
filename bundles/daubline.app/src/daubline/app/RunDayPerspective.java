package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** The day of the fire. */
public final class RunDayPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.76f, layout.getEditorArea());
    below.addView(Parts.CHECKS);
    IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.68f, layout.getEditorArea());
    right.addView(Parts.SAFETY);
    right.addView(Parts.WHERE_FROM);
  }
}
