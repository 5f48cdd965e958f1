package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** What was built, fired and found, beside the evidence. */
public final class RecordPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.76f, layout.getEditorArea());
    below.addView(Parts.CHECKS);
    below.addView(Parts.REASONS);
    IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.68f, layout.getEditorArea());
    right.addView(Parts.WHERE_FROM);
    right.addView(Parts.FIGURES);
  }
}
