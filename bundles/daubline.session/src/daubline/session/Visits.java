package daubline.session;

import daubline.model.ModelFactory;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.model.Visit;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The returns to furnaces that are left to decay: what is planned, what is due, what was missed, and where the watching ended. */
public final class Visits {

  private Visits() {
  }

  /** How a planned visit stands on a day. */
  public enum State {
    /** Somebody was there. */
    VISITED,
    /** Nobody went, and why is said. */
    NOT_VISITED,
    /** The watching ended before it. */
    ENDED,
    /** Its day has come. */
    DUE,
    /** Its day is yet to come. */
    TO_COME,
    /** It has no day that can be read. */
    WITHOUT_DAY
  }

  /** A visit of a trial with its day and how it stands. */
  public record Planned(Trial trial, Visit visit, State state) {
  }

  private static boolean says(String text) {
    return text != null && !text.isBlank();
  }

  /** A day in ISO form; a month or a year alone counts as its first day. */
  public static Optional<LocalDate> day(String text) {
    try {
      return !says(text) ? Optional.empty() : Optional.of(LocalDate.parse(text.length() == 4 ? text + "-01-01" : text.length() == 7 ? text + "-01" : text.substring(0, Math.min(10, text.length()))));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** How a visit stands on a day. */
  public static State state(Trial trial, Visit visit, LocalDate on) {
    if (says(visit.getVisitedOn())) {
      return State.VISITED;
    }
    if (says(visit.getNotVisitedBecause())) {
      return State.NOT_VISITED;
    }
    if (ended(trial).filter(last -> trial.getVisits().indexOf(last) < trial.getVisits().indexOf(visit)).isPresent() || says(visit.getEndedBecause())) {
      return State.ENDED;
    }
    return day(visit.getDueOn()).map(due -> due.isAfter(on) ? State.TO_COME : State.DUE).orElse(State.WITHOUT_DAY);
  }

  /** The visit with which the watching of a furnace ended; empty while it goes on. */
  public static Optional<Visit> ended(Trial trial) {
    return trial.getVisits().stream().filter(v -> says(v.getEndedBecause())).findFirst();
  }

  /** Every visit of a study on a day, by the day on which it is due. */
  public static List<Planned> of(Study study, LocalDate on) {
    List<Planned> all = new ArrayList<>();
    study.getSeries().forEach(s -> s.getTrials().forEach(t -> t.getVisits().forEach(v -> all.add(new Planned(t, v, state(t, v, on))))));
    all.sort(Comparator.comparing(p -> day(p.visit().getDueOn()).or(() -> day(p.visit().getVisitedOn())).orElse(LocalDate.MAX)));
    return all;
  }

  /**
   * Plans visits some months after a day; for use inside a change. What is planned for the same day already is not planned twice.
   *
   * @param months whole months after the day, such as 1, 3, 6, 12
   * @return the visits that are new
   */
  public static List<Visit> plan(Trial trial, LocalDate from, List<Integer> months) {
    List<Visit> made = new ArrayList<>();
    for (int after : months) {
      String due = from.plusMonths(after).toString();
      if (trial.getVisits().stream().noneMatch(v -> due.equals(v.getDueOn()))) {
        Visit visit = ModelFactory.eINSTANCE.createVisit();
        visit.setDueOn(due);
        trial.getVisits().add(visit);
        made.add(visit);
      }
    }
    return made;
  }

  /** The day on which the next visit is proposed: as long after the last as that was after the one before; empty without two. */
  public static Optional<LocalDate> next(Trial trial) {
    List<LocalDate> days = trial.getVisits().stream().flatMap(v -> day(v.getDueOn()).stream()).toList();
    int last = days.size() - 1;
    return last < 1 ? Optional.empty() : Optional.of(days.get(last).plusDays(java.time.temporal.ChronoUnit.DAYS.between(days.get(last - 1), days.get(last))));
  }
}
