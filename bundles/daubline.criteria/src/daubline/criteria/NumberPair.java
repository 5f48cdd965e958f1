package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Printed;
import daubline.base.Unit;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Statement;
import daubline.engine.inference.kernel.AlternativesKernel;
import daubline.engine.inference.kernel.IntervalKernel;
import daubline.engine.inference.kernel.Kernel;
import daubline.engine.inference.kernel.Mixture;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What two sides claim about one number, compared.
 *
 * @param variable id of the variable
 * @param scale by difference or by ratio
 * @param tolerance one standard deviation, absolute or relative as the scale asks
 * @param mixture where the random numbers of the trial's value come from
 */
record NumberPair(String variable, Scale scale, double tolerance, Mixture mixture) {

  NumberPair(String variable, Scale scale, double tolerance) {
    this(variable, scale, tolerance, Mixture.OWN);
  }

  Assessment assess(List<Statement> evidence, List<Statement> found) {
    return assess(claims(evidence, Side.EVIDENCE), claims(found, Side.TRIAL));
  }

  Claims claims(List<Statement> statements, Side side) {
    return Claims.of(statements, side, this::fits);
  }

  Assessment assess(Claims asked, Claims seen) {
    if (asked.isEmpty() || seen.isEmpty()) {
      return Words.missing(asked, seen, this::printed);
    }
    if (asked.usable().size() == 1 && seen.usable().size() == 1) {
      return kernel(asked.usable().get(0).amount(), seen.usable().get(0).amount())
          .map(k -> Assessment.tested(k, () -> Words.explain(Words.difference(List.of(List.of(k)), asked, seen, this::printed), asked, seen, this::printed)))
          .orElseGet(() -> undecided(asked, seen));
    }
    List<List<Kernel>> kernels = kernels(asked, seen);
    if (kernels.isEmpty()) {
      return undecided(asked, seen);
    }
    return Assessment.tested(AlternativesKernel.of(kernels), () -> Words.explain(Words.difference(kernels, asked, seen, this::printed),
        asked, seen, this::printed));
  }

  private Assessment undecided(Claims asked, Claims seen) {
    return Assessment.notTested(() -> Words.explain("the trial's value is only a limit and does not say on which side of the evidence it lies",
        asked, seen, this::printed));
  }

  private List<List<Kernel>> kernels(Claims asked, Claims seen) {
    List<List<Kernel>> kernels = new ArrayList<>();
    for (Statement claim : asked.usable()) {
      List<Kernel> row = new ArrayList<>();
      seen.usable().forEach(s -> kernel(claim.amount(), s.amount()).ifPresent(row::add));
      if (!row.isEmpty()) {
        kernels.add(row);
      }
    }
    return kernels;
  }

  private boolean fits(Amount amount) {
    return amount.isNumber() && (scale == Scale.DIFFERENCE || amount.value() > 0);
  }

  private Optional<Kernel> kernel(Amount evidence, Amount found) {
    Interval asked = scale.apply(Interval.of(evidence));
    Interval seen = scale.apply(Interval.of(found));
    if (seen.isUndecidedAgainst(asked)) {
      return Optional.empty();
    }
    double spread = Math.sqrt(asked.sigma() * asked.sigma() + tolerance * tolerance);
    return Optional.of(new IntervalKernel(mixture, asked.low(), asked.high(), spread, seen.centre(), seen.sigma(), seen.half()));
  }

  private String printed(Amount amount) {
    Optional<Unit> unit = Variables.standard().find(variable).map(Variable::unit);
    return unit.map(u -> Printed.withUnit(amount, u)).orElseGet(() -> Printed.number(amount.value()));
  }
}
