package daubline.app.tests;

import java.lang.reflect.Field;
import java.util.List;
import java.util.Objects;
import org.eclipse.swt.accessibility.Accessible;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.accessibility.AccessibleListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;

/** The name of a control as a screen reader is told it. */
final class SpokenName {

  private SpokenName() {
  }

  /** What a listener says, else the text that stands on it, else the label before it; empty when nothing is said. */
  static String of(Control control) {
    String told = told(control.getAccessible());
    if (!told.isBlank()) {
      return told;
    }
    return switch (control) {
      case Button button when !button.getText().isBlank() -> button.getText().replace("&", "");
      case Link link -> link.getText();
      default -> labelBefore(control);
    };
  }

  private static String told(Accessible accessible) {
    AccessibleEvent event = new AccessibleEvent(accessible);
    event.childID = -1;
    for (AccessibleListener listener : listeners(accessible)) {
      listener.getName(event);
    }
    return Objects.toString(event.result, "");
  }

  /** The toolkit tells no one but the desktop who listens. */
  @SuppressWarnings("unchecked")
  private static List<AccessibleListener> listeners(Accessible accessible) {
    try {
      Field field = Accessible.class.getDeclaredField("accessibleListeners");
      field.setAccessible(true);
      List<AccessibleListener> found = (List<AccessibleListener>) field.get(accessible);
      return found == null ? List.of() : List.copyOf(found);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("the toolkit keeps its listeners elsewhere now", e);
    }
  }

  private static String labelBefore(Control control) {
    Control[] siblings = control.getParent().getChildren();
    for (int i = 1; i < siblings.length; i++) {
      if (siblings[i] == control && siblings[i - 1] instanceof Label label) {
        return label.getText().replace("&", "");
      }
    }
    return "";
  }
}
