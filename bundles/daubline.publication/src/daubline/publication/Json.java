package daubline.publication;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Map;

/** Writes maps, lists, text, numbers and truth values as JSON, indented, the keys in the order of the map. */
final class Json {

  private Json() {
  }

  static String text(Object value) throws IOException {
    StringWriter text = new StringWriter();
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(Separators.createDefaultInstance()).withObjectIndenter(lines).withArrayIndenter(lines);
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.setPrettyPrinter(printer);
      write(json, value);
    }
    return text.append('\n').toString();
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    switch (value) {
      case Map<?, ?> map -> {
        json.writeStartObject();
        for (Map.Entry<?, ?> entry : map.entrySet()) {
          json.writeFieldName(entry.getKey().toString());
          write(json, entry.getValue());
        }
        json.writeEndObject();
      }
      case List<?> list -> {
        json.writeStartArray();
        for (Object item : list) {
          write(json, item);
        }
        json.writeEndArray();
      }
      case Integer number -> json.writeNumber(number);
      case Long number -> json.writeNumber(number);
      case Double number -> json.writeNumber(number);
      case Boolean truth -> json.writeBoolean(truth);
      default -> json.writeString(value.toString());
    }
  }
}
