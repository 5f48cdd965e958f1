package daubline.analysis;

import daubline.analysis.balance.StudyBalances;
import daubline.analysis.forecast.TrialPlans;
import daubline.analysis.record.LotData;
import daubline.analysis.record.PersonData;
import daubline.analysis.record.ReconstructionData;
import daubline.analysis.record.SeriesData;
import daubline.analysis.record.StudyRecord;
import daubline.analysis.record.WallData;
import daubline.base.Variables;
import daubline.engine.inference.ComparisonSettings;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

  /** The names that people gave: no language changes them, even where they look like words of the tool. */
  public Set<String> names() {
    Stream<String> objects = Stream.of(trials.stream().map(TrialData::name), sheets.stream().flatMap(s -> Stream.of(s.sheet().name(), s.site(), s.period())),
        record.people().stream().map(PersonData::name), record.lots().stream().map(LotData::name), record.series().stream().map(SeriesData::name),
        record.hypotheses().stream().map(ReconstructionData::name), record.reconstructions().stream(), record.walls().stream().map(WallData::name)).flatMap(s -> s);
    return Stream.concat(Stream.of(name), objects).filter(Objects::nonNull).collect(Collectors.toSet());
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
