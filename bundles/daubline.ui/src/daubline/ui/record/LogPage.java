package daubline.ui.record;

import daubline.intake.IntakeException;
import daubline.intake.PictureFile;
import daubline.model.DataFile;
import daubline.model.LogEntry;
import daubline.model.Trial;
import daubline.record.LogTable;
import daubline.ui.Words;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.widgets.Composite;

/** The run log, with a button that attaches the scanned paper to the rows that were typed from it. */
public final class LogPage extends RecordPage {

  private final OpenStudy study;
  private final Trial trial;

  LogPage(Composite parent, OpenStudy study, Trial trial) {
    super(parent, new LogTable(RecordPages.desk(study), trial));
    this.study = study;
    this.trial = trial;
    button("log.scan", () -> PhotosPage.choose(this).forEach(this::attach)).setEnabled(!study.session().isReadOnly());
  }

  /** Takes a scanned paper into the study and attaches it to every row that has none yet, as one change. */
  public void attach(Path paper) {
    try {
      List<LogEntry> rows = trial.getLog().stream().filter(e -> e.getScan() == null).toList();
      DataFile scan = PictureFile.add(study.session(), paper, trial::getFiles, "paper sheet", PictureFile.PAPERS, Words.of("change.scan", paper.getFileName()),
          added -> rows.forEach(e -> e.setScan(added)));
      refresh();
      say(Words.of("log.scanned", OpenStudy.nameOf(scan), rows.size()), false);
    } catch (IntakeException e) {
      say(Words.said(e.findings().get(0)), true);
    }
  }
}
