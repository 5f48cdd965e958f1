package daubline.app;

import org.eclipse.ui.IPageLayout;

/** The perspective Compare. */
public final class ComparePerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(true);
  }
}
