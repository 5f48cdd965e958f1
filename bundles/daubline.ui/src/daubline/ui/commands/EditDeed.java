package daubline.ui.commands;

import daubline.ui.edit.EditTarget;
import daubline.ui.edit.EditTarget.Deed;
import daubline.ui.edit.Edits;
import java.util.Locale;
import java.util.Map;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;

/** A command of the Edit menu: it does its deed to whatever has the keyboard, a field, a grid, a tree or a drawing. */
public final class EditDeed extends AbstractHandler implements IExecutableExtension {

  private Deed deed = Deed.COPY;

  @Override
  public void setInitializationData(IConfigurationElement config, String property, Object data) {
    if (data instanceof Map<?, ?> parameters) {
      deed = Deed.valueOf(String.valueOf(parameters.get("does")).toUpperCase(Locale.ROOT));
    }
  }

  @Override
  public void setEnabled(Object context) {
    setBaseEnabled(Edits.target(deed).isPresent());
  }

  @Override
  public Object execute(ExecutionEvent event) {
    Edits.target(deed).ifPresent((EditTarget target) -> target.act(deed));
    return null;
  }
}
