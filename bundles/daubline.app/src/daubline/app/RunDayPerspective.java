package daubline.app;

import org.eclipse.ui.IPageLayout;

/** The perspective RunDay. */
public final class RunDayPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(true);
  }
}
