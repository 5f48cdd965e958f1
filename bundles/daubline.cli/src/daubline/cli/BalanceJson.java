package daubline.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import daubline.analysis.balance.SlagSources;
import daubline.analysis.balance.TrialBalance;
import daubline.base.Units;
import daubline.engine.process.balance.ElementBalance;
import daubline.engine.process.balance.ForwardBalance;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.balance.Portion;
import daubline.engine.process.slag.Norm;
import daubline.engine.process.slag.ViscosityModel;
import daubline.export.Discretion;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;

/** Writes balances as JSON; masses in kg, shares 0 to 1. */
final class BalanceJson {

  private final JsonGenerator json;

  private BalanceJson(JsonGenerator json) {
    this.json = json;
  }

  static void write(List<TrialBalance> balances, Discretion discretion, OutputStream out) throws IOException {
    JsonOut.write(out, discretion, json -> {
      json.writeStartObject();
      json.writeArrayFieldStart("balances");
      for (TrialBalance balance : balances) {
        new BalanceJson(json).write(balance);
      }
      json.writeEndArray();
      json.writeEndObject();
    });
  }

  private void write(TrialBalance b) throws IOException {
    json.writeStartObject();
    json.writeStringField("trial", b.trial());
    json.writeStringField("name", b.name());
    json.writeArrayFieldStart("charged");
    for (Portion portion : b.charged()) {
      json.writeStartObject();
      json.writeStringField("what", portion.name());
      number("mass", portion.mass());
      oxides("shares", portion.analysis().shares());
      json.writeEndObject();
    }
    json.writeEndArray();
    if (b.forward().isPresent()) {
      forward(b, b.forward().get());
    }
    elements(b);
    rest(b);
    if (b.sources().isPresent()) {
      sources(b.sources().get());
    }
    if (b.slag().isPresent()) {
      slag(b.slag().get());
    }
    JsonOut.findings(json, b.findings());
    json.writeEndObject();
  }

  private void forward(TrialBalance b, ForwardBalance f) throws IOException {
    json.writeObjectFieldStart("forward");
    number("metal", f.metal());
    json.writeBooleanField("metalIsForecast", b.forecast());
    number("mostMetal", f.mostMetal());
    number("slag", f.slag().total());
    oxides("slagOxides", f.slag().masses());
    json.writeEndObject();
  }

  private void elements(TrialBalance b) throws IOException {
    json.writeArrayFieldStart("elements");
    for (ElementBalance e : b.elements()) {
      json.writeStartObject();
      json.writeStringField("element", e.element());
      number("in", e.in());
      number("found", e.out());
      number("remainder", e.remainder());
      number("sigma", e.sigma());
      json.writeBooleanField("closes", e.closes());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void rest(TrialBalance b) throws IOException {
    json.writeObjectFieldStart("slagByTracer");
    for (TrialBalance.Tracer tracer : b.tracers()) {
      number(tracer.oxide(), tracer.slag());
    }
    json.writeEndObject();
    number("slagWeighed", b.weighed());
    json.writeArrayFieldStart("indices");
    for (TrialBalance.Index index : b.indices()) {
      named(index.name(), index.formula(), index.value());
    }
    json.writeEndArray();
    json.writeArrayFieldStart("yields");
    for (TrialBalance.NamedYield yield : b.yields()) {
      named(yield.yield().label(), yield.yield().formula(), yield.value());
    }
    json.writeEndArray();
  }

  private void named(String name, String formula, double value) throws IOException {
    json.writeStartObject();
    json.writeStringField("name", name);
    json.writeStringField("formula", formula);
    number("value", value);
    json.writeEndObject();
  }

  private void sources(SlagSources s) throws IOException {
    json.writeObjectFieldStart("backward");
    json.writeArrayFieldStart("perSlag");
    for (int i = 0; i < s.sources().size(); i++) {
      json.writeStartObject();
      json.writeStringField("what", s.sources().get(i).name());
      number("amount", s.fit().amounts().get(i));
      number("sigma", s.fit().sigmas().get(i));
      number("low", s.spread().low().get(i));
      number("high", s.spread().high().get(i));
      json.writeEndObject();
    }
    json.writeEndArray();
    number("ironNotInSlag", s.spread().metal().get(1));
    number("ironNotInSlagLow", s.spread().metal().get(0));
    number("ironNotInSlagHigh", s.spread().metal().get(2));
    number("recovery", s.recovery());
    number("misfit", s.fit().reducedChi2());
    number("condition", s.fit().condition());
    json.writeEndObject();
  }

  private void slag(TrialBalance.HotSlag s) throws IOException {
    json.writeObjectFieldStart("slagInTheHeat");
    number("celsius", s.celsius());
    number("liquidus", s.behaviour().liquidus().temperature() - Units.ZERO_CELSIUS);
    number("liquidusSigma", s.behaviour().liquidus().sigma());
    number("solids", s.behaviour().solids());
    number("density", s.behaviour().density());
    number("viscosity", s.behaviour().effective());
    json.writeObjectFieldStart("viscosityOfLiquid");
    for (Map.Entry<ViscosityModel, Double> e : s.behaviour().viscosity().entrySet()) {
      number(e.getKey().label(), e.getValue());
    }
    json.writeEndObject();
    json.writeObjectFieldStart("phases");
    for (Map.Entry<Norm.Phase, Double> e : s.behaviour().norm().shares().entrySet()) {
      number(e.getKey().label(), e.getValue());
    }
    json.writeEndObject();
    json.writeEndObject();
  }

  private void oxides(String name, Map<Oxide, Double> values) throws IOException {
    json.writeObjectFieldStart(name);
    for (Map.Entry<Oxide, Double> e : values.entrySet()) {
      number(e.getKey().formula(), e.getValue());
    }
    json.writeEndObject();
  }

  private void number(String name, double value) throws IOException {
    ResultJson.number(json, name, value);
  }
}
