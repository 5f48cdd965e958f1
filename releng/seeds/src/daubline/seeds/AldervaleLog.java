package daubline.seeds;

import static daubline.seeds.Make.NEW;
import static daubline.seeds.Make.plusMinus;

import daubline.base.HowGot;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.Incident;
import daubline.model.LogEntry;
import daubline.model.Lot;
import daubline.model.Reading;
import daubline.model.Study;
import daubline.seeds.SeedTable.Row;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The run log of one smelt: phases, charges, temperatures, blast, reliefs, and what else happened. */
final class AldervaleLog {

  private static final DateTimeFormatter AT = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm:ssxxx", Locale.ROOT);
  private static final int START_HOUR = 9;
  private static final double SCOOP = 0.5;

  private final Recipe recipe;
  private final Study study;
  private final List<LogEntry> entries = new ArrayList<>();
  private final List<LogEntry> late = new ArrayList<>();

  AldervaleLog(Recipe recipe, Study study) {
    this.recipe = recipe;
    this.study = study;
  }

  /** The entries in the order in which they were written. */
  List<LogEntry> entries(List<Row> happenings) {
    phases();
    charges();
    readings();
    happenings.stream().filter(r -> r.get("trial").equals(recipe.id())).forEach(this::happening);
    entries.sort(Comparator.comparing(LogEntry::getElapsed));
    entries.addAll(late);
    return entries;
  }

  private void phases() {
    phase(0, "First light; small fire of dry wood, then charcoal.");
    phase(recipe.firstOre(), "First ore.");
    phase(recipe.firstOre() + 60 * recipe.of("main"), "Last ore; burn-down.");
    phase(recipe.end(), "Blast off.");
    phase(recipe.end() + 12, recipe.isFailed() ? "Raked out cold the next morning." : "Bloom out.");
  }

  private void phase(double minutes, String text) {
    entry(NEW.createLogEntry(), minutes, "phase", "person-maren").setText(text);
  }

  private void charges() {
    Lot charcoal = Make.find(study.getLots(), recipe.text("charcoal_lot"));
    Lot ore = Make.find(study.getLots(), recipe.text("ore_lot"));
    double fill = recipe.of("preheat") / 2;
    charge(2, "First fill.").getItems().add(item(charcoal, 4, fill / 4));
    charge(recipe.firstOre() / 2, "Filled up.").getItems().add(item(charcoal, 4, fill / 4));
    int count = (int) recipe.of("ore");
    double measure = (recipe.of("charcoal") - recipe.of("preheat")) / count;
    for (int i = 0; i < count; i++) {
      Charge charge = charge(recipe.firstOre() + i * recipe.interval(), null);
      charge.getItems().add(item(charcoal, 1, measure));
      charge.getItems().add(item(ore, 2, SCOOP));
      if (recipe.of("flux") > 0 && i == count / 2) {
        charge.getItems().add(item(Make.find(study.getLots(), "shell-lime"), 1, recipe.of("flux")));
      }
    }
  }

  private Charge charge(double minutes, String text) {
    Charge charge = entry(NEW.createCharge(), minutes, "charge", "person-idris");
    charge.setText(text);
    return charge;
  }

  /** A number of measures of a known mass; their common uncertainty is that of the calibration weighings. */
  private static ChargeItem item(Lot lot, int count, double unitMass) {
    boolean fuel = lot.getMaterial() == Material.CHARCOAL;
    String typed = plusMinus(count * unitMass, count * unitMass * (fuel ? 0.04 : 0.01), 3);
    ChargeItem item = lot.getMaterial() == Material.FLUX ? Make.mass(NEW.createChargeItem(), typed, "kg")
        : Make.value(NEW.createChargeItem(), fuel ? "charge_mass_charcoal" : "charge_mass_ore", typed, "kg");
    item.setMaterial(lot.getMaterial());
    item.setLot(lot);
    item.setCount(count);
    item.setUnitMass(Double.valueOf(Printed.fixed(unitMass, 4)));
    item.setHow(HowGot.COUNTED);
    return item;
  }

  private void readings() {
    for (double minutes = 30; minutes < recipe.end(); minutes += 30) {
      double rise = 1 - StrictMath.exp(-minutes / 45);
      LogEntry heat = entry(NEW.createLogEntry(), minutes, "temperature", "person-sunniva");
      String middle = minutes > 262 ? "not recorded" : Printed.fixed(70 + (recipe.of("peak") - 560) * rise, 0);
      add(heat, "temperature_above_inlet", Printed.fixed(90 + (recipe.of("peak") - 190) * rise, 0), "°C");
      add(heat, "temperature_mid_shaft", middle, "°C");
      add(heat, "temperature_top", Printed.fixed(40 + 330 * rise, 0), "°C");
    }
    for (double minutes = 20; minutes < recipe.end(); minutes += 60) {
      LogEntry blast = entry(NEW.createLogEntry(), minutes, "blast", "person-joss");
      add(blast, "bellows_strokes_per_minute", recipe.text("strokes"), "1/min");
      add(blast, "air_flow", plusMinus(recipe.of("air"), 0.08 * recipe.of("air"), 0), "L/min");
    }
    for (double minutes = recipe.firstOre(); minutes < recipe.end(); minutes += 55) {
      entry(NEW.createLogEntry(), minutes + 5, "relief", "person-joss").setText("Bellows crew relieved.");
    }
  }

  private static void add(LogEntry entry, String variable, String typed, String unit) {
    Reading reading = Make.value(NEW.createReading(), variable, typed, unit);
    reading.setHow(HowGot.MEASURED);
    entry.getValues().add(reading);
  }

  private void happening(Row row) {
    double minutes = Double.parseDouble(row.get("minutes"));
    String flags = row.get("flags");
    LogEntry entry = row.get("kind").equals("incident") ? incident(row) : NEW.createLogEntry();
    entry(entry, minutes, row.get("kind"), row.get("by"));
    entry.setText(row.get("text"));
    entry.setAbout(flags.contains("about"));
    entry.setLate(flags.contains("late"));
    entry.setInferred(flags.contains("inferred"));
    entry.setOriginal(row.orNull("original"));
    if (entry.isLate()) {
      entries.remove(entry);
      late.add(entry);
    }
  }

  private static Incident incident(Row row) {
    Incident incident = NEW.createIncident();
    incident.setDuration(60 * Double.parseDouble(row.get("duration")));
    incident.setEffect(row.get("effect"));
    return incident;
  }

  private <T extends LogEntry> T entry(T entry, double minutes, String kind, String by) {
    long seconds = Math.round(60 * minutes);
    OffsetDateTime start = LocalDate.parse(recipe.text("on")).atTime(START_HOUR, 0).atOffset(ZoneOffset.ofHours(1));
    entry.setAt(start.plusSeconds(seconds).format(AT));
    entry.setElapsed((double) seconds);
    entry.setKind(kind);
    entry.setBy(Make.find(study.getPeople(), by));
    entries.add(entry);
    return entry;
  }
}
