package daubline.ui.commands;

import daubline.session.backup.RollingBackups;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.BackupOpening;
import daubline.ui.study.Seeds;
import daubline.ui.study.Studies;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;

/** Opens a backup as a study of its own, beside the person's other studies. */
public final class OpenBackup extends AbstractHandler {

  @Override
  public Object execute(ExecutionEvent event) {
    FileDialog dialog = new FileDialog(Over.shell(), SWT.OPEN);
    dialog.setText(Words.of("backup.open"));
    dialog.setFilterExtensions(new String[] {"*.zip", "*.*"});
    Path usual = Studies.get().current().map(s -> RollingBackups.folder(s.folder())).filter(Files::isDirectory).orElse(Seeds.home());
    dialog.setFilterPath(usual.toString());
    String chosen = dialog.open();
    if (chosen != null) {
      BackupOpening.open(Path.of(chosen));
    }
    return null;
  }
}
