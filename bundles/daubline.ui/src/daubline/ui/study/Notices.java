package daubline.ui.study;

import daubline.base.Finding;
import daubline.ui.Words;
import daubline.ui.look.Over;
import org.eclipse.jface.dialogs.MessageDialog;

/** Tells a person what went wrong and how to mend it. */
public final class Notices {

  private Notices() {
  }

  /** Shows a finding: what is wrong, where, and the remedy. */
  public static void show(Finding finding) {
    show(Words.said(finding.what()), finding.where() + (finding.remedy().isEmpty() ? "" : "\n\n" + Words.of("notice.remedy", Words.said(finding.remedy()))));
  }

  /** Shows a message with its details. */
  public static void show(String message, String details) {
    MessageDialog.openError(Over.shell(), Words.of("notice.title"), message + "\n\n" + details);
  }
}
