package daubline.ui.compare;

import daubline.analysis.Against;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.Target;
import daubline.engine.inference.Comparison;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.look.Described;
import daubline.ui.look.Fonts;
import daubline.ui.look.Hue;
import daubline.ui.look.Pages;
import daubline.ui.sheet.Opening;
import daubline.ui.sheet.Opening.Goal;
import daubline.ui.study.Compared;
import daubline.ui.study.Comparing;
import daubline.ui.study.OpenStudy;
import daubline.ui.views.StudyPart;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

/** The comparison: a map of trials × targets or × criteria above, below it the ranking for the target looked at. */
public final class ComparisonView extends StudyPart {

  private static final List<Against> AGAINST = Arrays.asList(Against.values());

  private final RankModel ranks = new RankModel();
  private ChoiceBar choices;
  private Described described;
  private Composite holder;
  private MapModel map;
  private Grid grid;
  private Grid ranking;
  private Label heading;
  private Compared shown;
  private boolean moving;

  @Override
  protected void fill(Composite area) {
    Composite page = Pages.tight(area, 1);
    choices = new ChoiceBar(page);
    Combo against = choices.combo("compare.against", this::choose);
    against.setItems(AGAINST.stream().map(Words::of).toArray(String[]::new));
    choices.combo("compare.map", this::turn);
    described = new Described(page);
    described.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    SashForm sash = new SashForm(described.body(), SWT.VERTICAL);
    sash.setBackground(Hue.ASH.color());
    holder = new Composite(sash, SWT.NONE);
    holder.setLayout(new FillLayout());
    holder.setBackground(Hue.PAPER.color());
    Composite below = Pages.tight(sash, 1);
    heading = Pages.text(below, "", Fonts.STRONG.font(), SWT.DEFAULT);
    ranking = new Grid(below, Words.of("rank.name"), ranks);
    ranking.control().setData("id", "ranking");
    ranking.control().setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
    sash.setWeights(3, 2);
    Opening.on(ranking, p -> goals(ranks.item(p.y)));
    ranking.onSelect(() -> ranking.selected().filter(p -> !moving).ifPresent(p -> Selection.set(ranks.item(p.y))));
  }

  /** The trial, and the sheet or trial that it is compared with. */
  static List<Goal> goals(Comparison c) {
    return List.of(new Goal(c.trial(), ""), new Goal(c.sheet(), ""));
  }

  private void choose() {
    ComparisonOptions now = Comparing.options();
    Comparing.choose(AGAINST.get(choices.combo("compare.against").getSelectionIndex()), now.withDemonstrations(), now.repeatsAsTolerance());
    described.say(Words.of("pair.working"));
  }

  @Override
  protected void show(Optional<OpenStudy> study) {
    Compared now = study.flatMap(OpenStudy::compared).orElse(null);
    ComparisonOptions options = Comparing.options();
    choices.combo("compare.against").select(AGAINST.indexOf(options.against()));
    if (study.isEmpty()) {
      described.say(Words.of("none.open"));
    } else if (now == null || !now.options().equals(options)) {
      described.say(Words.of("pair.working"));
    } else {
      described.say(now.results().comparisons().isEmpty() ? Words.of("pair.empty") : "");
    }
    if (now != shown || grid == null) {
      shown = now;
      offerMaps();
      rebuild();
      Selection.follow(now);
    }
  }

  /** The map of all targets, and one of the criteria of each; the chosen one stays chosen. */
  private void offerMaps() {
    Combo maps = choices.combo("compare.map");
    String before = maps.getSelectionIndex() <= 0 ? "" : maps.getText();
    String[] all = new String[targets().size() + 1];
    all[0] = Words.of("compare.map.all");
    for (int i = 1; i < all.length; i++) {
      all[i] = Words.of("compare.map.criteria", targets().get(i - 1).sheet().name());
    }
    Pages.offer(maps, Stream.of(all), Math.max(0, before.isEmpty() ? 0 : List.of(all).indexOf(before)));
  }

  private List<Target> targets() {
    return shown == null ? List.of() : shown.targets();
  }

  private void turn() {
    int index = choices.combo("compare.map").getSelectionIndex();
    if (index > 0) {
      String trial = Selection.get().map(Comparison::trial).orElse("");
      List<Comparison> ranked = shown.results().ranked(targets().get(index - 1).sheet().id());
      Selection.set(ranked.stream().filter(c -> c.trial().equals(trial)).findFirst().or(() -> ranked.stream().findFirst()).orElse(null));
    }
    rebuild();
  }

  /** Makes the map anew, for its columns may be others, and the ranking; what was selected stays so. */
  private void rebuild() {
    moving = true;
    if (grid != null) {
      grid.control().dispose();
    }
    int index = choices.combo("compare.map").getSelectionIndex();
    Compared now = shown == null ? null : shown;
    map = now == null ? null : index <= 0 ? new PairModel(now) : new CriteriaModel(now, targets().get(index - 1));
    grid = map == null ? null : Grid.withFixedNames(holder, Words.of("pair.name"), map);
    if (grid != null) {
      grid.control().setData("id", "pairs");
      Opening.on(grid, p -> map.pair(Math.max(1, p.x), p.y).map(ComparisonView::goals).orElse(List.of()));
      grid.onSelect(this::cellChosen);
    }
    holder.layout(true, true);
    showRanking();
    moving = false;
  }

  private void cellChosen() {
    if (!moving) {
      grid.selected().filter(p -> p.x > 0).ifPresent(p -> map.pair(p.x, p.y).ifPresent(c -> {
        Selection.set(c, map.criterion(p.x));
        showRanking();
      }));
    }
  }

  private void showRanking() {
    Optional<Target> target = Optional.ofNullable(shown).flatMap(Selection::target);
    heading.setText(target.map(t -> Words.of("rank.heading", t.heading()).replace("&", "&&")).orElse(""));
    ranks.show(target.map(t -> shown.results().ranked(t.sheet().id())).orElse(List.of()), shown == null ? Double.NaN : shown.settings().alpha());
    ranking.rebuild();
  }

  /** The map; for tests. */
  public Grid grid() {
    return grid;
  }

  /** The ranking; for tests. */
  public Grid ranking() {
    return ranking;
  }

  @Override
  public void setFocus() {
    if (grid != null) {
      grid.control().setFocus();
    } else {
      choices.combo("compare.against").setFocus();
    }
  }
}
