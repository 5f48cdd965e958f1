package daubline.analysis.balance;

import daubline.analysis.forecast.TrialPlan;
import daubline.analysis.forecast.TrialPlans;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.engine.process.balance.ElementBalance;
import daubline.engine.process.balance.ForwardBalance;
import daubline.engine.process.balance.Portion;
import daubline.engine.process.balance.Yield;
import daubline.engine.process.slag.Norm;
import daubline.engine.process.slag.SlagBehaviour;
import daubline.model.Series;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The mass balance of one trial; masses in kg, shares 0 to 1.
 *
 * @param trial id of the trial
 * @param name its name
 * @param charged what went in: ore, lining, ash and flux, dry
 * @param forward slag and metal that the charge gives with the metal that was made, or that is forecast for a planned trial
 * @param forecast whether the metal is forecast and not weighed
 * @param elements what went in of each element and was found again; empty before the fire
 * @param tracers the slag mass that each oxide asks for, where slag and charge were analysed
 * @param weighed slag weighed; NaN when it was not
 * @param indices indices of the slag, each by its name
 * @param yields each yield by its own name and formula; those that cannot be told are left out
 * @param sources where the slag came from, backward from its analysis
 * @param slag how the analysed slag behaves where the charge is hottest; empty without an analysis of silica and iron
 * @param findings what is missing or doubtful
 */
public record TrialBalance(String trial, String name, List<Portion> charged, Optional<ForwardBalance> forward, boolean forecast,
    List<ElementBalance> elements, List<Tracer> tracers, double weighed, List<Index> indices, List<NamedYield> yields,
    Optional<SlagSources> sources, Optional<HotSlag> slag, List<Finding> findings) {

  /** The slag mass that one oxide asks for, kg: what was charged of it over its share of the slag. */
  public record Tracer(String oxide, double slag) {
  }

  /** An index of the slag: its name, its formula in words, its value. */
  public record Index(String name, String formula, double value) {
  }

  /**
   * A slag in the heat.
   *
   * @param celsius the temperature, °C: the hottest charge by the shaft model, 1250 °C where it finds none
   * @param behaviour what every model says of it there
   */
  public record HotSlag(double celsius, SlagBehaviour behaviour) {

    /** Phases it can form, the largest first, as words with per cent; those below one in a hundred left out. */
    public String phases() {
      return behaviour.norm().shares().entrySet().stream().filter(e -> e.getValue() >= .01)
          .sorted(Map.Entry.<Norm.Phase, Double>comparingByValue().reversed())
          .map(e -> e.getKey().label() + " " + Printed.fixed(100 * e.getValue(), 0) + " %").collect(Collectors.joining(", "));
    }
  }

  /** A yield by its own name and formula. */
  public record NamedYield(Yield yield, double value) {
  }

  public TrialBalance {
    charged = List.copyOf(charged);
    elements = List.copyOf(elements);
    tracers = List.copyOf(tracers);
    indices = List.copyOf(indices);
    yields = List.copyOf(yields);
    findings = List.copyOf(findings);
  }

  /**
   * Balances trials of a study.
   *
   * @param wanted ids or names of trials or of series; empty for all
   * @param draws draws of the backward balance
   * @param seed seed of all random numbers
   */
  public static List<TrialBalance> of(StudySession session, List<String> wanted, int draws, long seed) {
    TrialPlans plans = TrialPlans.of(session.study());
    List<TrialBalance> balances = new ArrayList<>();
    for (Series series : session.study().getSeries()) {
      for (Trial trial : series.getTrials()) {
        Optional<TrialPlan> plan = plans.find(String.valueOf(trial.getId()));
        if (plan.isPresent() && (wanted.isEmpty() || wanted.contains(trial.getId()) || wanted.contains(trial.getName()) || wanted.contains(series.getName()))) {
          balances.add(of(trial, plan.get(), draws, seed));
        }
      }
    }
    return balances;
  }

  private static TrialBalance of(Trial trial, TrialPlan plan, int draws, long seed) {
    return BalanceInputs.of(trial, plan).balance(draws, seed);
  }
}
