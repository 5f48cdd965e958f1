package daubline.seeds;

import static daubline.seeds.Make.NEW;
import static daubline.seeds.Make.plusMinus;

import daubline.base.HowGot;
import daubline.base.IronBasis;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.model.Analysis;
import daubline.model.Component;
import daubline.model.Piece;
import daubline.model.Prediction;
import daubline.model.Reading;
import daubline.model.Sample;
import daubline.model.StagedValue;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.seeds.SeedTable.Row;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;

/** One trial of Aldervale: its values, predictions, products, samples and analyses. */
final class AldervaleTrial {

  /** Analytical totals as laboratories get them: porous slag below 100, iron counted as Fe2O3 above. */
  private static final double[] TOTALS = {0.991, 0.968, 1.006, 0.943, 0.984, 1.002, 0.974, 1.011, 0.996, 0.979};
  private static final Map<String, String> SPECIMENS = Map.of("tapped_slag", "tapped slag", "furnace_slag", "furnace slag",
      "pit_block", "slag pit block", "furnace_bottom", "furnace bottom", "lining_slag", "gravelly lining slag");
  private static final Map<String, String> LETTERS = Map.of("tapped_slag", "T", "furnace_slag", "F", "pit_block", "P",
      "furnace_bottom", "H", "lining_slag", "V");

  private final Recipe recipe;
  private final Smelt smelt;
  private final Study study;
  private final Trial trial = NEW.createTrial();
  private final SplittableRandom random;

  AldervaleTrial(Recipe recipe, Smelt smelt, Study study) {
    this.recipe = recipe;
    this.smelt = smelt;
    this.study = study;
    this.random = new SplittableRandom(4200 + recipe.number());
  }

  /** The trial without its log, remains and files. */
  Trial trial(List<Trial> before, List<Row> predictions) {
    describe(before);
    planned();
    fired();
    products();
    predictions.stream().filter(r -> r.get("trial").equals(recipe.id())).forEach(this::prediction);
    pieces();
    smelt.slags().keySet().stream().filter(LETTERS::containsKey).forEach(this::analysis);
    return trial;
  }

  private void describe(List<Trial> before) {
    trial.setId(recipe.id());
    trial.setName("Aldervale " + recipe.number());
    trial.setNumber(recipe.number());
    trial.setKind(recipe.row().word("kind", TrialKind.class));
    trial.setStatus(recipe.row().word("status", TrialStatus.class));
    trial.setOn(recipe.text("on"));
    trial.setBuild(Make.find(study.getBuilds(), recipe.text("build")));
    trial.setReconstruction(trial.getBuild().getReconstruction());
    trial.setRepeatOf(recipe.text("repeat_of").isEmpty() ? null : Make.find(before, recipe.text("repeat_of")));
    trial.setLeader(study.getPeople().get(0));
    trial.getPeople().addAll(study.getPeople().subList(0, 5));
    for (String lot : List.of(recipe.text("ore_lot"), recipe.text("charcoal_lot"), "clay-mix", "charcoal-ash")) {
      trial.getLots().add(Make.find(study.getLots(), lot));
    }
    if (recipe.of("flux") > 0) {
      trial.getLots().add(Make.find(study.getLots(), "shell-lime"));
    }
    trial.setConclusion(recipe.row().orNull("conclusion"));
    trial.setNote(recipe.row().orNull("note"));
  }

  private void planned() {
    value(Stage.PLANNED, "ore_total", recipe.isFailed() ? "24" : recipe.text("ore"), "kg", null);
    value(Stage.PLANNED, "air_flow", Printed.fixed(50 * Math.round(recipe.of("air") / 50), 0), "L/min", null);
    value(Stage.PLANNED, "charge_mass_ore", "1", "kg", null);
    value(Stage.PLANNED, "main_sequence_duration", "5", "h", null);
    value(Stage.PLANNED, "extraction_way", recipe.hasPit() ? "through the top" : "through the front", "", null);
  }

  private void fired() {
    double charcoal = recipe.of("charcoal");
    double radius = recipe.built("base") / 20;
    double area = Math.PI * radius * radius;
    fired("ore_total", recipe.of("ore"), 0.005, 2, "kg", HowGot.COUNTED);
    fired("ore_moisture", recipe.of("moisture"), 0.2, 1, "%", HowGot.MEASURED);
    fired("charcoal_total", charcoal, 0.02, 1, "kg", HowGot.COUNTED);
    fired("charcoal_preheat", recipe.of("preheat"), 0.03, 1, "kg", HowGot.COUNTED);
    fired("charcoal_main", charcoal - recipe.of("preheat"), 0.02, 1, "kg", HowGot.COUNTED);
    fired("charcoal_unburnt", 0.03 * charcoal, 0.08, 2, "kg", HowGot.WEIGHED);
    fired("flux_total", recipe.of("flux"), 0.02, 2, "kg", HowGot.WEIGHED);
    fired("ore_to_charcoal", recipe.of("ore") / charcoal, 0.02, 3, "", HowGot.CALCULATED);
    fired("charge_ratio", recipe.of("ore") / (charcoal - recipe.of("preheat")), 0.03, 2, "", HowGot.CALCULATED);
    word("air_device", "paired bellows");
    word("air_flow_method", "from strokes");
    fired("air_flow", recipe.of("air"), 0.08, 0, "L/min", HowGot.CALCULATED);
    fired("blast_per_area", recipe.of("air") / area, 0.09, 2, "L/(min·cm²)", HowGot.CALCULATED);
    fired("bellows_stroke_volume", recipe.of("stroke"), 0.05, 1, "L", HowGot.MEASURED);
    fired("bellows_strokes_per_minute", recipe.of("strokes"), 0.04, 0, "1/min", HowGot.COUNTED);
    value(Stage.AS_FIRED, "bellows_operators", "2", "", HowGot.COUNTED);
    fired("preheat_duration", recipe.of("warm"), 0.05, 2, "h", HowGot.MEASURED);
    fired("main_sequence_duration", recipe.of("main"), 0.01, 2, "h", HowGot.MEASURED);
    fired("burn_down_duration", recipe.of("burn"), 0.05, 2, "h", HowGot.MEASURED);
    fired("total_duration", recipe.end() / 60, 0.01, 2, "h", HowGot.MEASURED);
    fired("charge_interval", recipe.interval(), 0.05, 1, "min", HowGot.CALCULATED);
    value(Stage.AS_FIRED, "charge_count", recipe.text("ore"), "", HowGot.COUNTED);
    fired("temperature_peak_inlet", recipe.of("peak"), 0.02, 0, "°C", HowGot.MEASURED);
    fired("temperature_peak_shaft", recipe.of("peak") - 505, 0.02, 0, "°C", HowGot.MEASURED);
    word("wind", recipe.text("weather"));
    value(Stage.AS_FIRED, "people_count", "5", "", HowGot.COUNTED);
  }

  private void products() {
    fired("bloom_mass", smelt.bloom(), 0.01, 2, "kg", HowGot.WEIGHED);
    fired("bloom_mass_compacted", 0.86 * smelt.bloom(), 0.01, 2, "kg", HowGot.WEIGHED);
    fired("bloom_share_metal", recipe.of("metal_share"), 0.04, 0, "%", HowGot.ESTIMATED);
    fired("iron_made", smelt.iron(), 0.05, 2, "kg", HowGot.CALCULATED);
    fired("lining_mass_lost", recipe.of("lining"), 0.15, 2, "kg", HowGot.ESTIMATED);
    fired("metal_carbon", recipe.of("carbon"), 0.2, 2, "%", HowGot.ESTIMATED);
    word("bloom_quality", recipe.text("quality"));
  }

  /** A value as fired with a relative standard uncertainty; left out when it is zero. */
  private void fired(String variable, double value, double relative, int decimals, String unit, HowGot how) {
    if (value > 0) {
      double sigma = Math.max(relative * value, StrictMath.pow(10, -decimals));
      value(Stage.AS_FIRED, variable, plusMinus(value, sigma, decimals), unit, how);
    }
  }

  private void word(String variable, String word) {
    value(Stage.AS_FIRED, variable, word, "", null);
  }

  private void value(Stage stage, String variable, String typed, String unit, HowGot how) {
    StagedValue value = Make.value(NEW.createStagedValue(), variable, typed, unit);
    value.setStage(stage);
    value.setHow(how);
    trial.getValues().add(value);
  }

  private void prediction(Row row) {
    Prediction prediction = Make.value(NEW.createPrediction(), row.get("variable"), row.get("typed"), row.get("unit"));
    prediction.setStatedOn(row.get("stated_on"));
    prediction.setLocked(true);
    prediction.setReconstruction(trial.getReconstruction());
    prediction.setBy(trial.getLeader());
    prediction.setNote("Stated by the team before the fire.");
    trial.getPredictions().add(prediction);
  }

  private void pieces() {
    double mass = 0.86 * smelt.bloom();
    Piece bloom = piece(trial.getPieces(), "Bloom", "bloom", "bloom_mass", smelt.bloom());
    add(bloom, "bloom_density", plusMinus(2.6 + 4.2 * (recipe.of("metal_share") / 100 - 0.4), 0.12, 2), "g/cm³");
    add(bloom, "bloom_quality", recipe.text("quality"), "");
    if (smelt.bloom() > 1) {
      Piece half = piece(bloom.getPieces(), "Half kept as found", "bloom half", "bloom_mass", 0.46 * mass);
      half.setNote("Sawn, one face polished.");
      Piece forged = piece(bloom.getPieces(), "Half forged", "bloom half", "bloom_mass", 0.52 * mass);
      Piece billet = piece(forged.getPieces(), "Billet", "billet", "billet_mass", 0.36 * mass);
      add(billet, "forging_heats", Integer.toString(6 + recipe.number()), "");
      Piece bar = piece(billet.getPieces(), "Bar", "bar", "bar_mass", 0.27 * mass);
      add(bar, "metal_carbon", plusMinus(recipe.of("carbon"), 0.05, 2), "%");
    }
  }

  private static Piece piece(List<Piece> owner, String name, String stage, String variable, double mass) {
    Piece piece = NEW.createPiece();
    piece.setName(name);
    piece.setStage(stage);
    add(piece, variable, plusMinus(mass, 0.02, 2), "kg");
    owner.add(piece);
    return piece;
  }

  private static void add(Piece piece, String variable, String typed, String unit) {
    Reading reading = Make.value(NEW.createReading(), variable, typed, unit);
    piece.getValues().add(reading);
  }

  private void analysis(String residueClass) {
    String label = String.format(Locale.ROOT, "AV%02d-%s", recipe.number(), LETTERS.get(residueClass));
    Sample sample = NEW.createSample();
    sample.setId(recipe.id() + "-sample-" + LETTERS.get(residueClass).toLowerCase(Locale.ROOT));
    sample.setName(label);
    sample.setMaterial(Material.SLAG);
    sample.setQuestion("Iron left in the slag, and where its silica came from.");
    sample.setTakenOn(recipe.text("on"));
    sample.setStoredAt("Field Club store, shelf " + recipe.number());
    sample.setHolder("A. Sly");
    trial.getSamples().add(sample);
    Analysis analysis = NEW.createAnalysis();
    analysis.setName(label + ", bulk");
    analysis.setSample(sample);
    analysis.setMaterial(Material.SLAG);
    analysis.setSpecimen(SPECIMENS.get(residueClass));
    analysis.setMethod(recipe.number() == 4 ? "Electron microscope, area scans" : "X-ray fluorescence, fused bead");
    analysis.setInstrument("Bench spectrometer of the laboratory");
    analysis.setStandards("one reference slag, iron within 1 % and silica within 2 % of its certificate");
    analysis.setLaboratory("Aldervale Field Club, A. Sly");
    analysis.setOn("2031-10-14");
    analysis.setAreas(recipe.number() == 4 ? 5 : 1);
    components(analysis, residueClass);
    trial.getAnalyses().add(analysis);
  }

  private void components(Analysis analysis, String residueClass) {
    boolean asFe2O3 = recipe.number() == 5;
    analysis.setIronBasis(asFe2O3 ? IronBasis.FE2O3 : IronBasis.FEO);
    double total = 0;
    for (String oxide : Smelt.OXIDES) {
      double share = smelt.share(residueClass, oxide) * TOTALS[recipe.number() - 1] * (1 + 0.012 * (2 * random.nextDouble() - 1));
      boolean iron = oxide.equals("FeO") && asFe2O3;
      double printed = Double.parseDouble(Printed.fixed(100 * share * (iron ? Smelt.FE_IN_FEO / Smelt.FE_IN_FE2O3 : 1), 2));
      boolean below = oxide.equals("Na2O") && printed < 0.15;
      component(analysis, iron ? "Fe2O3" : oxide, below ? "<0.15" : Printed.fixed(printed, 2));
      total += below ? 0 : printed;
    }
    component(analysis, "SO3", recipe.number() == 4 ? "n.d." : "n.a.");
    analysis.setTotalTyped(Printed.fixed(total, 2));
    analysis.setTotal(Double.parseDouble(Printed.fixed(total, 2)) / 100);
  }

  private static void component(Analysis analysis, String symbol, String typed) {
    Component component = Make.percent(NEW.createComponent(), typed);
    component.setSymbol(symbol);
    analysis.getComponents().add(component);
  }
}
