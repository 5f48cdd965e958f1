package daubline.ui.commands;

import daubline.ui.explain.WhatIsThis;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** F1: explains what has the keyboard, or opens the help of the part around it. */
public final class ExplainFocus extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    Control focus = Display.getCurrent().getFocusControl();
    if (focus != null) {
      WhatIsThis.ask(focus);
    }
    return null;
  }
}
