package daubline.ui.sheet;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Control;

/** One field of a form. */
interface Field {

  /** Its control. */
  Control control();

  /** Shows the value of an object; null clears and disables the field. */
  void show(EObject object);
}
