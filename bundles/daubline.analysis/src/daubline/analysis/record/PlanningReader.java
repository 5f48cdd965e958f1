package daubline.analysis.record;

import daubline.base.Amount;
import daubline.model.FrozenPlan;
import daubline.model.Labour;
import daubline.model.Lot;
import daubline.model.Named;
import daubline.model.PlannedRun;
import daubline.model.Provision;
import daubline.model.Series;
import daubline.model.Study;
import daubline.session.Readings;
import daubline.session.store.LotMass;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads how a series is planned. */
final class PlanningReader {

  private final Study study;

  PlanningReader(Study study) {
    this.study = study;
  }

  PlanningData of(Series series) {
    return new PlanningData(text(series.getAim()), wishes(series),
        series.getForbidden().stream().map(f -> new PlanningData.ForbiddenData(text(f.getConditions()), text(f.getBecause()))).toList(),
        series.getProvisions().stream().map(this::provision).toList(), Optional.ofNullable(series.getLabour()).map(this::labour),
        series.getPlans().stream().map(PlanningReader::plan).toList());
  }

  /** Numbers without a meaning, such as a ratio below zero, are taken as not stated. */
  private static PlanningData.WishData wishes(Series s) {
    PlanningData.WishData usual = PlanningData.WishData.NONE;
    return new PlanningData.WishData(Math.max(0, whole(s.getMostTrials())), Math.max(0, whole(s.getCentreTrials())), Math.max(0, whole(s.getRepeatTrials())),
        Math.max(1, whole(s.getBurnsPerDay())), ratio(s.getFurnaceRatio(), usual.furnaceRatio()), ratio(s.getDayRatio(), usual.dayRatio()));
  }

  private static double ratio(Double stated, double usual) {
    return stated == null || !(stated >= 0) || Double.isInfinite(stated) ? usual : stated;
  }

  private PlanningData.ProvisionData provision(Provision p) {
    double left = p.getLots().stream().mapToDouble(lot -> left(study, lot)).filter(m -> !Double.isNaN(m)).reduce(Double::sum).orElse(Double.NaN);
    return new PlanningData.ProvisionData(name(p), text(p.getUnit()), number(p.getAvailable()), number(p.getMoisture()), p.isDryBasis(),
        text(p.getLosses()), number(p.getReserve()), number(p.getOnce()), number(p.getPerTrial()), number(p.getPerFurnace()),
        number(p.getPerRefit()), p.getLots().stream().map(PlanningReader::name).toList(), left);
  }

  /** What is left of a lot, kg; NaN when it was never weighed. */
  private static double left(Study study, Lot lot) {
    return LotMass.of(study, lot).map(m -> Math.max(0, m.left().value())).orElse(Double.NaN);
  }

  private PlanningData.LabourData labour(Labour l) {
    return new PlanningData.LabourData(whole(l.getTeam()), study.getPeople().size(), text(l.getFirstDay()), text(l.getLastDay()),
        text(l.getWeekdays()), text(l.getDaysOff()), whole(l.getBuildDays()), whole(l.getBuildPeople()), whole(l.getDryDays()),
        whole(l.getBurnDays()), whole(l.getBurnPeople()), whole(l.getRefitDays()), whole(l.getRefitPeople()), whole(l.getRefitDryDays()),
        whole(l.getFirings()), number(l.getFailureShare()), number(l.getAssurance()),
        l.getPermissions().stream().map(p -> new PlanningData.TermData(name(p), text(p.getValidFrom()), text(p.getValidUntil()))).toList());
  }

  private static PlanningData.FrozenData plan(FrozenPlan p) {
    return new PlanningData.FrozenData(name(p), text(p.getAim()), p.getSeed() == null ? "" : p.getSeed().toString(), text(p.getAlgorithm()),
        text(p.getVersion()), text(p.getFrozenAt()), text(p.getEngine()), number(p.getFurnaceRatio()), number(p.getDayRatio()), text(p.getRestriction()),
        text(p.getReasons()), p.getRuns().stream().map(PlanningReader::run).toList());
  }

  private static PlanningData.PlannedData run(PlannedRun r) {
    Map<String, Amount> settings = new LinkedHashMap<>();
    r.getSettings().stream().filter(s -> s.getVariable() != null).forEach(s -> settings.put(s.getVariable(), Readings.amount(s)));
    return new PlanningData.PlannedData(whole(r.getPlace()), whole(r.getFurnace()), whole(r.getDay()), r.getTrial() == null ? "" : text(r.getTrial().getId()),
        settings, text(r.getDeviation()));
  }

  private static String name(Named object) {
    return object.getName() == null || object.getName().isBlank() ? text(object.getId()) : object.getName();
  }

  private static int whole(Integer value) {
    return value == null ? -1 : value;
  }

  private static double number(Double value) {
    return value == null ? Double.NaN : value;
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }
}
