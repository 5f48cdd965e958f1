package daubline.ui.table;

import daubline.base.Finding;
import daubline.intake.IntakeException;
import daubline.session.StudyException;
import daubline.session.StudyImage;
import daubline.session.StudySession;
import daubline.ui.Words;
import daubline.ui.look.TitledDialog;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;

/**
 * Shows what taking a file over would do, worked out behind on a picture of the study each time a setting changes, and does
 * it, all or nothing.
 *
 * @param <P> the preview
 */
public abstract class TakeOverDialog<P> extends TitledDialog {

  /** The open study. */
  protected final OpenStudy study;
  /** The file. */
  protected final Path file;
  private final String key;
  private final String help;
  private P preview;
  private int request;

  /** Looks at the file with the settings of one moment. */
  @FunctionalInterface
  protected interface Look<P> {
    /** The preview against a copy of the study. */
    P at(StudySession copy) throws StudyException, IntakeException;
  }

  /**
   * A dialog.
   *
   * @param key what the keys of its title and of its button begin with
   * @param help the context of its help
   */
  protected TakeOverDialog(Shell shell, OpenStudy study, Path file, String key, String help) {
    super(shell);
    this.study = study;
    this.file = file;
    this.key = key;
    this.help = help;
  }

  @Override
  protected void configureShell(Shell shell) {
    super.configureShell(shell);
    shell.setText(Words.of(key + ".title"));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(shell, help);
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    createButton(parent, IDialogConstants.OK_ID, Words.of(key + ".do"), true);
    createButton(parent, IDialogConstants.CANCEL_ID, Words.of("import.cancel"), false);
    look();
  }

  /** How to look at the file with what is set now. */
  protected abstract Look<P> settings() throws IntakeException;

  /** Shows a preview; false when it cannot be applied or would change nothing. */
  protected abstract boolean show(P now);

  /** Told when the file is looked at again; what acts on the preview that is shown has to wait. */
  protected void waiting() {
    // nothing more than the button that takes over
  }

  /** Applies a preview to the study. */
  protected abstract void apply(P now) throws IntakeException;

  /** Looks again, after a setting was changed. */
  protected final void look() {
    if (getShell() == null || getShell().isDisposed() || getButton(IDialogConstants.OK_ID) == null) {
      return;
    }
    getButton(IDialogConstants.OK_ID).setEnabled(false);
    waiting();
    try {
      look(settings());
    } catch (IntakeException e) {
      Finding first = e.findings().get(0);
      setErrorMessage(Words.said(first));
    }
  }

  private void look(Look<P> how) {
    setErrorMessage(null);
    setMessage(Words.of("import.looking"));
    int number = ++request;
    StudyImage image = study.session().image();
    Job.create(Words.of("import.looking"), monitor -> {
      try (StudySession copy = image.read()) {
        P now = how.at(copy);
        Display.getDefault().asyncExec(() -> arrived(now, number));
        return Status.OK_STATUS;
      } catch (StudyException | IntakeException e) {
        Display.getDefault().asyncExec(() -> failed(e, number));
        return Status.OK_STATUS;
      }
    }).schedule();
  }

  private void arrived(P now, int number) {
    if (number == request && getShell() != null && !getShell().isDisposed()) {
      preview = now;
      getButton(IDialogConstants.OK_ID).setEnabled(show(now));
    }
  }

  private void failed(Exception why, int number) {
    if (number == request && getShell() != null && !getShell().isDisposed()) {
      setErrorMessage(Words.of("import.unread", why.getMessage()));
    }
  }

  @Override
  protected void okPressed() {
    try {
      apply(preview);
      super.okPressed();
    } catch (IntakeException e) {
      Notices.show(Words.of("import.failed"), String.valueOf(e.getMessage()));
      look();
    }
  }
}
