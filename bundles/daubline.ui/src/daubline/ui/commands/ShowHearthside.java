package daubline.ui.commands;

import daubline.ui.study.Start;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Shows the start page. */
public final class ShowHearthside extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    Start.hearthside();
    return null;
  }
}
