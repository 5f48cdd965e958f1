package daubline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import daubline.export.Discretion;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Writes plain values as JSON: maps, collections, arrays of numbers, text, numbers. There is no NaN in JSON: it is null. */
final class Json {

  private final JsonGenerator json;

  private Json(JsonGenerator json) {
    this.json = json;
  }

  /** A map in this order: name, value, name, value … */
  static Map<String, Object> map(Object... pairs) {
    Map<String, Object> map = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      map.put((String) pairs[i], pairs[i + 1]);
    }
    return map;
  }

  /** Writes a value and a line end to a stream, which stays open; people who did not consent are not named in it. */
  static void write(Object value, Discretion discretion, OutputStream out) throws IOException {
    JsonOut.write(out, discretion, json -> new Json(json).value(value));
  }

  private void value(Object value) throws IOException {
    switch (value) {
      case null -> json.writeNull();
      case Optional<?> optional -> value(optional.orElse(null));
      case Map<?, ?> map -> object(map);
      case Collection<?> list -> array(list);
      case double[] numbers -> array(java.util.Arrays.stream(numbers).boxed().toList());
      case int[] numbers -> array(java.util.Arrays.stream(numbers).boxed().toList());
      case double[][] rows -> array(java.util.Arrays.asList(rows));
      case Double number -> number(number);
      case Integer number -> json.writeNumber(number);
      case Long number -> json.writeNumber(number);
      case Boolean yes -> json.writeBoolean(yes);
      default -> json.writeString(value.toString());
    }
  }

  private void object(Map<?, ?> map) throws IOException {
    json.writeStartObject();
    for (Map.Entry<?, ?> entry : map.entrySet()) {
      json.writeFieldName(entry.getKey().toString());
      value(entry.getValue());
    }
    json.writeEndObject();
  }

  private void array(Collection<?> list) throws IOException {
    json.writeStartArray();
    for (Object item : list) {
      value(item);
    }
    json.writeEndArray();
  }

  private void number(double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumber(value);
    } else {
      json.writeNull();
    }
  }
}
