package daubline.analysis.forecast;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.Units;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What is missing, impossible or doubtful among the inputs of a forecast. */
final class InputFindings {

  /** The name under which an impossible iron content is refused. */
  static final String ORE_IRON = "iron of the ore";
  private static final double RICHEST = Oxide.FE2O3.ironShare();
  private static final Set<ShaftParameter> MAY_BE_ZERO = Set.of(ShaftParameter.CHARCOAL_MOISTURE, ShaftParameter.ORE_MOISTURE, ShaftParameter.ASH);

  private final Trial trial;
  private final List<Finding> findings = new ArrayList<>();
  private final Set<String> refused = new HashSet<>();

  InputFindings(Trial trial) {
    this.trial = trial;
  }

  List<Finding> all() {
    return List.copyOf(findings);
  }

  boolean hasErrors() {
    return findings.stream().anyMatch(Finding::isError);
  }

  /** Whether a value of this name was refused as impossible; it then needs no second finding that it is missing. */
  boolean hasRefused(String what) {
    return refused.contains(what);
  }

  void missing(String what) {
    add(Finding.error("forecast.missing", place(), what + " is not known", "plan it in the trial, its build, its reconstruction or its lots"));
  }

  /** Says so when an amount is not above zero. */
  void positive(String what, Amount amount) {
    if (!(amount.value() > 0)) {
      impossible(what, Printed.number(amount.value()), "it must be more than nothing");
    }
  }

  void ironContent(double iron) {
    if (!(iron > 0)) {
      impossible(ORE_IRON, Printed.number(100 * iron) + " %", "an ore without iron gives none");
    } else if (iron > RICHEST + 0.03) {
      add(Finding.warning("forecast.range", place(), "the ore is said to hold " + Printed.number(100 * iron) + " % iron, pure haematite holds "
          + Printed.fixed(100 * RICHEST, 1) + " %", "check the analysis; the forecast takes it as haematite"));
    }
  }

  /** Whether a value can be used: refuses what cannot be, and warns of what lies outside what the model knows. */
  boolean range(ShaftParameter p, double value) {
    boolean share = p.unit().equals("1") && p != ShaftParameter.ORE_RATIO;
    if (!Double.isFinite(value) || value < 0 || value == 0 && !MAY_BE_ZERO.contains(p) || share && value >= 1) {
      impossible(p.label(), shown(p, value), share ? "it must lie between 0 and 100 %" : "it must be more than nothing");
      return false;
    }
    if (value < p.low() || value > p.high()) {
      add(Finding.warning("forecast.range", place(), p.label() + " " + shown(p, value) + " lies outside what the shaft model knows ("
          + shown(p, p.low()) + " to " + shown(p, p.high()) + ")", "check the value; the forecast is made for the nearest that it knows"));
    }
    return true;
  }

  /** Says that the furnace draws its air, and what that was reckoned from. */
  void drawn(boolean stated, boolean openings, double bore, int count) {
    if (!stated) {
      add(Finding.warning("forecast.drawn", place(), "neither air flow nor bellows are known: it is taken as a furnace that draws its own air",
          "state the air device, and with bellows or a blower the air flow"));
    }
    if (!openings) {
      add(Finding.warning("forecast.openings", place(), "bore and number of the openings are not both known: " + count + " of " + Printed.number(1000 * bore)
          + " mm taken, and drawn air follows them", "state bore and number of the air inlets"));
    }
  }

  /** Says that the air is what the people at the bellows keep up, and at which stroke rate where the bellows are known. */
  void byCrew(double people, double all, double minutes, double litres, Optional<Double> strokes) {
    String with = Printed.number(people) + " at the bellows, " + Printed.number(all) + " taking turns of " + Printed.number(minutes, 2) + " min, keep up about "
        + Printed.number(litres, 2) + " L/min";
    add(Finding.note("forecast.crew", place(), strokes.map(s -> "the air is reckoned from the people: " + with + ", " + Printed.number(s, 2) + " strokes a minute")
        .orElse("the air is reckoned from the people: " + with), "state the air flow, or count the strokes of a trial run"));
  }

  void fromTheFire(List<String> names) {
    if (!names.isEmpty()) {
      add(Finding.note("forecast.fired", place(), "known only from the fire itself, not from the plan: " + String.join(", ", names),
          "state them in the plan, so that the forecast is one"));
    }
  }

  private void impossible(String what, String value, String why) {
    refused.add(what);
    add(Finding.error("forecast.impossible", place(), what + " cannot be " + value + ": " + why, "mend the value in the trial, its build or its lots"));
  }

  private void add(Finding finding) {
    findings.add(finding.about(String.valueOf(trial.getId()), ""));
  }

  private String place() {
    return trial.getName() == null || trial.getName().isBlank() ? String.valueOf(trial.getId()) : trial.getName();
  }

  /** A parameter in the unit in which people read it. */
  private static String shown(ShaftParameter p, double value) {
    return switch (p.unit()) {
      case "m" -> Printed.number(value * 100) + " cm";
      case "m³/s" -> Printed.number(value * 60_000) + " L/min";
      case "1" -> p == ShaftParameter.ORE_RATIO ? Printed.number(value) : Printed.number(100 * value) + " %";
      case "K" -> Printed.number(value - Units.ZERO_CELSIUS) + " °C";
      default -> Printed.number(value) + " " + p.unit();
    };
  }
}
