package daubline.analysis;

import daubline.analysis.balance.StudyBalances;
import daubline.analysis.forecast.TrialPlans;
import daubline.analysis.record.StudyRecord;
import daubline.base.Variables;
import daubline.engine.inference.ComparisonSettings;
import java.util.List;
import java.util.Optional;

/**
 * A study as it stood at one moment, immutable; engines, tables and figures work on it.
 *
 * @param name the study's name
 * @param digest the digest of its files, printed on every export
 * @param settings the comparison settings that the study keeps
 * @param variables the catalogue with the study's own variables
 * @param trials all trials in the order of the study
 * @param sheets all evidence sheets in the order of the study
 * @param record what is printed beside: people, lots, logs, pieces, samples, analyses in full
 * @param plans what is known of each trial before the fire
 * @param balances what went into each trial and was found again
 */
public record StudySnapshot(String name, String digest, ComparisonSettings settings, Variables variables, List<TrialData> trials,
    List<EvidenceData> sheets, StudyRecord record, TrialPlans plans, StudyBalances balances) {

  /** A snapshot of what is compared only. */
  public StudySnapshot(String name, String digest, ComparisonSettings settings, Variables variables, List<TrialData> trials,
      List<EvidenceData> sheets) {
    this(name, digest, settings, variables, trials, sheets, StudyRecord.EMPTY);
  }

  /** A snapshot without plans and balances. */
  public StudySnapshot(String name, String digest, ComparisonSettings settings, Variables variables, List<TrialData> trials,
      List<EvidenceData> sheets, StudyRecord record) {
    this(name, digest, settings, variables, trials, sheets, record, TrialPlans.NONE, StudyBalances.NONE);
  }

  public StudySnapshot {
    trials = List.copyOf(trials);
    sheets = List.copyOf(sheets);
  }

  /** A trial by id. */
  public Optional<TrialData> trial(String id) {
    return trials.stream().filter(t -> t.id().equals(id)).findFirst();
  }

  /** An evidence sheet by id. */
  public Optional<EvidenceData> sheet(String id) {
    return sheets.stream().filter(s -> s.sheet().id().equals(id)).findFirst();
  }
}
