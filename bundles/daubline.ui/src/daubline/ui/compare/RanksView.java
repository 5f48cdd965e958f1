package daubline.ui.compare;

import daubline.analysis.Origins;
import daubline.analysis.StudyRanking;
import daubline.analysis.Target;
import daubline.base.Trail;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Ranking;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.PageBook;
import daubline.ui.look.Pages;
import daubline.ui.study.Compared;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.StudyPart;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;

/** How far the order of the trials can be relied on, what tells them apart, what rules them out, and how far repeats differ. */
public final class RanksView extends StudyPart {

  private static final int BAR = 120;
  private static final List<String> TABS = List.of("ranks.ranks", "ranks.pairs", "ranks.weights", "ranks.criteria", "ranks.equal", "ranks.ruled", "ranks.repeats");

  private final Runnable selected = () -> study().ifPresent(s -> show(Optional.of(s)));
  private PageBook book;
  private ChoiceBar bar;
  private Label said;
  private ProgressBar progress;
  private final Map<String, TablePane> panes = new LinkedHashMap<>();
  private RepeatsPane repeats;
  private Compared shown;
  private String shownTarget = "";
  private RankJob job;
  private RankJob.Outcome outcome;
  private final Set<String> stale = new HashSet<>();

  @Override
  protected void fill(Composite area) {
    Composite page = Pages.tight(area, 1);
    Composite top = Pages.tight(page, 2);
    top.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
    said = Pages.text(top, "", daubline.ui.look.Fonts.STRONG.font(), 200);
    said.setData("id", "ranks-said");
    ((GridData) said.getLayoutData()).horizontalIndent = 6;
    ((GridData) said.getLayoutData()).verticalAlignment = SWT.CENTER;
    bar = new ChoiceBar(top);
    ((GridData) bar.control().getLayoutData()).grabExcessHorizontalSpace = false;
    progress = new ProgressBar(bar.control(), SWT.HORIZONTAL);
    progress.setData("id", "ranks-progress");
    Pages.named(progress, Words.of("ranks.progress"), "");
    ChoiceBar.width(progress, BAR);
    bar.button("ranks.cancel", () -> Optional.ofNullable(job).ifPresent(RankJob::cancel));
    bar.button("ranks.again", this::begin);
    book = new PageBook(page, SWT.TOP);
    book.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    TABS.subList(0, TABS.size() - 1).forEach(this::tab);
    repeats = new RepeatsPane(book.body());
    item("ranks.repeats", repeats.control());
    book.addListener(SWT.Selection, e -> fillTab());
    Selection.onChange(selected);
  }

  private void tab(String key) {
    TablePane pane = new TablePane(book.body(), key);
    item(key, pane.control());
    panes.put(key, pane);
  }

  private void item(String key, Control control) {
    book.add(key, Words.of(key), control);
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    if (book.isDisposed()) {
      return;
    }
    Compared now = study.flatMap(OpenStudy::compared).orElse(null);
    String target = now == null ? "" : Selection.target(now).map(t -> t.sheet().id()).orElse("");
    if (now != shown || !target.equals(shownTarget)) {
      if (now == null || !target.equals(shownTarget)) {
        forget();
      }
      shown = now;
      shownTarget = target;
      begin();
    }
    enable();
  }

  /** What was reckoned for something else is not shown as if it were for this. */
  private void forget() {
    outcome = null;
    stale.clear();
    panes.values().forEach(TablePane::clear);
    repeats.clear();
  }

  private Optional<Target> target() {
    return Optional.ofNullable(shown).flatMap(c -> c.target(shownTarget));
  }

  /** Stops what is being reckoned and begins anew for what is looked at now. */
  private void begin() {
    if (job != null) {
      job.cancel();
      job = null;
    }
    Optional<Target> target = target();
    if (target.isEmpty()) {
      said.setText(Words.of(shown == null ? "none.open" : "pair.empty"));
      return;
    }
    said.setText(Words.of("ranks.reckoning", target.get().heading()).replace("&", "&&"));
    said.requestLayout();
    progress.setSelection(0);
    RankJob[] mine = new RankJob[1];
    mine[0] = new RankJob(shown, target.get(), outcome -> ended(mine[0], outcome), p -> advance(mine[0], p));
    job = mine[0];
    job.schedule();
    enable();
  }

  private void advance(RankJob of, int percent) {
    if (of == job && !progress.isDisposed()) {
      progress.setSelection(percent);
    }
  }

  private void ended(RankJob of, RankJob.Outcome now) {
    if (of != job || book.isDisposed()) {
      return;
    }
    job = null;
    progress.setSelection(now == null ? 0 : 100);
    target().ifPresent(t -> {
      said.setText(Words.of(now == null ? "ranks.stopped" : "rank.heading", t.heading()).replace("&", "&&"));
      if (now != null) {
        take(now);
      }
    });
    enable();
  }

  private void enable() {
    bar.button("ranks.cancel").setEnabled(job != null);
    bar.button("ranks.again").setEnabled(job == null && target().isPresent());
  }

  /** Takes an outcome; each tab is filled when it is turned to. */
  private void take(RankJob.Outcome now) {
    outcome = now;
    stale.clear();
    stale.addAll(TABS);
    fillTab();
  }

  private void fillTab() {
    String key = book.shown();
    if (outcome == null || shown == null || !stale.remove(key)) {
      return;
    }
    Ranking ranking = outcome.ranking();
    String about = ranking.places().isEmpty() ? Words.of("ranks.nothing") : Words.orElse(key + ".about", "");
    double alpha = shown.settings().alpha();
    TablePane pane = panes.get(key);
    List<Comparison> ranked = shown.results().ranked(ranking.sheet());
    List<Trail> compared = ranked.stream().filter(Comparison::isTested).map(Origins::agreement).toList();
    IntFunction<List<Trail>> places = row -> compared.isEmpty() ? List.of() : Stream.concat(ranked.stream().filter(c -> c.trial().equals(ranking.places().get(row).trial()))
        .map(Origins::agreement), Stream.of(new Trail(Words.of("ranks.beside"), "", "", compared))).toList();
    switch (key) {
      case "ranks.ranks" -> pane.show(about, RankTables.rankHeadings(ranking), RankTables.ranks(ranking), places);
      case "ranks.pairs" -> pane.show(about, RankTables.pairHeadings(ranking), RankTables.pairs(ranking), places);
      case "ranks.weights" -> pane.show(about, RankTables.weightHeadings(), RankTables.weights(ranking, StudyRanking.usualWeights(shown.settings())), places);
      case "ranks.criteria" -> pane.show(about, RankTables.criterionHeadings(), RankTables.criteria(ranking), row -> compared);
      case "ranks.equal" -> pane.show(equallyGood(outcome.equal().groups().size()), RankTables.equalHeadings(),
          RankTables.equal(outcome.equal(), shown.results().snapshot()), row -> compared);
      case "ranks.ruled" -> pane.show(Words.of("ranks.ruled.about", ReasonsModel.probability(alpha)), RankTables.excludedHeadings(),
          RankTables.excluded(shown.results().ranked(outcome.ranking().sheet()), alpha), row -> List.of(Origins.agreement(ranked.get(row))));
      default -> repeats.show(study().orElse(null), shown, outcome.repeats(), outcome.among());
    }
    book.layout(true, true);
  }

  private static String equallyGood(int groups) {
    return groups == 0 ? Words.of("ranks.nothing") : groups < 2 ? Words.of("ranks.equal.none") : Words.of("ranks.equal.about", groups);
  }

  /** Turns to a tab by its key. */
  public void turnTo(String key) {
    book.show(key);
    fillTab();
  }

  /** The grid of a tab that has been turned to; for tests. */
  public Grid grid(String key) {
    return panes.containsKey(key) ? panes.get(key).grid() : repeats.grid();
  }

  @Override
  public void setFocus() {
    book.setFocus();
  }

  @Override
  public void dispose() {
    Selection.remove(selected);
    if (job != null) {
      job.cancel();
    }
    super.dispose();
  }
}
