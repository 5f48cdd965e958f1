package daubline.analysis.record;

import daubline.base.Amount;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a series is planned. Numbers that were not stated are NaN, whole ones negative, dates empty.
 *
 * @param aim what the series is burnt for, as the model keeps it
 * @param wishes what a plan is asked for
 * @param forbidden combinations that must not be burnt
 * @param provisions what trials use up
 * @param labour hands, days and how long things take; empty when nothing was stated
 * @param plans the frozen plans, the earliest first
 */
public record PlanningData(String aim, WishData wishes, List<ForbiddenData> forbidden, List<ProvisionData> provisions, Optional<LabourData> labour,
    List<FrozenData> plans) {

  /** Nothing planned. */
  public static final PlanningData NONE = new PlanningData("", WishData.NONE, List.of(), List.of(), Optional.empty(), List.of());

  public PlanningData {
    forbidden = List.copyOf(forbidden);
    provisions = List.copyOf(provisions);
    plans = List.copyOf(plans);
  }

  /**
   * What a plan is asked for beside its factors; what was not stated is usual.
   *
   * @param trials the most trials; 0 for as many as stock and season assure
   * @param centres centre trials at least
   * @param repeats trials burnt once more
   * @param burnsPerDay how many trials may share a day, 1 or more
   * @param furnaceRatio the variance between furnaces as a multiple of that between trials
   * @param dayRatio that between days
   */
  public record WishData(int trials, int centres, int repeats, int burnsPerDay, double furnaceRatio, double dayRatio) {

    /** Nothing asked for. */
    public static final WishData NONE = new WishData(0, 0, 0, 1, 1, 0);
  }

  /** A combination that must not be burnt, as typed, and why. */
  public record ForbiddenData(String conditions, String because) {
  }

  /**
   * Something that trials use up.
   *
   * @param available what there is as delivered, in the unit
   * @param losses what is lost on the way, as typed, such as "roasting 14 %; sieving 8 %"
   * @param lots names of the lots it stands in
   * @param inLots what is left in these lots by their treatments and charges, kg; NaN when no lot was weighed
   */
  public record ProvisionData(String name, String unit, double available, double moisture, boolean dryBasis, String losses, double reserve,
      double once, double perTrial, double perFurnace, double perRefit, List<String> lots, double inLots) {

    public ProvisionData {
      lots = List.copyOf(lots);
    }
  }

  /**
   * Hands and days.
   *
   * @param weekdays the days of the week on which work is done, as typed; empty for all
   * @param daysOff dates without work, as typed
   * @param people how many people the study knows
   * @param permissions the permissions needed, with their terms
   */
  public record LabourData(int team, int people, String firstDay, String lastDay, String weekdays, String daysOff, int buildDays, int buildPeople,
      int dryDays, int burnDays, int burnPeople, int refitDays, int refitPeople, int refitDryDays, int firings, double failureShare,
      double assurance, List<TermData> permissions) {

    public LabourData {
      permissions = List.copyOf(permissions);
    }
  }

  /** A permission with its term. */
  public record TermData(String name, String from, String until) {
  }

  /**
   * A frozen plan.
   *
   * @param furnaceRatio the variance between furnaces as a multiple of that between trials that was planned with
   * @param dayRatio that between days
   */
  public record FrozenData(String name, String aim, String seed, String algorithm, String version, String frozenAt, String engine,
      double furnaceRatio, double dayRatio, String restriction, String reasons, List<PlannedData> runs) {

    public FrozenData {
      runs = List.copyOf(runs);
    }
  }

  /**
   * One trial of a frozen plan.
   *
   * @param place its place in the order, from 1
   * @param furnace its furnace, from 1
   * @param day its day of burning, from 1; trials that share a day have the same; 0 or less when it is not known
   * @param trial id of the trial, empty when it was deleted
   * @param settings by variable
   * @param deviation what the team says about doing otherwise, or empty
   */
  public record PlannedData(int place, int furnace, int day, String trial, Map<String, Amount> settings, String deviation) {

    public PlannedData {
      settings = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(settings));
    }
  }
}
