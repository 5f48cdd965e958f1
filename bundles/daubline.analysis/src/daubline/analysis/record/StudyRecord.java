package daubline.analysis.record;

import java.util.List;
import java.util.Optional;

/**
 * What a study holds beside the values that are compared.
 *
 * @param question the study's question, or empty
 * @param licence its licence, or empty
 * @param people everybody, whether they may be named or not
 * @param citations the publications that claims come from
 * @param lots material lots
 * @param series series of trials
 * @param trials the records of the trials, in the order of the study
 * @param evidence analyses of the evidence sheets in full
 * @param reconstructions names of the reconstructions, retired ones left out
 * @param hypotheses the reconstructions in full, retired ones too
 * @param walls what the fire did to walls and where residue lay, where it was mapped
 */
public record StudyRecord(String question, String licence, List<PersonData> people, List<CitationData> citations, List<LotData> lots,
    List<SeriesData> series, List<TrialRecord> trials, List<AnalysisRecord> evidence, List<String> reconstructions,
    List<ReconstructionData> hypotheses, List<WallData> walls) {

  /** Nothing. */
  public static final StudyRecord EMPTY = new StudyRecord("", "", List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  public StudyRecord {
    people = List.copyOf(people);
    citations = List.copyOf(citations);
    lots = List.copyOf(lots);
    series = List.copyOf(series);
    trials = List.copyOf(trials);
    evidence = List.copyOf(evidence);
    reconstructions = List.copyOf(reconstructions);
    hypotheses = List.copyOf(hypotheses);
    walls = List.copyOf(walls);
  }

  /** The record of a trial by its id. */
  public Optional<TrialRecord> trial(String id) {
    return trials.stream().filter(t -> t.id().equals(id)).findFirst();
  }
}
