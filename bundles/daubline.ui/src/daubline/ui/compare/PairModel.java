package daubline.ui.compare;

import daubline.analysis.Origins;
import daubline.analysis.Target;
import daubline.analysis.TrialData;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Verdict;
import daubline.ui.Words;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.GridCell.Mark;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.Compared;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Trials down, what they are compared with across; in each cell agreement and coverage together, with the counts of verdicts. */
final class PairModel implements MapModel {

  private record Key(String trial, String sheet) {
  }

  private final List<TrialData> trials;
  private final List<Target> targets;
  private final Map<Key, Comparison> pairs = new HashMap<>();

  PairModel(Compared compared) {
    compared.results().comparisons().forEach(c -> pairs.put(new Key(c.trial(), c.sheet()), c));
    targets = compared.targets();
    trials = trials(compared);
  }

  /** The trials that were compared with anything, in the order of the study. */
  static List<TrialData> trials(Compared compared) {
    List<String> known = compared.results().comparisons().stream().map(Comparison::trial).distinct().toList();
    return compared.results().snapshot().trials().stream().filter(t -> known.contains(t.id())).toList();
  }

  @Override
  public Optional<Comparison> pair(int column, int row) {
    boolean inside = column > 0 && column <= targets.size() && row >= 0 && row < trials.size();
    return inside ? Optional.ofNullable(pairs.get(new Key(trials.get(row).id(), targets.get(column - 1).sheet().id()))) : Optional.empty();
  }

  @Override
  public int columns() {
    return targets.size() + 1;
  }

  @Override
  public int rows() {
    return trials.size();
  }

  @Override
  public String heading(int column) {
    return column == 0 ? Words.of("pair.trial") : targets.get(column - 1).sheet().name();
  }

  @Override
  public String key(int column) {
    return column == 0 ? "pair.trial" : "pair.sheet";
  }

  @Override
  public double share(int column) {
    return column == 0 ? 1.1 : 1;
  }

  /** The longest name of a trial, otherwise the longest line of a cell after its mark. */
  @Override
  public String widest(int column) {
    return column == 0 ? longest(trials) : "MM " + IntStream.range(0, trials.size()).boxed().flatMap(row -> cell(column, row).text().lines())
        .max(Comparator.comparingInt(String::length)).orElse("");
  }

  static String longest(List<TrialData> trials) {
    return trials.stream().flatMap(t -> name(t).text().lines()).max(Comparator.comparingInt(String::length)).orElse("");
  }

  @Override
  public int linesPerRow() {
    return 2;
  }

  @Override
  public Optional<Trail> origin(int column, int row) {
    return pair(column, row).map(Origins::agreement);
  }

  @Override
  public GridCell cell(int column, int row) {
    return column == 0 ? name(trials.get(row)) : pair(column, row).map(PairModel::cell).orElse(GridCell.VOID);
  }

  /** The cell that names a trial. */
  static GridCell name(TrialData trial) {
    return GridCell.of(trial.name() + "\n" + Words.of(trial.kind()) + ", " + Words.of(trial.status()), Look.NAME);
  }

  private static GridCell cell(Comparison c) {
    if (!c.isTested()) {
      return new GridCell(Words.of("pair.nothing"), Look.QUIET, Mark.NOT_TESTED, Words.of("pair.nothing.tip"));
    }
    String text = Words.of("pair.cell", whole(c.agreement()), percent(c.coverage())) + "\n" + counts(c);
    Mark mark = c.count(Verdict.NOT_CONSISTENT) > 0 ? Mark.NOT_CONSISTENT : Mark.CONSISTENT;
    return new GridCell(text, Look.PLAIN, mark, said(c), c.agreement() / 100);
  }

  /** Agreement, coverage, bounds and what a faithful repeat would score, in one sentence. */
  static String said(Comparison c) {
    return Words.of("pair.tip", whole(c.agreement()), whole(c.low()), whole(c.high()), percent(c.coverage())) + "; "
        + Words.of("pair.tip.more", span(c.boundLow(), c.boundHigh()), span(c.bandLow(), c.bandHigh()));
  }

  /** How many criteria have which verdict, in words. */
  static String counts(Comparison c) {
    return Words.of("pair.counts", c.count(Verdict.CONSISTENT), c.count(Verdict.NOT_CONSISTENT));
  }

  static String whole(double value) {
    return Double.isNaN(value) ? "–" : Preferred.sign(Printed.fixed(value, 0));
  }

  static String percent(double share) {
    return whole(share * 100);
  }

  static String span(double low, double high) {
    return whole(low) + "–" + whole(high);
  }
}
