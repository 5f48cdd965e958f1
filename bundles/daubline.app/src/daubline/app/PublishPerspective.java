package daubline.app;

import daubline.ui.Parts;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;

/** Tables and figures as they will be written. */
public final class PublishPerspective extends DaublinePerspective {

  @Override
  void place(IPageLayout layout) {
    layout.setEditorAreaVisible(false);
    IFolderLayout tables = layout.createFolder("tables", IPageLayout.TOP, WITH_SHEETS, layout.getEditorArea());
    tables.addView(Parts.TABLES);
    IFolderLayout figures = layout.createFolder("figures", IPageLayout.RIGHT, 0.55f, "tables");
    figures.addView(Parts.FIGURES);
    IFolderLayout below = layout.createFolder("below", IPageLayout.BOTTOM, 0.75f, "tables");
    below.addView(Parts.CHECKS);
    onCall(below);
    below.addView(Parts.WHERE_FROM);
  }
}
