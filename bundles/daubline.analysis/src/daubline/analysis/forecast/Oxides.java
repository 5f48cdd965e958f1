package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Material;
import daubline.base.ValueKind;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Reads analyses of a study as the process engine takes them: oxides that are numbers between 0 and 1. */
public final class Oxides {

  private static final double IRON_IN_OXIDE = Oxide.FE2O3.ironShare();

  private Oxides() {
  }

  /** The oxides of an analysis; metallic iron is taken as Fe2O3 where no oxide of iron is given. What is below a limit is left out. */
  public static Analysis of(daubline.model.Analysis printed) {
    Map<Oxide, Double> shares = new EnumMap<>(Oxide.class);
    double iron = Double.NaN;
    for (daubline.model.Component component : printed.getComponents()) {
      Amount amount = Readings.amount(component);
      if (amount.isNumber() && amount.kind() != ValueKind.BELOW_LIMIT && amount.value() >= 0 && amount.value() <= 1) {
        for (Oxide oxide : Oxide.values()) {
          if (oxide.formula().equals(component.getSymbol())) {
            shares.put(oxide, amount.value());
          }
        }
        iron = "Fe".equals(component.getSymbol()) ? amount.value() : iron;
      }
    }
    Analysis analysis = new Analysis(shares);
    return analysis.iron() > 0 || !(iron >= 0) ? analysis : analysis.with(Oxide.FE2O3, Math.min(1, iron / IRON_IN_OXIDE));
  }

  /** The mean of analyses, oxide by oxide over those that report it; tells nothing when there are none. */
  public static Analysis mean(List<Analysis> analyses) {
    Map<Oxide, Double> means = new EnumMap<>(Oxide.class);
    for (Oxide oxide : Oxide.values()) {
      analyses.stream().filter(a -> a.has(oxide)).mapToDouble(a -> a.share(oxide)).average().ifPresent(m -> means.put(oxide, m));
    }
    return new Analysis(means);
  }

  /** The mean of the slag analyses of a trial and its remains; tells nothing when there are none. */
  public static Analysis slagOf(Trial trial) {
    Stream<daubline.model.Analysis> remains = trial.getRemains() == null ? Stream.empty() : trial.getRemains().getAnalyses().stream();
    return mean(Stream.concat(trial.getAnalyses().stream(), remains).filter(a -> a.getMaterial() == Material.SLAG).map(Oxides::of)
        .filter(a -> a.total() > 0).toList());
  }
}
