package daubline.ui.sheet;

import daubline.base.Finding;
import daubline.base.ValueKind;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.model.EvidenceSheet;
import daubline.model.Reading;
import daubline.model.Reconstruction;
import daubline.model.Sheet;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.compare.Beside;
import daubline.ui.evidence.ArcDialog;
import daubline.ui.evidence.SectionPane;
import daubline.ui.grid.Grid;
import daubline.ui.look.Hint;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.Chosen;
import daubline.ui.study.OpenStudy;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

/** The values of an object: the grid, the words for missing as buttons, and the details of the selected value. */
final class ValuesPage implements Page {

  private static final List<ValueKind> QUICK = List.of(ValueKind.NOT_PRESERVED, ValueKind.NOT_LOOKED_FOR, ValueKind.NOT_RECORDED, ValueKind.ABSENT);

  private final OpenStudy study;
  private final EObject object;
  private final ValueModel model;
  private final Composite page;
  private final Grid grid;
  private final DetailPane detail;
  private final Hint hint;
  /** The drawing beside the choices of a reconstruction; null for other things. */
  private final SectionPane section;
  private Combo beside;
  /** Whether something changed while a cell was open; shown when it is closed, so as not to disturb the typing. */
  private boolean postponed;
  /** Whether the grid is being built anew and has no selection for a moment, which must not shut a field below that is being typed into. */
  private boolean rebuilding;
  private List<EvidenceSheet> sheets = List.of();

  ValuesPage(Composite parent, OpenStudy study, EObject object) {
    this.study = study;
    this.object = object;
    model = new ValueModel(study, Forms.of(object, this::sheet));
    model.verdicts(v -> result(v.id()));
    page = Pages.tight(parent, 1);
    tools();
    SashForm sash = new SashForm(page, SWT.VERTICAL);
    sash.setBackground(Hue.ASH.color());
    sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    SashForm body = new SashForm(sash, SWT.HORIZONTAL);
    body.setBackground(Hue.ASH.color());
    grid = Grid.withFixedNames(body, Words.of("grid.values", OpenStudy.nameOf(object)), model);
    grid.control().setData("id", "values");
    section = object instanceof Reconstruction r ? new SectionPane(body, study, r) : null;
    if (section != null) {
      body.setWeights(5, 3);
    }
    detail = new DetailPane(sash, study);
    sash.setWeights(7, 3);
    hint = new Hint(page, "message");
    grid.onSelect(this::selected);
  }

  private void tools() {
    Composite bar = new Composite(page, SWT.NONE);
    RowLayout layout = new RowLayout();
    layout.center = true;
    layout.spacing = 6;
    bar.setLayout(layout);
    bar.setBackground(Hue.ASH.color());
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    Text search = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH | SWT.BORDER);
    search.setMessage(Words.of("values.find"));
    search.setLayoutData(new org.eclipse.swt.layout.RowData(130, SWT.DEFAULT));
    search.setData("id", "find");
    Pages.named(search, Words.of("values.find"), "");
    Button filled = button(bar, SWT.CHECK, "filled", Words.of("values.filled"), "");
    Runnable filter = () -> {
      model.filter(search.getText(), filled.getSelection());
      grid.rebuild();
    };
    search.addListener(SWT.Modify, e -> filter.run());
    filled.addListener(SWT.Selection, e -> filter.run());
    if (object instanceof Trial && !OpenStudy.isBlind(object)) {
      besideCombo(bar);
    }
    QUICK.forEach(kind -> button(bar, SWT.PUSH, kind.name(), Words.said(kind.word()), Words.of("values.quick.tip")).addListener(SWT.Selection, e -> putQuick(kind)));
    button(bar, SWT.PUSH, "second", Words.of("values.second"), Words.of("values.second.tip")).addListener(SWT.Selection, e -> addBeside());
    if (object instanceof Sheet) {
      button(bar, SWT.PUSH, "fromArc", Words.of("arc.button"), Words.of("arc.button.tip")).addListener(SWT.Selection, e -> fromArc());
      button(bar, SWT.PUSH, "toReport", Words.of("report.button"), Words.of("report.button.tip")).addListener(SWT.Selection, e -> toReport());
    }
  }

  /** Opens the publication that the selected value comes from, at the claim. */
  private void toReport() {
    grid.selected().flatMap(p -> model.reading(p.x, p.y)).filter(r -> r.getCitation() != null)
        .ifPresent(r -> Sheets.open(r.getCitation()).ifPresent(editor -> editor.reveal(r)));
  }

  private void fromArc() {
    if (!study.session().isReadOnly()) {
      ArcDialog dialog = new ArcDialog(page.getShell(), study, (Sheet) object);
      dialog.open();
      dialog.entered().ifPresent(claim -> reveal(claim, claim.getVariable()));
    }
  }

  private static Button button(Composite bar, int style, String id, String text, String tip) {
    Button button = new Button(bar, style);
    button.setText(text);
    button.setData("id", id);
    Pages.named(button, text, tip);
    return button;
  }

  private void besideCombo(Composite bar) {
    Label label = new Label(bar, SWT.NONE);
    label.setText(Words.of("values.beside"));
    label.setBackground(Hue.ASH.color());
    beside = new Combo(bar, SWT.READ_ONLY);
    beside.setData("id", "beside");
    Pages.named(beside, Words.of("values.beside"), Words.of("values.beside.tip"));
    beside.addListener(SWT.Selection, e -> {
      model.rebuild();
      grid.rebuild();
    });
    fillBeside();
  }

  private void fillBeside() {
    List<EvidenceSheet> now = Beside.sheets(study);
    if (!now.equals(sheets)) {
      EvidenceSheet before = sheet();
      sheets = now;
      EvidenceSheet wanted = sheets.contains(before) ? before : Beside.first((Trial) object, sheets).orElse(null);
      Pages.offer(beside, sheets.stream().map(OpenStudy::nameOf), sheets.indexOf(wanted));
    }
  }

  private EvidenceSheet sheet() {
    int index = beside == null || beside.isDisposed() ? -1 : beside.getSelectionIndex();
    return index >= 0 && index < sheets.size() ? sheets.get(index) : null;
  }

  private Optional<CriterionResult> result(String variable) {
    EvidenceSheet sheet = sheet();
    if (sheet == null || !(object instanceof Trial trial)) {
      return Optional.empty();
    }
    Optional<Comparison> comparison = study.results().flatMap(r -> r.comparison(trial.getId(), sheet.getId()));
    return comparison.flatMap(c -> Beside.aboutVariable(c, variable));
  }

  private void putQuick(ValueKind kind) {
    grid.selected().filter(p -> model.isEditable(p.x, p.y)).ifPresent(p -> model.put(p.x, p.y, kind.word()));
    grid.refresh();
    grid.control().setFocus();
    selected();
  }

  private void addBeside() {
    grid.selected().filter(p -> model.isEditable(p.x, p.y)).ifPresent(p -> model.addBeside(p.x, p.y));
  }

  private void selected() {
    if (rebuilding) {
      return;
    }
    if (postponed && !grid.isOpen()) {
      refresh();
      return;
    }
    Optional<Point> cell = grid.selected();
    Optional<Reading> reading = cell.flatMap(p -> model.reading(p.x, p.y));
    boolean own = cell.filter(p -> p.x > 0 && p.x - 1 < model.columns()).map(p -> model.isEditable(p.x, p.y)).orElse(false);
    detail.show(own ? reading.orElse(null) : null);
    Chosen.set(cell.flatMap(p -> model.origin(p.x, p.y)).orElse(null));
    Optional<Finding> finding = cell.flatMap(p -> model.finding(p.x, p.y));
    String said = finding.map(f -> "△ " + Words.said(f)).orElseGet(() -> cell.flatMap(p -> model.line(p.y))
        .map(l -> l.variable() == null ? "" : l.variable().meaning()).orElse(""));
    hint.say(said, finding.isPresent());
  }

  /** Selects the value of a variable, or the value itself, and shows what is wrong with it. */
  void reveal(Reading reading, String variable) {
    Optional<int[]> place = reading == null ? Optional.empty() : model.find(reading);
    if (place.isEmpty() && !variable.isEmpty() && model.row(variable, 0) >= 0) {
      place = Optional.of(new int[] {1, model.row(variable, 0)});
    }
    place.ifPresent(p -> grid.select(p[0], p[1]));
    grid.control().setFocus();
  }

  @Override
  public Control control() {
    return page;
  }

  @Override
  public void refresh() {
    if (section != null) {
      section.refresh();
    }
    postponed = grid.isOpen();
    if (postponed) {
      grid.control().redraw();
      return;
    }
    if (beside != null) {
      fillBeside();
    }
    model.rebuild();
    rebuilding = true;
    grid.rebuild();
    rebuilding = false;
    selected();
  }

  @Override
  public void focus() {
    grid.control().setFocus();
    if (grid.selected().isEmpty() && model.rows() > 1) {
      grid.select(1, 1);
    }
  }
}
