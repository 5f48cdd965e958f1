package daubline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import daubline.base.Source;
import daubline.base.Unit;
import daubline.criteria.Criteria;
import daubline.engine.inference.ComparisonSettings;
import daubline.engine.inference.Criterion;
import daubline.engine.inference.Setting;
import java.io.IOException;

/** The criteria with meaning, settings in force and sources as JSON, once for all comparisons. */
final class CriteriaJson {

  private CriteriaJson() {
  }

  static void write(JsonGenerator json, ComparisonSettings settings) throws IOException {
    double[] weights = settings.weights().shares(Criteria.all());
    json.writeArrayFieldStart("criteria");
    for (int c = 0; c < weights.length; c++) {
      Criterion criterion = Criteria.all().get(c);
      json.writeStartObject();
      json.writeStringField("id", criterion.id());
      json.writeStringField("name", criterion.name());
      json.writeStringField("group", criterion.group().word());
      json.writeStringField("meaning", criterion.meaning());
      ResultJson.number(json, "weight", weights[c]);
      ResultJson.texts(json, "inputs", criterion.inputs());
      ResultJson.texts(json, "sources", criterion.sources().stream().map(Source::toString).toList());
      json.writeArrayFieldStart("settings");
      for (Setting setting : criterion.settings()) {
        write(json, criterion, setting, settings);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, Criterion criterion, Setting setting, ComparisonSettings settings) throws IOException {
    String value = settings.of(criterion).text(setting.key());
    json.writeStartObject();
    json.writeStringField("key", setting.key());
    json.writeStringField("name", setting.name());
    json.writeStringField("unit", setting.unit().map(Unit::symbol).orElse(""));
    if (setting.isNumber()) {
      Unit unit = setting.unit().orElseThrow();
      ResultJson.number(json, "value", unit.differenceFromCanonical(Double.parseDouble(value)));
      ResultJson.number(json, "standard", unit.differenceFromCanonical(Double.parseDouble(setting.standard())));
    } else {
      json.writeStringField("value", value);
      json.writeStringField("standard", setting.standard());
    }
    json.writeStringField("source", settings.sourceOf(criterion, setting));
    json.writeEndObject();
  }
}
