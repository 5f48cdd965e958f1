package daubline.ui.store;

import daubline.base.Finding;
import daubline.session.store.LotMoves;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.look.TitledDialog;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.OpenStudy;
import java.time.LocalDate;
import java.util.Optional;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

/** Asks how lots are moved in the store, says while typing what forbids it, and does it as one change. */
abstract class MoveDialog extends TitledDialog {

  private static final int WIDE = 620;

  private final OpenStudy study;
  private final String key;
  private Text on;
  private Text sigma;
  /** Whether something was typed or ticked; before that nothing is called wrong. */
  private boolean begun;

  /** A dialog; its texts begin with the key. */
  MoveDialog(Shell shell, OpenStudy study, String key) {
    super(shell);
    this.study = study;
    this.key = key;
  }

  final OpenStudy study() {
    return study;
  }

  /** Makes the fields of its own. */
  abstract void fill(Composite page);

  /** What forbids the move; empty when it can be done. */
  abstract Optional<Finding> refusal();

  /** What it comes to, in words. */
  abstract String outcome();

  /** Does it; called inside a change. */
  abstract void move();

  @Override
  protected void configureShell(Shell shell) {
    super.configureShell(shell);
    shell.setText(Words.of(key + ".title"));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(shell, "daubline.help.record_steps");
  }

  @Override
  protected Point getInitialSize() {
    Point wanted = getShell().computeSize(WIDE, SWT.DEFAULT, true);
    return new Point(wanted.x, Math.min(wanted.y, getShell().getDisplay().getClientArea().height));
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    setTitle(Words.of(key + ".title"));
    setMessage(Words.of(key + ".about"));
    Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    page.setLayout(new GridLayout(2, false));
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    fill(page);
    on = text(page, "store.on", "moveOn");
    on.setText(LocalDate.now().toString());
    sigma = text(page, "store.sigma", "moveSigma");
    return page;
  }

  final Text text(Composite page, String label, String id) {
    label(page, label);
    Text text = new Text(page, SWT.BORDER);
    text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    text.setData("id", id);
    Pages.named(text, Words.of(label), Words.orElse(label + ".tip", ""));
    text.addListener(SWT.Modify, e -> check());
    return text;
  }

  static Label label(Composite page, String key) {
    Label label = new Label(page, SWT.NONE);
    label.setText(Words.of(key));
    label.setLayoutData(new GridData(SWT.BEGINNING, SWT.TOP, false, false));
    return label;
  }

  /** Says what forbids the move, or what it comes to. */
  final void check() {
    if (sigma == null) {
      return;
    }
    Optional<Finding> wrong = refusal().or(this::uncertainty);
    if (begun) {
      setMessage(wrong.map(f -> Words.said(f)).orElseGet(this::outcome), wrong.isPresent() ? IMessageProvider.ERROR : IMessageProvider.NONE);
    }
    begun = true;
    Control enter = getButton(IDialogConstants.OK_ID);
    if (enter != null) {
      enter.setEnabled(wrong.isEmpty());
    }
  }

  private Optional<Finding> uncertainty() {
    boolean day = on().isEmpty() || on().matches("\\d{4}(-\\d{2}(-\\d{2})?)?");
    return !day ? Optional.of(Finding.error("date.form", "", "“" + on() + "” is no date", "write year, month and day as 2031-08-16"))
        : sigma.getText().isBlank() || !Double.isNaN(sigma()) ? Optional.empty()
        : Optional.of(Finding.error("mass.form", "", "“" + sigma.getText() + "” is no mass", "write it in kg, or with its unit; empty when not known"));
  }

  /** The day. */
  final String on() {
    return on.getText().strip();
  }

  /** One standard uncertainty of the weighings, kg; NaN when not stated. */
  final double sigma() {
    return LotMoves.mass(sigma.getText().strip(), Preferred.decimal()).filter(s -> s >= 0).orElse(Double.NaN);
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    createButton(parent, IDialogConstants.OK_ID, Words.of(key + ".do"), true);
    createButton(parent, IDialogConstants.CANCEL_ID, Words.of("import.cancel"), false);
    check();
  }

  @Override
  protected void okPressed() {
    move();
    super.okPressed();
  }
}
