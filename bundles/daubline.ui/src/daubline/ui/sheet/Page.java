package daubline.ui.sheet;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Control;

/** One page of the sheet editor. */
public interface Page {

  /** Its control. */
  Control control();

  /** Shows what the study says now. */
  void refresh();

  /** Takes the focus. */
  void focus();

  /** Goes to a thing, or to the thing that holds it; false when it does not stand here. */
  default boolean reveal(EObject thing) {
    return false;
  }
}
