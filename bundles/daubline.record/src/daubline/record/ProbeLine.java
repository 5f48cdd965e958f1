package daubline.record;

import daubline.base.Amount;
import daubline.base.SensorState;
import daubline.base.Variable;
import daubline.base.Variable.Place;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.model.Setting;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Temperatures of several probes in one line, such as "1170/930/open/550": numbers and states of sensors in the order of
 * the probes; a place left empty, or "–", says nothing. The order is a setting of the study ({@code probes}, variables
 * separated by semicolons); without it the temperatures of the catalogue, in its order.
 */
public final class ProbeLine {

  /** Key of the setting that names the probes. */
  public static final String SETTING = "probes";

  private final Desk desk;

  /** A line for the probes of a study. */
  public ProbeLine(Desk desk) {
    this.desk = desk;
  }

  /** The probes in their order. */
  public List<Variable> probes() {
    Optional<String> set = desk.session().study().getSettings().stream().filter(s -> SETTING.equals(s.getKey())).map(Setting::getValue).findFirst();
    return set.filter(s -> !s.isBlank()).map(s -> Arrays.stream(s.split(";")).map(String::strip).flatMap(id -> desk.variables().find(id).stream()).toList())
        .orElseGet(() -> desk.variables().at(Place.LOG).stream().filter(v -> v.id().startsWith("temperature_")).toList());
  }

  /** The line of an entry; empty when it holds no temperature. */
  public String print(LogEntry entry) {
    List<String> parts = new ArrayList<>(probes().stream().map(v -> reading(entry, v).map(r -> part(r, v)).orElse("")).toList());
    while (!parts.isEmpty() && parts.get(parts.size() - 1).isEmpty()) {
      parts.remove(parts.size() - 1);
    }
    return String.join("/", parts);
  }

  private String part(Reading reading, Variable variable) {
    if (reading.getKind() == null || reading.getKind().isMissing()) {
      return "–";
    }
    return reading.getUnit() == null || reading.getUnit().equals(variable.unit().symbol()) ? Columns.text(reading.getTyped()) : Columns.print(desk, reading, variable);
  }

  private static Optional<Reading> reading(LogEntry entry, Variable variable) {
    return entry.getValues().stream().filter(r -> variable.id().equals(r.getVariable())).findFirst();
  }

  /** Understands a line; an empty one takes all temperatures away. */
  public Entry<LogEntry> read(String typed) {
    List<Variable> probes = probes();
    String[] parts = typed.isBlank() ? new String[0] : typed.split("[/;|]", -1);
    if (parts.length > probes.size()) {
      return Entry.wrong("probes.more", parts.length + " values, but only " + probes.size() + " probes are named: "
          + String.join(", ", probes.stream().map(Variable::name).toList()), "add the probe to the study's setting “" + SETTING + "”");
    }
    List<Entry<LogEntry>> all = new ArrayList<>();
    for (int i = 0; i < probes.size(); i++) {
      Entry<LogEntry> one = read(probes.get(i), i < parts.length ? parts[i].strip() : "");
      if (!one.isRead()) {
        return Entry.wrong(one.complaint().code(), probes.get(i).name() + ": " + one.complaint().what(), one.complaint().remedy());
      }
      all.add(one);
    }
    return Entry.of(entry -> all.forEach(e -> e.change().accept(entry)));
  }

  private Entry<LogEntry> read(Variable probe, String part) {
    Optional<SensorState> state = SensorState.find(part);
    if (state.isPresent()) {
      return Entry.of(entry -> change(entry, probe, r -> {
        r.setVariable(probe.id());
        Readings.put(r, Amount.text(state.get().word()));
        r.setTyped(part);
      }));
    }
    return Columns.value(desk, probe, part, (entry, change) -> change(entry, probe, change));
  }

  private static void change(LogEntry entry, Variable probe, Consumer<Reading> change) {
    Optional<Reading> old = reading(entry, probe);
    if (change == null) {
      old.ifPresent(r -> EcoreUtil.delete(r, true));
    } else {
      change.accept(old.orElseGet(() -> {
        Reading made = ModelFactory.eINSTANCE.createReading();
        entry.getValues().add(made);
        return made;
      }));
    }
  }
}
