package daubline.ui.runday;

import daubline.analysis.EntryOrigins;
import daubline.base.Trail;
import daubline.model.Trial;
import daubline.record.Desk;
import daubline.record.runday.Draft;
import daubline.record.runday.Prompt;
import daubline.record.runday.RunClock;
import daubline.record.runday.RunDay;
import daubline.ui.Words;
import daubline.ui.explain.WhereFrom;
import daubline.ui.grid.Grid;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.record.EntryModel;
import daubline.ui.record.RecordPages;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.StudyPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;

/** The day of the fire: every event has one key, the clock is large, what stops the run stands there all day. */
public final class RunDayView extends StudyPart {

  private static final int TICK_MILLIS = 250;
  private static final double PUT_OFF_SECONDS = 300;
  private static final int CLOCK_LINES = 4;
  /** Lines of the view below which the list of keys gives its room to the log. */
  private static final int LINES_FOR_KEYS = 26;

  private final List<Trial> trials = new ArrayList<>();
  private Composite page;
  private Combo choice;
  private Button sound;
  private ClockFace clock;
  private Label stop;
  private Label totals;
  private Composite logArea;
  private EntryBar bar;
  private Grid grid;
  private OpenStudy study;
  private Trial trial;
  private RunDay day;
  private ClockWindow window;
  private String rung = "";

  @Override
  protected void fill(Composite area) {
    page = Pages.tight(area, 1);
    tools();
    clock = new ClockFace(page);
    GridData tall = new GridData(SWT.FILL, SWT.CENTER, true, false);
    tall.heightHint = CLOCK_LINES * Fonts.PLAIN.lineHeight(clock);
    clock.setLayoutData(tall);
    clock.setData("id", "run.keys");
    Pages.named(clock, Words.of("run.keys"), "");
    clock.addListener(SWT.KeyDown, this::key);
    clock.addListener(SWT.MouseDown, e -> clock.setFocus());
    clock.addListener(SWT.Traverse, e -> e.doit = e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS);
    stop = Pages.text(page, "", Fonts.STRONG.font(), 200);
    stop.setForeground(Hue.LINING.color());
    stop.setData("id", "run.stop");
    logArea = new Composite(page, SWT.NONE);
    logArea.setLayout(new org.eclipse.swt.layout.FillLayout());
    logArea.setBackground(Hue.PAPER.color());
    logArea.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    logArea.addListener(SWT.Resize, e -> logArea.getDisplay().asyncExec(this::showLast));
    totals = Pages.text(page, "", Fonts.LARGER.font(), 200);
    totals.setData("id", "runTotals");
    WhereFrom.on(totals, () -> summed(totals.getText()));
    WhereFrom.on(clock, () -> summed(totals.getText()));
    bar = new EntryBar(page, this::rest);
    bar.setLayoutData(new GridData(SWT.FILL, SWT.END, true, false));
    page.addListener(SWT.Resize, e -> {
      if (!bar.isTyping()) {
        showIdle();
      }
    });
    tick();
  }

  /** Totals and times of the day lead to the lines of the log that they are worked out of. */
  private Optional<Trail> summed(String said) {
    return trial == null || study == null || said.isEmpty() ? Optional.empty() : Optional.of(Trail.reckoned(OpenStudy.nameOf(trial), said, Words.of("run.summed"), trial.getLog().stream()
        .map(e -> new EntryOrigins(study.session()).of(e, String.valueOf(e.getKind()), e.getText() == null ? "" : e.getText())).toList()));
  }

  private void tools() {
    Composite tools = new Composite(page, SWT.NONE);
    RowLayout layout = new RowLayout();
    layout.center = true;
    layout.spacing = 6;
    tools.setLayout(layout);
    tools.setBackground(Hue.ASH.color());
    tools.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    choice = new Combo(tools, SWT.READ_ONLY);
    choice.setData("id", "run.trial");
    Pages.named(choice, Words.of("run.trial"), Words.of("run.trial.tip"));
    choice.addListener(SWT.Selection, e -> begin(trials.get(choice.getSelectionIndex())));
    Button large = new Button(tools, SWT.PUSH);
    large.setText(Words.of("run.window"));
    large.setData("id", "run.window");
    Pages.named(large, Words.of("run.window"), Words.of("run.window.tip"));
    large.addListener(SWT.Selection, e -> openWindow());
    sound = new Button(tools, SWT.CHECK);
    sound.setText(Words.of("run.sound"));
    sound.setBackground(Hue.ASH.color());
    sound.setData("id", "run.sound");
    Pages.named(sound, Words.of("run.sound"), Words.of("run.sound.tip"));
  }

  private void openWindow() {
    if (window == null || window.isClosed()) {
      window = new ClockWindow(page.getShell());
    }
    show(clockFigures());
  }

  @Override
  protected boolean isAwake() {
    return window != null && !window.isClosed();
  }

  @Override
  protected void show(Optional<OpenStudy> now) {
    study = now.orElse(null);
    List<Trial> all = now.map(s -> s.session().study().getSeries().stream().flatMap(x -> x.getTrials().stream()).toList()).orElse(List.of());
    if (!all.equals(trials) || choice.getItemCount() != all.size()) {
      trials.clear();
      trials.addAll(all);
      choice.setItems(all.stream().map(OpenStudy::nameOf).toArray(String[]::new));
      choice.getParent().layout();
    }
    if (trial == null || !trials.contains(trial)) {
      begin(Runs.today(trials).orElse(null));
    } else {
      refresh();
    }
  }

  /** Goes to the day of a trial; null when there is none. */
  public void begin(Trial now) {
    trial = now;
    choice.select(trials.indexOf(now));
    if (grid != null) {
      grid.control().dispose();
      grid = null;
    }
    day = null;
    if (trial != null && study != null) {
      Desk desk = RecordPages.desk(study);
      day = new RunDay(desk, trial, RunClock.ofMachine());
      grid = new Grid(logArea, Words.of("record.log"), new EntryModel(day.log()));
      grid.control().setData("id", "runLog");
      logArea.layout();
    }
    refresh();
    rest();
  }

  private void refresh() {
    stop.setText(trial == null ? Words.of("run.none") : (RunScreen.stop(trial) + "   " + Words.of("run.caution")).replace("&", "&&"));
    if (grid != null && !grid.isOpen()) {
      day.log().refresh();
      grid.rebuild();
      if (grid.selected().isEmpty()) {
        showLast();
      }
    }
    if (!bar.isTyping()) {
      showIdle();
    }
    show(clockFigures());
    page.layout();
  }

  /** What was written last is what the next entry follows. */
  private void showLast() {
    if (grid != null && !grid.control().isDisposed() && !grid.isOpen() && day.log().rows() > 0) {
      grid.select(0, day.log().rows() - 1);
    }
  }

  private void showIdle() {
    bar.idle(day == null ? "" : day.isLit() ? Words.of("run.press") : Words.of("run.light"), day == null ? "" : keys());
  }

  private String keys() {
    if (page.getClientArea().height < LINES_FOR_KEYS * Fonts.PLAIN.lineHeight(page)) {
      return Words.of("run.keysAt");
    }
    String shifted = day.isShifted() ? Words.of("run.shifted") + " " : day.isOld() ? Words.of("run.old") + " " : "";
    return shifted + RunDay.keys(RecordPages.desk(study)).stream().map(k -> k.getKey() + " " + k.getValue()).reduce((a, b) -> a + " · " + b).orElse("");
  }

  /** Nothing is being typed: the keys count again. */
  private void rest() {
    if (!page.isDisposed()) {
      showIdle();
      clock.setFocus();
    }
  }

  private List<RunScreen.Figure> clockFigures() {
    return day == null ? List.of() : RunScreen.clock(day, trial);
  }

  private void show(List<RunScreen.Figure> figures) {
    clock.show(figures);
    if (window != null && !window.isClosed()) {
      window.show(figures);
    }
    totals.setText(day == null ? "" : (String.join("   ", RunScreen.totals(day, trial)) + "   " + RunScreen.extraction(day)).replace("&", "&&"));
  }

  private void tick() {
    if (page.isDisposed()) {
      return;
    }
    if (day != null && page.isVisible() || window != null && !window.isClosed()) {
      show(clockFigures());
      ring();
    }
    page.getDisplay().timerExec(TICK_MILLIS, this::tick);
  }

  /** One sound for what is due, when sound is wanted. */
  private void ring() {
    Optional<Prompt> due = RunScreen.next(day).filter(p -> p.due() <= day.elapsed());
    String now = due.map(p -> p.id() + p.due()).orElse("");
    if (!now.equals(rung) && !now.isEmpty() && sound.getSelection()) {
      page.getDisplay().beep();
    }
    rung = now;
  }

  private void key(Event e) {
    boolean plain = (e.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) == 0;
    if (day == null || study.session().isReadOnly() || !plain) {
      return;
    }
    switch (Character.toUpperCase(e.character)) {
      case 'K' -> day.strokes().tap(System.nanoTime() / 1e9);
      case 'Z' -> RunScreen.next(day).ifPresent(p -> day.prompts().putOff(p.id(), day.elapsed() + PUT_OFF_SECONDS));
      case 'J' -> RunScreen.next(day).ifPresent(p -> bar.ask(Words.of("run.skip", Words.of("run.prompt." + p.id())), Words.of("run.reason"), reason -> day.skip(p, reason)));
      default -> day.press(e.character).ifPresent(this::draft);
    }
    show(clockFigures());
  }

  private void draft(Draft draft) {
    if (draft.isComplete()) {
      day.write(draft, List.of());
    } else {
      bar.ask(day, draft);
    }
  }

  @Override
  public void setFocus() {
    if (!bar.isTyping()) {
      clock.setFocus();
    }
  }

  @Override
  public void dispose() {
    if (window != null && !window.isClosed()) {
      window.close();
    }
    super.dispose();
  }
}
