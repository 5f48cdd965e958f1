package daubline.analysis.record;

import daubline.engine.inference.Statement;
import java.util.List;

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
 */
public record TrialRecord(String id, int number, String on, String build, String reconstruction, String leader, String conclusion, List<LogData> log,
    List<PieceData> pieces, List<SampleData> samples, List<AnalysisRecord> analyses, List<PredictionData> predictions, List<LoggerData> loggers) {

  public TrialRecord {
    log = List.copyOf(log);
    pieces = List.copyOf(pieces);
    samples = List.copyOf(samples);
    analyses = List.copyOf(analyses);
    predictions = List.copyOf(predictions);
    loggers = List.copyOf(loggers);
  }

  /** What was stated before the fire about one variable, and when; a version above 1 was stated after another had been locked. */
  public record PredictionData(String variable, Statement statement, String statedOn, boolean locked, String engine, int version) {
  }

  /** A logger's file: its path in the study's folder and what its columns hold. */
  public record LoggerData(String name, String path, String channels) {
  }
}
