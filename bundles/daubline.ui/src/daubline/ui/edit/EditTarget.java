package daubline.ui.edit;

import java.util.Optional;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** What a control that is no field of text does for the commands of the Edit menu; it says nothing to what it cannot do. */
public interface EditTarget {

  /** Key of the data under which a control keeps its target. */
  String KEY = "daubline.edit";

  /** One thing that is done to what is selected. */
  enum Deed { COPY, CUT, PASTE, DELETE, SELECT_ALL, FIND }

  /** Whether it can do this now. */
  boolean can(Deed deed);

  /** Does it. */
  void act(Deed deed);

  /** Makes a control answer to the commands of the Edit menu. */
  static void on(Control control, EditTarget target) {
    control.setData(KEY, target);
  }

  /** The target of the control that has the keyboard, or of the nearest around it. */
  static Optional<EditTarget> focused() {
    for (Control c = Display.getCurrent().getFocusControl(); c != null; c = c.getParent()) {
      if (c.getData(KEY) instanceof EditTarget target) {
        return Optional.of(target);
      }
    }
    return Optional.empty();
  }
}
