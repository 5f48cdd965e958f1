package daubline.analysis.balance;

import daubline.base.Finding;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Apportionment;
import daubline.engine.process.balance.ApportionmentProblem;
import daubline.engine.process.balance.ApportionmentSpread;
import daubline.engine.process.balance.FirstOrderCheck;
import java.util.List;
import java.util.Optional;

/**
 * Where the oxides of a slag came from, by non-negative weighted least squares over what is not reduced.
 *
 * @param sources the possible sources, in the order of the amounts
 * @param fit the best amounts, kg of each source per kg of slag, with misfit and condition number
 * @param spread the same when slag and sources vary
 */
public record SlagSources(List<ApportionmentProblem.Source> sources, Apportionment fit, ApportionmentSpread spread) {

  /** How much the oxides of one source differ from piece to piece, relative (common practice, no source). */
  public static final double BETWEEN_PIECES = 0.1;

  /** The sources of a slag; a finding instead where slag and sources share too few oxides. */
  static Optional<SlagSources> of(Analysis slag, List<ApportionmentProblem.Source> sources, int draws, long seed, java.util.function.Consumer<Finding> problems) {
    try {
      ApportionmentProblem problem = ApportionmentProblem.usual(slag, sources);
      Apportionment fit = Apportionment.of(problem);
      fit.findings().forEach(problems);
      ApportionmentSpread spread = ApportionmentSpread.of(problem, Math.max(1, draws), seed);
      FirstOrderCheck.of(problem, spread, Math.max(1, draws)).forEach(problems);
      return Optional.of(new SlagSources(List.copyOf(sources), fit, spread));
    } catch (IllegalArgumentException e) {
      problems.accept(Finding.note("balance.apportion", "source apportionment", String.valueOf(e.getMessage()),
          "have slag, ore and lining analysed for the same oxides, alumina, lime, magnesia and titania among them"));
      return Optional.empty();
    }
  }

  /** Recovery of iron that the slag alone tells: iron that is not in it over the iron of the ore that it took; NaN when it took none. */
  public double recovery() {
    double ore = fit.amounts().get(0) * sources.get(0).analysis().iron();
    return ore > 0 ? 1 - fit.slagIron() / (fit.sourceIron() > 0 ? fit.sourceIron() : ore) : Double.NaN;
  }
}
