package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** Reading reports: evidence sheets in the middle, where a number comes from and what the checks say beside them. */
public final class EvidencePerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, middle(0.76f), layout.getEditorArea());
    below.addView(Parts.CHECKS);
    onCall(below);
    IFolderLayout right = beside(layout, 0.68f, layout.getEditorArea(), below);
    right.addView(Parts.WHERE_FROM);
    right.addView(Parts.FIGURES);
  }
}
