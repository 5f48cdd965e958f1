package daubline.ui.prefs;

import daubline.base.DateOrder;
import daubline.base.DecimalSign;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.look.Themes;
import daubline.ui.study.Studies;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.PlatformUI;

/** Colours, decimal sign, order of dates and language. */
public final class WindowPage extends PreferencePage implements IWorkbenchPreferencePage {

  private static final List<String> LANGUAGES = List.of("system", "en", "de");

  private Combo theme;
  private Combo decimal;
  private Combo dates;
  private Combo language;

  @Override
  public void init(IWorkbench workbench) {
    noDefaultAndApplyButton();
  }

  @Override
  protected Control createContents(Composite parent) {
    Composite page = new Composite(parent, SWT.NONE);
    page.setLayout(new GridLayout(2, false));
    Label about = new Label(page, SWT.WRAP);
    about.setText(Words.of("prefs.about"));
    GridData wide = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
    wide.widthHint = 360;
    about.setLayoutData(wide);
    theme = combo(page, "prefs.theme", Themes.NAMES.stream().map(n -> Words.of("prefs.theme." + n)).toList(), Themes.NAMES.indexOf(Themes.current()));
    decimal = combo(page, "prefs.decimal", List.of(Words.of("prefs.decimal.POINT"), Words.of("prefs.decimal.COMMA")), Preferred.decimal().ordinal());
    dates = combo(page, "prefs.dates", Arrays.stream(DateOrder.values()).map(o -> Words.of("prefs.dates." + o)).toList(), Preferred.dates().ordinal());
    language = combo(page, "prefs.language", LANGUAGES.stream().map(n -> Words.of("prefs.language." + n)).toList(),
        Math.max(0, LANGUAGES.indexOf(Language.chosen())));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(page, "daubline.help.preferences");
    return page;
  }

  private static Combo combo(Composite page, String key, List<String> items, int selected) {
    new Label(page, SWT.NONE).setText(Words.of(key));
    Combo combo = new Combo(page, SWT.READ_ONLY);
    combo.setItems(items.toArray(String[]::new));
    combo.select(selected);
    combo.setData("id", key);
    combo.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    Pages.named(combo, Words.of(key), "");
    return combo;
  }

  @Override
  public boolean performOk() {
    Themes.use(Themes.NAMES.get(theme.getSelectionIndex()));
    Preferred.put(Preferred.DECIMAL, DecimalSign.values()[decimal.getSelectionIndex()].name());
    Preferred.put(Preferred.DATES, DateOrder.values()[dates.getSelectionIndex()].name());
    Studies.get().all().forEach(s -> s.recompute());
    String wanted = LANGUAGES.get(language.getSelectionIndex());
    if (!wanted.equals(Language.chosen())) {
      Language.choose(wanted);
      if (MessageDialog.openQuestion(getShell(), Words.of("prefs.restart.title"), Words.of("prefs.restart"))) {
        getShell().getDisplay().asyncExec(() -> PlatformUI.getWorkbench().restart());
      }
    }
    return true;
  }
}
