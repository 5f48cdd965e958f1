package daubline.engine.process.balance;

/**
 * Iron that the slag formers keep from becoming metal. All masses in kg. Exact stoichiometry of Fe2SiO4 and FeAl2O4.
 */
public final class LockedIron {

  /** Mass of FeO per mass of SiO2 in fayalite, 2.3915. */
  public static final double FEO_PER_SILICA = 2 * Oxide.FEO.molarMass() / Oxide.SIO2.molarMass();
  /** Mass of iron per mass of SiO2 in fayalite, 1.8589. */
  public static final double IRON_PER_SILICA = 2 * 0.055845 / Oxide.SIO2.molarMass();
  /** Mass of FeO per mass of Al2O3 in hercynite, 0.7046. */
  public static final double FEO_PER_ALUMINA = Oxide.FEO.molarMass() / Oxide.AL2O3.molarMass();

  private LockedIron() {
  }

  /** Iron that silica alone can bind as fayalite. */
  public static double byFayalite(double silica) {
    return IRON_PER_SILICA * silica;
  }

  /**
   * Iron bound in olivine when manganese, magnesium and calcium take their places first: moles of divalent oxide needed
   * are twice those of silica. This is the least that is locked; free wüstite comes on top.
   */
  public static double byOlivine(OxideMasses slagFormers) {
    double need = 2 * slagFormers.moles(Oxide.SIO2);
    double others = slagFormers.moles(Oxide.MNO) + slagFormers.moles(Oxide.MGO) + slagFormers.moles(Oxide.CAO);
    return Math.max(0, need - others) * 0.055845;
  }

  /** Iron that alumina can bind as hercynite, if it does not go into the glass instead. */
  public static double byHercynite(double alumina) {
    return FEO_PER_ALUMINA * alumina * Oxide.FEO.ironShare();
  }

  /** The most metal that a charge can give: iron in less the iron locked by fayalite; never below zero. */
  public static double mostMetal(OxideMasses charged) {
    return Math.max(0, charged.iron() - byFayalite(charged.mass(Oxide.SIO2)));
  }
}
