package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** What was built, fired and found, beside the evidence; the tables take the whole width. */
public final class RecordPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, middle(0.78f), layout.getEditorArea());
    below.addView(Parts.CHECKS);
    onCall(below);
    below.addView(Parts.WHERE_FROM);
    below.addView(Parts.REASONS);
    below.addView(Parts.FIGURES);
  }
}
