package daubline.ui.compare;

import daubline.analysis.StudyResults;
import daubline.engine.inference.Comparison;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Described;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.StudyPart;
import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The comparison: trials × evidence sheets above, below them the ranking for the sheet looked at. */
public final class ComparisonView extends StudyPart {

  private final PairModel pairs = new PairModel();
  private final RankModel ranks = new RankModel();
  private Described described;
  private Grid grid;
  private Grid ranking;
  private Label heading;
  private int column = 1;
  private StudyResults shown;

  @Override
  protected void fill(Composite area) {
    described = new Described(area);
    SashForm sash = new SashForm(described.body(), SWT.VERTICAL);
    sash.setBackground(Hue.ASH.color());
    grid = new Grid(sash, Words.of("pair.name"), pairs);
    grid.control().setData("id", "pairs");
    Composite below = Pages.tight(sash, 1);
    heading = Pages.text(below, "", Fonts.STRONG.font(), SWT.DEFAULT);
    ranking = new Grid(below, Words.of("rank.name"), ranks);
    ranking.control().setData("id", "ranking");
    ranking.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    sash.setWeights(5, 4);
    grid.onSelect(this::pairChosen);
    ranking.onSelect(() -> ranking.selected().ifPresent(p -> Selection.set(ranks.item(p.y))));
  }

  private void pairChosen() {
    grid.selected().filter(p -> p.x > 0).ifPresent(p -> {
      column = p.x;
      showRanking();
      pairs.pair(p.x, p.y).ifPresent(Selection::set);
    });
  }

  private void showRanking() {
    List<Comparison> ranked = column < pairs.columns() ? pairs.ranked(column) : List.of();
    heading.setText(ranked.isEmpty() ? "" : Words.of("rank.heading", ranked.get(0).sheetName()));
    ranks.show(ranked);
    ranking.rebuild();
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    StudyResults now = study.flatMap(OpenStudy::results).orElse(null);
    if (study.isEmpty()) {
      described.say(Words.of("none.open"));
    } else if (now == null) {
      described.say(Words.of("pair.working"));
    } else {
      described.say(now.comparisons().isEmpty() ? Words.of("pair.empty") : Words.of("pair.about"));
    }
    if (now != shown) {
      shown = now;
      pairs.show(Optional.ofNullable(now));
      column = Math.min(column, Math.max(1, pairs.columns() - 1));
      grid.rebuild();
      showRanking();
      followPair(now);
    }
  }

  /** Goes on looking at the same pair after new results. */
  private static void followPair(StudyResults now) {
    Selection.get().ifPresent(old -> Selection.set(now == null ? null : now.comparison(old.trial(), old.sheet()).orElse(null)));
  }

  /** The grid of pairs; for tests. */
  public Grid grid() {
    return grid;
  }

  /** The ranking; for tests. */
  public Grid ranking() {
    return ranking;
  }

  @Override
  public void setFocus() {
    grid.control().setFocus();
  }
}
