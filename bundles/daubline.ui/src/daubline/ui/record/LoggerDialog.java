package daubline.ui.record;

import daubline.intake.IntakeException;
import daubline.intake.IntakeOptions;
import daubline.intake.Mappings;
import daubline.intake.logger.LoggerIntake;
import daubline.intake.logger.LoggerPreview;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Pages;
import daubline.ui.table.TakeOverDialog;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

/** Shows how a logger's file is read – signs, header, times, what each column holds – lets it be put right, and takes it over. */
final class LoggerDialog extends TakeOverDialog<LoggerPreview> {

  private static final Map<String, List<String>> CHOICES = choices();
  private static final List<String> TEXTS = List.of("header", "start", "offset", "interval");
  private static final int FIELDS = 8;

  private final Trial trial;
  private final Map<String, Control> fields = new LinkedHashMap<>();
  private final ChannelModel channels = new ChannelModel(this::look);
  private final FindingModel findings = new FindingModel();
  private Combo mapping;
  private Text save;
  private Grid channelGrid;
  private Grid findingGrid;

  LoggerDialog(Shell shell, OpenStudy study, Trial trial, Path file) {
    super(shell, study, file, "logger", "daubline.help.record_loggers");
    this.trial = trial;
  }

  private static Map<String, List<String>> choices() {
    Map<String, List<String>> all = new LinkedHashMap<>();
    all.put("delimiter", List.of("", "semicolon", "comma", "tab", "bar"));
    all.put("decimal", List.of("", "point", "comma"));
    all.put("dates", List.of("", "ymd", "dmy", "mdy"));
    return all;
  }

  @Override
  protected Point getInitialSize() {
    Point wanted = super.getInitialSize();
    return new Point(Math.max(960, wanted.x), Math.max(600, wanted.y));
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    setTitle(Words.of("logger.heading", file.getFileName(), OpenStudy.nameOf(trial)));
    Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    page.setLayout(new GridLayout(FIELDS, false));
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    mapping(page);
    CHOICES.forEach((setting, words) -> combo(page, setting, words));
    TEXTS.forEach(setting -> text(page, setting));
    save = textField(page, "save");
    SashForm sash = new SashForm(page, SWT.VERTICAL);
    GridData all = new GridData(SWT.FILL, SWT.FILL, true, true, FIELDS, 1);
    all.heightHint = 320;
    sash.setLayoutData(all);
    channelGrid = new Grid(sash, Words.of("logger.channels"), channels);
    channelGrid.control().setData("id", "logger.channels");
    findingGrid = new Grid(sash, Words.of("logger.findings"), findings);
    sash.setWeights(3, 2);
    return page;
  }

  private void mapping(Composite page) {
    label(page, "mapping");
    mapping = new Combo(page, SWT.READ_ONLY);
    mapping.add(Words.of("logger.none"));
    Mappings.names(study.session().study(), LoggerIntake.TARGET).forEach(mapping::add);
    mapping.select(0);
    fill(mapping);
    mapping.setData("id", "logger.mapping");
    Pages.named(mapping, Words.of("logger.mapping"), Words.of("logger.mapping.tip"));
    mapping.addListener(SWT.Selection, e -> {
      if (mapping.getSelectionIndex() > 0) {
        save.setText(mapping.getText());
      }
      look();
    });
  }

  private static void label(Composite page, String setting) {
    new Label(page, SWT.NONE).setText(Words.of("logger." + setting));
  }

  private static void fill(Control field) {
    GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
    data.widthHint = 110;
    field.setLayoutData(data);
  }

  private void combo(Composite page, String setting, List<String> words) {
    label(page, setting);
    Combo combo = new Combo(page, SWT.READ_ONLY);
    words.forEach(w -> combo.add(Words.of("logger." + setting + "." + (w.isEmpty() ? "found" : w))));
    combo.select(0);
    fill(combo);
    combo.setData("id", "logger." + setting);
    Pages.named(combo, Words.of("logger." + setting), "");
    combo.addListener(SWT.Selection, e -> look());
    fields.put(setting, combo);
  }

  private void text(Composite page, String setting) {
    Text text = textField(page, setting);
    text.addListener(SWT.FocusOut, e -> look());
    fields.put(setting, text);
  }

  private static Text textField(Composite page, String setting) {
    label(page, setting);
    Text text = new Text(page, SWT.BORDER);
    fill(text);
    text.setData("id", "logger." + setting);
    Pages.named(text, Words.of("logger." + setting), Words.of("logger." + setting + ".tip"));
    return text;
  }

  private IntakeOptions options() throws IntakeException {
    IntakeOptions options = IntakeOptions.none();
    for (Map.Entry<String, Control> field : fields.entrySet()) {
      String said = field.getValue() instanceof Combo c ? CHOICES.get(field.getKey()).get(c.getSelectionIndex()) : ((Text) field.getValue()).getText().strip();
      options = said.isEmpty() ? options : options.with(field.getKey(), said);
    }
    if (mapping.getSelectionIndex() > 0) {
      options = options.with("mapping", mapping.getText());
    }
    for (Map.Entry<String, String> said : channels.said().entrySet()) {
      options = options.with(said.getKey(), said.getValue());
    }
    return save.getText().isBlank() ? options : options.with("save", save.getText().strip());
  }

  @Override
  protected Look<LoggerPreview> settings() throws IntakeException {
    IntakeOptions options = options();
    String id = trial.getId();
    return copy -> LoggerIntake.preview(copy, file, id, options);
  }

  @Override
  protected boolean show(LoggerPreview now) {
    channels.show(now, study.session().study());
    findings.show(new ArrayList<>(now.findings()));
    channelGrid.rebuild();
    findingGrid.rebuild();
    setErrorMessage(now.canApply() ? null : Words.of("import.errors"));
    now.layout().ifPresent(l -> setMessage(Words.of("logger.how", now.series().orElseThrow().size(), now.startAt().orElse("?"), l.headerRows(), l.timeColumn(),
        l.time().text(), now.series().orElseThrow().gaps().size())));
    return now.canApply();
  }

  @Override
  protected void apply(LoggerPreview now) throws IntakeException {
    now.apply(study.session());
  }
}
