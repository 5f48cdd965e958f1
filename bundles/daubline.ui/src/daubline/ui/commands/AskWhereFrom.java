package daubline.ui.commands;

import daubline.ui.explain.WhereFrom;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;

/** F8: opens Where From on the number that has the keyboard. */
public final class AskWhereFrom extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    Control focus = Display.getCurrent().getFocusControl();
    if (focus != null) {
      WhereFrom.ask(focus);
    }
    return null;
  }
}
