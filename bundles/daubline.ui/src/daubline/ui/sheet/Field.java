package daubline.ui.sheet;

import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Control;

/** One field of a form. */
interface Field {

  /** Its control. */
  Control control();

  /** Shows the value of an object; null clears and disables the field. */
  void show(EObject object);

  /** Shows what several things of one kind share; what is changed is changed in all of them. A field that cannot do that is disabled. */
  default void showAll(List<? extends EObject> objects) {
    show(objects.size() == 1 ? objects.get(0) : null);
  }
}
