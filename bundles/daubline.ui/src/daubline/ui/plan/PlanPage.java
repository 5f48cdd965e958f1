package daubline.ui.plan;

import daubline.analysis.StudySnapshot;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Foreseen;
import daubline.analysis.design.PlanFreezer;
import daubline.analysis.design.Proposal;
import daubline.analysis.design.Season;
import daubline.analysis.design.SeriesSetup;
import daubline.analysis.record.PlanningData.WishData;
import daubline.analysis.record.SeriesData;
import daubline.base.Finding;
import daubline.engine.design.Run;
import daubline.engine.design.Strata;
import daubline.engine.design.advise.Extras;
import daubline.model.Series;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Hint;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Page;
import daubline.ui.sheet.Pending;
import daubline.ui.study.OpenStudy;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;

/** The plan of a series: what it is planned with at the left, what that allows, the proposal and the frozen plan at the right. */
public final class PlanPage implements Page {

  private static final int STARTS = 20;
  private static final int DRAWS = 100;
  /** As many letters of width as both sides need beside each other. */
  private static final int LEAST_LETTERS = 92;

  private final OpenStudy study;
  private final Series series;
  private final Composite page;
  private final PlanModel model;
  private final Grid grid;
  private final PlanPanes panes;
  private final Hint hint;
  private final Button propose;
  private final Button take;
  private final Button freeze;
  private final Button sheets;
  private final Button withdraw;
  private Proposal proposal;
  private SeriesData proposedFor;
  private boolean busy;

  /** The page of a series. */
  public PlanPage(Composite parent, OpenStudy study, Series series) {
    this.study = study;
    this.series = series;
    page = Pages.tight(parent, 1);
    Composite bar = bar();
    button(bar, "plan.lots.take", this::takeLots);
    propose = button(bar, "plan.propose", this::propose);
    take = button(bar, "plan.take", this::take);
    freeze = button(bar, "plan.freeze", this::freeze);
    sheets = button(bar, "plan.sheets", () -> RunSheetFile.write(study, series));
    withdraw = button(bar, "plan.withdraw", this::withdraw);
    SashForm sash = new SashForm(page, SWT.HORIZONTAL);
    sash.setBackground(Hue.ASH.color());
    sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    model = new PlanModel(study, series);
    grid = new Grid(sash, Words.of("plan.grid", OpenStudy.nameOf(series)), model);
    grid.control().setData("id", "plan");
    panes = new PlanPanes(sash, new PlanOrigins(study, series));
    panes.onMark(this::enable);
    sash.setWeights(1, 1);
    // narrow windows and large letters: one below the other, so that words stay readable
    sash.addListener(SWT.Resize, e -> sash.setOrientation(sash.getClientArea().width < LEAST_LETTERS * daubline.ui.look.Fonts.PLAIN.characterWidth(sash) ? SWT.VERTICAL : SWT.HORIZONTAL));
    hint = new Hint(page, "plan-message");
    PlatformUI.getWorkbench().getHelpSystem().setHelp(page, "daubline.help.plan");
  }

  private Composite bar() {
    Composite bar = new Composite(page, SWT.NONE);
    RowLayout layout = new RowLayout();
    layout.spacing = 6;
    bar.setLayout(layout);
    bar.setBackground(Hue.ASH.color());
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    return bar;
  }

  private static Button button(Composite bar, String key, Runnable does) {
    Button button = new Button(bar, SWT.PUSH);
    button.setText(Words.of(key));
    button.setData("id", key);
    Pages.named(button, Words.of(key), Words.of(key + ".tip"));
    button.addListener(SWT.Selection, e -> does.run());
    return button;
  }

  private Optional<StudySnapshot> snapshot() {
    return study.results().map(r -> r.snapshot());
  }

  private Optional<SeriesData> data() {
    return snapshot().flatMap(s -> s.record().series().stream().filter(d -> d.id().equals(series.getId())).findFirst());
  }

  @Override
  public void refresh() {
    if (page.isDisposed() || grid.postpones(this::refresh)) {
      return;
    }
    model.rebuild();
    data().ifPresent(this::show);
    enable();
    grid.rebuild();
  }

  private void show(SeriesData data) {
    StudySnapshot now = snapshot().orElseThrow();
    DesignBrief brief = DesignBrief.of(now, data);
    Season season = Season.of(data);
    if (proposal != null && !data.equals(proposedFor)) {
      proposal = null;
    }
    List<Finding> findings = new ArrayList<>(brief.findings());
    findings.addAll(season.findings());
    model.findings(findings);
    panes.show(now, brief, season, proposal);
    findings.stream().min(java.util.Comparator.comparing(Finding::severity)).ifPresentOrElse(f -> say(f.where() + ": " + Words.said(f), f.isError()),
        () -> say("", false));
  }

  private void say(String text, boolean wrong) {
    hint.say((wrong ? "△ " : "") + text, wrong);
  }

  private void enable() {
    boolean open = !study.session().isReadOnly() && !series.isFrozen() && !busy;
    propose.setEnabled(!busy);
    take.setEnabled(!busy && proposal != null && panes.marked().isPresent());
    freeze.setEnabled(open && proposal != null && PlanFreezer.refusal(series).isEmpty());
    sheets.setEnabled(!series.getTrials().isEmpty());
    withdraw.setEnabled(open && PlanFreezer.isReplaceable(series));
  }

  private void takeLots() {
    snapshot().ifPresent(s -> SeriesSetup.provideFromLots(study.session(), series, s));
  }

  private void propose() {
    Pending.commit();
    long seed = series.getSeed() != null ? series.getSeed() : Long.parseLong(LocalDate.now().toString().replace("-", ""));
    String id = series.getId();
    begin(Words.of("plan.proposing", OpenStudy.nameOf(series)), (copy, progress) -> {
      StudySnapshot snapshot = daubline.analysis.Snapshots.of(copy);
      SeriesData data = DesignBrief.find(snapshot, id);
      DesignBrief brief = DesignBrief.of(snapshot, data);
      if (brief.isReady()) {
        brief = Proposal.heedingForecast(brief, Foreseen.of(copy, SeriesSetup.find(copy, id), brief.factors()));
      }
      List<Run> done = brief.isReady() ? BurntTrials.of(snapshot, brief, false).design().runs() : List.of();
      WishData wishes = data.planning().wishes();
      return Proposal.of(brief, Season.of(data), new Proposal.Options(wishes.trials(), "", new Strata(wishes.furnaceRatio(), wishes.dayRatio()),
          new Extras(wishes.centres(), wishes.repeats()), wishes.burnsPerDay(), done, STARTS, seed), progress);
    }, this::proposed);
  }

  private <T> void begin(String name, PlanJob.Work<T> work, java.util.function.Consumer<T> done) {
    busy = true;
    enable();
    say(name, false);
    new PlanJob<>(name, study.session().image(), work, outcome -> end(() -> done.accept(outcome)), why -> end(() -> say(why, !why.isEmpty()))).schedule();
  }

  private void end(Runnable then) {
    busy = false;
    if (!page.isDisposed()) {
      then.run();
      enable();
    }
  }

  private void proposed(Proposal now) {
    proposal = now;
    proposedFor = now.brief().series();
    data().ifPresent(this::show);
    panes.turnToProposal();
    now.findings().stream().filter(f -> f.code().startsWith("design.lesser") || f.code().startsWith("design.no-spares")).findFirst()
        .ifPresent(f -> say(Words.said(f), false));
  }

  /** Takes the design marked instead of the one recommended. */
  private void take() {
    try {
      proposal = proposal.taking(panes.marked().orElseThrow());
      data().ifPresent(this::show);
      say(Words.of("plan.took", proposal.chosen().name(), proposal.plan().design().size(), proposal.plan().design().furnaceCount()), false);
    } catch (IllegalArgumentException e) {
      say(e.getMessage(), true);
    }
    enable();
  }

  private void freeze() {
    Proposal taken = proposal;
    String id = series.getId();
    begin(Words.of("plan.freezing", OpenStudy.nameOf(series)), (copy, progress) -> Foreseen.of(copy, SeriesSetup.find(copy, id), taken.brief().factors())
        .outlook(taken.plan().design(), DRAWS, taken.plan().seed()), outlook -> write(taken, outlook));
  }

  private void write(Proposal taken, Foreseen.Outlook outlook) {
    try {
      String at = ZonedDateTime.now().truncatedTo(ChronoUnit.SECONDS).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
      PlanFreezer.freeze(study.session(), series, taken, at, outlook.stated());
      String frozen = Words.of("plan.frozen", taken.plan().design().size(), outlook.stated().size(), Long.toString(taken.plan().seed()));
      say(outlook.findings().stream().map(f -> f.where() + ": " + Words.said(f)).reduce(frozen, (a, b) -> a + ". " + b), false);
      panes.turnToOrder();
    } catch (IllegalArgumentException e) {
      say(e.getMessage(), true);
    }
  }

  private void withdraw() {
    try {
      PlanFreezer.withdraw(study.session(), series);
    } catch (IllegalArgumentException e) {
      say(e.getMessage(), true);
    }
  }

  @Override
  public Control control() {
    return page;
  }

  @Override
  public void focus() {
    grid.control().setFocus();
    if (grid.selected().isEmpty()) {
      grid.select(1, 1);
    }
  }
}
