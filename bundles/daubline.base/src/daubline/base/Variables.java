package daubline.base;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The variable catalogue: the rows of shared/variables.csv, and what a study adds to them. */
public final class Variables {

  private final Map<String, Variable> byId;

  private Variables(Map<String, Variable> byId) {
    this.byId = byId;
  }

  /** The catalogue that comes with the tool. */
  public static Variables standard() {
    return Standard.CATALOGUE;
  }

  /** Reads a catalogue; the columns are those of shared/variables.csv. */
  public static Variables read(Reader text) throws IOException {
    try (CsvReader<NamedCsvRecord> rows = CsvReader.builder().ofNamedCsvRecord(text)) {
      return of(rows);
    }
  }

  private static Variables of(Iterable<NamedCsvRecord> rows) {
    Map<String, Variable> byId = new LinkedHashMap<>();
    for (NamedCsvRecord row : rows) {
      Variable variable = variable(row);
      if (byId.put(variable.id(), variable) != null) {
        throw new IllegalArgumentException("Variable " + variable.id() + " stands twice, again in line " + row.getStartingLineNumber());
      }
    }
    return new Variables(byId);
  }

  /** This catalogue with more variables after its own; an id that exists already is kept as it is here. */
  public Variables with(Collection<Variable> more) {
    Map<String, Variable> all = new LinkedHashMap<>(byId);
    more.forEach(v -> all.putIfAbsent(v.id(), v));
    return new Variables(all);
  }

  /** This catalogue with other words for one category; as it is when there is no such category. */
  public Variables worded(String id, List<String> words) {
    Variable old = byId.get(id);
    if (old == null || old.type() != ValueType.CATEGORY || words.isEmpty()) {
      return this;
    }
    Map<String, Variable> all = new LinkedHashMap<>(byId);
    all.put(id, new Variable(old.id(), old.name(), old.group(), old.type(), old.quantity(), old.unit(), old.plausibleLow(), old.plausibleHigh(), old.places(),
        words, old.ordered(), old.evidencedBy(), old.meaning(), old.source()));
    return new Variables(all);
  }

  /** All variables in the order of the catalogue. */
  public List<Variable> all() {
    return List.copyOf(byId.values());
  }

  /** The variables recorded at one place. */
  public List<Variable> at(Variable.Place place) {
    return byId.values().stream().filter(v -> v.isAt(place)).toList();
  }

  /** A variable by its id. */
  public Optional<Variable> find(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** A variable that must exist; for code that names its own inputs. */
  public Variable get(String id) {
    return find(id).orElseThrow(() -> new IllegalArgumentException("No variable " + id + " in the catalogue"));
  }

  private static Variable variable(NamedCsvRecord row) {
    try {
      return parse(row);
    } catch (RuntimeException e) {
      throw new IllegalArgumentException("Variable catalogue, line " + row.getStartingLineNumber() + ": " + e.getMessage(), e);
    }
  }

  private static Variable parse(NamedCsvRecord row) {
    Quantity quantity = Quantity.valueOf(upper(row.getField("quantity")));
    Unit unit = Units.find(quantity, row.getField("unit"))
        .orElseThrow(() -> new IllegalArgumentException("no unit “" + row.getField("unit") + "” of " + quantity));
    ValueType type = ValueType.valueOf(upper(row.getField("type")));
    List<String> words = list(row.getField("words"));
    if (row.getField("id").isBlank()) {
      throw new IllegalArgumentException("the id is empty");
    }
    if (type == ValueType.CATEGORY && words.isEmpty()) {
      throw new IllegalArgumentException("a category needs words, separated by semicolons");
    }
    return new Variable(row.getField("id"), row.getField("name"), row.getField("group"),
        type, quantity, unit,
        bound(row.getField("low"), unit), bound(row.getField("high"), unit),
        places(row.getField("places")), words, row.getField("ordered").equals("yes"),
        row.getField("evidenced_by"), row.getField("meaning"), row.getField("source"));
  }

  private static double bound(String text, Unit unit) {
    return text.isBlank() ? Double.NaN : unit.toCanonical(Double.parseDouble(text));
  }

  private static Set<Variable.Place> places(String text) {
    return list(text).stream().map(p -> Variable.Place.valueOf(upper(p))).collect(Collectors.toSet());
  }

  private static List<String> list(String text) {
    return text.isBlank() ? new ArrayList<>() : Arrays.stream(text.split(";")).map(String::strip).toList();
  }

  private static String upper(String text) {
    return text.strip().toUpperCase(Locale.ROOT).replace(' ', '_');
  }

  private static final class Standard {
    private static final Variables CATALOGUE = of(SharedTable.rows("variables.csv"));
  }
}
