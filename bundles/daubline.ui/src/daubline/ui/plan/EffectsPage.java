package daubline.ui.plan;

import daubline.analysis.Origins;
import daubline.analysis.Snapshots;
import daubline.analysis.StudyResults;
import daubline.analysis.StudySnapshot;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Foreseen;
import daubline.analysis.design.NextSteps;
import daubline.analysis.design.Outcome;
import daubline.analysis.design.SeriesEffects;
import daubline.analysis.design.SeriesSetup;
import daubline.analysis.record.SeriesData;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.charts.EffectFigures;
import daubline.engine.design.Factor;
import daubline.engine.design.Strata;
import daubline.engine.design.learn.Effect;
import daubline.engine.design.next.NextTrial;
import daubline.model.Series;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Page;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.FigurePane;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PlatformUI;

/** What moved an outcome of a series, with its plots, and what to burn next. */
public final class EffectsPage implements Page {

  private static final long SEED = 20_260_101;
  private static final double CONFIDENCE = 0.95;

  private final OpenStudy study;
  private final Series series;
  private final Composite page;
  private final Combo outcome;
  private final Combo plot;
  private final Prose said;
  private final Grid grid;
  private final LinesModel model = new LinesModel(new String[] {"effects.effect", "effects.estimate", "effects.interval", "effects.smallest", "effects.dealt"}, 1.7, 1, 1.2, 1.1, 1);
  private final FigurePane figure;
  private final Button next;
  private List<Outcome> outcomes = List.of();
  private List<EffectFigures.Named> figures = List.of();
  private StudyResults shown;
  private boolean busy;

  /** The page of a series. */
  public EffectsPage(Composite parent, OpenStudy study, Series series) {
    this.study = study;
    this.series = series;
    page = Pages.tight(parent, 1);
    Composite bar = new Composite(page, SWT.NONE);
    RowLayout layout = new RowLayout();
    layout.spacing = 6;
    layout.center = true;
    bar.setLayout(layout);
    bar.setBackground(Hue.ASH.color());
    bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    outcome = combo(bar, "effects.outcome", this::reckon);
    plot = combo(bar, "effects.plot", this::draw);
    next = new Button(bar, SWT.PUSH);
    next.setText(Words.of("effects.next"));
    next.setData("id", "effects.next");
    Pages.named(next, Words.of("effects.next"), Words.of("effects.next.tip"));
    next.addListener(SWT.Selection, e -> suggest());
    SashForm sash = new SashForm(page, SWT.VERTICAL);
    sash.setBackground(Hue.ASH.color());
    sash.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    grid = new Grid(sash, Words.of("effects.grid", OpenStudy.nameOf(series)), model);
    grid.control().setData("id", "effects");
    SashForm below = new SashForm(sash, SWT.HORIZONTAL);
    below.setBackground(Hue.ASH.color());
    said = new Prose(below, "effects-said");
    figure = new FigurePane(below).rest(new PlanOrigins(study, series)::all);
    below.setWeights(4, 5);
    sash.setWeights(3, 5);
    PlatformUI.getWorkbench().getHelpSystem().setHelp(page, "daubline.help.effects");
  }

  private static Combo combo(Composite bar, String key, Runnable does) {
    Label label = new Label(bar, SWT.NONE);
    label.setText(Words.of(key));
    label.setBackground(Hue.ASH.color());
    Combo combo = new Combo(bar, SWT.READ_ONLY);
    combo.setData("id", key);
    combo.setLayoutData(new org.eclipse.swt.layout.RowData(210, SWT.DEFAULT));
    Pages.named(combo, Words.of(key), "");
    combo.addListener(SWT.Selection, e -> does.run());
    return combo;
  }

  private Optional<SeriesData> data(StudySnapshot snapshot) {
    return snapshot.record().series().stream().filter(d -> d.id().equals(series.getId())).findFirst();
  }

  @Override
  public void refresh() {
    StudyResults now = study.results().orElse(null);
    if (page.isDisposed() || now == null || now == shown) {
      return;
    }
    shown = now;
    data(now.snapshot()).ifPresent(d -> fill(now, d));
  }

  private void fill(StudyResults now, SeriesData data) {
    String before = outcome.getSelectionIndex() < 0 ? "bloom_mass" : outcomes.get(outcome.getSelectionIndex()).id();
    DesignBrief brief = DesignBrief.of(now.snapshot(), data);
    BurntTrials burnt = BurntTrials.of(now.snapshot(), brief, false);
    List<Outcome> all = new ArrayList<>();
    now.snapshot().sheets().forEach(s -> all.add(Outcome.agreement(now.comparisons(), s.sheet().id(), s.sheet().name(), burnt.trials())));
    all.removeIf(o -> o.known() < 3);
    all.addAll(Outcome.possible(now.snapshot(), brief, burnt.trials()));
    outcomes = List.copyOf(all);
    outcome.setItems(outcomes.stream().map(Outcome::name).map(Words::said).toArray(String[]::new));
    int index = outcomes.stream().map(Outcome::id).toList().indexOf(before);
    outcome.select(outcomes.isEmpty() ? -1 : Math.max(0, index));
    next.setEnabled(!busy && brief.isReady());
    reckon();
  }

  /** Works the effects out behind, then shows them. */
  private void reckon() {
    if (shown == null || outcome.getSelectionIndex() < 0) {
      model.show(List.of());
      grid.rebuild();
      said.show(Words.of("effects.nothing"));
      figures = List.of();
      plot.removeAll();
      figure.show(null, "");
      return;
    }
    Outcome asked = outcomes.get(outcome.getSelectionIndex());
    StudySnapshot snapshot = shown.snapshot();
    String id = series.getId();
    new PlanJob<>(Words.of("effects.reckoning", Words.said(asked.name())), study.session().image(), (copy, progress) -> {
      DesignBrief brief = DesignBrief.of(snapshot, DesignBrief.find(snapshot, id));
      return SeriesEffects.of(snapshot, brief, BurntTrials.of(snapshot, brief, false), asked, SeriesEffects.Terms.USUAL, CONFIDENCE, SEED);
    }, effects -> show(asked, effects), said::show).schedule();
  }

  private void show(Outcome asked, SeriesEffects effects) {
    boolean current = !page.isDisposed() && outcome.getSelectionIndex() >= 0 && outcomes.get(outcome.getSelectionIndex()).id().equals(asked.id());
    if (!current) {
      return;
    }
    model.from(line -> Trail.reckoned(line.get(0), "", effects.report().map(r -> Words.of("effects.method", r.trials(), r.furnaces(), r.method().word())).orElse(""), measured(asked)));
    model.show(effects.report().map(r -> r.effects().stream().map(e -> line(e, asked.unit())).toList()).orElse(List.of()));
    grid.rebuild();
    List<String> lines = new ArrayList<>();
    effects.report().ifPresent(r -> {
      lines.add(Words.of("effects.method", r.trials(), r.furnaces(), Words.said(r.method().word())));
      if (Double.isFinite(r.trialDeviation())) {
        lines.add(Words.of("effects.scatter", Printed.number(r.trialDeviation(), 2), asked.unit(), scatter(r.furnaceDeviation()), scatter(r.dayDeviation())));
      }
      r.effects().forEach(e -> lines.add(Words.said(e.sentence())));
      r.activity().ifPresent(a -> lines.add(Words.of("effects.active", IntStream.range(0, a.active().length)
          .mapToObj(j -> Words.said(effects.burnt().design().factors().get(j).name()) + " " + Printed.fixed(100 * a.active()[j], 0) + " %").collect(Collectors.joining(", ")))));
    });
    effects.findings().forEach(f -> lines.add("△ " + Words.said(f.where()) + ": " + Words.said(f)));
    said.show(String.join("\n", lines));
    String before = plot.getText();
    figures = EffectFigures.of(effects);
    plot.setItems(figures.stream().map(f -> Words.orElse("effects.plot." + f.id(), f.title())).toArray(String[]::new));
    plot.select(Math.max(0, plot.indexOf(before)));
    draw();
  }

  /** What was measured of each trial, and what the series was planned with. */
  private List<Trail> measured(Outcome asked) {
    List<Trail> from = new ArrayList<>();
    data(shown.snapshot()).ifPresent(d -> shown.snapshot().trials().stream().filter(t -> t.series().equals(d.name())).forEach(t -> {
      if (asked.isAgreement()) {
        shown.comparisons().stream().filter(c -> c.trial().equals(t.id()) && asked.id().endsWith(":" + c.sheet())).map(Origins::agreement).forEach(from::add);
      } else {
        from.addAll(Origins.of(shown.snapshot(), t, asked.id()));
      }
    }));
    from.addAll(new PlanOrigins(study, series).all());
    return from;
  }

  private static String scatter(double deviation) {
    return Double.isNaN(deviation) ? "–" : Printed.number(deviation, 2);
  }

  private static List<String> line(Effect e, String unit) {
    return List.of(Words.said(e.name()), Printed.number(e.estimate(), 3) + (unit.isEmpty() ? "" : " " + unit), Double.isNaN(e.low()) || e.freedom() <= 0 ? "–"
        : Printed.number(e.low(), 3) + " – " + Printed.number(e.high(), 3), Double.isInfinite(e.smallest()) ? "–" : Printed.number(e.smallest(), 3), Printed.number(e.permutation().p(), 2)
            + " (≥ " + Printed.number(e.permutation().floor(), 2) + ")");
  }

  private void draw() {
    int index = plot.getSelectionIndex();
    figure.show(index < 0 ? null : figures.get(index).figure(), "");
  }

  private void suggest() {
    int index = outcome.getSelectionIndex();
    Optional<Outcome> asked = index < 0 ? Optional.empty() : Optional.of(outcomes.get(index)).filter(o -> !o.isAgreement());
    Optional<Outcome> agreeing = index < 0 ? Optional.empty() : Optional.of(outcomes.get(index)).filter(Outcome::isAgreement)
        .or(() -> outcomes.stream().filter(Outcome::isAgreement).findFirst());
    String id = series.getId();
    busy = true;
    next.setEnabled(false);
    new PlanJob<>(Words.of("effects.next"), study.session().image(), (copy, progress) -> {
      StudySnapshot snapshot = Snapshots.of(copy);
      DesignBrief brief = DesignBrief.of(snapshot, DesignBrief.find(snapshot, id));
      BurntTrials burnt = BurntTrials.of(snapshot, brief, false);
      Outcome by = asked.orElseGet(() -> Outcome.of(snapshot, snapshot.variables().get("bloom_mass"), burnt.trials()));
      double[] agreement = agreeing.map(Outcome::values).filter(v -> v.length == burnt.trials().size())
          .orElseGet(() -> burnt.trials().stream().mapToDouble(t -> Double.NaN).toArray());
      SeriesEffects effects = SeriesEffects.of(snapshot, brief, burnt, by, SeriesEffects.Terms.USUAL, CONFIDENCE, SEED);
      return NextSteps.of(new NextSteps.Request(snapshot, effects, agreement, Foreseen.of(copy, SeriesSetup.find(copy, id), brief.factors()), Strata.USUAL, SEED), progress);
    }, this::suggested, why -> {
      ended();
      said.show(why);
    }).schedule();
  }

  private void ended() {
    busy = false;
    if (!page.isDisposed()) {
      next.setEnabled(true);
    }
  }

  private void suggested(NextSteps steps) {
    ended();
    List<String> lines = new ArrayList<>();
    for (NextTrial.Suggestion s : steps.next().suggestions()) {
      lines.add(Words.of("effects.suggestion", Words.said(s.text()), Words.said(s.aim().word()), Words.said(s.separates()), Words.said(s.certainty()), s.cost().isBlank() ? "–" : Words.said(s.cost()), s.ties().isEmpty() ? "–" : s.ties().stream().map(t -> text(steps.factors(), t)).collect(Collectors.joining("; "))));
    }
    steps.findings().forEach(f -> lines.add("△ " + Words.said(f)));
    said.show(String.join("\n\n", lines));
  }

  private static String text(List<Factor> factors, double[] setting) {
    return IntStream.range(0, setting.length).mapToObj(j -> Words.said(factors.get(j).name()) + " " + factors.get(j).show(setting[j])).collect(Collectors.joining(", "));
  }

  @Override
  public Control control() {
    return page;
  }

  @Override
  public void focus() {
    outcome.setFocus();
  }
}
