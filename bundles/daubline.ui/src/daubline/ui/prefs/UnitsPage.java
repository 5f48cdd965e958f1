package daubline.ui.prefs;

import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.study.Studies;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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

/** The unit in which each quantity is shown. */
public final class UnitsPage extends PreferencePage implements IWorkbenchPreferencePage {

  private static final List<Quantity> OFFERED = List.of(Quantity.LENGTH, Quantity.AREA, Quantity.VOLUME, Quantity.MASS, Quantity.TIME,
      Quantity.TEMPERATURE, Quantity.PRESSURE, Quantity.VOLUME_FLOW, Quantity.MASS_FLOW, Quantity.SPEED, Quantity.RATE, Quantity.DENSITY, Quantity.FRACTION);

  private final Map<Quantity, Combo> combos = new EnumMap<>(Quantity.class);

  @Override
  public void init(IWorkbench workbench) {
    noDefaultAndApplyButton();
  }

  @Override
  protected Control createContents(Composite parent) {
    Composite page = new Composite(parent, SWT.NONE);
    page.setLayout(new GridLayout(2, false));
    Label about = new Label(page, SWT.WRAP);
    about.setText(Words.of("prefs.units.about"));
    GridData wide = new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1);
    wide.widthHint = 360;
    about.setLayoutData(wide);
    for (Quantity quantity : OFFERED) {
      new Label(page, SWT.NONE).setText(Words.of(quantity));
      Combo combo = new Combo(page, SWT.READ_ONLY);
      combo.add(Words.of("prefs.units.typed"));
      Units.of(quantity).stream().map(Unit::symbol).filter(s -> !s.isEmpty()).forEach(combo::add);
      combo.select(Math.max(0, Preferred.unit(quantity).map(u -> combo.indexOf(u.symbol())).orElse(0)));
      combo.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
      Pages.named(combo, Words.of(quantity), "");
      combos.put(quantity, combo);
    }
    return page;
  }

  @Override
  public boolean performOk() {
    combos.forEach((quantity, combo) -> Preferred.put(Preferred.unitKey(quantity), combo.getSelectionIndex() <= 0 ? "" : combo.getText()));
    Studies.get().all().forEach(s -> s.recompute());
    return true;
  }
}
