package daubline.session.team;

import daubline.base.Finding;
import daubline.base.TrialStatus;
import daubline.model.Person;
import daubline.model.RoleAssignment;
import daubline.model.Series;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Roles and reliefs of a series. Times are of the clock ("09:30") or with their day ("2031-08-16T09:30"); a relief that
 * ends before it begins goes on past midnight; a day written on one side counts for both; without times a role is held all day.
 */
public final class Roles {

  /** Roles of the trade, as studies keep them: common practice, no source. */
  public static final List<String> KNOWN = List.of("leader", "charger", "bellows", "tapper", "recorder", "safety watch", "fire watch", "public speaker");

  /** Roles without which nobody should light a fire: common practice, no source. */
  public static final List<String> NEEDED = List.of("leader", "charger", "recorder", "safety watch");

  private static final LocalDate ANY_DAY = LocalDate.EPOCH;

  private Roles() {
  }

  /** The time somebody holds a role; open ends are all day. */
  private record Slot(RoleAssignment role, LocalDateTime from, LocalDateTime until) {

    boolean meets(Slot other) {
      return from.isBefore(other.until) && other.from.isBefore(until);
    }
  }

  /** Whether a text is a time of the clock, with or without its day. */
  public static boolean isTime(String text) {
    return time(text).isPresent();
  }

  private static Optional<LocalDateTime> time(String text) {
    try {
      return text == null || text.isBlank() ? Optional.empty()
          : Optional.of(text.contains("T") ? LocalDateTime.parse(text.strip()) : ANY_DAY.atTime(LocalTime.parse(text.strip())));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** What is wrong with one line: nobody in it, no role, or times that cannot be. */
  public static Optional<Finding> of(RoleAssignment role) {
    if (text(role.getRole()).isEmpty()) {
      return Optional.of(Finding.warning("role.name", "", "somebody is planned without a role", "say what he or she does"));
    }
    if (role.getPerson() == null) {
      return Optional.of(Finding.warning("role.empty", "", "nobody is planned as " + role.getRole() + times(role), "name somebody, or take the line out"));
    }
    Slot slot = slot(role);
    if (slot.until.isBefore(slot.from)) {
      return Optional.of(Finding.warning("role.time", "", role.getRole() + times(role) + " ends before it begins", "correct one of the days"));
    }
    boolean unread = !text(role.getFrom()).isEmpty() && !isTime(role.getFrom()) || !text(role.getUntil()).isEmpty() && !isTime(role.getUntil());
    boolean nothing = slot.from.equals(slot.until);
    return unread || nothing ? Optional.of(Finding.warning("role.time", "", role.getRole() + times(role) + " is no stretch of time", "write times of the clock as 09:30, from and until")) : Optional.empty();
  }

  /** Whether the person of a line is planned elsewhere at the same time. */
  public static Optional<Finding> overlap(Series series, RoleAssignment role) {
    Slot own = slot(role);
    return role.getPerson() == null || of(role).isPresent() ? Optional.empty() : series.getRoles().stream().filter(r -> r != role && of(r).isEmpty())
        .filter(r -> r.getPerson() == role.getPerson() && slot(r).meets(own)).findFirst().map(r -> overlap(r, role));
  }

  private static Finding overlap(RoleAssignment a, RoleAssignment b) {
    return Finding.warning("role.overlap", "", name(b.getPerson()) + " is planned as " + a.getRole() + times(a) + " and as " + b.getRole() + times(b) + " at once",
        "name somebody else for one of them, or part their times");
  }

  /** What is wrong with the plan of a series: people in two places, roles without a relief, roles that are needed and missing. */
  public static List<Finding> of(Series series) {
    List<Finding> findings = new ArrayList<>();
    List<Slot> slots = series.getRoles().stream().filter(r -> of(r).isEmpty()).map(Roles::slot).toList();
    for (int i = 0; i < slots.size(); i++) {
      for (Slot other : slots.subList(0, i)) {
        Slot slot = slots.get(i);
        if (slot.role.getPerson() == other.role.getPerson() && slot.meets(other)) {
          findings.add(overlap(other.role, slot.role));
        }
      }
    }
    byRole(slots).values().forEach(of -> gaps(of, findings));
    boolean asked = !series.getRoles().isEmpty() || series.getTrials().stream().anyMatch(t -> t.getStatus() == TrialStatus.READY);
    NEEDED.stream().filter(n -> asked && slots.stream().noneMatch(s -> is(s.role, n))).forEach(n -> findings.add(Finding.warning("role.missing", "",
        "nobody is planned as " + n, "name somebody for it; a role may be held beside another only when both can be done at once")));
    return findings;
  }

  private static Map<String, List<Slot>> byRole(List<Slot> slots) {
    Map<String, List<Slot>> all = new LinkedHashMap<>();
    slots.stream().filter(s -> !s.from.equals(LocalDateTime.MIN)).sorted(java.util.Comparator.comparing(Slot::from))
        .forEach(s -> all.computeIfAbsent(text(s.role.getRole()).toLowerCase(Locale.ROOT), r -> new ArrayList<>()).add(s));
    return all;
  }

  /** Between the first and the last relief of a day somebody holds the role all the time; a longer pause than half a day is another day. */
  private static void gaps(List<Slot> slots, List<Finding> findings) {
    LocalDateTime until = slots.get(0).until;
    for (Slot slot : slots) {
      Duration pause = Duration.between(until.isBefore(slot.from) ? until : slot.from, slot.from);
      if (!pause.isZero() && pause.toHours() < 12) {
        findings.add(Finding.warning("role.gap", "", "nobody is planned as " + slot.role.getRole() + " from " + until.toLocalTime() + " to " + slot.from.toLocalTime(),
            "let one relief last until the next begins"));
      }
      until = slot.until.isAfter(until) ? slot.until : until;
    }
  }

  private static Slot slot(RoleAssignment role) {
    LocalDateTime from = time(role.getFrom()).orElse(LocalDateTime.MIN);
    LocalDateTime until = time(role.getUntil()).orElse(LocalDateTime.MAX);
    boolean open = from.equals(LocalDateTime.MIN) || until.equals(LocalDateTime.MAX);
    if (open || isDated(from) && isDated(until)) {
      return new Slot(role, from, until);
    }
    if (isDated(until)) {
      LocalDateTime on = until.toLocalDate().atTime(from.toLocalTime());
      return new Slot(role, on.isAfter(until) ? on.minusDays(1) : on, until);
    }
    LocalDateTime on = from.toLocalDate().atTime(until.toLocalTime());
    return new Slot(role, from, on.isBefore(from) ? on.plusDays(1) : on);
  }

  /** Whether a time was written with its day. */
  private static boolean isDated(LocalDateTime time) {
    return !time.toLocalDate().equals(ANY_DAY);
  }

  private static boolean is(RoleAssignment role, String name) {
    return text(role.getRole()).equalsIgnoreCase(name);
  }

  private static String times(RoleAssignment role) {
    String from = text(role.getFrom());
    String until = text(role.getUntil());
    return from.isEmpty() && until.isEmpty() ? "" : " " + from + "–" + until;
  }

  private static String name(Person person) {
    return text(person.getName()).isEmpty() ? "the same person" : person.getName();
  }

  private static String text(String text) {
    return text == null ? "" : text.strip();
  }
}
