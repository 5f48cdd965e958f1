package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Unit;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Setting;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.inference.kernel.AlternativesKernel;
import daubline.engine.inference.kernel.IntervalKernel;
import daubline.engine.inference.kernel.Kernel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A criterion on one number: a value, a range, at least or at most, by difference or by ratio. */
abstract class NumberCriterion extends CardCriterion {

  /** Key of the tolerance in the settings. */
  static final String TOLERANCE = "tolerance";

  private final String variable;
  private final Scale scale;

  NumberCriterion(Card card, String variable, Scale scale, Setting... settings) {
    super(card, List.of(variable), List.of(settings));
    this.variable = variable;
    this.scale = scale;
  }

  /** What a side claims; where it is derived from other records, a criterion says so here. */
  List<Statement> statements(SheetData sheet, Side side, SettingValues settings) {
    return sheet.about(variable);
  }

  @Override
  public final Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    Claims asked = Claims.of(statements(evidence, Side.EVIDENCE, settings), Side.EVIDENCE, this::fits);
    Claims seen = Claims.of(statements(found, Side.TRIAL, settings), Side.TRIAL, this::fits);
    if (asked.isEmpty() || seen.isEmpty()) {
      return Words.missing(asked, seen, this::printed);
    }
    List<List<Kernel>> kernels = new ArrayList<>();
    for (Statement claim : asked.usable()) {
      List<Kernel> row = new ArrayList<>();
      seen.usable().forEach(s -> kernel(claim.amount(), s.amount(), settings).ifPresent(row::add));
      if (!row.isEmpty()) {
        kernels.add(row);
      }
    }
    if (kernels.isEmpty()) {
      return Assessment.notTested(() -> Words.explain("the trial's value is only a limit and does not say on which side of the evidence it lies",
          asked, seen, this::printed));
    }
    return Assessment.tested(AlternativesKernel.of(kernels), () -> Words.explain(Words.difference(kernels, asked, seen, this::printed),
        asked, seen, this::printed));
  }

  private boolean fits(Amount amount) {
    return amount.isNumber() && (scale == Scale.DIFFERENCE || amount.value() > 0);
  }

  private Optional<Kernel> kernel(Amount evidence, Amount found, SettingValues settings) {
    Interval asked = scale.apply(Interval.of(evidence));
    Interval seen = scale.apply(Interval.of(found));
    if (seen.isUndecidedAgainst(asked)) {
      return Optional.empty();
    }
    double spread = Math.hypot(asked.sigma(), settings.number(TOLERANCE));
    return Optional.of(new IntervalKernel(asked.low(), asked.high(), spread, seen.centre(), seen.sigma(), seen.half()));
  }

  private String printed(Amount amount) {
    Optional<Unit> unit = Variables.standard().find(variable).map(Variable::unit);
    return unit.map(u -> Printed.withUnit(amount, u)).orElseGet(() -> Printed.number(amount.value()));
  }
}
