package daubline.publication;

import daubline.analysis.deposit.Rows;
import daubline.analysis.deposit.Rows.Field;
import daubline.base.ValueKind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One table of a deposit as it stands in its file. Where a row says by its kind why there is no number, the cell of the
 * number repeats the reason, so that a reader who looks at the number alone does not take it for a blank or a zero; the
 * schema labels each reason.
 */
final class Archived {

  private static final String KIND = "kind";
  private static final String VALUE = "value";

  private final Rows rows;
  private final boolean withReasons;

  Archived(Rows rows) {
    this.rows = rows;
    this.withReasons = rows.column(KIND).filter(k -> rows.fields().get(k).type() == Rows.Type.WORD).isPresent()
        && rows.column(VALUE).filter(v -> rows.fields().get(v).type() == Rows.Type.NUMBER).isPresent();
  }

  String path() {
    return "data/" + rows.name() + ".csv";
  }

  Rows rows() {
    return rows;
  }

  /** The lines of the file, the heading first. */
  List<List<String>> lines() {
    List<List<String>> lines = new ArrayList<>();
    lines.add(rows.fields().stream().map(Field::name).toList());
    rows.rows().forEach(row -> lines.add(withReasons ? reasoned(row) : row));
    return lines;
  }

  private List<String> reasoned(List<String> row) {
    int value = rows.column(VALUE).orElseThrow();
    String kind = row.get(rows.column(KIND).orElseThrow());
    if (!row.get(value).isEmpty() || reasons().stream().noneMatch(r -> r.name().equals(kind))) {
      return row;
    }
    List<String> changed = new ArrayList<>(row);
    changed.set(value, kind);
    return changed;
  }

  private static List<ValueKind> reasons() {
    return Arrays.stream(ValueKind.values()).filter(ValueKind::isMissing).toList();
  }

  /** The rows of a file that was read again: the reasons taken out of the numbers. */
  static Rows read(Rows form, List<List<String>> lines) {
    Archived archived = new Archived(form);
    List<List<String>> rows = lines.stream().skip(1).map(line -> archived.withReasons ? bare(form, line) : line).toList();
    return new Rows(form.name(), form.fields(), rows);
  }

  private static List<String> bare(Rows form, List<String> line) {
    int value = form.column(VALUE).orElseThrow();
    List<String> row = new ArrayList<>(line);
    if (reasons().stream().anyMatch(r -> r.name().equals(row.get(value)))) {
      row.set(value, "");
    }
    return row;
  }

  /** The Table Schema of the file (version 2 of the standard: missing values with labels). */
  Map<String, Object> schema(Descriptions descriptions) {
    Map<String, Object> schema = new LinkedHashMap<>();
    schema.put("$schema", "https://datapackage.org/profiles/2.0/tableschema.json");
    schema.put("fields", rows.fields().stream().map(field -> field(field, descriptions)).toList());
    schema.put("primaryKey", List.of(Rows.ID));
    List<Map<String, Object>> keys = rows.fields().stream().filter(f -> f.type() == Rows.Type.REFERENCE && !f.target().isEmpty()).map(this::foreignKey).toList();
    if (!keys.isEmpty()) {
      schema.put("foreignKeys", keys);
    }
    List<Map<String, Object>> missing = new ArrayList<>(List.of(label("", "nothing entered")));
    if (withReasons) {
      reasons().forEach(reason -> missing.add(label(reason.name(), reason.word())));
    }
    schema.put("missingValues", missing);
    return schema;
  }

  private static Map<String, Object> label(String value, String label) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("value", value);
    map.put("label", label);
    return map;
  }

  private Map<String, Object> field(Field field, Descriptions descriptions) {
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("name", field.name());
    map.put("type", switch (field.type()) {
      case NUMBER -> "number";
      case INTEGER -> "integer";
      case BOOLEAN -> "boolean";
      default -> "string";
    });
    map.put("description", descriptions.of(rows.name(), field));
    Map<String, Object> constraints = new LinkedHashMap<>();
    if (field.name().equals(Rows.ID)) {
      constraints.put("required", true);
      constraints.put("unique", true);
    }
    if (!field.words().isEmpty()) {
      constraints.put("enum", field.words());
    }
    if (!constraints.isEmpty()) {
      map.put("constraints", constraints);
    }
    if (withReasons && field.name().equals(KIND)) {
      // here the reasons are what is said, not signs that nothing is said
      map.put("missingValues", List.of(label("", "nothing entered")));
    }
    return map;
  }

  private Map<String, Object> foreignKey(Field field) {
    Map<String, Object> reference = new LinkedHashMap<>();
    if (!field.target().equals(rows.name())) {
      // a table that refers to itself is not named there, says version 2 of the standard
      reference.put("resource", field.target());
    }
    reference.put("fields", List.of(Rows.ID));
    Map<String, Object> key = new LinkedHashMap<>();
    key.put("fields", List.of(field.name()));
    key.put("reference", reference);
    return key;
  }
}
