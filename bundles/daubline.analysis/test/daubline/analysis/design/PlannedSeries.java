package daubline.analysis.design;

import daubline.analysis.Snapshots;
import daubline.analysis.StudySnapshot;
import daubline.analysis.record.SeriesData;
import daubline.base.Amount;
import daubline.base.Stage;
import daubline.base.TrialStatus;
import daubline.engine.design.Progress;
import daubline.engine.design.Strata;
import daubline.engine.design.advise.Question;
import daubline.model.ModelFactory;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Trial;
import daubline.session.Readings;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;

/** A study with one planned series, for tests. Places and people are invented. */
final class PlannedSeries implements AutoCloseable {

  final StudySession session;
  final Series series;

  PlannedSeries(Path folder, Question aim) throws Exception {
    session = StudySession.create(folder, "Brackenfold");
    series = SeriesSetup.series(session, "Spring", "what moves the bloom", aim);
  }

  void factors() {
    SeriesSetup.factor(session, series, "furnace_height", "600 to 900", true, false);
    SeriesSetup.factor(session, series, "air_flow", "400 to 800 L/min", false, false);
    SeriesSetup.factor(session, series, "slag_management", "slag tapping; slag pit", true, false);
  }

  void stock() {
    SeriesSetup.provision(session, series, "charcoal", p -> {
      p.setAvailable(400.0);
      p.setLosses("fines 8 %");
      p.setPerTrial(40.0);
    });
    SeriesSetup.provision(session, series, "clay", p -> {
      p.setAvailable(900.0);
      p.setPerFurnace(180.0);
      p.setPerRefit(15.0);
    });
    SeriesSetup.labour(session, series, l -> {
      l.setTeam(4);
      l.setFirstDay("2031-05-03");
      l.setLastDay("2031-09-28");
      l.setWeekdays("Saturday; Sonntag");
      l.setFirings(2);
    });
  }

  StudySnapshot study() {
    return Snapshots.of(session);
  }

  SeriesData data() {
    return DesignBrief.find(study(), series.getId());
  }

  DesignBrief brief() {
    return DesignBrief.of(study(), data());
  }

  Proposal propose(int trials) {
    return Proposal.of(brief(), Season.of(data()), new Proposal.Options(trials, "", Strata.USUAL, daubline.engine.design.advise.Extras.NONE, 1, List.of(), 5, 7), Progress.NONE);
  }

  /** Burns a planned trial: its date, its air as fired, and the bloom it gave. */
  static void burn(Trial trial, String on, double bloom) {
    trial.setStatus(TrialStatus.RECORDED);
    trial.setOn(on);
    value(trial, Stage.AS_FIRED, "bloom_mass", Amount.exact(bloom));
  }

  static void value(Trial trial, Stage stage, String variable, Amount amount) {
    StagedValue value = ModelFactory.eINSTANCE.createStagedValue();
    value.setStage(stage);
    value.setVariable(variable);
    Readings.put(value, amount);
    trial.getValues().add(value);
  }

  @Override
  public void close() {
    session.close();
  }
}
