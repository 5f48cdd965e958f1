package daubline.ui.sheet;

import daubline.analysis.Origins;
import daubline.analysis.balance.BalanceInputs;
import daubline.analysis.balance.TrialBalance;
import daubline.analysis.forecast.TrialPlans;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Units;
import daubline.engine.process.slag.SlagBehaviour;
import daubline.model.Trial;
import daubline.ui.Words;
import daubline.ui.explain.WhereFrom;
import daubline.ui.grid.Grid;
import daubline.ui.grid.GridModel;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.look.Passage;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.Behind;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;

/** What went into a trial, what was found again and what is left over; where its slag came from; each yield by its own formula. */
final class BalancePage implements Page {

  private static final int NARROW = 300;
  private static final int DRAWS = 1000;

  private final OpenStudy study;
  private final Trial trial;
  private final ScrolledComposite scroll;
  private final Composite content;
  private final Passage charged;
  private final BalanceModels.ElementsModel elements = new BalanceModels.ElementsModel();
  private final BalanceModels.SourcesModel sources = new BalanceModels.SourcesModel();
  private final BalanceModels.RatiosModel ratios = new BalanceModels.RatiosModel();
  private final List<Grid> grids;
  private final Passage slag;
  private final Passage fit;
  private final Passage heat;
  private final FindingLines findings;
  private final Behind<Optional<TrialBalance>> behind = new Behind<>(Words.of("job.balance"), this::show);
  private Optional<BalanceInputs> balanced;

  BalancePage(Composite parent, OpenStudy study, Trial trial) {
    this.study = study;
    this.trial = trial;
    scroll = Pages.scrolled(parent);
    content = Pages.plain(scroll, 1);
    charged = Pages.passage(content, Fonts.STRONG, Hue.INK, NARROW);
    charged.setData("id", "balance-charged");
    Grid one = grid("balance.elements", elements);
    slag = Pages.passage(content, Fonts.PLAIN, Hue.INK, NARROW);
    slag.setData("id", "balance-slag");
    Grid two = grid("balance.sources", sources);
    fit = Pages.passage(content, Fonts.PLAIN, Hue.INK, NARROW);
    Pages.heading(content, Words.of("balance.heat"));
    heat = Pages.passage(content, Fonts.PLAIN, Hue.INK, NARROW);
    heat.setData("id", "balance-heat");
    grids = List.of(one, two, grid("balance.ratios", ratios));
    Pages.heading(content, Words.of("balance.findings"));
    findings = new FindingLines(content, "balance-finding", NARROW);
    List.of(charged, slag, fit, heat).forEach(l -> WhereFrom.on(l, () -> told(l)));
    scroll.setContent(content);
    scroll.setData("id", "balance");
    scroll.addListener(SWT.Resize, e -> size());
    scroll.addListener(SWT.Dispose, e -> behind.cancel());
    PlatformUI.getWorkbench().getHelpSystem().setHelp(scroll, "daubline.help.balance");
  }

  private Grid grid(String key, GridModel model) {
    Pages.heading(content, Words.of(key));
    Grid grid = new Grid(content, Words.of(key), model);
    grid.control().setData("id", key);
    grid.control().setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
    return grid;
  }

  @Override
  public Control control() {
    return scroll;
  }

  @Override
  public void refresh() {
    if (!scroll.isDisposed()) {
      Optional<BalanceInputs> inputs = TrialPlans.of(study.session().study()).find(String.valueOf(trial.getId())).map(plan -> BalanceInputs.of(trial, plan));
      if (!inputs.equals(balanced)) {
        balanced = inputs;
        behind.begin(() -> inputs.map(i -> i.balance(DRAWS, TrialPlans.SEED)));
      }
    }
  }

  private void show(Optional<TrialBalance> balance) {
    if (scroll.isDisposed()) {
      return;
    }
    charged.setText(balance.map(BalancePage::chargedWords).orElse(Words.of("balance.none")));
    slag.setText(balance.map(BalancePage::slagWords).orElse(""));
    fit.setText(balance.flatMap(TrialBalance::sources).map(s -> Words.of("balance.fit", percent(s.recovery()), number(s.fit().reducedChi2(), 2),
        number(s.fit().condition(), 2))).orElse(""));
    heat.setText(balance.flatMap(TrialBalance::slag).map(BalancePage::heatWords).orElse(Words.of("balance.heat.none")));
    List<Trail> rests = rests();
    elements.show(balance.map(TrialBalance::elements).orElse(List.of()), rests);
    sources.show(balance.flatMap(TrialBalance::sources).map(BalanceModels.Share::of).orElse(List.of()), rests);
    ratios.show(balance.map(BalanceModels.Ratio::of).orElse(List.of()), rests);
    grids.forEach(Grid::rebuild);
    findings.show(balance.map(TrialBalance::findings).orElse(List.of()));
    size();
  }

  /** What all numbers of the page rest on: masses, analyses, pieces and residues of the trial. */
  private List<Trail> rests() {
    List<Trail> all = new ArrayList<>(balanced.map(b -> Origins.used(b.plan())).orElse(List.of()));
    study.results().flatMap(r -> r.snapshot().trial(trial.getId()).map(t -> Origins.of(r.snapshot(), t))).ifPresent(all::addAll);
    return all;
  }

  private Optional<Trail> told(Passage passage) {
    return passage.getText().isEmpty() ? Optional.empty() : Optional.of(Trail.reckoned(Words.of("page.balance"), passage.getText(), "", rests()));
  }

  private static String chargedWords(TrialBalance balance) {
    String in = balance.charged().stream().map(p -> Words.of("balance.portion", Words.said(p.name()), fixed(p.mass(), 2), fixed(p.mass() * p.analysis().iron(), 2)))
        .collect(Collectors.joining("; "));
    return balance.charged().isEmpty() ? Words.of("balance.nothing") : Words.of("balance.charged", in);
  }

  private static String slagWords(TrialBalance balance) {
    String forward = balance.forward().map(f -> Words.of(balance.forecast() ? "balance.forecast" : "balance.weighed", fixed(f.metal(), 2), fixed(f.mostMetal(), 2),
        fixed(f.slag().total(), 1))).orElse("");
    String tracers = balance.tracers().isEmpty() ? "" : Words.of("balance.tracers",
        balance.tracers().stream().map(t -> t.oxide() + " " + fixed(t.slag(), 1)).collect(Collectors.joining(", ")), number(balance.weighed(), 3));
    return (forward + " " + tracers).strip();
  }

  private static String heatWords(TrialBalance.HotSlag s) {
    SlagBehaviour b = s.behaviour();
    return Words.of("balance.heat.words", fixed(s.celsius(), 0), fixed(b.liquidus().temperature() - Units.ZERO_CELSIUS, 0), fixed(b.liquidus().sigma(), 0), fixed(100 * b.solids(), 0),
        Double.isInfinite(b.effective()) ? Words.of("balance.heat.stiff") : number(b.effective(), 2)) + " " + Words.of("balance.heat.more", number(b.lowest(), 2), number(b.highest(), 2),
        fixed(b.density(), 0), Words.said(s.phases()));
  }

  private static String percent(double share) {
    return Double.isNaN(share) ? "–" : fixed(100 * share, 0);
  }

  private static String fixed(double value, int decimals) {
    return Preferred.sign(Printed.fixed(value, decimals));
  }

  private static String number(double value, int digits) {
    return Preferred.sign(Printed.number(value, digits));
  }

  private void size() {
    for (Grid grid : grids) {
      ((GridData) grid.control().getLayoutData()).heightHint = grid.control().getPreferredHeight() + 4;
    }
    int width = Math.max(NARROW, scroll.getClientArea().width);
    Pages.fit(scroll, width);
  }

  @Override
  public void focus() {
    grids.get(0).control().setFocus();
  }
}
