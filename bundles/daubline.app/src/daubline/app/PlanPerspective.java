package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** Reconstructions with the basis of each choice, lots in the store, series and their trials. */
public final class PlanPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, middle(0.76f), layout.getEditorArea());
    below.addView(Parts.CHECKS);
    onCall(below);
    below.addView(Parts.RECONSTRUCTIONS);
    below.addView(Parts.SAFETY);
    IFolderLayout right = beside(layout, 0.68f, layout.getEditorArea(), below);
    right.addView(Parts.WHERE_FROM);
    right.addView(Parts.FIGURES);
  }
}
