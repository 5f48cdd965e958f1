package daubline.engine.process;

import java.util.List;

/** Cautions that stand beside every forecast of gas, heat and slag. No figure here is offered as a safe limit. */
public final class Cautions {

  /** Who decides. */
  public static final String RULES = "Local law, the site's rules and competent, licensed practice decide; "
      + "nothing here replaces them.";
  /** Gas. */
  public static final String GAS = "The furnace gives off carbon monoxide, which cannot be smelt or seen and can kill. "
      + "Never run it indoors or under closed cover, stay out of the plume, carry alarms, and at headache or nausea "
      + "leave and call for help.";
  /** Heat. */
  public static final String HEAT = "Mouth, slag and bloom burn skin and eyes at a distance. Keep people back, wear "
      + "natural fibres, gloves and eye protection fit for glowing work, and keep a fire watch until all is cold.";
  /** Steam. */
  public static final String STEAM = "Damp clay, stones, ground or tools under hot slag can burst into steam. Dry "
      + "everything slowly and keep water away from molten slag.";
  /** Dust. */
  public static final String DUST = "Crushing ore and breaking lining makes fine silica dust. Work wet or with "
      + "breathing protection as the competent person decides.";

  private Cautions() {
  }

  /** All of them, who decides last. */
  public static List<String> all() {
    return List.of(GAS, HEAT, STEAM, DUST, RULES);
  }
}
