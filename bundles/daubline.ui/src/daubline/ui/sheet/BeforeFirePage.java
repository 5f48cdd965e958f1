package daubline.ui.sheet;

import daubline.analysis.Origins;
import daubline.analysis.forecast.Figures;
import daubline.analysis.forecast.InletRace;
import daubline.analysis.forecast.TrialForecast;
import daubline.analysis.forecast.TrialPlan;
import daubline.analysis.forecast.TrialPlans;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.NextMeasurement;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.explain.WhereFrom;
import daubline.ui.grid.Grid;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.look.Passage;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigureCanvas;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;

/** Before the fire: what is said of a trial while it is planned, and beside it what came of it once it is burnt. */
final class BeforeFirePage implements Page {

  private static final int NARROW = 200;
  private static final int LEAST = 420;

  private final OpenStudy study;
  private final Trial trial;
  private final ScrolledComposite scroll;
  private final Composite content;
  private final Passage status;
  private final Button log;
  private final Passage race;
  private final FindingLines warnings;
  private final FigureCanvas section;
  private final FigureCanvas rise;
  private final FigureCanvas order;
  private final QuantityModel model = new QuantityModel();
  private final Grid grid;
  private final Passage about;
  private final Passage next;
  private final FigureCanvas against;
  private final FigureCanvas residuals;
  private final FigureCanvas ofStudy;
  private final Passage classes;
  private final Passage cautions;
  private final ForecastJob job = new ForecastJob(this::show);
  private List<TrialPlan> reckoned = List.of();
  private boolean isFilling;

  BeforeFirePage(Composite parent, OpenStudy study, Trial trial) {
    this.study = study;
    this.trial = trial;
    scroll = Pages.scrolled(parent);
    content = Pages.plain(scroll, 2);
    status = wide(Pages.passage(content, Fonts.PLAIN, Hue.INK, NARROW));
    status.setData("id", "before-status");
    log = check();
    race = wide(Pages.passage(content, Fonts.STRONG, Hue.INK, NARROW));
    race.setData("id", "before-race");
    warnings = new FindingLines(content, "before-finding", NARROW);
    ((GridData) warnings.control().getLayoutData()).horizontalSpan = 2;
    section = canvas(content, "before-section", 1);
    Composite right = Pages.tight(content, 1);
    right.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    rise = canvas(right, "before-rise", 1);
    order = canvas(right, "before-order", 1);
    wide(Pages.heading(content, Words.of("before.figures")));
    grid = new Grid(content, Words.of("before.figures"), model);
    grid.control().setData("id", "before-figures");
    grid.control().setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, 2, 1));
    about = wide(Pages.passage(content, Fonts.PLAIN, Hue.QUIET, NARROW));
    about.setText(Words.of("before.choose"));
    about.setData("id", "before-about");
    grid.onSelect(() -> grid.selected().filter(p -> p.y < model.rows()).ifPresent(p -> explain(model.about(p.y))));
    classes = wide(Pages.passage(content, Fonts.PLAIN, Hue.INK, NARROW));
    classes.setData("id", "before-classes");
    next = wide(Pages.passage(content, Fonts.PLAIN, Hue.INK, NARROW));
    wide(Pages.heading(content, Words.of("before.after")));
    against = canvas(content, "before-against", 1);
    residuals = canvas(content, "before-residuals", 1);
    wide(Pages.heading(content, Words.of("before.study")));
    ofStudy = canvas(content, "before-study", 2);
    wide(Pages.heading(content, Words.of("before.cautions")));
    cautions = wide(Pages.passage(content, Fonts.PLAIN, Hue.INK, NARROW));
    List.of(status, race, classes, next).forEach(l -> WhereFrom.on(l, () -> told(l)));
    scroll.setContent(content);
    scroll.addListener(SWT.Resize, e -> size());
    scroll.addListener(SWT.Dispose, e -> job.cancel());
    scroll.setData("id", "before-fire");
    PlatformUI.getWorkbench().getHelpSystem().setHelp(scroll, "daubline.help.beforeFire");
  }

  private static <C extends Control> C wide(C control) {
    ((GridData) control.getLayoutData()).horizontalSpan = 2;
    return control;
  }

  private Button check() {
    Button button = new Button(content, SWT.CHECK);
    button.setText(Words.of("before.log"));
    button.setData("id", "before-log");
    button.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false, 2, 1));
    Pages.named(button, Words.of("before.log"), Words.of("before.log.tip"));
    button.addListener(SWT.Selection, e -> {
      reckoned = List.of();
      reckon(button.getSelection());
    });
    return button;
  }

  private static FigureCanvas canvas(Composite parent, String id, int span) {
    FigureCanvas canvas = new FigureCanvas(parent);
    canvas.setData("id", id);
    canvas.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false, span, 1));
    return canvas;
  }

  private void explain(String text) {
    if (!text.equals(about.getText())) {
      about.setText(text);
      if (!isFilling) {
        size();
      }
    }
  }

  @Override
  public Control control() {
    return scroll;
  }

  @Override
  public void refresh() {
    if (!scroll.isDisposed()) {
      reckon(log.getSelection());
    }
  }

  /** Reckons anew when anything it rests on has changed. */
  private void reckon(boolean withLog) {
    TrialPlans plans = TrialPlans.of(study.session().study());
    TrialPlan own = plans.find(String.valueOf(trial.getId())).orElse(null);
    if (own == null) {
      return;
    }
    List<TrialPlan> series = plans.all().stream().filter(p -> p.series().equals(own.series())).toList();
    List<TrialPlan> all = plans.all().stream().filter(p -> p.isBurnt() || p.series().equals(own.series())).toList();
    if (!all.equals(reckoned)) {
      boolean first = reckoned.isEmpty() && !log.isEnabled();
      log.setEnabled(own.logged().isPresent());
      boolean follow = withLog || first && own.followsLog();
      log.setSelection(follow && own.logged().isPresent());
      reckoned = all;
      job.begin(new ForecastJob.Task(own, series, all.stream().filter(TrialPlan::isBurnt).toList(), log.getSelection()));
    }
  }

  /** Whether everything is reckoned and shown. */
  boolean isSettled() {
    return job.isIdle() && !reckoned.isEmpty();
  }

  private void show(ForecastJob.Result result) {
    if (scroll.isDisposed()) {
      return;
    }
    TrialForecast forecast = result.trial();
    status.setText(Words.of(forecast.forecast().isEmpty() ? "before.missing" : result.settled() ? "before.settled" : "before.course", forecast.name()));
    if (!result.series().isEmpty()) {
      race.setText(race(result.series()));
    }
    warnings.show(forecast.findings());
    ForecastJob.Drawings drawings = result.drawings();
    section.show(drawings.section().orElse(null));
    rise.show(drawings.rise().orElse(null));
    if (result.settled()) {
      order.show(drawings.order().orElse(null));
      against.show(drawings.against().orElse(null));
      residuals.show(drawings.residuals().orElse(null));
      ofStudy.show(drawings.study().orElse(null));
    }
    model.show(forecast);
    isFilling = true; // what the grid selects anew is laid out with the rest
    grid.rebuild();
    isFilling = false;
    ((GridData) grid.control().getLayoutData()).heightHint = grid.control().getPreferredHeight() + 4;
    classes.setText(forecast.forecast().map(BeforeFirePage::classWords).orElse(""));
    next.setText(forecast.forecast().map(BeforeFirePage::nextWords).orElse(""));
    cautions.setText(forecast.forecast().map(f -> f.cautions().stream().map(Words::said).collect(Collectors.joining("\n"))).orElse(""));
    size();
  }

  /** How far each size class of the ore is reduced, the finest first; nothing for ore of one size. */
  private static String classWords(BurnForecast forecast) {
    if (forecast.oreClasses().size() < 2) {
      return "";
    }
    return Words.of("before.classes", forecast.oreClasses().stream().map(c -> Words.of("before.class", Preferred.sign(Printed.number(1000 * c.size(), 2)),
        Printed.fixed(100 * c.share(), 0), Printed.fixed(100 * c.reduced(), 0), Double.isNaN(c.low()) ? ""
            : " (" + Printed.fixed(100 * c.low(), 0) + "–" + Printed.fixed(100 * c.high(), 0) + ")")).collect(Collectors.joining("; ")));
  }

  private static String nextWords(BurnForecast forecast) {
    List<String> lines = new ArrayList<>();
    for (NextMeasurement n : forecast.next()) {
      lines.add(Words.of("before.next", Words.of(n.about()), Words.said(n.what()), Printed.fixed(100 * n.share(), 0)));
    }
    lines.add(Words.of("before.own", Printed.fixed(100 * forecast.recovery().priorWeight(), 0), Printed.fixed(100 * (1 - forecast.recovery().priorWeight()), 0)));
    return String.join("\n", lines);
  }

  /** Which trial of the series must be tapped first, and which chokes first, and why. */
  private static String race(List<TrialForecast> series) {
    List<String> lines = new ArrayList<>();
    InletRace.firstToTap(series).ifPresent(r -> lines.add(Words.of("before.tap", r.trial().name(), hours(r.after()), interval(r), hours(r.duration()),
        Printed.fixed(1000 * r.room(), 1), Printed.fixed(3600 * r.slag(), 1))));
    InletRace.firstToChoke(series).ifPresent(r -> lines.add(Words.of(r.isBlocked() ? "before.choke" : "before.near", r.trial().name(), hours(r.after()),
        interval(r), hours(r.duration()), Printed.fixed(1000 * r.room(), 1), Printed.fixed(3600 * r.slag(), 1), Printed.fixed(100 * r.inlet(), 0),
        Words.of(r.where().pit() > 0 ? "before.pit" : "before.nopit"))));
    return String.join("\n", lines);
  }

  private static String hours(double seconds) {
    return Figures.text(BurnQuantity.BLOCKING, seconds);
  }

  private static String interval(InletRace r) {
    return Double.isNaN(r.low()) ? "" : " (" + hours(r.low()) + "–" + hours(r.high()) + ")";
  }

  /** A sentence with numbers leads to what the forecast rests on. */
  private Optional<Trail> told(Passage passage) {
    return passage.getText().isEmpty() || reckoned.isEmpty() ? Optional.empty() : reckoned.stream().filter(p -> p.trial().equals(trial.getId())).findFirst()
        .map(p -> Trail.reckoned(Words.of("page.before"), passage.getText(), "", Origins.used(p)));
  }

  /** Figures take the width there is and the height that suits them; the page scrolls. */
  private void size() {
    int width = Math.max(LEAST, scroll.getClientArea().width) - 20;
    for (FigureCanvas canvas : List.of(section, rise, order, against, residuals, ofStudy)) {
      GridData data = (GridData) canvas.getLayoutData();
      data.heightHint = canvas.heightFor(width / 2);
      data.widthHint = width / 2;
      data.minimumWidth = 1;
    }
    Pages.fit(scroll, width + 20);
  }

  @Override
  public void focus() {
    grid.control().setFocus();
  }
}
