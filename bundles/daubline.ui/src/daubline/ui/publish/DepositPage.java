package daubline.ui.publish;

import daubline.analysis.deposit.Disclosure;
import daubline.publication.DepositOptions;
import daubline.publication.PublicationOptions;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

/** Whether to write a deposit, and what it says of itself. */
final class DepositPage extends WizardPage {

  private static final List<Double> GRIDS = List.of(0.1, 0.01, 1.0, 0.0);

  private final OpenStudy study;
  private final List<Control> fields = new ArrayList<>();
  private Button wanted;
  private Text creators;
  private Text publisher;
  private Spinner year;
  private Text licence;
  private Text doi;
  private Combo grid;
  private Button allSites;

  DepositPage(OpenStudy study) {
    super("deposit", Words.of("publish.deposit"), null);
    this.study = study;
    setDescription(Words.of("publish.deposit.about"));
  }

  @Override
  public void createControl(Composite parent) {
    Composite page = new Composite(parent, SWT.NONE);
    page.setLayout(new GridLayout(2, false));
    wanted = check(page, "publish.deposit.wanted", true);
    fields.remove(wanted);
    creators = text(page, "publish.creators", String.join("\n", consenting()), SWT.MULTI | SWT.V_SCROLL);
    publisher = text(page, "publish.publisher", "", SWT.NONE);
    label(page, "publish.year");
    year = new Spinner(page, SWT.BORDER);
    year.setValues(LocalDate.now().getYear(), 1900, 9999, 0, 1, 10);
    identify(year, "publish.year");
    String stated = study.session().study().getLicence();
    licence = text(page, "publish.licence", stated == null ? "" : stated, SWT.NONE);
    doi = text(page, "publish.doi", "", SWT.NONE);
    label(page, "publish.coarsen");
    grid = new Combo(page, SWT.READ_ONLY);
    grid.setItems(GRIDS.stream().map(g -> g == 0 ? Words.of("publish.coarsen.none") : Words.of("publish.coarsen.grid", g.toString())).toArray(String[]::new));
    grid.select(0);
    identify(grid, "publish.coarsen");
    allSites = check(page, "publish.coarsen.all", false);
    wanted.addListener(SWT.Selection, e -> validate());
    doi.addListener(SWT.Modify, e -> validate());
    setControl(page);
    validate();
  }

  private List<String> consenting() {
    return study.session().study().getPeople().stream().filter(p -> p.isMayPublishName()).map(p -> p.getName()).filter(n -> n != null && !n.isBlank()).toList();
  }

  private static void label(Composite page, String key) {
    new Label(page, SWT.NONE).setText(Words.of(key));
  }

  private void identify(Control control, String key) {
    control.setData("id", key);
    Pages.named(control, Words.of(key), "");
    fields.add(control);
  }

  private Text text(Composite page, String key, String value, int style) {
    label(page, key);
    Text text = new Text(page, SWT.BORDER | style);
    text.setText(value);
    GridData layout = new GridData(SWT.FILL, SWT.CENTER, true, false);
    layout.heightHint = style == SWT.NONE ? SWT.DEFAULT : 3 * text.getLineHeight();
    text.setLayoutData(layout);
    identify(text, key);
    return text;
  }

  private Button check(Composite page, String key, boolean on) {
    Button button = new Button(page, SWT.CHECK);
    button.setText(Words.of(key));
    button.setSelection(on);
    button.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false, 2, 1));
    identify(button, key);
    return button;
  }

  private void validate() {
    fields.forEach(f -> f.setEnabled(wanted.getSelection()));
    try {
      if (wanted.getSelection()) {
        options();
      }
      setErrorMessage(null);
      setPageComplete(true);
    } catch (IllegalArgumentException e) {
      setErrorMessage(Words.of("publish.doi.wrong"));
      setPageComplete(false);
    }
  }

  private DepositOptions options() {
    return new DepositOptions(Arrays.asList(creators.getText().split("\\R")), publisher.getText(), year.getSelection(), licence.getText(), doi.getText());
  }

  /** The options with the deposit's, where one is wanted. */
  PublicationOptions complete(PublicationOptions options) {
    return wanted.getSelection() ? options.with(options()) : options;
  }

  boolean isWanted() {
    return wanted.getSelection();
  }

  /** What the public may see. */
  Disclosure disclosure() {
    return new Disclosure(GRIDS.get(grid.getSelectionIndex()), allSites.getSelection());
  }
}
