package daubline.ui.commands;

import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.Seeds;
import daubline.ui.study.Start;
import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.DirectoryDialog;

/** Opens a study that the person chooses. */
public final class OpenStudyFolder extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    DirectoryDialog dialog = new DirectoryDialog(Over.shell());
    dialog.setMessage(Words.of("hearth.open.about"));
    dialog.setFilterPath(Seeds.home().toString());
    String folder = dialog.open();
    if (folder != null) {
      Start.open(() -> Path.of(folder));
    }
    return null;
  }
}
