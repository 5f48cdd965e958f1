package daubline.ui.plan;

import daubline.analysis.Snapshots;
import daubline.analysis.StudySnapshot;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.RunSheet;
import daubline.analysis.design.RunSheets;
import daubline.base.FileFault;
import daubline.charts.Figure;
import daubline.charts.PdfWriter;
import daubline.charts.RunSheetPage;
import daubline.charts.WordedFigure;
import daubline.model.Series;
import daubline.ui.Words;
import daubline.ui.look.Over;
import daubline.ui.study.Notices;
import daubline.ui.study.OpenStudy;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;

/** Writes the run sheets of a series into a file that the user names. */
public final class RunSheetFile {

  private RunSheetFile() {
  }

  static void write(OpenStudy study, Series series) {
    FileDialog dialog = new FileDialog(Over.shell(), SWT.SAVE);
    dialog.setText(Words.of("plan.sheets"));
    dialog.setFileName("run-sheets.pdf");
    dialog.setOverwrite(true);
    dialog.setFilterExtensions(new String[] {"*.pdf"});
    String name = dialog.open();
    if (name != null) {
      write(study, series, Path.of(name));
    }
  }

  /** Writes them behind: the trials to be burnt, or all when none is left. */
  public static void write(OpenStudy study, Series series, Path file) {
    StudySnapshot snapshot = Snapshots.of(study.session());
    var data = DesignBrief.find(snapshot, series.getId());
    List<RunSheet> open = RunSheets.of(study.session(), snapshot, data, false);
    List<RunSheet> sheets = open.isEmpty() ? RunSheets.of(study.session(), snapshot, data, true) : open;
    List<Figure> pages = sheets.stream().flatMap(s -> RunSheetPage.of(s).stream()).toList();
    Job.create(Words.of("plan.sheets"), monitor -> {
      try (OutputStream out = Files.newOutputStream(file)) {
        new PdfWriter(Instant.EPOCH).pages(pages.stream().map(p -> WordedFigure.of(p, Words.wording())).toList(), Words.of("plan.sheets.of", data.name()), RunSheetPage.WIDTH_MM, out);
      } catch (IOException e) {
        Display.getDefault().asyncExec(() -> Notices.show(Words.of("plan.sheets.failed", file), FileFault.of(e)));
      }
      return Status.OK_STATUS;
    }).schedule();
  }
}
