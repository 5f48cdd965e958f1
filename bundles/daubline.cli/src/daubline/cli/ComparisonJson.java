package daubline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import daubline.analysis.ComparisonOptions;
import daubline.analysis.StudyResults;
import daubline.analysis.Target;
import daubline.base.Trail;
import daubline.engine.inference.Comparison;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.CriterionResult;
import daubline.engine.inference.Exclusion;
import java.io.IOException;
import java.util.List;

/** A comparison with every trail as JSON. */
final class ComparisonJson implements JsonOut.Body {

  private final StudyResults results;
  private final ComparisonSettings settings;
  private final List<Target> targets;

  ComparisonJson(StudyResults results, ComparisonOptions options) {
    this.results = results;
    this.settings = options.settingsOf(results.snapshot());
    this.targets = options.targets(results.snapshot());
  }

  @Override
  public void write(JsonGenerator json) throws IOException {
    CriteriaJson.write(json, settings);
    json.writeArrayFieldStart("comparisons");
    for (Comparison comparison : results.comparisons()) {
      write(json, comparison);
    }
    json.writeEndArray();
  }

  private void write(JsonGenerator json, Comparison c) throws IOException {
    Target target = targets.stream().filter(t -> t.sheet().id().equals(c.sheet())).findFirst().orElseThrow();
    json.writeStartObject();
    json.writeStringField("trial", c.trial());
    json.writeStringField("trialName", c.trialName());
    json.writeStringField("sheet", c.sheet());
    json.writeStringField("sheetName", c.sheetName());
    json.writeStringField("place", target.place());
    ResultJson.texts(json, "features", target.features());
    ResultJson.number(json, "agreement", c.agreement());
    ResultJson.number(json, "low", c.low());
    ResultJson.number(json, "high", c.high());
    ResultJson.number(json, "coverage", c.coverage());
    ResultJson.number(json, "boundLow", c.boundLow());
    ResultJson.number(json, "boundHigh", c.boundHigh());
    ResultJson.number(json, "bandLow", c.bandLow());
    ResultJson.number(json, "bandHigh", c.bandHigh());
    Exclusion exclusion = Exclusion.of(c, settings.alpha());
    ResultJson.texts(json, "ruledOutBy", exclusion.criteria().stream().map(CriterionResult::criterion).toList());
    ResultJson.number(json, "chanceOfSuchAList", exclusion.probability());
    json.writeArrayFieldStart("criteria");
    for (CriterionResult result : c.criteria()) {
      write(json, result);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, CriterionResult r) throws IOException {
    json.writeStartObject();
    json.writeStringField("criterion", r.criterion());
    json.writeStringField("group", r.group().word());
    json.writeStringField("verdict", r.verdict().word());
    json.writeStringField("reason", r.reason());
    ResultJson.number(json, "agreement", r.agreement());
    ResultJson.number(json, "low", r.low());
    ResultJson.number(json, "high", r.high());
    ResultJson.number(json, "sigmas", r.sigmas());
    ResultJson.number(json, "compatibility", r.compatibility());
    ResultJson.number(json, "weight", r.weight());
    json.writeStringField("evidence", r.evidence());
    json.writeStringField("found", r.found());
    json.writeFieldName("trail");
    write(json, r.trail());
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Trail trail) throws IOException {
    json.writeStartObject();
    json.writeStringField("what", trail.what());
    json.writeStringField("value", trail.value());
    json.writeStringField("subject", trail.subject());
    json.writeArrayFieldStart("from");
    for (Trail from : trail.from()) {
      write(json, from);
    }
    json.writeEndArray();
    json.writeEndObject();
  }
}
