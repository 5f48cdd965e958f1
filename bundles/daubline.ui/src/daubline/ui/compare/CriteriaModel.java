package daubline.ui.compare;

import daubline.analysis.Origins;
import daubline.analysis.Target;
import daubline.analysis.TrialData;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.look.MarkShape;
import daubline.ui.prefs.Preferred;
import daubline.ui.study.Compared;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Trials down, the criteria of one target across, those first that could be tested; in each cell the verdict in words with its agreement. */
final class CriteriaModel implements MapModel {

  private final List<TrialData> trials = new ArrayList<>();
  private final List<Comparison> pairs = new ArrayList<>();
  private final List<Integer> order;

  CriteriaModel(Compared compared, Target target) {
    for (TrialData trial : PairModel.trials(compared)) {
      compared.results().comparison(trial.id(), target.sheet().id()).ifPresent(c -> {
        trials.add(trial);
        pairs.add(c);
      });
    }
    int criteria = pairs.isEmpty() ? 0 : pairs.get(0).criteria().size();
    order = IntStream.range(0, criteria).boxed().sorted((a, b) -> Boolean.compare(isTested(b), isTested(a))).toList();
  }

  private boolean isTested(int criterion) {
    return pairs.stream().anyMatch(c -> c.criteria().get(criterion).isTested());
  }

  private CriterionResult result(int column, int row) {
    return pairs.get(row).criteria().get(order.get(column - 1));
  }

  @Override
  public Optional<Comparison> pair(int column, int row) {
    return column >= 0 && row >= 0 && row < pairs.size() ? Optional.of(pairs.get(row)) : Optional.empty();
  }

  @Override
  public String criterion(int column) {
    return column > 0 && column <= order.size() ? result(column, 0).criterion() : "";
  }

  @Override
  public int columns() {
    return order.size() + 1;
  }

  @Override
  public int rows() {
    return pairs.size();
  }

  @Override
  public String heading(int column) {
    return column == 0 ? Words.of("pair.trial") : Words.said(result(column, 0).name());
  }

  @Override
  public String key(int column) {
    return column == 0 ? "pair.trial" : "pair.criterion";
  }

  @Override
  public List<Explanation> explain(int column, int row) {
    return Stream.concat(Criteria.find(criterion(column)).map(Explanations::criterion).stream(), MapModel.super.explain(column, row).stream()).toList();
  }

  @Override
  public String widest(int column) {
    return column == 0 ? PairModel.longest(trials) : "MM " + Words.of("verdict.NOT_CONSISTENT");
  }

  @Override
  public int linesPerRow() {
    return 2;
  }

  @Override
  public Optional<Trail> origin(int column, int row) {
    return column == 0 ? Optional.of(Origins.agreement(pairs.get(row))) : Optional.of(Origins.criterion(pairs.get(row), result(column, row)));
  }

  @Override
  public GridCell cell(int column, int row) {
    if (column == 0) {
      return PairModel.name(trials.get(row));
    }
    CriterionResult r = result(column, row);
    String tip = Words.said(r.name()) + ", " + trials.get(row).name() + ": " + Words.said(r.reason());
    if (!r.isTested()) {
      return new GridCell(Words.of(r.verdict()), Look.QUIET, MarkShape.of(r.verdict()), tip);
    }
    return new GridCell(Words.of(r.verdict()) + "\n" + Preferred.sign(Printed.fixed(r.agreement(), 2)), Look.PLAIN, MarkShape.of(r.verdict()), tip, r.agreement());
  }
}
