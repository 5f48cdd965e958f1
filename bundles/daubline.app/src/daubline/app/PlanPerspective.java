package daubline.app;

import org.eclipse.ui.IPageLayout;

/** The perspective Plan. */
public final class PlanPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(true);
  }
}
