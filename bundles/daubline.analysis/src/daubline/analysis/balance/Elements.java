package daubline.analysis.balance;

import daubline.analysis.forecast.Outcome;
import daubline.analysis.forecast.TrialPlan;
import daubline.base.Finding;
import daubline.engine.process.BurnInputs;
import daubline.engine.process.BurnQuantity;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.ElementBalance;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.balance.Portion;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** What went in of each element and was found again in metal and slag; the remainder is what was not found. */
final class Elements {

  /** Of an analysis, relative (common practice, no source). */
  private static final double ANALYSED = 0.04;
  /** Of an analysis that stands for one that was not made, relative (common practice, no source). */
  private static final double ASSUMED = 0.3;
  /** Of a weighed mass without a stated uncertainty, relative. */
  private static final double WEIGHED = 0.03;

  private final TrialPlan plan;
  private final List<Portion> charged;
  private final Analysis slag;

  Elements(TrialPlan plan, List<Portion> charged, Analysis slag) {
    this.plan = plan;
    this.charged = charged;
    this.slag = slag;
  }

  List<ElementBalance> all(List<Finding> findings) {
    if (slag.total() <= 0 || !plan.outcomes().containsKey(BurnQuantity.SLAG)) {
      findings.add(Finding.note("balance.out", "element balances", "slag was not both weighed and analysed, so what was found again cannot be told",
          "weigh all slag by class and have it analysed"));
      return List.of();
    }
    List<ElementBalance> balances = new ArrayList<>();
    balances.add(balance("Fe", Analysis::iron, true));
    for (Oxide oxide : Oxide.values()) {
      if (!oxide.isIron() && slag.has(oxide) && charged.stream().anyMatch(p -> p.analysis().has(oxide))) {
        balances.add(balance(oxide.formula(), a -> a.share(oxide), false));
      }
    }
    balances.stream().filter(b -> !b.closes()).forEach(b -> findings.add(open(b)));
    return balances;
  }

  private static Finding open(ElementBalance b) {
    return Finding.warning("balance.open", "element balances", String.format(java.util.Locale.ROOT,
        "%s does not close: %.2f kg in, %.2f kg found, %.2f ± %.2f kg left over", b.element(), b.in(), b.out(), b.remainder(), b.sigma()),
        b.remainder() > 0 && b.element().equals(Oxide.P2O5.formula()) ? "phosphorus also goes into the metal; have the metal analysed" : b.remainder() > 0 ? "look for what was not weighed: slag left in the furnace, fines, spatter, fragments"
            : "look for a source that was not counted, or an analysis that does not speak for the whole");
  }

  private ElementBalance balance(String element, ToDoubleFunction<Analysis> share, boolean iron) {
    List<ElementBalance.Entry> in = charged.stream().map(p -> {
      double s = share.applyAsDouble(p.analysis());
      boolean assumed = p.analysis().equals(BurnInputs.USUAL_LINING) || p.analysis().equals(BurnInputs.USUAL_ASH);
      return new ElementBalance.Entry(p.name(), p.mass(), WEIGHED * p.mass(), s, (assumed ? ASSUMED : ANALYSED) * s);
    }).toList();
    List<ElementBalance.Entry> out = new ArrayList<>();
    double inSlag = share.applyAsDouble(slag);
    out.add(entry("slag", plan.outcomes().get(BurnQuantity.SLAG), inSlag));
    Outcome bloom = plan.outcomes().get(BurnQuantity.BLOOM);
    Outcome metal = plan.outcomes().get(BurnQuantity.METAL);
    if (iron) {
      out.add(new ElementBalance.Entry("metal", metal.value(), sigma(metal), 1, 0));
    }
    if (bloom != null && bloom.value() > metal.value()) {
      out.add(new ElementBalance.Entry("slag in the bloom", bloom.value() - metal.value(), sigma(bloom), inSlag, ANALYSED * inSlag));
    }
    return ElementBalance.of(element, in, out);
  }

  private static ElementBalance.Entry entry(String what, Outcome mass, double share) {
    return new ElementBalance.Entry(what, mass.value(), sigma(mass), share, ANALYSED * share);
  }

  private static double sigma(Outcome outcome) {
    return outcome.sigma() > 0 ? outcome.sigma() : WEIGHED * outcome.value();
  }
}
