package daubline.analysis.balance;

import daubline.analysis.forecast.TrialPlan;
import daubline.analysis.forecast.TrialPlans;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The balances of all trials of a study as it stood; they are reckoned once, when first asked for. */
public final class StudyBalances {

  /** No balances. */
  public static final StudyBalances NONE = new StudyBalances(List.of());

  private final List<BalanceInputs> given;
  private List<TrialBalance> balances;

  private StudyBalances(List<BalanceInputs> given) {
    this.given = List.copyOf(given);
  }

  /** What the balances of a study are made of, as it stands now. */
  public static StudyBalances of(Study study, TrialPlans plans) {
    List<BalanceInputs> given = new ArrayList<>();
    for (Series series : study.getSeries()) {
      for (Trial trial : series.getTrials()) {
        Optional<TrialPlan> plan = plans.find(String.valueOf(trial.getId()));
        plan.ifPresent(p -> given.add(BalanceInputs.of(trial, p)));
      }
    }
    return new StudyBalances(given);
  }

  /** The balances in the order of the study; trials of which nothing was found again have no element balance. */
  public synchronized List<TrialBalance> all() {
    if (balances == null) {
      balances = given.stream().map(g -> g.balance(TrialPlans.DRAWS, TrialPlans.SEED)).toList();
    }
    return balances;
  }

  /** The balance of one trial. */
  public Optional<TrialBalance> find(String trial) {
    return all().stream().filter(b -> b.trial().equals(trial)).findFirst();
  }
}
