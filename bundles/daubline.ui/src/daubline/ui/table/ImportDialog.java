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
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Says what a file is a table of, shows what taking it over would do, and does it, all or nothing. */
final class ImportDialog extends TakeOverDialog<Preview> {

  private static final List<String> DECIMALS = List.of("", "point", "comma");

  private final ImportModel model = new ImportModel();
  private Combo target;
  private Combo decimal;
  private Grid grid;

  ImportDialog(Shell shell, OpenStudy study, Path file) {
    super(shell, study, file, "import", "daubline.help.import");
  }

  @Override
  protected Point getInitialSize() {
    return new Point(820, 520);
  }

  @Override
  protected Control createDialogArea(Composite parent) {
    setTitle(Words.of("import.heading", file.getFileName(), study.name()));
    Composite page = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
    page.setLayout(new GridLayout(4, false));
    page.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    target = combo(page, "import.target", List.of(Target.values()).stream().map(Words::of).toList());
    if (Imports.isBibliography(file)) {
      target.select(Target.CITATIONS.ordinal());
    }
    decimal = combo(page, "import.decimal", DECIMALS.stream().map(d -> Words.of("import.decimal." + (d.isEmpty() ? "file" : d))).toList());
    grid = new Grid(page, Words.of("import.title"), model);
    grid.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true, 4, 1));
    return page;
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
  protected Look<Preview> settings() {
    Target as = Target.values()[target.getSelectionIndex()];
    String sign = DECIMALS.get(decimal.getSelectionIndex());
    return copy -> Intake.preview(copy, file, as, sign.isEmpty() ? IntakeOptions.none() : IntakeOptions.none().with("decimal", sign));
  }

  @Override
  protected boolean show(Preview now) {
    model.show(now);
    grid.rebuild();
    boolean can = now.canApply() && now.changesAnything();
    setMessage(now.how());
    setErrorMessage(now.canApply() ? null : Words.of("import.errors"));
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
