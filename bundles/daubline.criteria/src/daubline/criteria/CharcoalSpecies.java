package daubline.criteria;

import daubline.engine.inference.Group;

/** Wood of the charcoal. */
public final class CharcoalSpecies extends WordCriterion {

  /** Described by its card. */
  public CharcoalSpecies() {
    super(new Card("charcoal_species", "Charcoal species", Group.FUEL,
        "1 for the word that the evidence makes most probable; otherwise its probability over that of the most probable.",
        Literature.RECORDING), "charcoal_species");
  }
}
