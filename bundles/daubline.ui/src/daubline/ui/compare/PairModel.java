package daubline.ui.compare;

import daubline.analysis.StudyResults;
import daubline.analysis.TrialData;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Verdict;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.grid.GridModel;
import daubline.ui.prefs.Preferred;
import daubline.base.Printed;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Trials down, evidence sheets across; in each cell agreement and coverage together, with the counts of verdicts. */
public final class PairModel implements GridModel {

  private record Key(String trial, String sheet) {
  }

  private final List<TrialData> trials = new ArrayList<>();
  private final List<SheetData> sheets = new ArrayList<>();
  private final Map<Key, Comparison> pairs = new HashMap<>();

  /** Shows results; none clears the grid. */
  public void show(Optional<StudyResults> results) {
    trials.clear();
    sheets.clear();
    pairs.clear();
    results.ifPresent(r -> {
      r.comparisons().forEach(c -> pairs.put(new Key(c.trial(), c.sheet()), c));
      r.snapshot().sheets().forEach(s -> sheets.add(s.sheet()));
      r.snapshot().trials().stream().filter(t -> sheets.stream().anyMatch(s -> pairs.containsKey(new Key(t.id(), s.id())))).forEach(trials::add);
    });
  }

  /** The pair of a cell. */
  public Optional<Comparison> pair(int column, int row) {
    boolean inside = column > 0 && column <= sheets.size() && row >= 0 && row < trials.size();
    return inside ? Optional.ofNullable(pairs.get(new Key(trials.get(row).id(), sheets.get(column - 1).id()))) : Optional.empty();
  }

  /** All pairs of a column, the highest agreement first and the untested last. */
  public List<Comparison> ranked(int column) {
    return java.util.stream.IntStream.range(0, trials.size()).mapToObj(row -> pair(column, row)).flatMap(Optional::stream)
        .sorted(java.util.Comparator.comparingDouble((Comparison c) -> Double.isNaN(c.agreement()) ? 1 : -c.agreement()).thenComparing(Comparison::trialName)).toList();
  }

  @Override
  public int columns() {
    return sheets.size() + 1;
  }

  @Override
  public int rows() {
    return trials.size();
  }

  @Override
  public String heading(int column) {
    return column == 0 ? Words.of("pair.trial") : sheets.get(column - 1).name();
  }

  @Override
  public double share(int column) {
    return column == 0 ? 1.1 : 1;
  }

  @Override
  public int linesPerRow() {
    return 2;
  }

  @Override
  public GridCell cell(int column, int row) {
    if (column == 0) {
      TrialData trial = trials.get(row);
      return GridCell.of(trial.name() + "\n" + Words.of(trial.kind()) + ", " + Words.of(trial.status()), Look.NAME);
    }
    return pair(column, row).map(PairModel::cell).orElse(GridCell.EMPTY);
  }

  private static GridCell cell(Comparison c) {
    if (!c.isTested()) {
      return new GridCell(Words.of("pair.nothing"), Look.QUIET, Mark.NOT_TESTED, Words.of("pair.nothing.tip"));
    }
    String text = Words.of("pair.cell", whole(c.agreement()), percent(c.coverage())) + "\n" + counts(c);
    Mark mark = c.count(Verdict.NOT_CONSISTENT) > 0 ? Mark.NOT_CONSISTENT : Mark.CONSISTENT;
    return new GridCell(text, Look.PLAIN, mark, Words.of("pair.tip", whole(c.agreement()), whole(c.low()), whole(c.high()), percent(c.coverage())));
  }

  /** How many criteria have which verdict, in words. */
  static String counts(Comparison c) {
    return Words.of("pair.counts", c.count(Verdict.CONSISTENT), c.count(Verdict.NOT_CONSISTENT));
  }

  static String whole(double value) {
    return Preferred.sign(Printed.fixed(value, 0));
  }

  static String percent(double share) {
    return whole(share * 100);
  }
}
