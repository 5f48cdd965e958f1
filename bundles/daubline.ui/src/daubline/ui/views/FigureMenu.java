package daubline.ui.views;

import daubline.charts.Figure;
import daubline.charts.FigureWriter;
import daubline.charts.PdfWriter;
import daubline.charts.PngWriter;
import daubline.charts.SvgWriter;
import daubline.ui.Words;
import daubline.ui.edit.EditTarget;
import daubline.ui.explain.WhereFrom;
import daubline.ui.look.StatusLine;
import daubline.ui.study.Notices;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** The context menu of every figure: copy it as a picture, save it as a file, show the data behind it. */
final class FigureMenu implements EditTarget {

  private static final int DPI = 600;
  private static final List<FigureWriter> WRITERS = List.of(new SvgWriter(), new PdfWriter(Instant.EPOCH), new PngWriter(DPI));

  private final FigureCanvas canvas;

  private FigureMenu(FigureCanvas canvas) {
    this.canvas = canvas;
  }

  static void on(FigureCanvas canvas) {
    FigureMenu menu = new FigureMenu(canvas);
    canvas.addListener(SWT.MenuDetect, menu::open);
    EditTarget.on(canvas, menu);
  }

  @Override
  public boolean can(Deed deed) {
    return deed == Deed.COPY && canvas.drawn() != null;
  }

  @Override
  public void act(Deed deed) {
    copy();
  }

  private void open(Event event) {
    if (canvas.isEmpty()) {
      return;
    }
    Menu menu = new Menu(canvas.getShell(), SWT.POP_UP);
    item(menu, "origin.menu", WhereFrom.of(canvas).isPresent(), () -> WhereFrom.ask(canvas));
    item(menu, "figure.copy", canvas.drawn() != null, this::copy);
    item(menu, "figure.save", true, this::save);
    item(menu, "figure.data", canvas.source().isShown(), () -> canvas.source().show());
    menu.addListener(SWT.Hide, e -> canvas.getDisplay().asyncExec(menu::dispose));
    menu.setLocation(event.detail == SWT.MENU_KEYBOARD ? canvas.toDisplay(8, 8) : new org.eclipse.swt.graphics.Point(event.x, event.y));
    event.doit = false;
    menu.setVisible(true);
  }

  private static void item(Menu menu, String key, boolean enabled, Runnable action) {
    MenuItem item = new MenuItem(menu, SWT.PUSH);
    item.setText(Words.of(key));
    item.setEnabled(enabled);
    item.addListener(SWT.Selection, e -> action.run());
  }

  private void copy() {
    ImageData picture = canvas.drawn();
    if (picture != null) {
      Clipboard clipboard = new Clipboard(canvas.getDisplay());
      clipboard.setContents(new Object[] {picture}, new Transfer[] {ImageTransfer.getInstance()});
      clipboard.dispose();
      StatusLine.say(Words.of("figure.copied"));
    }
  }

  private void save() {
    FileDialog dialog = new FileDialog(canvas.getShell(), SWT.SAVE);
    dialog.setFilterExtensions(WRITERS.stream().map(w -> "*." + w.ending()).toArray(String[]::new));
    dialog.setFileName(canvas.source().name() + "." + WRITERS.get(0).ending());
    dialog.setOverwrite(true);
    String chosen = dialog.open();
    if (chosen != null) {
      Path file = Path.of(chosen);
      write(canvas.figure(), canvas.source().name(), file.getFileName().toString().contains(".") ? file
          : file.resolveSibling(file.getFileName() + "." + WRITERS.get(Math.max(0, dialog.getFilterIndex())).ending()));
    }
  }

  /** Writes a figure behind, in the colours of paper, as what the ending of its name says. */
  static Job write(Figure figure, String title, Path file) {
    String ending = file.getFileName().toString().replaceFirst(".*\\.", "");
    FigureWriter writer = WRITERS.stream().filter(w -> w.ending().equalsIgnoreCase(ending)).findFirst().orElse(WRITERS.get(0));
    Job job = Job.create(Words.of("figure.writing"), monitor -> {
      try (OutputStream out = Files.newOutputStream(file)) {
        writer.write(figure, title, figure.widthMm(), out);
        say(() -> StatusLine.say(Words.of("figure.saved", file)));
      } catch (IOException e) {
        say(() -> Notices.show(Words.of("figure.failed"), Words.of("figure.failed.remedy", e.getMessage())));
      }
      return Status.OK_STATUS;
    });
    job.schedule();
    return job;
  }

  private static void say(Runnable what) {
    Display.getDefault().asyncExec(what);
  }
}
