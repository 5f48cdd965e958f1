package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** The day of the fire: clock, keys and totals take the room of the editors; what is safe stands beside them. */
public final class RunDayPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    IFolderLayout day = layout.createFolder("day", IPageLayout.TOP, WITH_SHEETS, layout.getEditorArea());
    day.addView(Parts.RUN_DAY);
    // what is safe stays in sight whatever the size of the writing
    IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.74f, Parts.RUN_DAY);
    right.addView(Parts.SAFETY);
    (isNarrow() ? day : right).addView(Parts.CHECKS);
    onCall(right);
    layout.setEditorAreaVisible(false);
  }
}
