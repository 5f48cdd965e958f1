package daubline.ui.publish;

import daubline.analysis.ComparisonOptions;
import daubline.base.Version;
import daubline.export.Provenance;
import daubline.export.Style;
import daubline.export.TableOptions;
import daubline.publication.FigureOptions;
import daubline.publication.PublicationOptions;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;

/** Where to write, and what tables and figures look like. */
final class FormPage extends WizardPage {

  private static final List<String> FORMATS = List.of("svg", "pdf", "png");

  private final OpenStudy study;
  private Text folder;
  private Combo language;
  private Combo style;
  private Button comma;
  private final Button[] formats = new Button[FORMATS.size()];
  private Text oxides;
  private Combo iron;
  private Text template;
  private Spinner dpi;
  private Text width;

  FormPage(OpenStudy study) {
    super("form", Words.of("publish.form"), null);
    this.study = study;
    setDescription(Words.of("publish.form.about"));
  }

  @Override
  public void createControl(Composite parent) {
    Composite page = new Composite(parent, SWT.NONE);
    page.setLayout(new GridLayout(3, false));
    folder = text(page, "publish.folder", String.valueOf(study.folder().resolveSibling(study.folder().getFileName() + "-published")), 1);
    Button browse = new Button(page, SWT.PUSH);
    browse.setText(Words.of("publish.browse"));
    browse.addListener(SWT.Selection, e -> browse());
    label(page, "publish.language");
    language = new Combo(page, SWT.READ_ONLY);
    language.setItems(PublicationOptions.LANGUAGES.stream().map(code -> Words.of("publish.language." + code)).toArray(String[]::new));
    // what the person reads is what most likely is printed
    language.select(PublicationOptions.LANGUAGES.indexOf(Words.wording().language()));
    identify(language, "publish.language", 2);
    label(page, "publish.style");
    style = new Combo(page, SWT.READ_ONLY);
    style.setItems(List.of(Style.Preset.values()).stream().map(Words::of).toArray(String[]::new));
    style.select(0);
    identify(style, "publish.style", 2);
    comma = check(page, "publish.comma", false);
    oxides = text(page, "publish.oxides", "", 2);
    oxides.setMessage(Words.of("publish.oxides.usual"));
    label(page, "publish.iron");
    iron = new Combo(page, SWT.READ_ONLY);
    iron.setItems(List.of(TableOptions.Iron.values()).stream().map(Words::of).toArray(String[]::new));
    iron.select(0);
    identify(iron, "publish.iron", 2);
    template = text(page, "publish.template", "", 1);
    template.setMessage(Words.of("publish.template.none"));
    template.setToolTipText(Words.of("publish.template.about"));
    Button pick = new Button(page, SWT.PUSH);
    pick.setText(Words.of("publish.template.browse"));
    pick.addListener(SWT.Selection, e -> pickTemplate());
    label(page, "publish.formats");
    Composite row = new Composite(page, SWT.NONE);
    row.setLayout(new GridLayout(FORMATS.size(), false));
    row.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false, 2, 1));
    for (int i = 0; i < formats.length; i++) {
      formats[i] = new Button(row, SWT.CHECK);
      formats[i].setText(FORMATS.get(i).toUpperCase(java.util.Locale.ROOT));
      formats[i].setSelection(true);
      formats[i].setData("id", "publish.format." + FORMATS.get(i));
    }
    label(page, "publish.dpi");
    dpi = new Spinner(page, SWT.BORDER);
    dpi.setValues(FigureOptions.standard().dpi(), 50, 2400, 0, 50, 100);
    identify(dpi, "publish.dpi", 2);
    width = text(page, "publish.width", "", 2);
    width.setMessage(Words.of("publish.width.own"));
    folder.addListener(SWT.Modify, e -> validate());
    oxides.addListener(SWT.Modify, e -> validate());
    template.addListener(SWT.Modify, e -> validate());
    width.addListener(SWT.Modify, e -> validate());
    setControl(page);
    validate();
  }

  private static void label(Composite page, String key) {
    new Label(page, SWT.NONE).setText(Words.of(key));
  }

  private static void identify(org.eclipse.swt.widgets.Control control, String key, int span) {
    control.setData("id", key);
    control.setLayoutData(new GridData(SWT.BEGINNING, SWT.CENTER, false, false, span, 1));
    Pages.named(control, Words.of(key), "");
  }

  private static Text text(Composite page, String key, String value, int span) {
    label(page, key);
    Text text = new Text(page, SWT.BORDER);
    text.setText(value);
    identify(text, key, span);
    text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, span, 1));
    return text;
  }

  private static Button check(Composite page, String key, boolean on) {
    new Label(page, SWT.NONE);
    Button button = new Button(page, SWT.CHECK);
    button.setText(Words.of(key));
    button.setSelection(on);
    identify(button, key, 2);
    return button;
  }

  private void browse() {
    DirectoryDialog dialog = new DirectoryDialog(getShell(), SWT.SAVE);
    dialog.setText(Words.of("publish.title"));
    dialog.setFilterPath(folder.getText());
    String chosen = dialog.open();
    if (chosen != null) {
      folder.setText(chosen);
    }
  }

  private void pickTemplate() {
    FileDialog dialog = new FileDialog(getShell(), SWT.OPEN);
    dialog.setText(Words.of("publish.template"));
    dialog.setFilterExtensions(new String[] {"*.xlsx"});
    String chosen = dialog.open();
    if (chosen != null) {
      template.setText(chosen);
    }
  }

  /** Says something above the page that is no error. */
  void say(String message) {
    setMessage(message, WARNING);
  }

  private void validate() {
    setErrorMessage(wrong());
    setPageComplete(getErrorMessage() == null);
  }

  private String wrong() {
    try {
      if (folder.getText().isBlank()) {
        return Words.of("publish.folder.missing");
      }
      Path chosen = Path.of(folder.getText().strip()).toAbsolutePath().normalize();
      if (chosen.startsWith(study.folder().toAbsolutePath().normalize())) {
        return Words.of("publish.folder.inside");
      }
      if (java.nio.file.Files.exists(chosen) && !java.nio.file.Files.isDirectory(chosen)) {
        return Words.of("publish.folder.file");
      }
      if (!template.getText().isBlank() && !java.nio.file.Files.isRegularFile(Path.of(template.getText().strip()))) {
        return Words.of("publish.template.missing");
      }
      return wrongNumbers();
    } catch (InvalidPathException e) {
      return Words.of("publish.folder.name");
    }
  }

  private String wrongNumbers() {
    try {
      tables();
    } catch (IllegalArgumentException e) {
      return Words.of("publish.oxides.wrong");
    }
    try {
      new FigureOptions(Set.of(), FigureOptions.standard().dpi(), widthMm());
      return null;
    } catch (IllegalArgumentException e) {
      return Words.of("publish.width.wrong");
    }
  }

  /** What was chosen about the content of tables. */
  TableOptions tables() {
    return new TableOptions(List.of(oxides.getText().split("[,;\\s]+")), TableOptions.Iron.values()[iron.getSelectionIndex()]);
  }

  /** The language of what is written. */
  String language() {
    return PublicationOptions.LANGUAGES.get(language.getSelectionIndex());
  }

  private double widthMm() {
    String typed = width.getText().strip().replace(',', '.');
    return typed.isEmpty() ? Double.NaN : Double.parseDouble(typed);
  }

  Path folder() {
    return Path.of(folder.getText().strip()).toAbsolutePath().normalize();
  }

  /** The options without the deposit's. */
  PublicationOptions options(ComparisonOptions comparison) {
    Set<String> chosen = new LinkedHashSet<>();
    for (int i = 0; i < formats.length; i++) {
      if (formats[i].getSelection()) {
        chosen.add(FORMATS.get(i));
      }
    }
    PublicationOptions options = PublicationOptions.standard(Version.NUMBER, PublicationOptions.settings(comparison)).at(Provenance.when(System.getenv("SOURCE_DATE_EPOCH")))
        .in(new Style(Style.Preset.values()[style.getSelectionIndex()], comma.getSelection())).told(language()).with(new FigureOptions(chosen, dpi.getSelection(), widthMm()))
        .with(tables());
    return template.getText().isBlank() ? options : options.filling(Path.of(template.getText().strip()).toAbsolutePath());
  }
}
