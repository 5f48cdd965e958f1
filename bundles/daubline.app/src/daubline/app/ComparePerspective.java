package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** Trials beside evidence: map and ranking, below them reasons, ranks and weights, beside them the drawings and where a number comes from. */
public final class ComparePerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(false);
    layout.addView(Parts.COMPARISON, IPageLayout.TOP, WITH_SHEETS, layout.getEditorArea());
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.6f, Parts.COMPARISON);
    below.addView(Parts.REASONS);
    below.addView(Parts.RANKS);
    below.addView(Parts.WEIGHTS);
    below.addView(Parts.CHECKS);
    onCall(below);
    IFolderLayout right = beside(layout, 0.59f, Parts.COMPARISON, below);
    right.addView(Parts.BESIDE);
    right.addView(Parts.WHERE_FROM);
    right.addView(Parts.FIGURES);
  }
}
