package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** Trials beside evidence: agreement and coverage, the ranking, and the reasons for one cell. */
public final class ComparePerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(false);
    layout.addView(Parts.COMPARISON, IPageLayout.RIGHT, 0.22f, layout.getEditorArea());
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.6f, Parts.COMPARISON);
    below.addView(Parts.REASONS);
    below.addView(Parts.CHECKS);
    IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, 0.66f, Parts.COMPARISON);
    right.addView(Parts.FIGURES);
    right.addView(Parts.WHERE_FROM);
  }
}
