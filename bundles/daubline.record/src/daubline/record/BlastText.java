package daubline.record;

import daubline.base.EnteredText;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.LogEntry;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * The blast in one field: a bare number is strokes a minute, with a unit it is a flow or a pressure, and several stand
 * beside each other with semicolons, such as "24; 420 L/min; 150 Pa".
 */
final class BlastText {

  private static final List<String> VARIABLES = List.of("bellows_strokes_per_minute", "air_flow", "inlet_pressure");

  private final Desk desk;

  BlastText(Desk desk) {
    this.desk = desk;
  }

  private List<Variable> variables() {
    return VARIABLES.stream().map(id -> desk.variables().get(id)).toList();
  }

  String print(LogEntry entry) {
    return String.join("; ", variables().stream().flatMap(v -> reading(entry, v).map(r -> Columns.print(desk, r, v)).stream()).toList());
  }

  Optional<daubline.base.Finding> odd(LogEntry entry) {
    return variables().stream().flatMap(v -> reading(entry, v).flatMap(r -> Columns.odd(r, v)).stream()).findFirst();
  }

  private static Optional<Reading> reading(LogEntry entry, Variable variable) {
    return entry.getValues().stream().filter(r -> variable.id().equals(r.getVariable())).findFirst();
  }

  Entry<LogEntry> read(String typed) {
    List<Entry<LogEntry>> parts = new ArrayList<>();
    for (String part : typed.split(";")) {
      if (!part.isBlank()) {
        Entry<LogEntry> one = one(part.strip());
        if (!one.isRead()) {
          return one;
        }
        parts.add(one);
      }
    }
    return Entry.of(entry -> {
      List<Reading> old = variables().stream().flatMap(v -> reading(entry, v).stream()).toList();
      EcoreUtil.deleteAll(old, true);
      parts.forEach(p -> p.change().accept(entry));
    });
  }

  private Entry<LogEntry> one(String part) {
    Variable variable = variables().stream().filter(v -> !EnteredText.split(part, v.quantity()).unit().isEmpty()).findFirst().orElse(variables().get(0));
    boolean unknownUnit = !part.isEmpty() && Character.isLetter(part.charAt(part.length() - 1)) && EnteredText.split(part, variable.quantity()).unit().isEmpty()
        && part.chars().anyMatch(Character::isDigit);
    if (unknownUnit) {
      List<String> units = variables().stream().flatMap(v -> Units.of(v.quantity()).stream()).map(daubline.base.Unit::symbol).toList();
      return Entry.wrong("unit.unknown", "“" + part + "” is neither strokes, flow nor pressure", "use one of: " + String.join(", ", units));
    }
    return Columns.value(desk, variable, part, (entry, change) -> {
      Reading made = ModelFactory.eINSTANCE.createReading();
      entry.getValues().add(made);
      change.accept(made);
    });
  }
}
