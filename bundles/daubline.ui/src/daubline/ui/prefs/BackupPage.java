package daubline.ui.prefs;

import daubline.session.backup.KeepRule;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.PlatformUI;

/** Whether dated backups are made by themselves, what they hold and how many stay. */
public final class BackupPage extends PreferencePage implements IWorkbenchPreferencePage {

  private static final String OFF = "keep.off";
  private static final String WITHOUT_FILES = "keep.withoutFiles";
  private static final String DAYS = "keep.days";
  private static final String WEEKS = "keep.weeks";
  private static final String MONTHS = "keep.months";
  private static final int MOST = 99;

  private Button on;
  private Button whole;
  private Spinner days;
  private Spinner weeks;
  private Spinner months;

  @Override
  public void init(IWorkbench workbench) {
    noDefaultAndApplyButton();
  }

  /** Whether backups are made when a study is saved and closed. */
  public static boolean isOn() {
    return Preferred.node().get(OFF, "").isEmpty();
  }

  /** Whether they hold photographs, logger and laboratory files. */
  public static boolean isWhole() {
    return Preferred.node().get(WITHOUT_FILES, "").isEmpty();
  }

  /** Which of them stay. */
  public static KeepRule rule() {
    return new KeepRule(number(DAYS, KeepRule.STANDARD.days()), number(WEEKS, KeepRule.STANDARD.weeks()), number(MONTHS, KeepRule.STANDARD.months()));
  }

  private static int number(String key, int usual) {
    return Math.max(0, Preferred.node().getInt(key, usual));
  }

  @Override
  protected Control createContents(Composite parent) {
    Composite page = new Composite(parent, SWT.NONE);
    page.setLayout(new GridLayout(2, false));
    Label about = new Label(page, SWT.WRAP);
    about.setText(Words.of("backup.about"));
    GridData wide = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
    wide.widthHint = 360;
    about.setLayoutData(wide);
    on = box(page, "backup.on", isOn());
    whole = box(page, "backup.whole", isWhole());
    days = spinner(page, "backup.days", rule().days());
    weeks = spinner(page, "backup.weeks", rule().weeks());
    months = spinner(page, "backup.months", rule().months());
    PlatformUI.getWorkbench().getHelpSystem().setHelp(page, "daubline.help.backup");
    return page;
  }

  private static Button box(Composite page, String key, boolean ticked) {
    Button box = new Button(page, SWT.CHECK);
    box.setText(Words.of(key));
    box.setSelection(ticked);
    box.setData("id", key);
    box.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1));
    return box;
  }

  private static Spinner spinner(Composite page, String key, int value) {
    new Label(page, SWT.NONE).setText(Words.of(key));
    Spinner spinner = new Spinner(page, SWT.BORDER);
    spinner.setValues(value, 0, MOST, 0, 1, 5);
    spinner.setData("id", key);
    Pages.named(spinner, Words.of(key), "");
    return spinner;
  }

  @Override
  public boolean performOk() {
    Preferred.put(OFF, on.getSelection() ? "" : "true");
    Preferred.put(WITHOUT_FILES, whole.getSelection() ? "" : "true");
    Preferred.put(DAYS, String.valueOf(days.getSelection()));
    Preferred.put(WEEKS, String.valueOf(weeks.getSelection()));
    Preferred.put(MONTHS, String.valueOf(months.getSelection()));
    return true;
  }
}
