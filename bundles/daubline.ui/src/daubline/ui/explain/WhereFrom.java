package daubline.ui.explain;

import daubline.base.Trail;
import daubline.ui.Parts;
import daubline.ui.Words;
import daubline.ui.study.Chosen;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;

/** Leads from what shows a number to its trail: by F8 from the keyboard, by the menu of the other mouse button. */
public final class WhereFrom {

  private static final String ORIGIN = "daubline.origin";

  private WhereFrom() {
  }

  /** Has a control say where the number that is selected in it comes from; it gets a menu of its own for that. */
  public static void on(Control control, Supplier<Optional<Trail>> origin) {
    byKey(control, origin);
    Menu menu = new Menu(control);
    MenuItem item = new MenuItem(menu, SWT.PUSH);
    item.setText(Words.of("origin.menu"));
    item.addListener(SWT.Selection, e -> origin.get().ifPresent(WhereFrom::show));
    menu.addListener(SWT.Show, e -> item.setEnabled(origin.get().isPresent()));
    control.setMenu(menu);
  }

  /** The same by the key alone, for fields that have a menu of their own. */
  public static void byKey(Control control, Supplier<Optional<Trail>> origin) {
    control.setData(ORIGIN, origin);
  }

  /** The origin of what is selected in a control; empty when nothing is, or what is selected has none. */
  @SuppressWarnings("unchecked")
  public static Optional<Trail> of(Control control) {
    return control.getData(ORIGIN) instanceof Supplier<?> s ? ((Supplier<Optional<Trail>>) s).get() : Optional.empty();
  }

  /** Asks the control with the keyboard, then what it lies in; shows the first origin there is. */
  public static void ask(Control focus) {
    for (Control c = focus; c != null; c = c.getParent()) {
      Optional<Trail> origin = of(c);
      if (origin.isPresent()) {
        show(origin.get());
        return;
      }
    }
  }

  /** Opens the view Where From on a trail. */
  public static void show(Trail trail) {
    Chosen.set(trail);
    IWorkbenchWindow window = PlatformUI.getWorkbench().getActiveWorkbenchWindow();
    IWorkbenchPage page = window == null ? null : window.getActivePage();
    if (page != null) {
      try {
        page.showView(Parts.WHERE_FROM);
      } catch (PartInitException e) {
        Platform.getLog(WhereFrom.class).warn(e.getMessage(), e);
      }
    }
  }
}
