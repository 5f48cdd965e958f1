package daubline.intake;

import daubline.base.Amount;
import daubline.base.Quantity;
import daubline.base.SensorState;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.intake.FormColumn.Content;
import daubline.model.Charge;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Reading;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The form of run logs: one entry a row; a charge with the masses of its materials. */
final class LogForm implements Form {

  @Override
  public Target target() {
    return Target.LOG;
  }

  @Override
  public String explanation() {
    return "One row an entry of a run log. Charges have the kind “charge” and the mass of each material; states of a "
        + "sensor (open, saturated, removed) are "
        + "written in place of a number. A row is recognised again by its id, or by trial, time, kind and, where it holds "
        + "no values, text.";
  }

  @Override
  public List<FormColumn> columns(Variables variables) {
    List<FormColumn> columns = new ArrayList<>(List.of(Shared.id(),
        FormColumn.text("series", "The series of the trial; only needed when two series have trials of the same name.",
        "Season 2031"),
        FormColumn.text("trial", "The trial, by name or id.", "T4").must(),
        FormColumn.of("time", Content.TIME, "Time of day (the trial's date is added), or date and time.", "14:35"),
        FormColumn.plain("elapsed", Quantity.TIME, "min", 0, 30 * 86400.0,
        "Time since the fire was lit, when no clock was read or beside it.", "215"),
        FormColumn.text("kind", "What it is: charge, phase, temperature, blast, tap, look, incident, relief, photo, note.",
        "charge").must(),
        FormColumn.text("text", "What was seen or done.", "Runny slag, yellow.")));
    columns.addAll(ChargeColumns.columns(variables));
    columns.addAll(List.of(
        FormColumn.text("by", "Who wrote it down.", "J. Ashe"),
        FormColumn.of("about", Content.YES_NO, "Whether the time is only about.", "no"),
        FormColumn.of("late", Content.YES_NO, "Whether it was written down later.", "no"),
        FormColumn.of("inferred", Content.YES_NO, "Whether it was concluded afterwards, not seen.", "no"),
        FormColumn.text("original", "What was written first, when the entry was corrected.", "14:25, 2 scoops"),
        FormColumn.plain("duration", Quantity.TIME, "min", 0, 30 * 86400.0, "How long an incident lasted.", "12"),
        FormColumn.text("effect", "What an incident does to comparability.", "blast at half for 12 min")));
    variables.at(Variable.Place.LOG).forEach(v -> columns.add(FormColumn.value(v.id(), v, v.meaning())));
    return columns;
  }

  @Override
  public String key(Row row) {
    return row.has("id") ? row.key("id") : row.key("series", "trial", "time", "elapsed", "kind") + (hasValues(row) ? ""
        : "|" + row.key("text"));
  }

  private static boolean hasValues(Row row) {
    return row.values().stream().anyMatch(b -> !b.column().id().equals("elapsed") && !b.column().id().equals("duration"));
  }

  @Override
  public void write(Row row, Draft draft) {
    Finder finder = new Finder(row, draft);
    Optional<LogEntry> named = draft.named(row, LogEntry.class);
    Trial trial = row.must("trial").isEmpty() ? null : finder.trial("trial");
    String kind = row.must("kind");
    Optional<ReadValue> elapsed = row.value("elapsed");
    if (trial == null || row.isFaulty()) {
      return;
    }
    String at = new Times(row).at("time", trial.getOn());
    if (at == null && elapsed.isEmpty() && !row.isFaulty()) {
      row.error("cell.empty", "time", "neither a time nor an elapsed time stands in the row", "fill in one of them");
    }
    if (row.isFaulty()) {
      return;
    }
    Double seconds = elapsed.map(ReadValue::amount).filter(Amount::isNumber).map(Amount::value).orElse(null);
    LogEntry entry = named.or(() -> known(row, trial, at, seconds, kind)).orElseGet(() -> add(row, draft, trial, kind));
    describe(row, draft.tally(), entry, finder);
    draft.tally().set(entry, Literals.LOG_ENTRY__AT, at);
    draft.tally().set(entry, Literals.LOG_ENTRY__ELAPSED, seconds);
    draft.tally().set(entry, Literals.LOG_ENTRY__KIND, kind);
    if (entry instanceof Charge charge) {
      ChargeColumns.write(row, draft, finder, charge);
    }
    row.values().forEach(column -> write(row, draft, entry, column));
  }

  private static Optional<LogEntry> known(Row row, Trial trial, String at, Double seconds, String kind) {
    return row.has("id") ? Optional.empty() : trial.getLog().stream()
        .filter(e -> kind.equals(e.getKind()) && (at == null || at.equals(e.getAt())) && (seconds == null
        || Objects.equals(seconds, e.getElapsed())))
        .filter(e -> hasValues(row) || Objects.equals(row.orNull("text"), e.getText())).findFirst();
  }

  private static LogEntry add(Row row, Draft draft, Trial trial, String kind) {
    ModelFactory make = ModelFactory.eINSTANCE;
    LogEntry made = draft.subject(row, switch (Heading.key(kind)) {
      case "charge" -> make.createCharge();
      case "incident" -> make.createIncident();
      default -> make.createLogEntry();
    });
    trial.getLog().add(made);
    return made;
  }

  private static void describe(Row row, Tally tally, LogEntry entry, Finder finder) {
    tally.set(entry, Literals.LOG_ENTRY__TEXT, row.orNull("text"));
    tally.set(entry, Literals.LOG_ENTRY__BY, finder.person("by"));
    tally.set(entry, Literals.LOG_ENTRY__ABOUT, row.yesNo("about"));
    tally.set(entry, Literals.LOG_ENTRY__LATE, row.yesNo("late"));
    tally.set(entry, Literals.LOG_ENTRY__INFERRED, row.yesNo("inferred"));
    tally.set(entry, Literals.LOG_ENTRY__ORIGINAL, row.orNull("original"));
    if (entry instanceof Incident incident) {
      row.value("duration").filter(v -> v.amount().isNumber())
          .ifPresent(v -> tally.set(incident, Literals.INCIDENT__DURATION, v.amount().value()));
      tally.set(incident, Literals.INCIDENT__EFFECT, row.orNull("effect"));
    } else if (row.has("duration") || row.has("effect")) {
      row.error("column.kind", "kind", "duration and effect belong to incidents, the kind is “" + row.text("kind") + "”",
          "write the kind “incident”, or put them into the text");
    }
  }

  private static void write(Row row, Draft draft, LogEntry entry, Bound column) {
    String id = column.column().id();
    if (id.equals("elapsed") || id.equals("duration")) {
      return;
    }
    if (!ChargeColumns.isOne(id)) {
      reading(row, column).ifPresent(v -> put(draft, entry, id, v));
    } else if (!(entry instanceof Charge)) {
      row.error("column.kind", id, "a mass is charged, but the kind is “" + row.text("kind") + "”",
          "write the kind “charge”");
    }
  }

  /** A value, or the state of a sensor that stands in its place. */
  private static Optional<ReadValue> reading(Row row, Bound column) {
    String text = row.text(column.column().id());
    return SensorState.find(text).map(state -> new ReadValue(Amount.text(state.word()), text, null))
        .or(() -> row.value(column));
  }

  private static void put(Draft draft, LogEntry entry, String variable, ReadValue value) {
    Reading reading = entry.getValues().stream().filter(r -> variable.equals(r.getVariable())).findFirst().orElseGet(() -> {
      Reading made = draft.tally().fresh(ModelFactory.eINSTANCE.createReading());
      made.setVariable(variable);
      entry.getValues().add(made);
      draft.tally().partAdded("added: " + variable + " " + value.typed());
      return made;
    });
    draft.tally().put(reading, value);
  }
}
