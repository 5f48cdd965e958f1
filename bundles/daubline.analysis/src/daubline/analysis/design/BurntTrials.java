package daubline.analysis.design;

import daubline.analysis.StudySnapshot;
import daubline.analysis.TrialData;
import daubline.analysis.record.SeriesData;
import daubline.analysis.record.SeriesData.FactorData;
import daubline.analysis.record.TrialRecord;
import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Run;
import daubline.engine.inference.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The trials of a series that were burnt, with the settings they were burnt at: as fired, otherwise as built, otherwise as
 * planned; a number that differs from the planned one by no more than its uncertainty counts as planned.
 *
 * @param trials the trials, in the order of the series
 * @param design their settings, furnaces and days
 * @param findings trials left out, and why
 */
public record BurntTrials(List<TrialData> trials, Design design, List<Finding> findings) {

  private static final List<Stage> STAGES = List.of(Stage.AS_FIRED, Stage.AS_BUILT, Stage.PLANNED);

  public BurntTrials {
    trials = List.copyOf(trials);
    findings = List.copyOf(findings);
  }

  /** The burnt trials of a series. */
  public static BurntTrials of(StudySnapshot study, DesignBrief brief, boolean withDemonstrations) {
    return new Reader(study, brief, withDemonstrations).read();
  }

  /** Reads the trials of one series. */
  private static final class Reader {
    private final StudySnapshot study;
    private final DesignBrief brief;
    private final boolean withDemonstrations;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Integer> furnaces = new LinkedHashMap<>();
    private final Map<String, Integer> days = new LinkedHashMap<>();

    Reader(StudySnapshot study, DesignBrief brief, boolean withDemonstrations) {
      this.study = study;
      this.brief = brief;
      this.withDemonstrations = withDemonstrations;
    }

    BurntTrials read() {
      List<TrialData> trials = new ArrayList<>();
      List<Run> runs = new ArrayList<>();
      for (String id : brief.series().trials()) {
        study.trial(id).filter(this::isBurnt).ifPresent(trial -> setting(trial).ifPresent(setting -> {
          TrialRecord record = study.record().trial(id).orElseThrow();
          trials.add(trial);
          runs.add(new Run(setting, number(furnaces, record.build(), id), number(days, record.on(), id), true));
        }));
      }
      return new BurntTrials(trials, new Design("trials burnt", brief.factors(), runs, List.of()), findings);
    }

    private static int number(Map<String, Integer> known, String name, String id) {
      return known.computeIfAbsent(name.isBlank() ? "\u0000" + id : name, n -> known.size());
    }

    private boolean isBurnt(TrialData trial) {
      if (!trial.status().isBurnt()) {
        return false;
      }
      String why = trial.excluded() ? "taken out of comparison" + (trial.excludedBecause().isBlank() ? "" : ": " + trial.excludedBecause())
          : trial.kind() == TrialKind.DEMONSTRATION && !withDemonstrations ? "a demonstration" : "";
      if (!why.isEmpty()) {
        leftOut(trial, why, "");
      }
      return why.isEmpty();
    }

    private void leftOut(TrialData trial, String why, String remedy) {
      findings.add(Finding.note("effects.left-out", trial.name(), "left out: " + why, remedy).about(trial.id(), ""));
    }

    private Optional<double[]> setting(TrialData trial) {
      double[] setting = new double[brief.factors().size()];
      for (int j = 0; j < setting.length; j++) {
        Factor factor = brief.factors().get(j);
        Optional<Double> code = code(trial, factor);
        if (code.isEmpty()) {
          findings.add(Finding.warning("effects.no-setting", trial.name(), "left out: its " + factor.name() + " is not known, or is none of "
              + levels(factor), "enter it as fired, as built or as planned").about(trial.id(), factor.id()));
          return Optional.empty();
        }
        setting[j] = code.get();
      }
      return Optional.of(setting);
    }

    private static String levels(Factor factor) {
      return factor.isCategory() ? String.join(", ", factor.names()) : "its numbers";
    }

    private Optional<Double> code(TrialData trial, Factor factor) {
      if (factor.id().equals(FactorReader.RECONSTRUCTION)) {
        return index(factor, study.record().trial(trial.id()).map(TrialRecord::reconstruction).orElse(""));
      }
      for (Stage stage : STAGES) {
        for (Statement statement : trial.at(stage, factor.id())) {
          if (BurntTrials.code(study.variables(), factor, statement.amount()).isPresent()) {
            return BurntTrials.code(study.variables(), factor, asPlanned(trial, factor, statement.amount()));
          }
        }
      }
      return Optional.empty();
    }
  }

  /**
   * What was planned where it was done as planned as far as anybody could see, otherwise what was done: trials set alike are repeats, and
   * the errors of a measured setting are no settings.
   */
  private static Amount asPlanned(TrialData trial, Factor factor, Amount done) {
    return trial.at(Stage.PLANNED, factor.id()).stream().map(Statement::amount).filter(p -> p.isNumber() && done.isNumber())
        .filter(p -> Math.abs(p.value() - done.value()) <= Math.max(done.sigmaOr(0), Deviation.SAME * Math.abs(p.value()))).findFirst().orElse(done);
  }

  /**
   * A factor over what the trials of a series were burnt at: its lowest and highest setting, or the words that occur.
   *
   * @throws IllegalArgumentException when fewer than two settings occur
   */
  public static FactorData asFactor(StudySnapshot study, SeriesData series, Variable variable) {
    List<Amount> amounts = series.trials().stream().flatMap(id -> study.trial(id).stream()).flatMap(t -> STAGES.stream().map(s -> t.at(s, variable.id()))
        .filter(found -> !found.isEmpty()).limit(1).map(found -> found.get(0).amount())).toList();
    List<String> settings = variable.type() == ValueType.NUMBER
        ? amounts.stream().filter(a -> Double.isFinite(a.value())).map(a -> variable.unit().fromCanonical(a.value())).distinct().sorted().map(Object::toString).toList()
        : amounts.stream().map(a -> a.category().isEmpty() ? a.kind().word() : a.category()).distinct().sorted().toList();
    if (settings.size() < 2) {
      throw new IllegalArgumentException(variable.name() + " was the same in every trial, or was not recorded; it cannot be asked about");
    }
    String levels = variable.type() == ValueType.NUMBER ? settings.get(0) + " to " + settings.get(settings.size() - 1) : String.join(";", settings);
    return new FactorData(variable.id(), levels, false, false);
  }

  private static Optional<Double> index(Factor factor, String word) {
    int index = factor.names().indexOf(word);
    return index < 0 ? Optional.empty() : Optional.of((double) index);
  }

  /** The coded setting that a value means for a factor; empty when it means none. */
  static Optional<Double> code(Variables variables, Factor factor, Amount amount) {
    if (factor.isCategory()) {
      String word = amount.kind() == ValueKind.PRESENT || amount.kind() == ValueKind.ABSENT ? amount.kind().word() : amount.category();
      return index(factor, word);
    }
    return amount.isNumber() && Double.isFinite(amount.value()) ? Optional.of(factor.code(unit(variables, factor).fromCanonical(amount.value()))) : Optional.empty();
  }

  /** The value that a coded setting means, in canonical units. */
  static Amount amount(Variables variables, Factor factor, double code) {
    if (!factor.isCategory()) {
      // what people can set is not finer than four digits
      double shown = Double.parseDouble(daubline.base.Printed.number(factor.decode(code)));
      return Amount.exact(unit(variables, factor).toCanonical(shown));
    }
    String word = factor.names().get((int) Math.round(code));
    boolean yesNo = variables.find(factor.id()).filter(v -> v.type() == ValueType.YES_NO).isPresent();
    return !yesNo ? Amount.category(word) : Amount.of(word.equals(ValueKind.PRESENT.word()) ? ValueKind.PRESENT : ValueKind.ABSENT);
  }

  private static Unit unit(Variables variables, Factor factor) {
    return variables.find(factor.id()).flatMap(v -> Units.find(v.quantity(), factor.unit()))
        .orElseThrow(() -> new IllegalArgumentException("factor " + factor.name() + " has no unit " + factor.unit()));
  }
}
