package daubline.app;

import daubline.ui.Parts;
import daubline.ui.look.Fonts;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;

/** What all perspectives share: the study on the left, the shortcuts to each other and to the views. */
abstract class DaublinePerspective implements IPerspectiveFactory {

  private static final float STUDY = 0.22f;
  private static final float STUDY_NARROW = 0.27f;
  /** What views leave to sheets below them as soon as one is opened from there; until then they have all of it. */
  static final float WITH_SHEETS = 0.5f;
  private static final float SHEETS_NARROW = 0.8f;
  /** Letters across the window below which views find no room beside the middle, their titles whole. */
  private static final int WIDE = 150;
  private static final String[] PERSPECTIVES = {"evidence", "plan", "runday", "record", "compare", "publish"};

  @Override
  public final void createInitialLayout(IPageLayout layout) {
    layout.addView(Parts.STUDY, IPageLayout.LEFT, isNarrow() ? STUDY_NARROW : STUDY, layout.getEditorArea());
    layout.getViewLayout(Parts.STUDY).setCloseable(false);
    place(layout);
    for (String perspective : PERSPECTIVES) {
      layout.addPerspectiveShortcut("daubline.app." + perspective);
    }
    Parts.VIEWS.forEach(layout::addShowViewShortcut);
    layout.addShowViewShortcut(Parts.PROGRESS);
  }

  /** Where views open that are called when they are wanted. */
  static void onCall(IFolderLayout folder) {
    folder.addPlaceholder(Parts.PROPERTIES);
    folder.addPlaceholder(Parts.PROGRESS);
  }

  /** Places the views of this perspective. */
  abstract void place(IPageLayout layout);

  /** A stack of views beside a part; on a small screen with large writing these views go to the stack below instead. */
  static IFolderLayout beside(IPageLayout layout, float ratio, String part, IFolderLayout below) {
    return isNarrow() ? below : layout.createFolder("right", IPageLayout.RIGHT, ratio, part);
  }

  /** The share of the height that sheets get; where the writing is large they need more of it for the same number of lines. */
  static float middle(float usual) {
    return isNarrow() ? Math.max(usual, SHEETS_NARROW) : usual;
  }

  /** Whether the window, or the screen before there is one, is small for the size of the writing. */
  static boolean isNarrow() {
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    Shell shell = window == null ? null : window.getShell();
    int width = shell != null && shell.isVisible() ? shell.getSize().x : Display.getCurrent().getPrimaryMonitor().getClientArea().width;
    Shell ruler = new Shell();
    int letters = width / Math.max(1, Fonts.PLAIN.characterWidth(ruler));
    ruler.dispose();
    return letters < WIDE;
  }
}
