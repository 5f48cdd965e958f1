package daubline.seeds;

import static daubline.seeds.Make.NEW;

import daubline.base.Confidence;
import daubline.base.Material;
import daubline.base.Stage;
import daubline.base.TrialKind;
import daubline.base.TrialStatus;
import daubline.model.FurnaceBuild;
import daubline.model.Lot;
import daubline.model.Piece;
import daubline.model.Reading;
import daubline.model.RemainsSheet;
import daubline.model.Series;
import daubline.model.StagedValue;
import daubline.model.Study;
import daubline.model.Trial;
import daubline.seeds.SeedTable.Row;
import java.util.LinkedHashMap;
import java.util.Map;

/** Published smelts and published evidence, every value a cited claim; what the sources do not say is left out. */
final class OpenSmelts extends SeedStudy {

  private final SeedTable tables = new SeedTable(folder());
  private final EvidenceTables evidence = new EvidenceTables(tables);
  private final Map<String, Trial> trials = new LinkedHashMap<>();

  @Override
  String folder() {
    return "open-smelts";
  }

  @Override
  String name() {
    return "Published smelts and evidence";
  }

  @Override
  void fill(Study study) {
    study.setNote("Figures taken from publications, each with where it was read. See README.md.");
    study.setQuestion("What do published smelts and published remains report, and how completely?");
    study.setLanguage("en");
    study.setLicence("Figures are facts with their sources; the arrangement is licensed as the tool is.");
    evidence.fill(study);
    evidence.analyses();
    Series series = NEW.createSeries();
    series.setId("series-published");
    series.setName("Published smelts");
    series.setQuestion("Runs of several teams, gathered from what they published; they were never one series.");
    study.getSeries().add(series);
    tables.rows("smelts").forEach(row -> series.getTrials().add(trial(row)));
    tables.rows("smelt-values").forEach(row -> value(study, EvidenceTables.require(trials, row.get("trial")), row));
    file("README.md", tables.file("README.md"));
  }

  private Trial trial(Row row) {
    Trial trial = NEW.createTrial();
    trial.setId(row.get("id"));
    trial.setName(row.get("name"));
    trial.setOn(row.orNull("on"));
    trial.setKind(TrialKind.EXPERIMENT);
    trial.setStatus(row.word("status", TrialStatus.class));
    trial.setExcluded(row.orNull("excluded_because") != null);
    trial.setExcludedBecause(row.orNull("excluded_because"));
    String place = row.get("place").isEmpty() ? "" : ", " + row.get("place");
    trial.setNote("By " + row.get("experimenter") + place + ". " + row.get("note"));
    trials.put(trial.getId(), trial);
    return trial;
  }

  private void value(Study study, Trial trial, Row row) {
    switch (row.get("holder")) {
      case "built" -> build(study, trial).getValues().add(staged(row, Stage.AS_BUILT));
      case "fired" -> trial.getValues().add(staged(row, Stage.AS_FIRED));
      case "ore" -> ore(study, trial).getValues().add(cited(NEW.createReading(), row));
      case "piece" -> piece(trial).getValues().add(cited(NEW.createReading(), row));
      case "remains" -> remains(trial).getClaims().add(cited(NEW.createClaim(), row));
      default -> throw new IllegalArgumentException("No place “" + row.get("holder") + "” for a value");
    }
  }

  private StagedValue staged(Row row, Stage stage) {
    StagedValue value = cited(NEW.createStagedValue(), row);
    value.setStage(stage);
    return value;
  }

  private <T extends Reading> T cited(T reading, Row row) {
    Make.value(reading, row.get("variable"), row.get("typed"), row.get("unit"));
    evidence.cite(reading, row);
    reading.setConfidence(row.word("confidence", Confidence.class));
    return reading;
  }

  private static String of(String kind, Trial trial) {
    return trial.getId().replaceFirst("trial", kind);
  }

  private static FurnaceBuild build(Study study, Trial trial) {
    if (trial.getBuild() == null) {
      FurnaceBuild build = NEW.createFurnaceBuild();
      build.setId(of("build", trial));
      build.setName("Furnace of " + trial.getName());
      study.getBuilds().add(build);
      trial.setBuild(build);
    }
    return trial.getBuild();
  }

  private static Lot ore(Study study, Trial trial) {
    if (trial.getLots().isEmpty()) {
      Lot lot = NEW.createLot();
      lot.setId(of("ore", trial));
      lot.setName("Ore of " + trial.getName());
      lot.setMaterial(Material.ORE);
      study.getLots().add(lot);
      trial.getLots().add(lot);
    }
    return trial.getLots().get(0);
  }

  private static Piece piece(Trial trial) {
    if (trial.getPieces().isEmpty()) {
      Piece piece = NEW.createPiece();
      piece.setName("Product of " + trial.getName());
      trial.getPieces().add(piece);
    }
    return trial.getPieces().get(0);
  }

  private static RemainsSheet remains(Trial trial) {
    if (trial.getRemains() == null) {
      RemainsSheet sheet = NEW.createRemainsSheet();
      sheet.setName("Remains of " + trial.getName());
      trial.setRemains(sheet);
    }
    return trial.getRemains();
  }
}
