package daubline.cli;

import daubline.analysis.Snapshots;
import daubline.analysis.StudySnapshot;
import daubline.analysis.design.DesignBrief;
import daubline.analysis.design.SeriesSetup;
import daubline.analysis.record.SeriesData;
import daubline.model.Series;
import daubline.session.StudyException;
import daubline.session.StudySession;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** The series of a study that a command works on. */
final class SeriesArgument {

  @Mixin
  private StudyArgument study;

  @Parameters(index = "1", paramLabel = "SERIES", arity = "0..1", defaultValue = "",
      description = "name or id of the series; may be left out when the study has one")
  private String series;

  /** What to do with a series. */
  @FunctionalInterface
  interface Work {

    /** Does it; the answer is the exit code. */
    int with(StudySession session, StudySnapshot snapshot, SeriesData series) throws Exception;
  }

  /** What to change in a series. */
  @FunctionalInterface
  interface Edit {

    /** Changes it. */
    void with(StudySession session, Series series, StudySnapshot snapshot) throws Exception;
  }

  /** Reads a study and works on one of its series. */
  int read(Work work) throws Exception {
    try (StudySession session = study.read()) {
      StudySnapshot snapshot = Snapshots.of(session);
      return work.with(session, snapshot, DesignBrief.find(snapshot, series));
    }
  }

  /** Opens a study, changes one of its series and saves it; nothing is saved when the change fails. */
  int change(Edit edit) throws Exception {
    try (StudySession session = study.open()) {
      StudySnapshot snapshot = Snapshots.of(session);
      try {
        edit.with(session, SeriesSetup.find(session, DesignBrief.find(snapshot, series).id()), snapshot);
        session.save();
      } catch (RuntimeException | StudyException e) {
        session.discardChanges();
        throw e;
      }
      return Out.DONE;
    }
  }
}
