package daubline.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.JsonGeneratorDelegate;
import daubline.base.Finding;
import daubline.base.Trail;
import daubline.export.Discretion;
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

  /** Writes to a stream, which stays open; people who did not consent are not named in it. */
  static void write(OutputStream out, Discretion discretion, Body body) throws IOException {
    JsonGenerator plain = new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).useDefaultPrettyPrinter();
    try (JsonGenerator json = new Discreet(plain, discretion)) {
      body.write(json);
    }
    out.write('\n');
    out.flush();
  }

  /** Replaces names in every text, wherever a command writes one. */
  private static final class Discreet extends JsonGeneratorDelegate {

    private final Discretion discretion;

    Discreet(JsonGenerator json, Discretion discretion) {
      super(json);
      this.discretion = discretion;
    }

    @Override
    public void writeString(String text) throws IOException {
      super.writeString(text == null ? null : discretion.text(text));
    }
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
