package daubline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import daubline.analysis.StudyRanking;
import daubline.analysis.StudySnapshot;
import daubline.engine.inference.Equifinality;
import daubline.engine.inference.Ranking;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Rankings as JSON. */
final class RanksJson implements JsonOut.Body {

  private final StudySnapshot snapshot;
  private final List<Ranking> rankings;

  RanksJson(StudySnapshot snapshot, List<Ranking> rankings) {
    this.snapshot = snapshot;
    this.rankings = rankings;
  }

  @Override
  public void write(JsonGenerator json) throws IOException {
    json.writeArrayFieldStart("rankings");
    for (Ranking ranking : rankings) {
      write(json, ranking);
    }
    json.writeEndArray();
  }

  private void write(JsonGenerator json, Ranking ranking) throws IOException {
    json.writeStartObject();
    json.writeStringField("sheet", ranking.sheet());
    json.writeStringField("sheetName", ranking.sheetName());
    json.writeArrayFieldStart("places");
    for (Ranking.Place place : ranking.places()) {
      write(json, place);
    }
    json.writeEndArray();
    ResultJson.texts(json, "untested", ranking.untested());
    json.writeArrayFieldStart("criteria");
    for (Ranking.Discrimination criterion : ranking.criteria()) {
      write(json, criterion);
    }
    json.writeEndArray();
    Equifinality equal = StudyRanking.equallyGood(snapshot, ranking);
    json.writeStringField("equallyGood", equal.sentence());
    json.writeArrayFieldStart("recipes");
    for (List<String> group : equal.groups()) {
      json.writeStartArray();
      for (String trial : group) {
        json.writeString(trial);
      }
      json.writeEndArray();
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Ranking.Place place) throws IOException {
    json.writeStartObject();
    json.writeStringField("trial", place.trial());
    json.writeStringField("trialName", place.trialName());
    json.writeNumberField("rank", place.rank());
    ResultJson.number(json, "agreement", place.agreement());
    ResultJson.number(json, "coverage", place.coverage());
    json.writeArrayFieldStart("acceptability");
    for (double share : place.acceptability()) {
      json.writeNumber(share);
    }
    json.writeEndArray();
    numbers(json, "wins", place.wins());
    numbers(json, "centralWeights", place.centralWeights());
    ResultJson.number(json, "confidence", place.confidence());
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, Ranking.Discrimination c) throws IOException {
    json.writeStartObject();
    json.writeStringField("criterion", c.criterion());
    ResultJson.number(json, "share", c.share());
    ResultJson.number(json, "signal", c.signal());
    json.writeStringField("verdict", Double.isNaN(c.signal()) ? "not tested" : c.tellsApart() ? "tells the trials apart" : "cannot tell the trials apart");
    json.writeStringField("firstWithout", c.firstWithout());
    ResultJson.number(json, "influence", c.influence());
    json.writeEndObject();
  }

  private static void numbers(JsonGenerator json, String name, Map<String, Double> values) throws IOException {
    json.writeObjectFieldStart(name);
    for (Map.Entry<String, Double> value : new TreeMap<>(values).entrySet()) {
      ResultJson.number(json, value.getKey(), value.getValue());
    }
    json.writeEndObject();
  }
}
