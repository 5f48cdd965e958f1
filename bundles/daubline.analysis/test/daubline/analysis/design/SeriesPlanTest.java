package daubline.analysis.design;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import daubline.analysis.Snapshots;
import daubline.base.Amount;
import daubline.base.Stage;
import daubline.engine.design.Design;
import daubline.engine.design.advise.Question;
import daubline.model.FrozenPlan;
import daubline.model.Trial;
import daubline.session.StudySession;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From an empty series to a frozen plan, and what was done otherwise. */
class SeriesPlanTest {

  @TempDir
  Path folder;

  @Test
  void stockAndSeasonSayHowManyTrialsAndWhatBinds() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER)) {
      planned.stock();
      Season season = Season.of(planned.data());
      // charcoal: 400 · 0.92 / 40 = 9.2; clay for 8 trials: 4 · 180 + 4 · 15 = 780, for 9: 5 · 180 + 4 · 15 = 960 > 900
      assertEquals(8, season.capacity().trials());
      assertEquals(List.of("clay"), season.capacity().binding().stream().map(l -> l.name()).toList());
      assertEquals("charcoal", season.capacity().next().orElseThrow().name());
      assertTrue(season.calendar().orElseThrow().isOpen(0), "3 May 2031 is a Saturday");
      assertFalse(season.calendar().orElseThrow().isOpen(2), "a Monday");
    }
  }

  @Test
  void permissionsShortenTheSeason() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER)) {
      planned.stock();
      planned.session.edit("permit", () -> {
        var permission = daubline.model.ModelFactory.eINSTANCE.createPermission();
        permission.setName("fire notice");
        permission.setValidUntil("2031-06-15");
        planned.session.study().getPermissions().add(permission);
        planned.series.getLabour().getPermissions().add(permission);
      });
      Season season = Season.of(planned.data());
      assertEquals("fire notice", season.capacity().binding().get(0).name());
      int last = season.calendar().orElseThrow().day(java.time.LocalDate.parse("2031-06-15"));
      assertTrue(season.timetable(new int[] {0, 1}).days() > 0);
      assertTrue(season.capacity().trials() < 8 && season.capacity().trials() > 0);
      assertTrue(season.budget(20).splits().stream().allMatch(s -> s.trials() <= season.capacity().trials()), "no split burns beyond day " + last);
    }
  }

  @Test
  void aPlanIsFrozenWithItsSeedOrderAndSettingsAndReadAgain() throws Exception {
    Path at = folder.resolve("s");
    try (PlannedSeries planned = new PlannedSeries(at, Question.WHICH_MATTER)) {
      planned.factors();
      planned.stock();
      Proposal proposal = planned.propose(0);
      List<PlanFreezer.Stated> stated = List.of(new PlanFreezer.Stated(0, "bloom_mass", Amount.range(2, 4), "a guess", ""));
      FrozenPlan plan = PlanFreezer.freeze(planned.session, planned.series, proposal, "2031-04-01T09:00:00+02:00", stated);
      assertEquals(8, plan.getRuns().size());
      assertEquals(proposal.plan().design().furnaceCount(), planned.session.study().getBuilds().size());
      Trial first = planned.series.getTrials().get(0);
      assertTrue(first.getPredictions().get(0).isLocked());
      assertEquals("2031-04-01T09:00:00+02:00", first.getPredictions().get(0).getStatedOn());
      assertTrue(first.getBuild().getValues().stream().anyMatch(v -> v.getVariable().equals("furnace_height") && v.getStage() == Stage.PLANNED), "set with the furnace");
      assertTrue(first.getValues().stream().anyMatch(v -> v.getVariable().equals("air_flow") && v.getUnit().equals("L/min")), "set with the trial");
      assertTrue(PlanFreezer.refusal(planned.series).isPresent(), "trials are left to burn");
      planned.session.save();
    }
    try (StudySession again = StudySession.read(at)) {
      var study = Snapshots.of(again);
      DesignBrief brief = DesignBrief.of(study, DesignBrief.find(study, ""));
      Design design = FrozenDesign.of(study, brief).orElseThrow();
      assertEquals(8, design.size());
      assertEquals("7", FrozenDesign.last(brief).orElseThrow().seed());
      assertEquals(0, Deviation.of(study, brief.series()).size());
      List<RunSheet> sheets = RunSheets.of(again, study, brief.series(), false);
      assertEquals(8, sheets.size());
      assertEquals(3, sheets.get(0).settings().size());
      assertTrue(sheets.get(0).plan().contains("seed 7"), sheets.get(0).plan());
    }
  }

  @Test
  void everyTrialOfANewSeriesIsPredictedAndWhatIsAssumedIsSaid() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER)) {
      planned.factors();
      planned.stock();
      Proposal proposal = planned.propose(0);
      Foreseen foreseen = Foreseen.of(planned.session, planned.series, proposal.brief().factors());
      assertTrue(foreseen.rule().isEmpty(), "nothing is forbidden on an assumption");
      Foreseen.Outlook outlook = foreseen.outlook(proposal.plan().design(), 20, 7);
      assertEquals(java.util.stream.IntStream.range(0, 8).boxed().toList(), outlook.stated().stream().map(PlanFreezer.Stated::place).distinct().toList());
      String said = outlook.findings().toString();
      // the stock gives 40 kg a trial; ore by the usual ratio of 0.9: 36 kg within a factor of 1.5
      assertTrue(said.contains("Charcoal burnt 38 to 42 kg, what the stock “charcoal” gives a trial") && said.contains("24 to 54 kg, a usual value (common practice, no source)"), said);
      PlanFreezer.freeze(planned.session, planned.series, proposal, "now", outlook.stated());
      assertTrue(planned.series.getTrials().stream().flatMap(t -> t.getPredictions().stream()).allMatch(p -> p.getNote().startsWith("Assumed: ") && "now".equals(p.getStatedOn())));
      assertTrue(planned.series.getTrials().stream().noneMatch(t -> t.getPredictions().isEmpty()));
    }
  }

  @Test
  void whatTrialsTookIsAssumedBeforeWhatIsUsual() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER)) {
      planned.factors();
      PlanFreezer.freeze(planned.session, planned.series, planned.propose(6), "now", List.of());
      List<Trial> trials = planned.series.getTrials();
      double[] diameters = {0.28, 0.29, 0.30};
      planned.session.edit("burn", () -> {
        for (int i = 0; i < diameters.length; i++) {
          PlannedSeries.burn(trials.get(i), "2031-06-0" + (i + 1), 3);
          PlannedSeries.value(trials.get(i), Stage.AS_BUILT, "base_internal_diameter", Amount.exact(diameters[i]));
        }
      });
      var other = SeriesSetup.series(planned.session, "Autumn", "again", Question.WHICH_MATTER);
      SeriesSetup.factor(planned.session, other, "air_flow", "400 to 800 L/min", false, false);
      Proposal proposal = Proposal.of(DesignBrief.of(planned.study(), DesignBrief.find(planned.study(), other.getId())), Season.of(DesignBrief.find(planned.study(), other.getId())),
          new Proposal.Options(4, "", daubline.engine.design.Strata.USUAL, daubline.engine.design.advise.Extras.NONE, 1, List.of(), 5, 7), daubline.engine.design.Progress.NONE);
      String said = Foreseen.of(planned.session, other, proposal.brief().factors()).outlook(proposal.plan().design(), 20, 7).findings().toString();
      // the middle of three is 290 mm; the quartiles 285 and 295 lie within 3 % of it
      assertTrue(said.contains("281 to 299 mm, the middle of 3 trials burnt"), said);
    }
  }

  @Test
  void freezingIsOneChangeAndAPlanNobodyBurntCanBeWithdrawn() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER)) {
      planned.factors();
      PlanFreezer.freeze(planned.session, planned.series, planned.propose(6), "now", List.of());
      planned.session.undo();
      assertEquals(0, planned.series.getTrials().size());
      assertEquals(0, planned.session.study().getBuilds().size());
      planned.session.redo();
      assertTrue(PlanFreezer.isReplaceable(planned.series));
      PlanFreezer.withdraw(planned.session, planned.series);
      assertEquals(0, planned.series.getTrials().size());
      PlanFreezer.freeze(planned.session, planned.series, planned.propose(6), "now", List.of());
      planned.session.edit("burn", () -> PlannedSeries.burn(planned.series.getTrials().get(0), "2031-05-24", 3));
      assertFalse(PlanFreezer.isReplaceable(planned.series));
      assertThrows(IllegalArgumentException.class, () -> PlanFreezer.withdraw(planned.session, planned.series));
    }
  }

  @Test
  void whatWasDoneOtherwiseStandsBesideThePlan() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.WHICH_MATTER)) {
      planned.factors();
      PlanFreezer.freeze(planned.session, planned.series, planned.propose(6), "now", List.of());
      List<Trial> trials = planned.series.getTrials();
      planned.session.edit("burn", () -> {
        PlannedSeries.burn(trials.get(0), "2031-06-07", 3);
        PlannedSeries.value(trials.get(0), Stage.AS_FIRED, "air_flow", Amount.exact(0.005));
        PlannedSeries.burn(trials.get(1), "2031-05-31", 2);
      });
      SeriesSetup.deviation(planned.session, planned.series, trials.get(0).getName(), "the old bellows split");
      List<Deviation> found = Deviation.of(planned.study(), planned.data());
      assertEquals(List.of("Air flow", "order"), found.stream().map(Deviation::what).toList());
      assertEquals("300\u00A0L/min as fired", found.get(0).done());
      assertEquals("the old bellows split", found.get(0).because());
    }
  }

  @Test
  void aQuestionTooLargeIsAskedSmallerAndSaid() throws Exception {
    try (PlannedSeries planned = new PlannedSeries(folder.resolve("s"), Question.BEST_SETTING)) {
      planned.factors();
      Proposal proposal = planned.propose(6);
      assertTrue(proposal.findings().stream().anyMatch(f -> f.code().equals("design.lesser-question")));
      assertEquals(6, proposal.plan().design().size());
    }
  }
}
