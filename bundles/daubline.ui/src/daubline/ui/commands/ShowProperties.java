package daubline.ui.commands;

import daubline.ui.Parts;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Shows what is written about whatever is selected. */
public final class ShowProperties extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) throws ExecutionException {
    try {
      HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage().showView(Parts.PROPERTIES);
    } catch (PartInitException e) {
      throw new ExecutionException(Parts.PROPERTIES, e);
    }
    return null;
  }
}
