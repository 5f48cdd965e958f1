package daubline.analysis.record;

import daubline.base.Amount;
import daubline.engine.inference.Statement;
import java.util.List;
import java.util.Map;

/**
 * What was written down about a trial.
 *
 * @param id id of the trial
 * @param number its number, negative when it has none
 * @param on its date, or empty
 * @param build name of its furnace, or empty
 * @param reconstruction name of the reconstruction it tries, or empty
 * @param leader the leader's id, or empty
 * @param conclusion what the team concludes, or empty
 * @param log the run log in order
 * @param pieces metal, in the order of the tree
 * @param samples samples taken
 * @param analyses its analyses in full
 * @param predictions what was stated before the fire
 * @param loggers its logger files
 * @param visits the returns to what it left, in the order of their days
 */
public record TrialRecord(String id, int number, String on, String build, String reconstruction, String leader, String conclusion, List<LogData> log,
    List<PieceData> pieces, List<SampleData> samples, List<AnalysisRecord> analyses, List<PredictionData> predictions, List<LoggerData> loggers,
    List<VisitData> visits) {

  public TrialRecord {
    log = List.copyOf(log);
    pieces = List.copyOf(pieces);
    samples = List.copyOf(samples);
    analyses = List.copyOf(analyses);
    predictions = List.copyOf(predictions);
    loggers = List.copyOf(loggers);
    visits = List.copyOf(visits);
  }

  /** What was stated before the fire about one variable, and when; a version above 1 was stated after another had been locked. */
  public record PredictionData(String variable, Statement statement, String statedOn, boolean locked, String engine, int version) {
  }

  /**
   * A return to what the trial left.
   *
   * @param dueOn the day on which it was due, or empty
   * @param visitedOn the day of the visit, or empty
   * @param by the person's id, or empty
   * @param notVisitedBecause why nobody went, or empty
   * @param endedBecause why the watching ended with it, or empty
   * @param note note, or empty
   * @param values what was observed, by variable
   */
  public record VisitData(String dueOn, String visitedOn, String by, String notVisitedBecause, String endedBecause, String note, Map<String, Amount> values) {
  }

  /** A logger's file: its path in the study's folder and what its columns hold. */
  public record LoggerData(String name, String path, String channels) {
  }
}
