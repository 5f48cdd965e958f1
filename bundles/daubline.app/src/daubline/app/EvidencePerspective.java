package daubline.app;

import org.eclipse.ui.IPageLayout;

/** The perspective Evidence. */
public final class EvidencePerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(true);
  }
}
