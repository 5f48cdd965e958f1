package daubline.session.store;

import daubline.base.Amount;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.Lot;
import daubline.model.Named;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Where a lot came from, back to its deliveries, and where it went, on to the trials that charged it. */
public final class LotTrace {

  private LotTrace() {
  }

  /** How a thing stands to the lot that is traced. */
  public enum Kind {
    /** What it was made of. */
    ORIGIN,
    /** The lot itself. */
    LOT,
    /** What was made of it. */
    MADE,
    /** A trial that charged it, or is to. */
    TRIAL
  }

  /**
   * One line of a trace.
   *
   * @param depth how many steps away it is
   * @param thing a lot or a trial
   * @param mass what was charged, or what the lot got; empty when it was not weighed
   * @param on the day, as written; empty when not recorded
   */
  public record Line(Kind kind, int depth, Named thing, Optional<Amount> mass, String on) {
  }

  /** The trace of a lot: its origins, the lot, then each trial and lot that it went into. A lot that leads back to itself stands once. */
  public static List<Line> of(Study study, Lot lot) {
    List<Line> lines = new ArrayList<>();
    origins(lot, 1, new HashSet<>(Set.of(lot)), lines);
    lines.add(new Line(Kind.LOT, 0, lot, LotMass.received(lot), day(lot)));
    went(study, lot, 1, new HashSet<>(Set.of(lot)), lines);
    return List.copyOf(lines);
  }

  /** The lots that somebody delivered or dug, from which a lot comes; the lot itself when it was made of none. */
  public static List<Lot> deliveries(Lot lot) {
    List<Line> lines = new ArrayList<>();
    origins(lot, 1, new HashSet<>(Set.of(lot)), lines);
    return Stream.concat(Stream.of(lot), lines.stream().map(l -> (Lot) l.thing())).filter(l -> l.getFrom().isEmpty() || l.getFrom().equals(List.of(l))).distinct().toList();
  }

  private static void origins(Lot lot, int depth, Set<Lot> seen, List<Line> lines) {
    for (Lot from : lot.getFrom()) {
      if (seen.add(from)) {
        lines.add(new Line(Kind.ORIGIN, depth, from, LotMass.received(from), day(from)));
        origins(from, depth + 1, seen, lines);
      }
    }
  }

  private static void went(Study study, Lot lot, int depth, Set<Lot> seen, List<Line> lines) {
    study.getSeries().stream().flatMap(s -> s.getTrials().stream()).forEach(trial -> {
      List<Amount> masses = charges(trial).filter(i -> i.getLot() == lot).map(Readings::amount).filter(Amount::isNumber).toList();
      if (!masses.isEmpty() || trial.getLots().contains(lot)) {
        lines.add(new Line(Kind.TRIAL, depth, trial, masses.isEmpty() ? Optional.empty() : Optional.of(LotMass.sum(masses)), text(trial.getOn())));
      }
    });
    for (Lot made : LotMass.madeOf(study, lot)) {
      if (seen.add(made)) {
        lines.add(new Line(Kind.MADE, depth, made, LotMass.received(made), day(made)));
        went(study, made, depth + 1, seen, lines);
      }
    }
  }

  private static String day(Lot lot) {
    return lot.getDeliveredOn() != null ? lot.getDeliveredOn() : LotStep.first(lot).map(t -> text(t.getOn())).orElse("");
  }

  private static String text(String text) {
    return text == null ? "" : text;
  }

  static Stream<ChargeItem> charges(Study study) {
    return study.getSeries().stream().flatMap(s -> s.getTrials().stream()).flatMap(LotTrace::charges);
  }

  private static Stream<ChargeItem> charges(Trial trial) {
    return trial.getLog().stream().filter(Charge.class::isInstance).map(Charge.class::cast).flatMap(c -> c.getItems().stream());
  }
}
