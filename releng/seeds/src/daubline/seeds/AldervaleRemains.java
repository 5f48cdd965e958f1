package daubline.seeds;

import static daubline.seeds.Make.NEW;
import static daubline.seeds.Make.plusMinus;

import daubline.base.HowGot;
import daubline.model.Claim;
import daubline.model.Person;
import daubline.model.RemainsSheet;
import daubline.model.ResidueMass;
import java.time.LocalDate;
import java.util.SplittableRandom;

/** What a smelt left, recorded with the fields of an evidence sheet: worked out from furnace, recipe and slag. */
final class AldervaleRemains {

  private final Recipe recipe;
  private final Smelt smelt;
  private final EvidenceTables evidence;
  private final RemainsSheet sheet = NEW.createRemainsSheet();
  private final SplittableRandom random;

  AldervaleRemains(Recipe recipe, Smelt smelt, EvidenceTables evidence) {
    this.recipe = recipe;
    this.smelt = smelt;
    this.evidence = evidence;
    this.random = new SplittableRandom(7100 + recipe.number());
  }

  /** The sheet, filled. */
  RemainsSheet sheet(Person recorder, boolean blind) {
    sheet.setName("Remains of trial " + recipe.number());
    sheet.setRecordedBy(recorder);
    sheet.setRecordedOn(LocalDate.parse(recipe.text("on")).plusDays(2).toString());
    sheet.setBlind(blind);
    sheet.setSamplingFraction(1.0);
    base();
    inlet();
    wall();
    slag();
    phases();
    residues();
    totals();
    sheet.getClaims().forEach(claim -> claim.setBy(recorder));
    return sheet;
  }

  private void base() {
    double diameter = recipe.built("base") + about(3);
    length("base_internal_diameter", diameter, 5);
    length("base_external_diameter", diameter + 2 * recipe.built("wall") + about(5), 8);
    length("wall_thickness", recipe.built("wall") - 2 + about(2), 4);
    word("base_profile_shape", recipe.isDome() ? "oval" : "round");
    length("surviving_height", recipe.built("height") * (recipe.hasPit() ? 0.22 : recipe.isDome() ? 0.48 : 0.52) + about(15), 10);
    length("surviving_arc", recipe.isTapped() ? 300 : 345, 5, "°");
    word("base_hardness", recipe.isDome() ? "baked" : "soft");
    word("tap_opening", recipe.isTapped() ? "present" : "absent");
    word("slag_management", recipe.build().get("slag"));
    if (recipe.isTapped()) {
      length("tap_opening_width", recipe.built("tap_width") + 6 + about(3), 5);
    }
    if (recipe.hasPit()) {
      length("pit_depth", recipe.built("pit_depth") - 10 + about(4), 8);
      length("pit_diameter", recipe.built("base") + 5 + about(4), 6);
      word("pit_fill", "slag block");
    } else {
      length("pit_depth", 0, 0);
    }
    length("scorched_ground_diameter", recipe.built("base") * 1.6 + about(10), 15);
    word("disturbance", "none");
    word("charcoal_species", "oak");
  }

  private void inlet() {
    length("inlet_bore", recipe.built("bore") + 2 + about(0.6), 1);
    length("inlet_angle", recipe.built("angle") + 2 + about(1), 2, "°");
    length("inlet_height_above_floor", recipe.built("inlet_height") - 8 + about(3), 6);
    length("inlet_projection", 25 - 12 * recipe.of("lining") + about(3), 5);
    word("inlet_count", recipe.build().get("inlets"));
  }

  private void wall() {
    double inlet = recipe.built("inlet_height");
    double heat = (recipe.of("peak") - 1250) * 0.9;
    double back = inlet + 95 + heat + about(8);
    double side = recipe.isDome() ? back - 10 : inlet + 30 + heat / 2 + about(8);
    double front = recipe.isDome() ? inlet + 40 : inlet - 20;
    length("vitrified_height", Math.max(back, side), 8);
    length("vitrified_height_12", recipe.isDome() ? front + 20 : back, 8);
    length("vitrified_height_3", side, 8);
    length("vitrified_height_6", front + about(6), 8);
    length("vitrified_height_9", recipe.isDome() ? side + 12 : side - 15, 8);
    length("vitrified_arc", recipe.isDome() ? 320 : 190 + about(10), 10, "°");
    length("vitrified_thickness", 6 + 4 * recipe.of("lining") + about(1), 2);
    length("reduced_height", back + (recipe.isDome() ? 140 : 45) + about(8), 10);
    length("oxidised_height", back + 150 + about(10), 12);
    length("oxidised_depth", recipe.built("wall") * 0.45 + about(3), 4);
    length("lining_thickness_lost", 4 + 10 * recipe.of("lining") + about(2), 3);
    length("slag_adhering_height", inlet - 30 + about(6), 6);
  }

  private void slag() {
    String main = smelt.mainSlag();
    double iron = smelt.share(main, "FeO");
    word("tapped_slag", recipe.isTapped() ? "present" : "absent");
    word("flow_morphology", !recipe.isTapped() ? "no flow" : iron > 0.58 ? "broad lobes" : "ropes");
    word("slag_surface", recipe.isTapped() ? "wrinkled" : "rough");
    claim("slag_density", plusMinus(2.05 + 2.6 * iron + about(0.05), 0.08, 2), "g/cm³", HowGot.MEASURED);
    claim("slag_porosity", plusMinus(recipe.isTapped() ? 14 : 27, 4, 0), "%", HowGot.ESTIMATED);
    word("slag_magnetism", recipe.isTapped() ? "none" : "patchy");
    word("prills", "present");
    word("charcoal_impressions", "present");
    word("organic_impressions", recipe.hasPit() ? "present" : "absent");
    word("hammerscale", recipe.of("metal_share") > 65 ? "present" : "absent");
    length("bloom_diameter", 95 + 9 * smelt.bloom() + about(4), 6);
    word("bloom_position", recipe.isDome() ? "in the middle" : "below the inlet");
    word("bloom_quality", recipe.text("quality"));
    if (!recipe.isTapped()) {
      length("slag_block_diameter", recipe.built("base") - 18 + about(5), 6);
      length("slag_block_thickness", 60 + 6 * smelt.weighed(main) + about(5), 6);
    }
  }

  private void phases() {
    String main = smelt.mainSlag();
    seen("phase_fayalite", true);
    seen("phase_wustite", smelt.share(main, "FeO") > 2.05 * smelt.share(main, "SiO2"));
    seen("phase_hercynite", smelt.share(main, "Al2O3") > 0.068);
    seen("phase_leucite", smelt.share(main, "K2O") > 0.018);
    seen("phase_kirschsteinite", smelt.share(main, "CaO") > 0.055);
    seen("phase_glass", smelt.share(main, "SiO2") > 0.28);
    seen("phase_metallic_iron", true);
    word("phase_magnetite", recipe.number() % 3 == 0 ? "not looked for" : "absent");
  }

  private void seen(String phase, boolean present) {
    word(phase, present ? "present" : "absent");
  }

  private void residues() {
    smelt.slags().keySet().forEach(c -> weighed(c, smelt.weighed(c), c.equals("prills_runs") ? 0.02 : 0.1));
    weighed("vitrified_lining", 1.3 * recipe.of("lining"), 0.1);
    weighed("part_reduced_ore", smelt.unreacted(), 0.05);
    weighed("magnetic_fines", 0.2 + 0.01 * recipe.of("ore"), 0.05);
    if (recipe.hasPit()) {
      residue("tarry_lining", "not weighed");
    }
  }

  private void totals() {
    double all = sheet.getResidues().stream().filter(r -> r.getValue() != null).mapToDouble(ResidueMass::getValue).sum();
    claim("residue_total", plusMinus(all, 0.01 * all, 2), "kg", HowGot.WEIGHED);
    if (!recipe.isFailed()) {
      double ratio = smelt.slags().keySet().stream().mapToDouble(smelt::weighed).sum() / smelt.iron();
      claim("slag_per_iron", plusMinus(ratio, 0.06 * ratio, 2), "", HowGot.CALCULATED);
    }
    claim("magnetic_fines_mass", plusMinus(0.2 + 0.01 * recipe.of("ore"), 0.05, 2), "kg", HowGot.WEIGHED);
  }

  private void weighed(String residueClass, double mass, double sigma) {
    residue(residueClass, plusMinus(mass, Math.max(sigma, 0.01 * mass), 2)).setHow(HowGot.WEIGHED);
  }

  private ResidueMass residue(String residueClass, String typed) {
    ResidueMass residue = Make.mass(NEW.createResidueMass(), typed, "kg");
    residue.setResidueClass(evidence.residueClass(residueClass));
    sheet.getResidues().add(residue);
    return residue;
  }

  private void length(String variable, double value, double sigma) {
    length(variable, value, sigma, "mm");
  }

  private void length(String variable, double value, double sigma, String unit) {
    claim(variable, sigma == 0 ? "0" : plusMinus(value, sigma, 0), unit, HowGot.MEASURED);
  }

  private void word(String variable, String typed) {
    claim(variable, typed, "", null);
  }

  private void claim(String variable, String typed, String unit, HowGot how) {
    Claim claim = Make.value(NEW.createClaim(), variable, typed, unit);
    claim.setHow(how);
    sheet.getClaims().add(claim);
  }

  private double about(double size) {
    return size * (2 * random.nextDouble() - 1);
  }
}
