package daubline.record.runday;

import daubline.base.Finding;
import daubline.base.Printed;
import daubline.model.Charge;
import daubline.model.LogEntry;
import daubline.model.Trial;
import daubline.record.Alignment;
import daubline.record.Desk;
import daubline.record.EventKind;
import daubline.record.LogTable;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The day of the fire at one trial: a key stamps the time, what is typed afterwards is read as the run log reads it. */
public final class RunDay {

  private final Desk desk;
  private final Trial trial;
  private final RunClock clock;
  private final LogTable log;
  private final RunPrompts prompts;
  private final Checklist checklist;
  private final StrokeCounter strokes = new StrokeCounter();
  private final double shift;
  private final double began;

  /** A day at a trial; one that was begun before goes on where the log ends. */
  public RunDay(Desk desk, Trial trial, RunClock clock) {
    this.desk = desk;
    this.trial = trial;
    this.clock = clock;
    this.log = new LogTable(desk, trial);
    this.prompts = new RunPrompts(trial);
    this.checklist = new Checklist(desk, trial);
    double last = trial.getLog().stream().filter(e -> e.getElapsed() != null).mapToDouble(LogEntry::getElapsed).max().orElse(Double.NaN);
    double now = byWall();
    this.shift = !Double.isNaN(last) && now < last ? last - now : 0;
    this.began = now;
  }

  /** Whether the wall clock stood before the last entry when the day went on; elapsed times then go on from that entry. */
  public boolean isShifted() {
    return shift > 0;
  }

  /** Whether the log belongs to another day than today: whoever goes on here should know. */
  public boolean isOld() {
    return began > 2 * 86_400;
  }

  private double byWall() {
    return trial.getLog().stream().filter(e -> e.getElapsed() != null && e.getAt() != null).findFirst().flatMap(e -> at(e).map(t -> clock.since(t) + e.getElapsed()))
        .orElse(Double.NaN);
  }

  /** The wall time of an entry; one without offset was written at the offset of here and now. */
  private Optional<OffsetDateTime> at(LogEntry entry) {
    try {
      String text = entry.getAt();
      return Optional.of(OffsetDateTime.parse(text.matches(".*(Z|[+-]\\d{2}:\\d{2})$") ? text : text + clock.now().getOffset()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  /** Whether the fire is lit. */
  public boolean isLit() {
    return Alignment.lit(trial).isPresent();
  }

  /** Seconds since the fire was lit; NaN before. */
  public double elapsed() {
    return isLit() ? byWall() + shift : Double.NaN;
  }

  /** The clock. */
  public RunClock clock() {
    return clock;
  }

  /** The log as a table, for corrections. */
  public LogTable log() {
    return log;
  }

  /** What is due. */
  public RunPrompts prompts() {
    return prompts;
  }

  /** The steps of the extraction. */
  public Checklist checklist() {
    return checklist;
  }

  /** The counter of strokes. */
  public StrokeCounter strokes() {
    return strokes;
  }

  /** A key was pressed: the entry that it begins, with its time; empty when the key means nothing. */
  public Optional<Draft> press(char key) {
    return EventKind.ofKey(key).map(kind -> {
      List<String> columns = columns(kind);
      return new Draft(kind, clock.now(), elapsed(), columns, columns.stream().map(c -> offered(kind, c)).toList());
    });
  }

  private static List<String> columns(EventKind kind) {
    return switch (kind) {
      case CHARGE -> List.of("ore", "charcoal", "text");
      case ORE -> List.of("ore", "text");
      case FUEL -> List.of("charcoal", "text");
      case BLAST -> List.of("blast", "text");
      case TEMPERATURE -> List.of("probes", "text");
      case LEVEL -> List.of("burden_level", "text");
      case TAP -> List.of("slag_tap_fluidity", "text");
      case LOOK -> List.of("flame_colour", "smoke", "blast_sound", "inlet_view", "text");
      case INCIDENT -> List.of("text", "lasted", "effect");
      case PHASE, RELIEF, PHOTOGRAPH, NOTE -> List.of("text");
      case EXTRACTION, MARK -> List.of();
    };
  }

  private String offered(EventKind kind, String column) {
    if (column.equals("ore") || column.equals("charcoal")) {
      return lastCharge(column).orElseGet(() -> planned(column));
    }
    if (column.equals("blast") && !Double.isNaN(strokes.perMinute())) {
      return decimal(Printed.number(strokes.perMinute(), 2));
    }
    return kind == EventKind.PHASE ? phase() : "";
  }

  private Optional<String> lastCharge(String column) {
    log.refresh();
    int place = log.columns().indexOf(column);
    for (int row = trial.getLog().size() - 1; row >= 0; row--) {
      if (trial.getLog().get(row) instanceof Charge && !log.text(row, place).isEmpty()) {
        return Optional.of(log.editText(row, place));
      }
    }
    return Optional.empty();
  }

  private String planned(String column) {
    var mass = RunTotals.planned(trial, column.equals("ore") ? "charge_mass_ore" : "charge_mass_charcoal");
    return mass.isPresent() ? decimal(Printed.number(mass.getAsDouble())) : "";
  }

  private String decimal(String number) {
    return number.replace('.', desk.decimal().get().sign());
  }

  /** The phase that comes next. */
  private String phase() {
    List<String> all = phases();
    List<String> done = trial.getLog().stream().filter(e -> "phase".equals(e.getKind())).map(LogEntry::getText).toList();
    return isLit() ? all.stream().skip(1).filter(p -> !done.contains(p)).findFirst().orElse("") : all.get(0);
  }

  /** The phases of a run in order; the first is the lighting of the fire. */
  public List<String> phases() {
    return java.util.Arrays.stream(desk.words().of("phases").split(";")).map(String::strip).toList();
  }

  /**
   * Writes an entry as one named change.
   *
   * @param texts what was typed for each column of the draft
   * @return what was not understood; nothing is written then
   */
  public Optional<Finding> write(Draft draft, List<String> texts) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < draft.columns().size(); i++) {
      cells.put(draft.columns().get(i), texts.get(i));
    }
    if (draft.kind() == EventKind.EXTRACTION) {
      checklist.next().ifPresent(step -> cells.put("text", step));
    }
    boolean lights = !isLit() && draft.kind() == EventKind.PHASE;
    double elapsed = lights ? 0 : draft.elapsed();
    return log.record(draft.kind(), draft.at(), Double.isNaN(elapsed) ? null : elapsed, cells);
  }

  /** Skips what is due, and says in the log why. */
  public void skip(Prompt prompt, String reason) {
    double usual = prompts.interval(prompt.id());
    prompts.putOff(prompt.id(), elapsed() + (Double.isNaN(usual) ? 600 : usual));
    log.record(EventKind.NOTE, clock.now(), elapsed(), Map.of("text", desk.words().of("skipped", desk.words().of("prompt." + prompt.id()), reason)));
  }

  /** The keys with their words, for the screen and for paper. */
  public static List<Map.Entry<String, String>> keys(Desk desk) {
    List<Map.Entry<String, String>> keys = new ArrayList<>();
    for (EventKind kind : EventKind.values()) {
      keys.add(Map.entry(kind == EventKind.MARK ? desk.words().of("key.space") : String.valueOf(kind.key()), desk.words().of("event." + kind.name())));
    }
    for (String other : List.of("K", "Z", "J", "Enter", "Tab", "Esc")) {
      keys.add(Map.entry(other, desk.words().of("key." + other)));
    }
    return keys;
  }
}
