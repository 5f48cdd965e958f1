package daubline.ui.compare;

import daubline.analysis.Origins;
import daubline.analysis.SettingEditor;
import daubline.analysis.StudyRepeats;
import daubline.analysis.StudySnapshot;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.base.Unit;
import daubline.criteria.Criteria;
import daubline.criteria.Repeats;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Setting;
import daubline.ui.Words;
import daubline.ui.grid.Grid;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.Compared;
import daubline.ui.study.OpenStudy;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

/** How far trials that repeat one another differ, criterion by criterion; the spread becomes the tolerance when somebody says so. */
final class RepeatsPane {

  private final TablePane pane;
  private final ChoiceBar bar;
  private OpenStudy study;
  private List<Repeats> spreads = List.of();

  RepeatsPane(Composite parent) {
    pane = new TablePane(parent, "ranks.repeats");
    bar = new ChoiceBar(pane.page());
    bar.button("repeats.keep", () -> pane.selectedRow().filter(r -> r < spreads.size()).ifPresent(r -> keep(List.of(spreads.get(r)))));
    bar.button("repeats.keep.all", () -> keep(spreads));
    enable();
  }

  Grid grid() {
    return pane.grid();
  }

  Control control() {
    return pane.control();
  }

  void show(OpenStudy open, Compared compared, StudyRepeats repeats, List<List<Comparison>> among) {
    study = open;
    spreads = repeats.spreads();
    List<Comparison> all = among.stream().flatMap(List::stream).toList();
    List<List<GridCell>> rows = new ArrayList<>();
    spreads.forEach(r -> rows.add(row(compared, r)));
    among.forEach(pairs -> pairs.forEach(c -> rows.add(row(c))));
    pane.show(Words.of(repeats.recipes().isEmpty() ? "repeats.none" : "repeats.about"), Heading.of("reasons.criterion", "repeats.spread", "repeats.interval", "repeats.freedom", "repeats.as", "repeats.now"), rows, row -> from(compared, all, row));
    enable();
  }

  /** A pair of repeats leads to its agreement, a spread to what all repeats left. */
  private List<Trail> from(Compared compared, List<Comparison> pairs, int row) {
    if (row >= spreads.size()) {
      return List.of(Origins.agreement(pairs.get(row - spreads.size())));
    }
    StudySnapshot study = compared.results().snapshot();
    Repeats spread = spreads.get(row);
    List<String> repeated = pairs.stream().flatMap(c -> Stream.of(c.trial(), c.sheet())).distinct().toList();
    return study.trials().stream().filter(t -> repeated.contains(t.id())).map(t -> new Trail(spread.criterion() + ", " + t.name(), "", t.id(), Origins.of(t.found()))).toList();
  }

  /** Shows nothing, for what is looked at now is still being reckoned. */
  void clear() {
    spreads = List.of();
    pane.clear();
    enable();
  }

  private void enable() {
    boolean may = study != null && !study.session().isReadOnly() && spreads.stream().anyMatch(r -> r.spread() > 0);
    bar.button("repeats.keep").setEnabled(may);
    bar.button("repeats.keep.all").setEnabled(may);
  }

  /** Two trials of one recipe, and how well their remains agree. */
  private static List<GridCell> row(Comparison c) {
    GridCell pair = GridCell.of(Words.of("repeats.between", c.trialName(), c.sheetName()), Look.NAME);
    GridCell agreement = new GridCell(said(c), Look.PLAIN, GridCell.Mark.NONE, said(c));
    return List.of(pair, agreement, GridCell.VOID, GridCell.VOID, GridCell.VOID, GridCell.VOID);
  }

  private static String said(Comparison c) {
    return c.isTested() ? Words.of("repeats.agreement", PairModel.whole(c.agreement()), PairModel.span(c.low(), c.high()),
        PairModel.span(c.bandLow(), c.bandHigh()), PairModel.percent(c.coverage())) : Words.of("pair.nothing");
  }

  private static List<GridCell> row(Compared compared, Repeats r) {
    Criterion criterion = Criteria.find(r.criterion()).orElseThrow();
    Setting tolerance = StudyRepeats.toleranceOf(criterion);
    Unit unit = tolerance.unit().orElseThrow();
    String now = tolerance.printed(compared.results().snapshot().settings().of(criterion).text(Repeats.SETTING));
    return List.of(GridCell.of(Words.said(criterion.name()), Look.NAME), number(unit, r.spread()), GridCell.of(text(unit, r.low()) + "–" + text(unit, r.high()) + symbol(unit), Look.NUMBER),
        GridCell.of(Integer.toString(r.freedom()), Look.NUMBER), r.spread() > 0 ? number(unit, r.tolerance()) : GridCell.of(Words.of("repeats.zero"), Look.QUIET),
        GridCell.of(Preferred.sign(now), Look.NUMBER));
  }

  private static GridCell number(Unit unit, double value) {
    return GridCell.of(text(unit, value) + symbol(unit), Look.NUMBER);
  }

  private static String text(Unit unit, double value) {
    return Preferred.sign(Printed.number(unit.differenceFromCanonical(value), 2));
  }

  private static String symbol(Unit unit) {
    return unit.symbol().isEmpty() ? "" : " " + unit.symbol();
  }

  private void keep(List<Repeats> chosen) {
    List<Repeats> known = chosen.stream().filter(r -> r.spread() > 0).toList();
    if (study != null && !known.isEmpty()) {
      StudyRepeats.keep(new SettingEditor(study.session()), Words.of("repeats.kept"), known);
    }
  }
}
