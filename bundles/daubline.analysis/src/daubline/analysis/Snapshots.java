package daubline.analysis;

import daubline.analysis.balance.StudyBalances;
import daubline.analysis.forecast.TrialPlans;
import daubline.analysis.record.Recorder;
import daubline.base.Confidence;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.base.Trail;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.base.Variables;
import daubline.engine.inference.AnalysisData;
import daubline.engine.inference.ClassMass;
import daubline.engine.inference.SheetData;
import daubline.engine.inference.Statement;
import daubline.model.Analysis;
import daubline.model.Claim;
import daubline.model.Context;
import daubline.model.EvidenceSheet;
import daubline.model.Identified;
import daubline.model.Named;
import daubline.model.Reading;
import daubline.model.RemainsSheet;
import daubline.model.ResidueMass;
import daubline.model.Series;
import daubline.model.Sheet;
import daubline.model.Site;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import daubline.session.StudyVariables;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes snapshots of an open study. */
public final class Snapshots {

  private final Trails trails;

  private Snapshots(Variables variables) {
    this.trails = new Trails(variables);
  }

  /** The study of a session as it stands now. */
  public static StudySnapshot of(StudySession session) {
    Variables variables = StudyVariables.of(session.study());
    Snapshots make = new Snapshots(variables);
    List<TrialData> trials = new ArrayList<>();
    for (Series series : session.study().getSeries()) {
      series.getTrials().forEach(trial -> trials.add(make.trial(series, trial)));
    }
    List<EvidenceData> sheets = new ArrayList<>();
    for (Site site : session.study().getSites()) {
      for (Context context : site.getContexts()) {
        context.getSheets().forEach(sheet -> sheets.add(make.evidence(site, context, sheet)));
      }
    }
    TrialPlans plans = TrialPlans.of(session.study());
    return new StudySnapshot(text(session.study().getName()), session.digest(), StudySettings.of(session.study()), variables, trials, sheets,
        new Recorder(reading -> make.statement(reading, Double.NaN), make::analysis).of(session.study()),
        plans, StudyBalances.of(session.study(), plans));
  }

  /** Where the value of one reading came from. */
  public static Trail trailOf(StudySession session, Reading reading) {
    return new Trails(StudyVariables.of(session.study())).of(reading);
  }

  private EvidenceData evidence(Site site, Context context, EvidenceSheet sheet) {
    return new EvidenceData(sheet(sheet, sheet.getId(), name(sheet), List.of()), name(site), site.getId(), text(site.getRegion()),
        text(context.getPhase()), text(context.getPeriod()), text(sheet.getFeature()));
  }

  private TrialData trial(Series series, Trial trial) {
    Map<Stage, Map<String, List<Statement>>> values = new EnumMap<>(Stage.class);
    if (trial.getBuild() != null) {
      trial.getBuild().getValues().forEach(value -> addStaged(values, value));
    }
    trial.getValues().forEach(value -> addStaged(values, value));
    RemainsSheet remains = trial.getRemains();
    SheetData found = remains == null ? new SheetData(trial.getId(), name(trial), Double.NaN, Map.of(), List.of(), analyses(trial.getAnalyses()))
        : sheet(remains, trial.getId(), name(trial), trial.getAnalyses());
    return new TrialData(trial.getId(), name(trial), name(series), Optional.ofNullable(trial.getKind()).orElse(TrialKind.EXPERIMENT),
        TrialStatus.of(trial.getStatus()),
        trial.getRepeatOf() == null ? "" : trial.getRepeatOf().getId(), trial.isExcluded(), text(trial.getExcludedBecause()), values, found);
  }

  private void addStaged(Map<Stage, Map<String, List<Statement>>> values, StagedValue value) {
    if (value.getStage() != null && value.getVariable() != null) {
      values.computeIfAbsent(value.getStage(), s -> new LinkedHashMap<>())
          .computeIfAbsent(value.getVariable(), v -> new ArrayList<>()).add(statement(value, Double.NaN));
    }
  }

  private SheetData sheet(Sheet sheet, String id, String name, List<Analysis> more) {
    Map<String, List<Statement>> statements = new LinkedHashMap<>();
    for (Claim claim : sheet.getClaims()) {
      if (claim.getVariable() != null) {
        statements.computeIfAbsent(claim.getVariable(), v -> new ArrayList<>()).add(statement(claim, number(claim.getPreservationLimit())));
      }
    }
    List<AnalysisData> analyses = new ArrayList<>(analyses(sheet.getAnalyses()));
    analyses.addAll(analyses(more));
    return new SheetData(id, name, number(sheet.getSamplingFraction()), statements,
        sheet.getResidues().stream().filter(r -> r.getResidueClass() != null).map(this::residue).toList(), analyses);
  }

  private Statement statement(Reading reading, double preservationLimit) {
    return new Statement(text(reading.getId()), Readings.amount(reading), number(reading.getSamplingFraction()), preservationLimit,
        reading.isPicked(), reading.getConfidence() == Confidence.LOW, trails.of(reading));
  }

  private ClassMass residue(ResidueMass residue) {
    return new ClassMass(residue.getResidueClass().getId(), text(residue.getResidueClass().getName()), Readings.amount(residue),
        residue.getCount() == null ? -1 : residue.getCount(), number(residue.getSamplingFraction()), residue.getConfidence() == Confidence.LOW, trails.of(residue));
  }

  private List<AnalysisData> analyses(List<Analysis> analyses) {
    return Replicates.pooled(analyses, this::analysis);
  }

  private AnalysisData analysis(Analysis analysis) {
    Map<String, daubline.base.Amount> components = new LinkedHashMap<>();
    analysis.getComponents().stream().filter(c -> c.getSymbol() != null).forEach(c -> components.put(c.getSymbol(), Readings.amount(c)));
    return new AnalysisData(text(analysis.getId()), Optional.ofNullable(analysis.getMaterial()).orElse(Material.OTHER), text(analysis.getSpecimen()),
        Optional.ofNullable(analysis.getIronBasis()).orElse(IronBasis.NOT_STATED), components, number(analysis.getTotal()), trails.of(analysis));
  }

  private static String name(Named object) {
    return object.getName() == null || object.getName().isBlank() ? text(((Identified) object).getId()) : object.getName();
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  private static double number(Double value) {
    return value == null ? Double.NaN : value;
  }
}
