package daubline.ui.look;

import daubline.ui.Words;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** A dialog with a title and a message above its fields, as large as wanted, whose message a screen reader can name. */
public abstract class TitledDialog extends TitleAreaDialog {

  /** A dialog over a shell. */
  protected TitledDialog(Shell shell) {
    super(shell);
    setShellStyle(getShellStyle() | SWT.RESIZE);
    setHelpAvailable(false);
  }

  @Override
  protected Control createContents(Composite parent) {
    Control contents = super.createContents(parent);
    Pages.nameMessage(parent, Words.of("dialog.message"));
    return contents;
  }
}
