package daubline.ui.commands;

import daubline.ui.study.NewStudy;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.handlers.HandlerUtil;

/** Begins a new study. */
public final class BeginStudy extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    NewStudy.ask(HandlerUtil.getActiveShell(event));
    return null;
  }
}
