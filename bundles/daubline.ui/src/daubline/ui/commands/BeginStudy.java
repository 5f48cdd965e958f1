package daubline.ui.commands;

import daubline.ui.look.Over;
import daubline.ui.study.NewStudy;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;

/** Begins a new study. */
public final class BeginStudy extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    NewStudy.ask(Over.shell());
    return null;
  }
}
