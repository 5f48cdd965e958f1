package daubline.session.team;

import daubline.base.Finding;
import daubline.model.Hazard;
import daubline.model.Permission;
import daubline.model.Series;
import daubline.model.Study;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands against calling a trial ready, and what of risks and permissions has run out. Days are ISO texts, compared as such. */
public final class Readiness {

  private Readiness() {
  }

  /**
   * What stands against calling a trial ready.
   *
   * @param today the day that counts for a trial without a day of its own; empty when such a trial is not to be judged by its day
   */
  public static List<Finding> obstacles(Study study, Trial trial, String today) {
    List<Finding> findings = new ArrayList<>();
    if (trial.eContainer() instanceof Series series && text(series.getStopCriteria()).isEmpty()) {
      findings.add(Finding.error("trial.stop", "", "no stop criteria were agreed", "write the stop criteria of the series before the fire"));
    }
    String day = text(trial.getOn()).isEmpty() ? text(today) : text(trial.getOn());
    List<Permission> needed = needed(study, trial);
    needed.stream().filter(p -> needed.stream().noneMatch(other -> renews(other, p) && of(other, day).isEmpty())).forEach(p -> of(p, day).ifPresent(findings::add));
    return findings;
  }

  /** The permissions that a trial needs: those that the plan of its series names, otherwise all of the study. */
  private static List<Permission> needed(Study study, Trial trial) {
    boolean named = trial.eContainer() instanceof Series s && s.getLabour() != null && !s.getLabour().getPermissions().isEmpty();
    return named ? ((Series) trial.eContainer()).getLabour().getPermissions() : study.getPermissions();
  }

  /** Whether a permission is the same one for another term. */
  private static boolean renews(Permission other, Permission permission) {
    return other != permission && !text(permission.getName()).isEmpty() && text(other.getName()).equalsIgnoreCase(text(permission.getName()));
  }

  /** Whether a trial needs a permission and lies outside its term, with no other of the same name that covers it. */
  public static boolean isUncovered(Study study, Trial trial, Permission permission) {
    return trial.getOn() != null && needed(study, trial).contains(permission) && of(permission, trial.getOn()).isPresent()
        && needed(study, trial).stream().noneMatch(other -> renews(other, permission) && of(other, trial.getOn()).isEmpty());
  }

  /** Whether somebody said why a trial is ready all the same. */
  public static boolean isOverridden(Trial trial) {
    return !text(trial.getReadyBecause()).isEmpty();
  }

  /** What is wrong with a permission on a day; days are compared as far as they are written. */
  public static Optional<Finding> of(Permission permission, String day) {
    String name = name(permission);
    Optional<Finding> ended = ended(permission, day);
    if (ended.isPresent()) {
      return ended;
    }
    boolean early = !day.isEmpty() && !text(permission.getValidFrom()).isEmpty() && isBefore(day, permission.getValidFrom());
    return early ? Optional.of(Finding.error("trial.permission", "", name + " holds from " + permission.getValidFrom() + " only, after " + day,
        "ask for an earlier one, or choose another day; local rules decide")) : Optional.empty();
  }

  /** Whether a permission has ended by a day; one that does not hold yet is no fault. */
  public static Optional<Finding> ended(Permission permission, String day) {
    return !day.isEmpty() && isBefore(permission.getValidUntil(), day) ? Optional.of(Finding.error("trial.permission", "", name(permission) + " ends on "
        + permission.getValidUntil() + ", before " + day, "renew it, or choose another day; local rules decide")) : Optional.empty();
  }

  /** Whether the term of a permission ends before it begins. */
  public static Optional<Finding> turned(Permission permission) {
    return isBefore(permission.getValidUntil(), text(permission.getValidFrom()))
        ? Optional.of(Finding.warning("permission.term", "", name(permission) + " ends before it begins", "correct one of the days")) : Optional.empty();
  }

  private static String name(Permission permission) {
    return "the permission “" + (text(permission.getName()).isEmpty() ? text(permission.getReference()) : permission.getName()) + "”";
  }

  /** What is wrong with a line of the risk assessment on a day: no control and no reason, no owner, or a review that is due. */
  public static Optional<Finding> of(Hazard hazard, String day) {
    boolean applies = text(hazard.getNotApplicableBecause()).isEmpty();
    if (applies && text(hazard.getControl()).isEmpty()) {
      return Optional.of(Finding.warning("hazard.control", "", name(hazard) + " has no control", "say what is done against it, or why it does not apply here"));
    }
    if (applies && text(hazard.getOwner()).isEmpty()) {
      return Optional.of(Finding.warning("hazard.owner", "", "nobody answers for the control of " + name(hazard), "name an owner"));
    }
    return !day.isEmpty() && isBefore(hazard.getReviewOn(), day) ? Optional.of(Finding.warning("hazard.review", "", "the review of " + name(hazard) + " was due on "
        + hazard.getReviewOn() + ", before " + day, "review it with those concerned and enter the next day")) : Optional.empty();
  }

  private static String name(Hazard hazard) {
    return "“" + text(hazard.getName()) + "”";
  }

  /** Whether a day is before another, as far as both are written: 2031-08 is not before 2031-08-16. */
  private static boolean isBefore(String day, String other) {
    int length = Math.min(text(day).length(), text(other).length());
    return length > 0 && text(day).substring(0, length).compareTo(text(other).substring(0, length)) < 0;
  }

  private static String text(String text) {
    return text == null ? "" : text.strip();
  }
}
