package daubline.seeds;

import static daubline.seeds.Make.NEW;
import static daubline.seeds.Make.plusMinus;

import daubline.base.Basis;
import daubline.base.HowGot;
import daubline.base.Stage;
import daubline.model.Choice;
import daubline.model.FurnaceBuild;
import daubline.model.LogEntry;
import daubline.model.Reconstruction;
import daubline.model.StagedValue;
import daubline.model.Study;
import daubline.seeds.SeedTable.Row;
import java.time.LocalDate;

/** The rival reconstructions of Aldervale and the furnaces built after them. */
final class AldervaleFurnaces {

  private final SeedTable tables;
  private final Study study;
  private final EvidenceTables evidence;

  AldervaleFurnaces(SeedTable tables, Study study, EvidenceTables evidence) {
    this.tables = tables;
    this.study = study;
    this.evidence = evidence;
  }

  /** Adds everything to the study. */
  void fill() {
    tables.rows("reconstructions").forEach(this::reconstruction);
    tables.rows("choices").forEach(this::choice);
    tables.rows("builds").forEach(this::build);
  }

  private void reconstruction(Row row) {
    Reconstruction reconstruction = NEW.createReconstruction();
    reconstruction.setId(row.get("id"));
    reconstruction.setName(row.get("name"));
    reconstruction.setHypothesis(row.get("hypothesis"));
    reconstruction.setRetired(row.orNull("retired_because") != null);
    reconstruction.setRetiredBecause(row.orNull("retired_because"));
    for (String sheet : row.get("sheets").split(" ")) {
      reconstruction.getSheets().add(evidence.sheet(sheet));
    }
    study.getReconstructions().add(reconstruction);
  }

  private void choice(Row row) {
    Choice choice = Make.value(NEW.createChoice(), row.get("variable"), row.get("typed"), row.get("unit"));
    choice.setBasis(row.word("basis", Basis.class));
    choice.setBecause(row.get("because"));
    Make.find(study.getReconstructions(), row.get("reconstruction")).getChoices().add(choice);
  }

  private void build(Row row) {
    FurnaceBuild build = NEW.createFurnaceBuild();
    build.setId(row.get("id"));
    build.setName(row.get("name"));
    build.setNote(row.orNull("note"));
    build.setReconstruction(Make.find(study.getReconstructions(), row.get("reconstruction")));
    build.setBuiltOn(row.get("built_on"));
    build.getLots().add(Make.find(study.getLots(), "clay-mix"));
    study.getBuilds().add(build);
    planned(build, row);
    word(build, "furnace_type", row.get("type"));
    word(build, "slag_management", row.get("slag"));
    word(build, "clay_temper", "sand");
    word(build, "inlet_material", "ceramic");
    measured(build, "base_internal_diameter", row.get("base"), 3, "mm");
    measured(build, "wall_thickness", row.get("wall"), 4, "mm");
    measured(build, "furnace_height", row.get("height"), 8, "mm");
    measured(build, "height_above_inlet", row.get("above_inlet"), 8, "mm");
    measured(build, "top_internal_diameter", row.get("top"), 4, "mm");
    measured(build, "inlet_bore", row.get("bore"), 0.5, "mm");
    measured(build, "inlet_angle", row.get("angle"), 1, "°");
    measured(build, "inlet_height_above_floor", row.get("inlet_height"), 4, "mm");
    measured(build, "tap_opening_width", row.get("tap_width"), 4, "mm");
    measured(build, "pit_depth", row.get("pit_depth"), 5, "mm");
    word(build, "tap_opening", row.get("tap_width").isEmpty() ? "absent" : "present");
    word(build, "inlet_count", row.get("inlets"));
    word(build, "pit_fill", row.get("pit_depth").isEmpty() ? "" : "straw");
    value(build, "drying_duration", row.get("drying"), "d", HowGot.COUNTED);
    diary(build, row);
  }

  private static void planned(FurnaceBuild build, Row row) {
    StagedValue value = Make.value(NEW.createStagedValue(), "base_internal_diameter", row.get("base_planned"), "mm");
    value.setStage(Stage.PLANNED);
    build.getValues().add(value);
  }

  private static void word(FurnaceBuild build, String variable, String typed) {
    value(build, variable, typed, "", null);
  }

  private static void measured(FurnaceBuild build, String variable, String typed, double sigma, String unit) {
    if (!typed.isEmpty()) {
      int decimals = sigma < 1 ? 1 : 0;
      value(build, variable, plusMinus(Double.parseDouble(typed), sigma, decimals), unit, HowGot.MEASURED);
    }
  }

  private static void value(FurnaceBuild build, String variable, String typed, String unit, HowGot how) {
    if (!typed.isEmpty()) {
      StagedValue value = Make.value(NEW.createStagedValue(), variable, typed, unit);
      value.setStage(Stage.AS_BUILT);
      value.setHow(how);
      build.getValues().add(value);
    }
  }

  private static void diary(FurnaceBuild build, Row row) {
    LocalDate built = LocalDate.parse(row.get("built_on"));
    diary(build, built.minusDays(2), "First two lifts set, channels of willow between them.");
    diary(build, built, "Last lift set; wall " + row.get("wall") + " mm at the base.");
    diary(build, built.plusDays(5), "Test brick 2.31 kg, 2.74 kg on the day it was made; hairline cracks smeared.");
    LocalDate dry = built.plusDays(Long.parseLong(row.get("drying")));
    diary(build, dry, "Test brick 2.19 kg, no longer lighter since yesterday. Small fire may begin.");
  }

  private static void diary(FurnaceBuild build, LocalDate on, String text) {
    LogEntry entry = NEW.createLogEntry();
    entry.setAt(on + "T17:00:00+01:00");
    entry.setKind("note");
    entry.setText(text);
    build.getLog().add(entry);
  }
}
