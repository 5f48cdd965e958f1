package daubline.ui.record;

import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Pages;
import java.util.List;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** Asks who records blind: a person of the study, or a new name. */
public final class BlindDialog extends Dialog {

  private static final int WRAP = 420;

  private final List<String> people;
  private Combo who;
  private String name = "";

  /** The question, with the people on offer. */
  public BlindDialog(Shell parent, List<String> people) {
    super(parent);
    this.people = people;
  }

  /** Who was named. */
  public String name() {
    return name;
  }

  @Override
  protected void configureShell(Shell shell) {
    super.configureShell(shell);
    shell.setText(Words.of("blind.begin"));
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    Composite page = Pages.plain(parent, 1);
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    Pages.text(page, Words.of("blind.about"), Fonts.PLAIN.font(), WRAP);
    Pages.heading(page, Words.of("blind.who"));
    who = new Combo(page, SWT.DROP_DOWN);
    who.setItems(people.toArray(String[]::new));
    who.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    who.setData("id", "blind.who");
    Pages.named(who, Words.of("blind.who"), "");
    who.addListener(SWT.Modify, e -> {
      name = who.getText().strip();
      getButton(IDialogConstants.OK_ID).setEnabled(!name.isEmpty());
    });
    return page;
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    createButton(parent, IDialogConstants.OK_ID, Words.of("blind.start"), true).setEnabled(false);
    createButton(parent, IDialogConstants.CANCEL_ID, Words.of("blind.cancel"), false);
  }
}
