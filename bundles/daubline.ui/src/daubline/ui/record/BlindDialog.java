package daubline.ui.record;

import daubline.ui.Words;
import daubline.ui.look.Fonts;
import daubline.ui.look.Pages;
import java.util.List;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;

/** Asks who begins or ends to record blind: a person of the study, or a new name. */
public final class BlindDialog extends Dialog {

  private static final int WRAP = 420;

  private final String title;
  private final String about;
  private final String question;
  private final String button;
  private final List<String> people;
  private Combo who;
  private String name;

  private BlindDialog(Shell parent, String title, String about, String question, String button, List<String> people, String name) {
    super(parent);
    this.title = title;
    this.about = about;
    this.question = question;
    this.button = button;
    this.people = people;
    this.name = name;
  }

  /** The question who begins, with the people on offer. */
  public static BlindDialog toBegin(Shell parent, List<String> people) {
    return new BlindDialog(parent, Words.of("blind.begin"), Words.of("blind.begin.text"), Words.of("blind.begin.who"), Words.of("blind.begin.do"), people, "");
  }

  /**
   * The question who ends it.
   *
   * @param about what was recorded
   * @param recorder who recorded, and likely ends it
   */
  public static BlindDialog toEnd(Shell parent, String about, List<String> people, String recorder) {
    return new BlindDialog(parent, Words.of("blind.end"), about, Words.of("blind.end.who"), Words.of("blind.end.do"), people, recorder);
  }

  /** Who was named. */
  public String name() {
    return name;
  }

  @Override
  protected void configureShell(Shell shell) {
    super.configureShell(shell);
    shell.setText(title);
    setReturnCode(CANCEL); // whatever closes it but its button ends or begins nothing
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    Composite page = Pages.plain(parent, 1);
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    Pages.text(page, about, Fonts.PLAIN.font(), WRAP);
    Pages.heading(page, question);
    who = new Combo(page, SWT.DROP_DOWN);
    who.setItems(people.toArray(String[]::new));
    who.setText(name);
    who.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    who.setData("id", "recorder");
    Pages.named(who, question, "");
    who.addListener(SWT.Modify, e -> {
      name = who.getText().strip();
      getButton(IDialogConstants.OK_ID).setEnabled(!name.isEmpty());
    });
    return page;
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    Button ok = createButton(parent, IDialogConstants.OK_ID, button, true);
    ok.setEnabled(!name.isEmpty());
    createButton(parent, IDialogConstants.CANCEL_ID, Words.of("blind.cancel"), false);
  }
}
