package daubline.ui.table;

import daubline.intake.Intake;
import daubline.intake.IntakeException;
import daubline.intake.IntakeOptions;
import daubline.intake.Preview;
import daubline.intake.PreviewRow;
import daubline.intake.Target;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/**
 * Says what a file is a table of, shows what taking it over would do, and does it, all or nothing. What was recognised in a
 * laboratory's table is shown first, and what is only guessed has to be confirmed.
 */
final class ImportDialog extends TakeOverDialog<Preview> {

  private static final List<String> DECIMALS = List.of("", "point", "comma");

  private static final int COLUMNS = 6;

  private final ImportModel model = new ImportModel();
  private final RecognisedModel recognised = new RecognisedModel(this::look);
  private Combo target;
  private Combo decimal;
  private Grid grid;
  private Grid guesses;
  private SashForm sash;
  private Button confirm;
  private Button confirmAll;

  ImportDialog(Shell shell, OpenStudy study, Path file) {
    super(shell, study, file, "import", "daubline.help.import");
  }

  @Override
  protected Point getInitialSize() {
    Point wanted = super.getInitialSize();
    return new Point(Math.max(960, wanted.x), Math.max(640, wanted.y));
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    setTitle(Words.of("import.heading", file.getFileName(), study.name()));
    Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    page.setLayout(new GridLayout(COLUMNS, false));
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    target = combo(page, "import.target", List.of(Target.values()).stream().map(Words::of).toList());
    if (Imports.isBibliography(file)) {
      target.select(Target.CITATIONS.ordinal());
    }
    decimal = combo(page, "import.decimal", DECIMALS.stream().map(d -> Words.of("import.decimal." + (d.isEmpty() ? "file" : d))).toList());
    confirm = button(page, "recognised.confirm", () -> guesses.selected().ifPresent(p -> recognised.confirm(List.of(p.y))));
    confirmAll = button(page, "recognised.confirmall", () -> recognised.confirm(IntStream.range(0, recognised.rows()).boxed().toList()));
    sash = new SashForm(page, SWT.VERTICAL);
    GridData all = new GridData(SWT.FILL, SWT.FILL, true, true, COLUMNS, 1);
    all.heightHint = 360;
    sash.setLayoutData(all);
    guesses = new Grid(sash, Words.of("recognised.title"), recognised);
    guesses.control().setData("id", "import-recognised");
    grid = new Grid(sash, Words.of("import.title"), model);
    grid.control().setData("id", "import-rows");
    sash.setWeights(3, 2);
    sash.setMaximizedControl(grid.control());
    return page;
  }

  private static Button button(Composite page, String key, Runnable action) {
    Button button = new Button(page, SWT.PUSH);
    button.setText(Words.of(key));
    button.setData("id", key);
    button.setEnabled(false);
    button.addListener(SWT.Selection, e -> action.run());
    return button;
  }

  private Combo combo(Composite page, String key, List<String> items) {
    new Label(page, SWT.NONE).setText(Words.of(key));
    Combo combo = new Combo(page, SWT.READ_ONLY);
    combo.setItems(items.toArray(String[]::new));
    combo.select(0);
    combo.setData("id", key);
    combo.addListener(SWT.Selection, e -> look());
    Pages.named(combo, Words.of(key), "");
    return combo;
  }

  @Override
  protected Look<Preview> settings() throws IntakeException {
    Target as = Target.values()[target.getSelectionIndex()];
    String sign = DECIMALS.get(decimal.getSelectionIndex());
    IntakeOptions options = sign.isEmpty() ? IntakeOptions.none() : IntakeOptions.none().with("decimal", sign);
    if (as == Target.ANALYSES) {
      for (Map.Entry<String, String> said : recognised.said().entrySet()) {
        options = options.with(said.getKey(), said.getValue());
      }
    }
    IntakeOptions settings = options;
    return copy -> Intake.preview(copy, file, as, settings);
  }

  @Override
  protected void waiting() {
    confirm.setEnabled(false);
    confirmAll.setEnabled(false);
  }

  @Override
  protected boolean show(Preview now) {
    model.show(now);
    recognised.show(now.recognised());
    sash.setMaximizedControl(now.recognised().isEmpty() ? grid.control() : null);
    guesses.rebuild();
    grid.rebuild();
    confirm.setEnabled(recognised.open() > 0);
    confirmAll.setEnabled(recognised.open() > 0);
    boolean can = now.canApply() && now.changesAnything();
    setMessage(now.how());
    setErrorMessage(now.canApply() ? null : recognised.open() > 0 ? Words.of("recognised.open", recognised.open()) : Words.of("import.errors"));
    if (now.canApply()) {
      setMessage(can ? Words.of("import.counts", now.count(PreviewRow.State.ADDED), now.count(PreviewRow.State.UPDATED),
          now.count(PreviewRow.State.UNCHANGED)) + " " + now.how() : Words.of("import.nothing"));
    }
    return can;
  }

  @Override
  protected void apply(Preview now) throws IntakeException {
    now.apply(study.session());
  }
}
