package daubline.ui.compare;

import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** A line of lists, switches and buttons above a view, broken where it is narrow; each is known by the key of its text. */
final class ChoiceBar {

  private static final int LETTERS = 24;

  private final Composite bar;
  private final Map<String, Combo> combos = new LinkedHashMap<>();
  private final Map<String, Button> buttons = new LinkedHashMap<>();

  ChoiceBar(Composite parent) {
    bar = new Composite(parent, SWT.NONE);
    RowLayout layout = new RowLayout();
    layout.spacing = 8;
    layout.center = true;
    bar.setLayout(layout);
    bar.setBackground(Hue.ASH.color());
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
  }

  /** A list with its name before it. */
  Combo combo(String key, Runnable does) {
    Composite both = Pages.tight(bar, 2);
    Label label = new Label(both, SWT.NONE);
    label.setText(Words.of(key));
    label.setBackground(Hue.ASH.color());
    label.setForeground(Hue.INK.color());
    Combo combo = new Combo(both, SWT.READ_ONLY);
    combo.setData("id", key);
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    GC gc = new GC(combo);
    data.widthHint = (int) (LETTERS * gc.getFontMetrics().getAverageCharacterWidth());
    gc.dispose();
    combo.setLayoutData(data);
    Pages.named(combo, Words.of(key), Words.of(key + ".tip"));
    combo.addListener(SWT.Selection, e -> does.run());
    combos.put(key, combo);
    return combo;
  }

  Combo combo(String key) {
    return combos.get(key);
  }

  /** A switch. */
  void check(String key, Runnable does) {
    button(key, SWT.CHECK, does).setBackground(Hue.ASH.color());
  }

  /** A button. */
  Button button(String key, Runnable does) {
    return button(key, SWT.PUSH, does);
  }

  private Button button(String key, int style, Runnable does) {
    Button button = new Button(bar, style);
    button.setText(Words.of(key));
    button.setData("id", key);
    Pages.named(button, Words.of(key), Words.of(key + ".tip"));
    button.addListener(SWT.Selection, e -> does.run());
    buttons.put(key, button);
    return button;
  }

  boolean isOn(String key) {
    return buttons.get(key).getSelection();
  }

  void check(String key, boolean on) {
    buttons.get(key).setSelection(on);
  }

  Button button(String key) {
    return buttons.get(key);
  }

  /** Where more goes, such as a bar of progress; it stands in a row. */
  Composite control() {
    return bar;
  }

  /** Gives a control in the bar a width. */
  static void width(org.eclipse.swt.widgets.Control control, int width) {
    control.setLayoutData(new RowData(width, SWT.DEFAULT));
  }
}
