package daubline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudySnapshot;
import daubline.base.Version;
import daubline.export.Discretion;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;

/** Writes results as JSON: the same head for all, then a body. Names and meanings stay; what is added comes at new names. */
final class ResultJson {

  private ResultJson() {
  }

  /** Writes to a stream, which stays open. */
  static void write(OutputStream out, String format, StudySnapshot snapshot, ComparisonOptions options, JsonOut.Body body) throws IOException {
    JsonOut.write(out, new Discretion(snapshot.record().people()), json -> {
      json.writeStartObject();
      json.writeStringField("format", format);
      json.writeStringField("study", snapshot.name());
      json.writeStringField("digest", snapshot.digest());
      json.writeStringField("version", Version.NUMBER);
      json.writeObjectFieldStart("options");
      json.writeStringField("against", options.against().name().toLowerCase(Locale.ROOT));
      json.writeStringField("demonstrations", options.withDemonstrations() ? "included" : "left out");
      json.writeStringField("tolerance", options.repeatsAsTolerance() ? "spread of repeats where known" : "settings of the study");
      json.writeNumberField("draws", options.draws());
      json.writeNumberField("seed", options.seed());
      number(json, "limit", options.settingsOf(snapshot).alpha());
      json.writeEndObject();
      body.write(json);
      json.writeEndObject();
    });
  }

  /** JSON has no NaN: what there is no number for is null. */
  static void number(JsonGenerator json, String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(name, value);
    } else {
      json.writeNullField(name);
    }
  }

  /** An array of texts. */
  static void texts(JsonGenerator json, String name, Iterable<String> texts) throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }
}
