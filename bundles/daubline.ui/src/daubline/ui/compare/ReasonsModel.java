package daubline.ui.compare;

import daubline.analysis.Origins;
import daubline.base.Printed;
import daubline.base.Trail;
import daubline.criteria.Criteria;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Setting;
import daubline.ui.Words;
import daubline.ui.explain.Explanation;
import daubline.ui.explain.Explanations;
import daubline.ui.grid.GridCell;
import daubline.ui.grid.GridCell.Look;
import daubline.ui.grid.ListModel;
import daubline.ui.look.MarkShape;
import daubline.ui.prefs.Preferred;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Why a pair agrees as it does: each criterion with both values, the difference, the tolerance and the verdict in words. */
final class ReasonsModel extends ListModel<CriterionResult> {

  private static final String[] HEADINGS = {"reasons.verdict", "reasons.criterion", "reasons.evidence", "reasons.found", "reasons.sigmas", "reasons.p",
      "reasons.agreement", "reasons.tolerance", "reasons.weight", "reasons.reason"};
  private static final double[] SHARES = {1.3, 1.5, 1.1, 1.1, 1, 0.9, 1.4, 1.3, 0.9, 2};
  private static final double LEAST_P = 1e-3;

  private Comparison pair;
  private ComparisonSettings settings = ComparisonSettings.standard();

  ReasonsModel() {
    super(HEADINGS, SHARES);
  }

  /** Shows other reasons, with the settings they were judged by. */
  void show(Comparison now, ComparisonSettings by) {
    settings = by;
    pair = now;
    show(now == null ? List.of() : now.criteria());
  }

  @Override
  public String widest(int column) {
    return switch (column) {
      case 0 -> "MM " + Words.of("verdict.NOT_CONSISTENT");
      case 1 -> "Air inlet height above";
      case 2, 3 -> "480 ± 20 mm, or";
      case 6 -> "0.93 (0.88–0.96)";
      case 9 -> "both say the same, and more";
      default -> heading(column);
    };
  }

  /** What the criterion of the row compares, and then what the column holds. */
  @Override
  public List<Explanation> explain(int column, int row) {
    return Stream.concat(Criteria.find(item(row).criterion()).map(Explanations::criterion).stream(), super.explain(column, row).stream()).toList();
  }

  @Override
  protected GridCell cell(int column, int row, CriterionResult r) {
    return switch (column) {
      case 0 -> new GridCell(Words.of(r.verdict()), Look.PLAIN, MarkShape.of(r.verdict()), Words.said(r.reason()));
      case 1 -> GridCell.of(Words.said(r.name()));
      case 2 -> GridCell.of(Words.said(r.evidence()));
      case 3 -> GridCell.of(Words.said(r.found()));
      case 4 -> GridCell.of(number(r.sigmas(), 1), Look.NUMBER);
      case 5 -> GridCell.of(probability(r.compatibility()), Look.NUMBER);
      case 6 -> GridCell.of(r.isTested() ? Words.of("rank.interval", number(r.agreement(), 2), number(r.low(), 2), number(r.high(), 2)) : "–", Look.NUMBER);
      case 7 -> tolerance(r);
      case 8 -> GridCell.of(number(r.weight() * 100, 1), Look.NUMBER);
      default -> new GridCell(Words.said(r.reason()), Look.PLAIN, GridCell.Mark.NONE, Words.said(r.reason()));
    };
  }

  @Override
  protected Optional<Trail> origin(int column, int row, CriterionResult r) {
    return Optional.of(Origins.criterion(pair, r));
  }

  /** The numbers among the settings of the criterion, and in the tip where they come from. */
  private GridCell tolerance(CriterionResult r) {
    Optional<Criterion> criterion = Criteria.find(r.criterion());
    List<Setting> numbers = criterion.stream().flatMap(c -> c.settings().stream()).filter(Setting::isNumber).toList();
    String text = numbers.stream().map(s -> Preferred.sign(s.printed(settings.of(criterion.get()).text(s.key())))).collect(Collectors.joining("; "));
    String tip = numbers.stream().map(s -> Words.said(s.name()) + ": " + Words.said(settings.sourceOf(criterion.get(), s))).collect(Collectors.joining("\n"));
    return new GridCell(text, Look.NUMBER, GridCell.Mark.NONE, tip);
  }

  static String probability(double p) {
    return Double.isNaN(p) ? "–" : p < LEAST_P ? "< " + Preferred.sign("0.001") : Preferred.sign(Printed.number(p, 2));
  }

  private static String number(double value, int decimals) {
    return Double.isNaN(value) ? "–" : Preferred.sign(Printed.fixed(value, decimals));
  }
}
