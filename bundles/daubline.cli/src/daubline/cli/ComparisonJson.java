package daubline.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import daubline.analysis.StudyResults;
import daubline.base.Trail;
import daubline.base.Version;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.CriterionResult;
import java.io.IOException;
import java.io.OutputStream;

/** Writes a comparison with every trail as JSON. */
final class ComparisonJson {

  private final JsonGenerator json;

  private ComparisonJson(JsonGenerator json) {
    this.json = json;
  }

  /** Writes to a stream, which stays open. */
  static void write(StudyResults results, OutputStream out) throws IOException {
    try (JsonGenerator json = new JsonFactory().createGenerator(out).disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET).useDefaultPrettyPrinter()) {
      new ComparisonJson(json).write(results);
    }
    out.write('\n');
    out.flush();
  }

  private void write(StudyResults results) throws IOException {
    json.writeStartObject();
    json.writeStringField("study", results.snapshot().name());
    json.writeStringField("digest", results.snapshot().digest());
    json.writeStringField("version", Version.NUMBER);
    json.writeArrayFieldStart("comparisons");
    for (Comparison comparison : results.comparisons()) {
      write(comparison);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(Comparison c) throws IOException {
    json.writeStartObject();
    json.writeStringField("trial", c.trial());
    json.writeStringField("trialName", c.trialName());
    json.writeStringField("sheet", c.sheet());
    json.writeStringField("sheetName", c.sheetName());
    number("agreement", c.agreement());
    number("low", c.low());
    number("high", c.high());
    number("coverage", c.coverage());
    number("boundLow", c.boundLow());
    number("boundHigh", c.boundHigh());
    number("bandLow", c.bandLow());
    number("bandHigh", c.bandHigh());
    json.writeArrayFieldStart("criteria");
    for (CriterionResult result : c.criteria()) {
      write(result);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void write(CriterionResult r) throws IOException {
    json.writeStartObject();
    json.writeStringField("criterion", r.criterion());
    json.writeStringField("group", r.group().word());
    json.writeStringField("verdict", r.verdict().word());
    json.writeStringField("reason", r.reason());
    number("agreement", r.agreement());
    number("low", r.low());
    number("high", r.high());
    number("sigmas", r.sigmas());
    number("compatibility", r.compatibility());
    number("weight", r.weight());
    json.writeStringField("evidence", r.evidence());
    json.writeStringField("found", r.found());
    json.writeFieldName("trail");
    write(r.trail());
    json.writeEndObject();
  }

  private void write(Trail trail) throws IOException {
    json.writeStartObject();
    json.writeStringField("what", trail.what());
    json.writeStringField("value", trail.value());
    json.writeStringField("subject", trail.subject());
    json.writeArrayFieldStart("from");
    for (Trail from : trail.from()) {
      write(from);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** JSON has no NaN: what there is no number for is null. */
  private void number(String name, double value) throws IOException {
    if (Double.isFinite(value)) {
      json.writeNumberField(name, value);
    } else {
      json.writeNullField(name);
    }
  }
}
