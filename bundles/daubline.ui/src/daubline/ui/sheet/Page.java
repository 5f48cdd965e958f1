package daubline.ui.sheet;

import org.eclipse.swt.widgets.Control;

/** One page of the sheet editor. */
public interface Page {

  /** Its control. */
  Control control();

  /** Shows what the study says now. */
  void refresh();

  /** Takes the focus. */
  void focus();
}
