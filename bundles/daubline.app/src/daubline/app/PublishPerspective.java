package daubline.app;

import org.eclipse.ui.IPageLayout;

/** The perspective Publish. */
public final class PublishPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(true);
  }
}
