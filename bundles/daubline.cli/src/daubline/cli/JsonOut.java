package daubline.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import daubline.base.Finding;
import daubline.base.Trail;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/** What the JSON of several commands has in common. */
final class JsonOut {

  /** Writes one document. */
  interface Body {
    void write(JsonGenerator json) throws IOException;
  }

  private JsonOut() {
  }

  /** Writes to a stream, which stays open. */
  static void write(OutputStream out, Body body) throws IOException {
    try (JsonGenerator json = new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).useDefaultPrettyPrinter()) {
      body.write(json);
    }
    out.write('\n');
    out.flush();
  }

  /** Findings under their name. */
  static void findings(JsonGenerator json, List<Finding> findings) throws IOException {
    json.writeArrayFieldStart("findings");
    for (Finding f : findings) {
      json.writeStartObject();
      json.writeStringField("severity", f.severity().name().toLowerCase(java.util.Locale.ROOT));
      json.writeStringField("code", f.code());
      json.writeStringField("where", f.where());
      json.writeStringField("what", f.what());
      json.writeStringField("remedy", f.remedy());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** What was used, with where it stands. */
  static void used(JsonGenerator json, List<Trail> used) throws IOException {
    json.writeArrayFieldStart("used");
    for (Trail t : used) {
      json.writeStartObject();
      json.writeStringField("what", t.what());
      json.writeStringField("value", t.value());
      json.writeStringField("subject", t.subject());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
