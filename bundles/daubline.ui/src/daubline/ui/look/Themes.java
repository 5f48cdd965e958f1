package daubline.ui.look;

import java.util.List;
import org.eclipse.e4.ui.css.swt.theme.ITheme;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;

/** The themes of the window: ash is light, night is dark, sun is black on white for the field. */
public final class Themes {

  /** Their names, the usual one first. */
  public static final List<String> NAMES = List.of("ash", "night", "sun");
  private static final String PREFIX = "daubline.theme.";
  private static final String DARK = ".dark";

  private Themes() {
  }

  private static IThemeEngine engine() {
    return PlatformUI.getWorkbench().getService(IThemeEngine.class);
  }

  /** The name of the theme in use. */
  public static String current() {
    ITheme active = engine() == null ? null : engine().getActiveTheme();
    return NAMES.stream().filter(n -> active != null && active.getId().startsWith(PREFIX + n)).findFirst().orElse(NAMES.get(0));
  }

  /** Uses a theme from now on. */
  public static void use(String name) {
    if (engine() != null && !name.equals(current())) {
      engine().setTheme(PREFIX + name + (name.equals("night") ? DARK : ""), true);
    }
  }

  /** Has something done whenever the colours change, as long as a control lives: for colours that are taken when a text is made. */
  public static void onChange(Control control, Runnable action) {
    Runnable alive = () -> {
      if (!control.isDisposed()) {
        action.run();
      }
    };
    IPropertyChangeListener listener = e -> {
      // the colours change one after the other: after one of them, once all are there
      if (e.getProperty().equals(Hue.QUIET.id())) {
        control.getDisplay().asyncExec(alive);
      }
    };
    JFaceResources.getColorRegistry().addListener(listener);
    control.addListener(SWT.Dispose, e -> JFaceResources.getColorRegistry().removeListener(listener));
  }
}
