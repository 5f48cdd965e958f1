package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** What all perspectives share: the study on the left, the shortcuts to each other and to the views. */
abstract class DaublinePerspective implements IPerspectiveFactory {

  private static final float STUDY = 0.22f;
  private static final String[] PERSPECTIVES = {"evidence", "plan", "runday", "record", "compare", "publish"};

  @Override
  public final void createInitialLayout(IPageLayout layout) {
    layout.addView(Parts.STUDY, IPageLayout.LEFT, STUDY, layout.getEditorArea());
    layout.getViewLayout(Parts.STUDY).setCloseable(false);
    place(layout);
    for (String perspective : PERSPECTIVES) {
      layout.addPerspectiveShortcut("daubline.app." + perspective);
    }
    Parts.VIEWS.forEach(layout::addShowViewShortcut);
  }

  /** Places the views of this perspective. */
  abstract void place(IPageLayout layout);
}
