package daubline.ui.evidence;

import daubline.analysis.evidence.ArcMeasurement;
import daubline.base.Finding;
import daubline.base.Variable;
import daubline.engine.process.ArcDiameter;
import daubline.model.Claim;
import daubline.model.Sheet;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.look.Pages;
import daubline.ui.look.TitledDialog;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.OpenStudy;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PlatformUI;

/** Asks what was measured on a surviving arc, shows formula, diameter and uncertainty while typing, and enters them as a claim. */
public final class ArcDialog extends TitledDialog {

  private static final int LINES = 6;

  private final OpenStudy study;
  private final Sheet sheet;
  private final List<Variable> diameters;
  private Combo property;
  private Combo way;
  private Label firstLabel;
  private Label secondLabel;
  private Text first;
  private Text second;
  private Text result;
  private Claim entered;

  /** A dialog for a sheet. */
  public ArcDialog(Shell shell, OpenStudy study, Sheet sheet) {
    super(shell);
    this.study = study;
    this.sheet = sheet;
    diameters = ArcMeasurement.diameters(StudyVariables.of(study.session().study()));
  }

  /** The claim that was entered; empty when the dialog was left without. */
  public Optional<Claim> entered() {
    return Optional.ofNullable(entered);
  }

  @Override
  protected void configureShell(Shell shell) {
    super.configureShell(shell);
    shell.setText(Words.of("arc.title"));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(shell, "daubline.help.arc");
  }

  @Override
  protected Point getInitialSize() {
    return getShell().computeSize(560, SWT.DEFAULT, true);
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    setTitle(Words.of("arc.title"));
    setMessage(Words.of("arc.about"));
    Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    page.setLayout(new GridLayout(2, false));
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    property = combo(page, "arc.property", "arcProperty", diameters.stream().map(Words::told).map(Variable::name).toList());
    way = combo(page, "arc.way", "arcWay", Arrays.stream(ArcDiameter.Way.values()).map(w -> Words.of(w)).toList());
    firstLabel = new Label(page, SWT.NONE);
    first = text(page, "arcFirst");
    secondLabel = new Label(page, SWT.NONE);
    second = text(page, "arcSecond");
    result = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL | SWT.WRAP);
    GridData data = new GridData(SWT.FILL, SWT.FILL, true, true, 2, 1);
    data.heightHint = LINES * result.getLineHeight();
    result.setLayoutData(data);
    result.setData("id", "arcResult");
    Pages.named(result, Words.of("arc.result"), "");
    label();
    first.setFocus();
    return page;
  }

  private Combo combo(Composite page, String key, String id, List<String> items) {
    new Label(page, SWT.NONE).setText(Words.of(key));
    Combo combo = new Combo(page, SWT.READ_ONLY);
    combo.setItems(items.toArray(String[]::new));
    combo.select(0);
    combo.setData("id", id);
    combo.addListener(SWT.Selection, e -> label());
    Pages.named(combo, Words.of(key), "");
    return combo;
  }

  private Text text(Composite page, String id) {
    Text text = new Text(page, SWT.BORDER);
    text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    text.setData("id", id);
    text.addListener(SWT.Modify, e -> reckon());
    return text;
  }

  private ArcDiameter.Way chosen() {
    return ArcDiameter.Way.values()[way.getSelectionIndex()];
  }

  private void label() {
    label(firstLabel, first, chosen() == ArcDiameter.Way.LENGTH_AND_ANGLE ? "arc.length" : "arc.chord");
    label(secondLabel, second, chosen().isByAngle() ? "arc.angle" : "arc.rise");
    firstLabel.getParent().layout();
    reckon();
  }

  private static void label(Label label, Text field, String key) {
    label.setText(Words.of(key));
    field.setMessage(Words.of(key + ".example"));
    Pages.named(field, Words.of(key), Words.of(key + ".tip"));
  }

  private void reckon() {
    boolean complete = !first.getText().isBlank() && !second.getText().isBlank();
    ArcMeasurement.Outcome outcome = complete ? read() : new ArcMeasurement.Outcome(Optional.empty(), List.of());
    result.setText(String.join("\n", outcome.measurement().map(ArcMeasurement::lines).orElseGet(() -> List.of(chosen().formula()))));
    Optional<Finding> worst = outcome.findings().stream().min(java.util.Comparator.comparing(Finding::severity));
    setMessage(worst.map(f -> f.where() + ": " + Words.said(f)).orElseGet(() -> Words.of("arc.about")), worst.map(ArcDialog::sign)
        .orElse(IMessageProvider.NONE));
    Control enter = getButton(IDialogConstants.OK_ID);
    if (enter != null) {
      enter.setEnabled(outcome.measurement().isPresent());
    }
  }

  private static int sign(Finding finding) {
    return switch (finding.severity()) {
      case ERROR -> IMessageProvider.ERROR;
      case WARNING -> IMessageProvider.WARNING;
      case NOTE -> IMessageProvider.INFORMATION;
    };
  }

  private ArcMeasurement.Outcome read() {
    return ArcMeasurement.read(chosen(), first.getText(), second.getText(), Preferred.decimal());
  }

  @Override
  protected void createButtonsForButtonBar(Composite parent) {
    createButton(parent, IDialogConstants.OK_ID, Words.of("arc.enter"), true).setEnabled(false);
    createButton(parent, IDialogConstants.CANCEL_ID, Words.of("import.cancel"), false);
  }

  @Override
  protected void okPressed() {
    Variable variable = diameters.get(property.getSelectionIndex());
    entered = read().measurement().orElseThrow().enter(study.session(), sheet, variable, Words.of("change.arc", Words.told(variable).name()));
    super.okPressed();
  }
}
