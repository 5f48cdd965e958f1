package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Stage;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One outcome of each trial.
 *
 * @param id id of the variable, or "agreement:" and the id of the sheet
 * @param name as it stands in sentences, such as "bloom mass"
 * @param unit the unit of the values, may be empty
 * @param values by trial; NaN where there is none
 * @param findings what had to be decided to get them
 */
public record Outcome(String id, String name, String unit, double[] values, List<Finding> findings) {

  private static final String AGREEMENT = "agreement:";
  private static final List<Stage> STAGES = List.of(Stage.AS_FOUND, Stage.AS_FIRED);

  public Outcome {
    values = values.clone();
    findings = List.copyOf(findings);
  }

  /** Whether it is the agreement with a sheet. */
  public boolean isAgreement() {
    return id.startsWith(AGREEMENT);
  }

  /** How many trials have it. */
  public int known() {
    return (int) java.util.Arrays.stream(values).filter(Double::isFinite).count();
  }

  /** A variable of the trials, in its usual unit; present counts as 1, absent as 0. */
  public static Outcome of(StudySnapshot study, Variable variable, List<TrialData> trials) {
    List<Finding> findings = new ArrayList<>();
    double[] values = trials.stream().mapToDouble(t -> value(variable, t, findings)).toArray();
    return new Outcome(variable.id(), variable.name().toLowerCase(java.util.Locale.ROOT), variable.type() == ValueType.YES_NO ? "" : variable.unit().symbol(), values, findings);
  }

  /** Agreement of the remains of each trial with a sheet, 0 to 100. */
  public static Outcome agreement(List<Comparison> comparisons, String sheetId, String sheetName, List<TrialData> trials) {
    double[] values = trials.stream().mapToDouble(t -> comparisons.stream().filter(c -> c.trial().equals(t.id()) && c.sheet().equals(sheetId))
        .mapToDouble(Comparison::agreement).findFirst().orElse(Double.NaN)).toArray();
    return new Outcome(AGREEMENT + sheetId, "agreement with " + sheetName, "", values, List.of());
  }

  /** The variables that three trials or more have as an outcome, factors left out, by the number of trials. */
  public static List<Outcome> possible(StudySnapshot study, DesignBrief brief, List<TrialData> trials) {
    return study.variables().all().stream().filter(v -> v.type() == ValueType.NUMBER || v.type() == ValueType.YES_NO)
        .filter(v -> v.isAt(Variable.Place.FIRED) || v.isAt(Variable.Place.REMAINS))
        .filter(v -> brief.factors().stream().noneMatch(f -> f.id().equals(v.id())))
        .map(v -> of(study, v, trials)).filter(o -> o.known() >= 3).toList();
  }

  private static double value(Variable variable, TrialData trial, List<Finding> findings) {
    for (Stage stage : STAGES) {
      List<Statement> usable = trial.at(stage, variable.id()).stream().filter(s -> !Double.isNaN(number(variable, s.amount()))).toList();
      if (!usable.isEmpty()) {
        Optional<Statement> picked = usable.stream().filter(Statement::picked).findFirst();
        if (usable.size() > 1 && picked.isEmpty()) {
          findings.add(Finding.warning("effects.contradictory", trial.name(), usable.size() + " statements about " + variable.name() + ": "
              + usable.stream().map(s -> daubline.base.Printed.withUnit(s.amount(), variable.unit())).collect(Collectors.joining("; ")) + "; the first is taken",
              "pick one and say why").about(trial.id(), variable.id()));
        }
        Amount amount = picked.orElse(usable.get(0)).amount();
        limit(variable, trial, amount, findings);
        return number(variable, amount);
      }
    }
    return Double.NaN;
  }

  private static void limit(Variable variable, TrialData trial, Amount amount, List<Finding> findings) {
    if (amount.kind() == ValueKind.AT_LEAST || amount.kind() == ValueKind.AT_MOST || amount.kind() == ValueKind.BELOW_LIMIT) {
      findings.add(Finding.warning("effects.limit", trial.name(), variable.name() + " is only a limit (" + daubline.base.Printed.withUnit(amount, variable.unit())
          + ") and is taken as the value", "read the effects with that in mind").about(trial.id(), variable.id()));
    }
  }

  private static double number(Variable variable, Amount amount) {
    if (variable.type() == ValueType.YES_NO) {
      return amount.kind() == ValueKind.PRESENT ? 1 : amount.kind() == ValueKind.ABSENT ? 0 : Double.NaN;
    }
    return amount.isNumber() && Double.isFinite(amount.value()) ? variable.unit().fromCanonical(amount.value()) : Double.NaN;
  }
}
