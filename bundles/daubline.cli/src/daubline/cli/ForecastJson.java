package daubline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import daubline.analysis.forecast.Outcome;
import daubline.analysis.forecast.TrialForecast;
import daubline.engine.process.BurnForecast;
import daubline.engine.process.Forecast;
import daubline.engine.process.NextMeasurement;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.export.Discretion;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Writes forecasts as JSON; numbers in the engine's units, which stand beside each. */
final class ForecastJson {

  private ForecastJson() {
  }

  static void write(Map<String, List<TrialForecast>> all, Discretion discretion, OutputStream out) throws IOException {
    JsonOut.write(out, discretion, json -> {
      json.writeStartObject();
      json.writeArrayFieldStart("predictions");
      for (Map.Entry<String, List<TrialForecast>> tried : all.entrySet()) {
        for (TrialForecast forecast : tried.getValue()) {
          write(json, tried.getKey(), forecast);
        }
      }
      json.writeEndArray();
      races(json, all);
      json.writeEndObject();
    });
  }

  /** Which trial chokes first and why, for each point of the grid. */
  private static void races(JsonGenerator json, Map<String, List<TrialForecast>> all) throws IOException {
    json.writeArrayFieldStart("races");
    for (Map.Entry<String, List<TrialForecast>> tried : all.entrySet()) {
      for (String sentence : RaceWords.sentences(tried.getValue())) {
        json.writeStartObject();
        json.writeStringField("tried", tried.getKey());
        json.writeStringField("says", sentence);
        json.writeEndObject();
      }
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, String tried, TrialForecast trial) throws IOException {
    json.writeStartObject();
    json.writeStringField("trial", trial.trial());
    json.writeStringField("name", trial.name());
    json.writeStringField("series", trial.plan().series());
    json.writeStringField("tried", tried);
    json.writeBooleanField("burnt", trial.plan().isBurnt());
    JsonOut.used(json, trial.used());
    JsonOut.findings(json, trial.findings());
    if (trial.forecast().isPresent()) {
      write(json, trial, trial.forecast().get());
    }
    json.writeEndObject();
  }

  private static void write(JsonGenerator json, TrialForecast trial, BurnForecast forecast) throws IOException {
    json.writeArrayFieldStart("figures");
    for (Forecast f : forecast.quantities()) {
      write(json, f, trial.outcome(f.quantity()));
    }
    json.writeEndArray();
    profile(json, forecast.shaft());
    json.writeArrayFieldStart("oreClasses");
    for (BurnForecast.OreClass c : forecast.oreClasses()) {
      json.writeStartObject();
      ResultJson.number(json, "size", c.size());
      ResultJson.number(json, "share", c.share());
      ResultJson.number(json, "reduced", c.reduced());
      ResultJson.number(json, "low", c.low());
      ResultJson.number(json, "high", c.high());
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeArrayFieldStart("slagRise");
    for (BurnForecast.Rise rise : forecast.slagRise()) {
      json.writeStartObject();
      ResultJson.number(json, "time", rise.time());
      ResultJson.number(json, "median", rise.median());
      ResultJson.number(json, "low", rise.low());
      ResultJson.number(json, "high", rise.high());
      json.writeEndObject();
    }
    json.writeEndArray();
    ResultJson.number(json, "shareOfPublishedSmelts", forecast.recovery().priorWeight());
    ResultJson.number(json, "refusedShare", forecast.refused());
    json.writeArrayFieldStart("measureNext");
    for (NextMeasurement next : forecast.next()) {
      json.writeString(next.sentence());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("cautions");
    for (String caution : forecast.cautions()) {
      json.writeString(caution);
    }
    json.writeEndArray();
  }

  private static void write(JsonGenerator json, Forecast f, Optional<Outcome> observed) throws IOException {
    json.writeStartObject();
    json.writeStringField("figure", f.quantity().name().toLowerCase(java.util.Locale.ROOT));
    json.writeStringField("label", f.quantity().label());
    json.writeStringField("unit", f.quantity().unit());
    ResultJson.number(json, "central", f.central());
    ResultJson.number(json, "median", f.median());
    ResultJson.number(json, "low", f.low());
    ResultJson.number(json, "high", f.high());
    json.writeStringField("standing", f.quantity().standing().words());
    json.writeStringField("source", f.quantity().source().text());
    if (observed.isPresent()) {
      ResultJson.number(json, "observed", observed.get().value());
      json.writeStringField("observedFrom", observed.get().where());
    }
    json.writeObjectFieldStart("dependsOn");
    for (Map.Entry<String, Double> share : f.shares().entrySet()) {
      ResultJson.number(json, share.getKey(), share.getValue());
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private static void profile(JsonGenerator json, ShaftSolution shaft) throws IOException {
    json.writeArrayFieldStart("profile");
    for (ShaftSolution.Level level : shaft.profile()) {
      json.writeStartObject();
      ResultJson.number(json, "height", level.height());
      ResultJson.number(json, "gas", level.gas());
      ResultJson.number(json, "charge", level.solid());
      ResultJson.number(json, "coShare", level.coShare());
      ResultJson.number(json, "toWustite", level.toWustite());
      ResultJson.number(json, "toMetal", level.toMetal());
      ResultJson.number(json, "co", level.monoxide());
      ResultJson.number(json, "co2", level.dioxide());
      ResultJson.number(json, "n2", level.nitrogen());
      ResultJson.number(json, "h2", level.hydrogen());
      ResultJson.number(json, "h2o", level.steam());
      json.writeEndObject();
    }
    json.writeEndArray();
  }
}
