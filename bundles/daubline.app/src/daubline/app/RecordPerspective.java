package daubline.app;

import org.eclipse.ui.IPageLayout;

/** The perspective Record. */
public final class RecordPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(true);
  }
}
