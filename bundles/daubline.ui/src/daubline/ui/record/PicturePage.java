package daubline.ui.record;

import daubline.base.Finding;
import daubline.intake.IntakeException;
import daubline.intake.PictureFile;
import daubline.model.DataFile;
import daubline.model.Measurement;
import daubline.model.Sheet;
import daubline.record.PictureLength;
import daubline.record.PictureTable;
import daubline.record.Pictures;
import daubline.ui.Words;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Page;
import daubline.ui.study.FileDrop;
import daubline.ui.study.OpenStudy;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.PlatformUI;

/** Measuring on photographed or scanned sections and plans: the picture with its lines at one side, what they measure at the other. */
public final class PicturePage implements Page, PictureCanvas.Hands {

  private static final int ROOM = 140;

  private final OpenStudy study;
  private final Supplier<List<DataFile>> files;
  private final Supplier<List<DataFile>> home;
  private final Composite page;
  private final Composite bar;
  private final Combo choice;
  private final PictureCanvas canvas;
  private final PictureTable table;
  private final RecordPage measured;
  private DataFile shown;
  private String shownFile = "";

  /**
   * A page for pictures.
   *
   * @param files the files among which pictures are shown
   * @param home where a new one goes, made when there is none; called inside a change
   * @param sheet where claims go, made when there is none; called inside a change
   */
  public PicturePage(Composite parent, OpenStudy study, Supplier<List<DataFile>> files, Supplier<List<DataFile>> home, Supplier<Sheet> sheet) {
    this.study = study;
    this.files = files;
    this.home = home;
    page = Pages.tight(parent, 1);
    bar = new Composite(page, SWT.NONE);
    RowLayout row = new RowLayout();
    row.center = true;
    row.spacing = 6;
    bar.setLayout(row);
    bar.setBackground(Hue.ASH.color());
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    button("picture.add", this::choose).setEnabled(!study.session().isReadOnly());
    choice = new Combo(bar, SWT.READ_ONLY);
    choice.setData("id", "picture.choice");
    Pages.named(choice, Words.of("picture.choice"), "");
    choice.addListener(SWT.Selection, e -> show(pictures().get(choice.getSelectionIndex())));
    SashForm sash = Pages.beside(page, ROOM);
    sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    canvas = new PictureCanvas(sash, this);
    canvas.setData("id", "picture");
    button("picture.larger", () -> canvas.zoom(true));
    button("picture.smaller", () -> canvas.zoom(false));
    button("picture.whole", canvas::whole);
    table = new PictureTable(RecordPages.desk(study), sheet);
    measured = new RecordPage(sash, table);
    measured.onSelect(() -> canvas.show(lines(), measured.selected().filter(Measurement.class::isInstance).map(Measurement.class::cast).orElse(null)));
    sash.setWeights(5, 4);
    FileDrop.on(canvas, dropped -> dropped.forEach(this::take));
    PlatformUI.getWorkbench().getHelpSystem().setHelp(page, "daubline.help.record_measured");
  }

  private Button button(String key, Runnable action) {
    Button button = new Button(bar, SWT.PUSH);
    button.setText(Words.of(key));
    button.setData("id", key);
    Pages.named(button, Words.of(key), Words.of(key + ".tip"));
    button.addListener(SWT.Selection, e -> {
      action.run();
      canvas.setFocus();
    });
    return button;
  }

  private void choose() {
    FileDialog dialog = new FileDialog(page.getShell(), SWT.OPEN);
    dialog.setFilterExtensions(new String[] {PictureFile.filter(PictureFile.ENDINGS), "*.*"});
    String chosen = dialog.open();
    if (chosen != null) {
      take(Path.of(chosen));
    }
  }

  /** Takes a picture into the study and shows it; says why when it cannot. */
  public void take(Path file) {
    try {
      DataFile added = PictureFile.add(study.session(), file, home, "picture", PictureFile.ENDINGS, Words.of("change.picture", file.getFileName()));
      refresh();
      choice.select(pictures().indexOf(added));
      show(added);
    } catch (IntakeException e) {
      Finding finding = e.findings().get(0);
      measured.say(Words.said(finding), true);
    }
  }

  private List<DataFile> pictures() {
    return files.get().stream().filter(Pictures::isPicture).toList();
  }

  private List<Measurement> lines() {
    return shown == null ? List.of() : shown.getMeasurements().stream().filter(study.session()::shows).toList();
  }

  @Override
  public void refresh() {
    List<DataFile> all = pictures();
    show(all.contains(shown) ? shown : all.isEmpty() ? null : all.get(0));
    Pages.offer(choice, all.stream().map(OpenStudy::nameOf), all.indexOf(shown));
    bar.layout();
  }

  private void show(DataFile file) {
    String now = file == null ? "" : file.getPath() + file.getSha256();
    boolean other = file != shown || !now.equals(shownFile);
    shown = file;
    shownFile = now;
    table.of(file);
    measured.refresh();
    if (other) {
      canvas.show((ImageData) null);
      measured.say(Words.of(file == null ? "picture.none" : "picture.reading"), false);
      if (file != null) {
        read(file);
      }
    }
    canvas.show(lines(), measured.selected().filter(Measurement.class::isInstance).map(Measurement.class::cast).orElse(null));
  }

  /** Reads behind, as a large picture takes a moment. */
  private void read(DataFile file) {
    Path path = study.folder().resolve(String.valueOf(file.getPath())).normalize();
    boolean inside = path.startsWith(study.folder()) && Files.isRegularFile(path);
    if (!inside) {
      measured.say(Words.of("picture.missing", String.valueOf(file.getPath())), true);
      return;
    }
    Job.createSystem("picture", monitor -> {
      try {
        ImageData data = new ImageData(path.toString());
        Display.getDefault().asyncExec(() -> loaded(file, data));
      } catch (SWTException | OutOfMemoryError e) {
        Display.getDefault().asyncExec(() -> {
          if (shown == file && !page.isDisposed()) {
            measured.say(Words.of("picture.broken", path.getFileName(), String.valueOf(e.getMessage())), true);
          }
        });
      }
      return Status.OK_STATUS;
    }).schedule();
  }

  private void loaded(DataFile file, ImageData data) {
    if (shown == file && !page.isDisposed()) {
      canvas.show(data);
      canvas.setData("loaded", file.getPath());
      measured.say(Words.of("picture.keys"), false);
    }
  }

  @Override
  public void draw(PictureLength.Line line) {
    if (shown != null && !study.session().isReadOnly()) {
      Measurement[] made = new Measurement[1];
      study.session().edit(Words.of("change.line"), () -> made[0] = Pictures.add(shown, line.x1(), line.y1(), line.x2(), line.y2()));
      measured.reveal(made[0]);
    }
  }

  @Override
  public void move(Measurement m, PictureLength.Line line) {
    if (!study.session().isReadOnly()) {
      study.session().edit(Words.of("change.point"), () -> Pictures.move(m, line.x1(), line.y1(), line.x2(), line.y2()));
    }
  }

  @Override
  public void choose(Measurement m) {
    measured.reveal(m);
  }

  @Override
  public void remove(Measurement m) {
    int row = lines().indexOf(m);
    if (row >= 0 && table.canRemove(row)) {
      table.remove(row);
    } else {
      measured.say(Words.of("picture.scaleStays"), true);
    }
  }

  /** Goes to a line of a picture. */
  @Override
  public boolean reveal(EObject thing) {
    DataFile file = thing instanceof Measurement m ? (DataFile) m.eContainer() : thing instanceof DataFile f ? f : null;
    if (file == null || !pictures().contains(file)) {
      return false;
    }
    choice.select(pictures().indexOf(file));
    show(file);
    return thing instanceof DataFile || measured.reveal(thing);
  }

  /** Where a point of the picture lies on its canvas; for tests. */
  public Point at(double x, double y) {
    return canvas.at(x, y);
  }

  @Override
  public Control control() {
    return page;
  }

  @Override
  public void focus() {
    canvas.setFocus();
  }
}
