package daubline.criteria;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Source;
import daubline.base.Trail;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.Assessment;
import daubline.engine.inference.Explanation;
import daubline.engine.inference.Group;
import daubline.engine.inference.SettingValues;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Apportionment;
import daubline.engine.process.balance.ApportionmentProblem;
import daubline.engine.process.balance.Oxide;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How much lining melted into the slag for each kilogram of ore, from the analyses of slag, ore, lining and, where there
 * is one, ash on either side. Alike sources and a misfit are said in the reason and leave it not tested.
 */
public final class SourceShares extends CardCriterion {

  private static final double SPREAD = 0.05;
  /** Sources too much alike, a slag they cannot make, more iron in the slag than they bring. */
  private static final Set<String> GRAVE = Set.of("apportion.collinear", "apportion.misfit", "apportion.iron");

  /** Described by its card. */
  public SourceShares() {
    super(new Card("source_shares", "Lining melted for each ore", Group.CHEMISTRY,
        "1 when slag, ore and lining of both sides show equally much lining melted for each kilogram of ore, by ratio.",
        Source.fromMemory("Lawson & Hanson 1974, Solving least squares problems, chapter 23"),
        Source.fromMemory("Thomas & Young 1999, Geological Society Special Publication 165, 155–164")), List.of(),
        List.of(Shown.relative(40, "how much lining melts differs from smelt to smelt with the run of the air")));
  }

  @Override
  public Assessment assess(SheetData evidence, SheetData found, SettingValues settings) {
    Side[] sides = Side.values();
    SheetData[] sheets = {evidence, found};
    List<List<Statement>> ratios = new ArrayList<>();
    for (int i = 0; i < sides.length; i++) {
      Solved solved = solve(sheets[i], sides[i]);
      if (solved.ratio() == null) {
        return Assessment.notTested(() -> new Explanation(solved.problem(), "–", "–", Trail.of("Apportionment", "")));
      }
      ratios.add(List.of(solved.ratio()));
    }
    return new NumberPair("", Scale.RATIO, settings.number(NumberCriterion.TOLERANCE)).assess(ratios.get(0), ratios.get(1));
  }

  private record Solved(Statement ratio, String problem) {
  }

  private static Solved solve(SheetData sheet, Side side) {
    List<ApportionmentProblem.Source> sources = new ArrayList<>();
    List<Trail> trails = new ArrayList<>();
    for (Material material : List.of(Material.ORE, Material.LINING, Material.ASH)) {
      mean(sheet, material, trails).ifPresent(a -> sources.add(new ApportionmentProblem.Source(material.word(), a, SPREAD)));
    }
    Optional<Analysis> slag = mean(sheet, Material.SLAG, trails);
    if (slag.isEmpty() || sources.size() < 2 || !sources.get(0).name().equals(Material.ORE.word()) || !sources.get(1).name().equals(Material.LINING.word())) {
      return new Solved(null, side.word() + " needs analyses of slag, ore and lining");
    }
    ApportionmentProblem usual;
    try {
      usual = ApportionmentProblem.usual(slag.get(), sources);
    } catch (IllegalArgumentException e) {
      return new Solved(null, side.word() + ": " + e.getMessage());
    }
    return ratio(Apportionment.of(usual), side, trails);
  }

  private static Solved ratio(Apportionment fit, Side side, List<Trail> trails) {
    double ore = fit.amounts().get(0);
    double lining = fit.amounts().get(1);
    List<Finding> grave = fit.findings().stream().filter(f -> GRAVE.contains(f.code())).toList();
    if (!grave.isEmpty() || ore <= 0 || lining <= 0) {
      return new Solved(null, side.word() + ": " + (grave.isEmpty() ? "no lining or no ore is found in the slag" : grave.get(0).what()));
    }
    double value = lining / ore;
    double relative = Math.hypot(fit.sigmas().get(0) / ore, fit.sigmas().get(1) / lining);
    Trail trail = new Trail("Lining for each ore by non-negative least squares, reduced chi-squared " + Printed.number(fit.reducedChi2(), 2)
        + ", condition number " + Printed.number(fit.condition(), 2), Printed.plusMinus(value, value * relative), "", trails);
    return new Solved(new Statement("apportionment", Amount.plusMinus(value, value * relative), Double.NaN, Double.NaN, false, trail), "");
  }

  private static Optional<Analysis> mean(SheetData sheet, Material material, List<Trail> trails) {
    List<AnalysisData> analyses = sheet.analyses().stream().filter(a -> a.material() == material).toList();
    Map<Oxide, Double> shares = new EnumMap<>(Oxide.class);
    for (Oxide oxide : Oxide.values()) {
      analyses.stream().map(Recast::of).filter(r -> r.parts().containsKey(oxide.formula()))
          .mapToDouble(r -> r.parts().get(oxide.formula())).average().ifPresent(v -> shares.put(oxide, Math.min(1, v)));
    }
    analyses.forEach(a -> trails.add(a.trail()));
    return shares.isEmpty() ? Optional.empty() : Optional.of(new Analysis(shares));
  }
}
