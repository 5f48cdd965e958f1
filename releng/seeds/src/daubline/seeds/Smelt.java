package daubline.seeds;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The mass balance of one invented smelt, kg: ore, lining, ash and flux go in; metal, slags by class and what nobody
 * found come out. Iron is 0.7773 of FeO and 0.6994 of Fe2O3 (atomic weights); the other oxides are not reduced, half of
 * the phosphorus and a fifth of the potash excepted (from memory), which leave with metal and gas.
 */
final class Smelt {

  static final double FE_IN_FEO = 0.7773;
  static final double FE_IN_FE2O3 = 0.6994;
  static final List<String> OXIDES = List.of("SiO2", "TiO2", "Al2O3", "FeO", "MnO", "MgO", "CaO", "Na2O", "K2O", "P2O5");
  /** Share of the iron charged that was neither weighed as metal nor as slag. */
  private static final double IRON_LOST = 0.025;
  /** Share of each slag class that stayed in the grass. */
  private static final double NOT_FOUND = 0.03;
  private static final Map<String, Double> KEPT = Map.of("P2O5", 0.5, "K2O", 0.8);

  private final Recipe recipe;
  private final Map<String, Map<String, Double>> lots;
  private final Map<String, Double> inputs = new LinkedHashMap<>();
  private final Map<String, Map<String, Double>> slags = new LinkedHashMap<>();

  /**
   * Works out a recipe.
   *
   * @param lots mass shares of the components by lot
   */
  Smelt(Recipe recipe, Map<String, Map<String, Double>> lots) {
    this.recipe = recipe;
    this.lots = lots;
    double ore = recipe.of("ore") * (1 - recipe.of("moisture") / 100);
    inputs.put(recipe.text("ore_lot"), ore * (1 - recipe.of("unreacted") / 100));
    inputs.put("clay-mix", recipe.of("lining"));
    inputs.put("charcoal-ash", recipe.of("charcoal") * 0.95 * 0.024);
    inputs.put("shell-lime", recipe.of("flux"));
    share();
  }

  private double in(String lot, String component) {
    return inputs.get(lot) * lots.get(lot).getOrDefault(component, 0.0);
  }

  /** Ore that came through unchanged, dry. */
  double unreacted() {
    return recipe.of("ore") * (1 - recipe.of("moisture") / 100) * recipe.of("unreacted") / 100;
  }

  /** Iron of everything that reacted. */
  double ironIn() {
    return inputs.keySet().stream().mapToDouble(lot -> FE_IN_FE2O3 * in(lot, "Fe2O3")).sum();
  }

  /** Iron in the metal. */
  double iron() {
    return recipe.of("recovery") / 100 * FE_IN_FE2O3 * in(recipe.text("ore_lot"), "Fe2O3");
  }

  /** The bloom with the slag in it. */
  double bloom() {
    return iron() / (recipe.of("metal_share") / 100);
  }

  /** The slags by residue class, oxides in kg, before anything was lost in the grass. */
  Map<String, Map<String, Double>> slags() {
    return slags;
  }

  /** The mass of a class as weighed. */
  double weighed(String residueClass) {
    return (1 - NOT_FOUND) * slags.get(residueClass).values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** The share of an oxide in a class. */
  double share(String residueClass, String oxide) {
    Map<String, Double> slag = slags.get(residueClass);
    return slag.get(oxide) / slag.values().stream().mapToDouble(Double::doubleValue).sum();
  }

  /** The class that holds most of the slag. */
  String mainSlag() {
    return recipe.isTapped() ? "tapped_slag" : inner();
  }

  /** The class of the slag that stayed inside. */
  String inner() {
    return recipe.hasPit() ? "pit_block" : recipe.isDome() ? "furnace_bottom" : "furnace_slag";
  }

  /** Parts every oxide over the classes; lining goes more than the rest into the lining slag, iron less. */
  private void share() {
    for (String oxide : OXIDES) {
      if (oxide.equals("FeO")) {
        give(oxide, (ironIn() * (1 - IRON_LOST) - iron()) / FE_IN_FEO, 0.03, 1.03);
        continue;
      }
      inputs.forEach((lot, mass) -> {
        double kept = KEPT.getOrDefault(oxide, 1.0) * in(lot, oxide);
        boolean lining = lot.equals("clay-mix");
        give(oxide, kept, lining ? 0.28 : lot.equals("charcoal-ash") ? 0.15 : 0.03, lining ? 0.86 : 1.01);
      });
    }
  }

  private void give(String oxide, double mass, double toLiningSlag, double liking) {
    double tapped = recipe.of("tapped") / 100 * liking;
    double rest = mass * (1 - toLiningSlag - 0.02);
    add("tapped_slag", oxide, rest * tapped);
    add(inner(), oxide, rest * (1 - tapped));
    add("lining_slag", oxide, mass * toLiningSlag);
    add("prills_runs", oxide, mass * 0.02);
  }

  private void add(String residueClass, String oxide, double mass) {
    if (mass > 0) {
      slags.computeIfAbsent(residueClass, c -> new LinkedHashMap<>()).merge(oxide, mass, Double::sum);
    }
  }
}
