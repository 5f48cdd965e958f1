package daubline.cli;

import daubline.analysis.ComparisonOptions;
import daubline.analysis.EvidenceData;
import daubline.analysis.StudyComparison;
import daubline.analysis.StudySnapshot;
import daubline.analysis.design.BurntTrials;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.Outcome;
import daubline.analysis.record.SeriesData;
import daubline.engine.inference.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The outcome that effects are asked of. */
final class OutcomeArguments {

  @Option(names = "--on", paramLabel = "VARIABLE", defaultValue = "", description = "the outcome, by id or name of the variable")
  private String on;

  @Option(names = "--agreement", paramLabel = "SHEET", defaultValue = "", description = "agreement with this evidence sheet, by name or id")
  private String sheet;

  @Option(names = "--vary", paramLabel = "VARIABLE", description = "ask about this alone, over its lowest to highest setting of the trials; may be repeated")
  private List<String> vary = List.of();

  @Option(names = "--demonstrations", description = "demonstrations take part")
  private boolean demonstrations;

  /** The series with the factors asked for, otherwise its own. */
  DesignBrief brief(StudySnapshot snapshot, SeriesData data) {
    if (vary.isEmpty()) {
      return DesignBrief.of(snapshot, data);
    }
    List<SeriesData.FactorData> factors = new ArrayList<>();
    for (String wanted : vary) {
      String id = DesignSetup.id(snapshot.variables(), wanted);
      factors.add(BurntTrials.asFactor(snapshot, data, snapshot.variables().get(id)));
    }
    return DesignBrief.of(snapshot, new SeriesData(data.id(), data.name(), data.question(), data.plan(), data.frozen(), data.seed(), factors, data.trials(), data.planning()));
  }

  BurntTrials burnt(StudySnapshot snapshot, DesignBrief brief) {
    return BurntTrials.of(snapshot, brief, demonstrations);
  }

  /** The outcome asked for; empty when none was named. */
  Optional<Outcome> outcome(StudySnapshot snapshot, BurntTrials burnt) {
    if (!sheet.isBlank()) {
      return Optional.of(agreement(snapshot, burnt));
    }
    return on.isBlank() ? Optional.empty() : Optional.of(Outcome.of(snapshot, snapshot.variables().get(DesignSetup.id(snapshot.variables(), on)), burnt.trials()));
  }

  /** Agreement with the sheet asked for, or with the first. */
  Outcome agreement(StudySnapshot snapshot, BurntTrials burnt) {
    Optional<EvidenceData> found = snapshot.sheets().stream().filter(s -> sheet.isBlank() || s.sheet().id().equals(sheet) || s.sheet().name().equals(sheet)).findFirst();
    if (found.isEmpty() && !sheet.isBlank()) {
      throw new IllegalArgumentException("there is no evidence sheet “" + sheet + "”; there are " + String.join(", ", snapshot.sheets().stream().map(s -> s.sheet().name()).toList()));
    }
    if (found.isEmpty()) {
      return Outcome.agreement(List.of(), "", "a sheet", burnt.trials());
    }
    ComparisonOptions standard = ComparisonOptions.standard();
    ComparisonOptions options = new ComparisonOptions(true, List.of(), List.of(found.get().sheet().id()), standard.draws(), standard.seed(), standard.threads());
    return Outcome.agreement(StudyComparison.of(snapshot, List.of(), options, Progress.NONE).comparisons(), found.get().sheet().id(), found.get().sheet().name(), burnt.trials());
  }
}
