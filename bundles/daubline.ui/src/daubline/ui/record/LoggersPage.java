package daubline.ui.record;

import daubline.analysis.EntryOrigins;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Variables;
import daubline.intake.IntakeException;
import daubline.intake.logger.ChannelSeries;
import daubline.intake.logger.LoggerSeries;
import daubline.model.Charge;
import daubline.model.LogEntry;
import daubline.model.LoggerFile;
import daubline.model.Trial;
import daubline.record.Alignment;
import daubline.session.StudyVariables;
import daubline.ui.Words;
import daubline.ui.explain.WhereFrom;
import daubline.ui.look.Hint;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Page;
import daubline.ui.study.OpenStudy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.ui.PlatformUI;

/** The logger files of a trial: taking one in, looking at it, and aligning it with the run log by a mark. */
public final class LoggersPage implements Page {

  private final OpenStudy study;
  private final Trial trial;
  private final Composite page;
  private final Composite bar;
  private final Combo file;
  private final Combo entry;
  private final Button mark;
  private final Button release;
  private final TraceCanvas canvas;
  private final Hint hint;
  private Trace trace;
  private LoggerFile shown;
  private int known;
  private String shownDigest;

  /** The loggers of a trial. */
  public LoggersPage(Composite parent, OpenStudy study, Trial trial) {
    this.study = study;
    this.trial = trial;
    page = Pages.tight(parent, 1);
    bar = new Composite(page, SWT.NONE);
    RowLayout row = new RowLayout();
    row.center = true;
    row.spacing = 6;
    bar.setLayout(row);
    bar.setBackground(Hue.ASH.color());
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    button("loggers.import", this::choose);
    file = combo("loggers.file", this::load);
    entry = combo("loggers.entry", this::enable);
    mark = button("loggers.mark", this::sync);
    release = button("loggers.release", () -> Alignment.release(RecordPages.desk(study), shown));
    canvas = new TraceCanvas(page, this::cursorMoved);
    canvas.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    canvas.setData("id", "loggers");
    Pages.named(canvas, Words.of("loggers.chart"), Words.of("loggers.chart.tip"));
    WhereFrom.on(canvas, this::origin);
    hint = new Hint(page, "loggersMessage");
    PlatformUI.getWorkbench().getHelpSystem().setHelp(page, "daubline.help.record_loggers");
  }

  private Button button(String key, Runnable action) {
    Button button = new Button(bar, SWT.PUSH);
    button.setText(Words.of(key));
    button.setData("id", key);
    Pages.named(button, Words.of(key), Words.of(key + ".tip"));
    button.addListener(SWT.Selection, e -> action.run());
    return button;
  }

  private Combo combo(String key, Runnable action) {
    Combo combo = new Combo(bar, SWT.READ_ONLY);
    combo.setData("id", key);
    Pages.named(combo, Words.of(key), Words.of(key + ".tip"));
    combo.addListener(SWT.Selection, e -> action.run());
    return combo;
  }

  private void choose() {
    FileDialog dialog = new FileDialog(page.getShell(), SWT.OPEN);
    dialog.setFilterExtensions(new String[] {"*.csv;*.txt;*.tsv;*.xlsx", "*.*"});
    String chosen = dialog.open();
    if (chosen != null) {
      take(Path.of(chosen));
    }
  }

  /** Shows how a file would be read, and takes it over when that is wanted. */
  public void take(Path chosen) {
    new LoggerDialog(page.getShell(), study, trial, chosen).open();
  }

  private List<LogEntry> timed() {
    return trial.getLog().stream().filter(e -> e.getElapsed() != null).toList();
  }

  @Override
  public void refresh() {
    List<LoggerFile> files = trial.getLoggers();
    // a file that was just taken in is what a person wants to see
    int selected = files.size() > known ? -1 : files.indexOf(shown);
    known = files.size();
    Pages.offer(file, files.stream().map(OpenStudy::nameOf), selected >= 0 ? selected : known - 1);
    int chosen = entry.getSelectionIndex();
    Pages.offer(entry, timed().stream().map(e -> TraceCanvas.clock(e.getElapsed()) + "  " + Words.of("loggers.at", Words.said(String.valueOf(e.getKind())),
        e.getText() == null ? "" : shorten(e.getText()))), Math.min(chosen, timed().size() - 1));
    bar.layout();
    load();
  }

  private static String shorten(String text) {
    return text.length() > 24 ? text.substring(0, 23) + "…" : text;
  }

  private void load() {
    List<LoggerFile> files = trial.getLoggers();
    LoggerFile wanted = file.getSelectionIndex() < 0 || file.getSelectionIndex() >= files.size() ? null : files.get(file.getSelectionIndex());
    String digest = wanted == null ? "" : wanted.getSha256() + wanted.getTimeFormat() + wanted.getHeaderRows() + wanted.getChannels().size();
    if (wanted == shown && digest.equals(shownDigest)) {
      align();
      return;
    }
    shown = wanted;
    shownDigest = digest;
    trace = null;
    canvas.show(null, List.of());
    say(wanted == null ? Words.of("loggers.none") : Words.of("loggers.reading"));
    enable();
    if (wanted != null) {
      read(EcoreUtil.copy(wanted), wanted);
    }
  }

  /** Reads behind, from a copy of the entry, as a file of six hours takes a moment. */
  private void read(LoggerFile copy, LoggerFile wanted) {
    Path folder = study.folder();
    Variables variables = StudyVariables.of(study.session().study());
    Job.create(Words.of("loggers.reading"), monitor -> {
      try {
        LoggerSeries series = LoggerSeries.read(folder, copy, variables);
        Display.getDefault().asyncExec(() -> show(series, wanted));
      } catch (IntakeException e) {
        Display.getDefault().asyncExec(() -> say(Words.said(e.findings().get(0))));
      }
      return Status.OK_STATUS;
    }).schedule();
  }

  private void show(LoggerSeries series, LoggerFile wanted) {
    if (wanted == shown && !page.isDisposed()) {
      trace = new Trace(series, Alignment.firstRow(trial, wanted));
      align();
    }
  }

  private void align() {
    if (trace != null) {
      trace.lit(Alignment.firstRow(trial, shown));
      canvas.show(trace, trial.getLog().stream().filter(e -> e instanceof Charge && e.getElapsed() != null).map(LogEntry::getElapsed).toList());
      cursorMoved();
    }
    enable();
  }

  private void cursorMoved() {
    if (trace == null) {
      return;
    }
    String offset = shown.getOffset() == null ? Words.of("loggers.own")
        : shown.getSyncMark() == null ? Words.of("loggers.stated", Printed.number(shown.getOffset()))
        : Words.of("loggers.offset", Printed.number(shown.getOffset()), shown.getSyncMark());
    String at = Double.isNaN(trace.cursor()) ? Words.of("loggers.keys") : Words.of("loggers.cursor", TraceCanvas.clock(trace.cursor() + trace.lit().orElse(0)));
    say(offset + " " + at);
    enable();
  }

  /** What each channel says at the cursor: its column and row in the file, its unit, and the entry of the file with checksum and clock. */
  private Optional<Trail> origin() {
    int row = trace == null ? -1 : trace.cursorRow();
    if (row < 0) {
      return Optional.empty();
    }
    EntryOrigins entries = new EntryOrigins(study.session());
    Trail file = entries.of(shown, Words.of("loggers.file"), String.valueOf(shown.getPath()));
    List<Trail> from = new ArrayList<>();
    for (ChannelSeries channel : trace.strips().values().stream().flatMap(List::stream).toList()) {
      from.add(new Trail(channel.layout().name(), Trace.text(channel, row), "", List.of(Trail.of("column " + channel.layout().column() + ", row " + (row + 1) + " of the data", ""))));
    }
    from.add(file);
    return Optional.of(new Trail(OpenStudy.nameOf(shown) + ", " + TraceCanvas.clock(trace.cursor() + trace.lit().orElse(0)), "", "", from));
  }

  private void sync() {
    Alignment.sync(RecordPages.desk(study), trial, shown, trace.cursor(), timed().get(entry.getSelectionIndex()));
  }

  private void enable() {
    boolean writable = !study.session().isReadOnly();
    mark.setEnabled(writable && trace != null && !Double.isNaN(trace.cursor()) && entry.getSelectionIndex() >= 0);
    release.setEnabled(writable && shown != null && shown.getOffset() != null);
  }

  private void say(String text) {
    hint.say(text, false);
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
