package daubline.ui.edit;

import daubline.ui.edit.EditTarget.Deed;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** Finds what a command of the Edit menu is meant for, and keeps the clipboard. */
public final class Edits {

  private Edits() {
  }

  /** What a deed is meant for: the field or target that has the keyboard; finding goes to the first in the part too. */
  public static Optional<EditTarget> target(Deed deed) {
    Control focus = Display.getCurrent() == null ? null : Display.getCurrent().getFocusControl();
    if (focus == null) {
      return Optional.empty();
    }
    Optional<EditTarget> near = TextEdit.of(focus).filter(t -> deed != Deed.FIND).or(EditTarget::focused).filter(t -> t.can(deed));
    return near.isPresent() || deed != Deed.FIND ? near : around(focus);
  }

  /** The first target that can find, looking farther and farther around a control. */
  private static Optional<EditTarget> around(Control focus) {
    for (Composite c = focus.getParent(); c != null; c = c.getParent()) {
      Deque<Control> open = new ArrayDeque<>();
      open.add(c);
      while (!open.isEmpty()) {
        Control control = open.poll();
        if (control.isVisible() && control.getData(EditTarget.KEY) instanceof EditTarget target && target.can(Deed.FIND)) {
          return Optional.of(target);
        }
        if (control instanceof Composite composite) {
          open.addAll(java.util.List.of(composite.getChildren()));
        }
      }
    }
    return Optional.empty();
  }

  /** Puts a text into the clipboard; an empty one leaves it as it is. */
  public static void copy(String text) {
    if (!text.isEmpty()) {
      Clipboard clipboard = new Clipboard(Display.getCurrent());
      clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
      clipboard.dispose();
    }
  }

  /** The text in the clipboard; empty when there is none. */
  public static String pasted() {
    Clipboard clipboard = new Clipboard(Display.getCurrent());
    Object content = clipboard.getContents(TextTransfer.getInstance());
    clipboard.dispose();
    return content instanceof String text ? text : "";
  }
}
