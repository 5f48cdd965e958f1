package daubline.engine.process.shaft;

import java.util.List;
import java.util.Optional;

/**
 * What the shaft model says of a furnace. Explains; not validated for the yield of iron.
 *
 * @param inputs the furnace
 * @param refusal why there is no solution; empty when there is one, and then all else is meaningful
 * @param profile from the air inlet upward
 * @param rates masses per second
 * @param hearth what leaves the foot
 * @param classes the ore by size class as it comes to the air inlet
 * @param balance how far the balances are from closing
 * @param steps Newton steps taken
 */
public record ShaftSolution(ShaftInputs inputs, Optional<String> refusal, List<Level> profile, Rates rates,
    Hearth hearth, List<OreClass> classes, Balance balance, int steps) {

  /**
   * One height.
   *
   * @param height above the air inlet, m
   * @param gas gas temperature, K
   * @param solid temperature of charcoal and ore, K
   * @param coShare CO/(CO + CO2)
   * @param toWustite degree of reduction past FeO, all classes of the ore together, 0 to 1
   * @param toMetal degree of reduction past iron, all classes together, 0 to 1
   * @param hydrogen H2 in the gas, mole share
   * @param steam H2O in the gas, of the blast and of what dries, mole share
   * @param nitrogen N2 in the gas, mole share
   */
  public record Level(double height, double gas, double solid, double coShare, double toWustite, double toMetal, double hydrogen, double steam,
      double nitrogen) {

    /** CO in the gas, mole share. */
    public double monoxide() {
      return coShare * (1 - hydrogen - steam - nitrogen);
    }

    /** CO2 in the gas, mole share. */
    public double dioxide() {
      return (1 - coShare) * (1 - hydrogen - steam - nitrogen);
    }
  }

  /**
   * One size class of the ore.
   *
   * @param size size of its pieces, m
   * @param share share of the ore's mass, 0 to 1
   * @param toWustite degree of reduction past FeO, 0 to 1
   * @param toMetal degree of reduction past iron, 0 to 1
   */
  public record OreClass(double size, double share, double toWustite, double toMetal) {

    /** Share of the oxygen of haematite that is gone, 0 to 1. */
    public double reduced() {
      return (toWustite + 2 * toMetal) / 3;
    }
  }

  /**
   * Masses per second and times.
   *
   * @param charcoal charcoal as weighed, kg/s
   * @param ore ore as weighed, kg/s
   * @param metal iron, kg/s
   * @param slag slag, kg/s
   * @param ofCarbonMonoxideLimit charcoal as weighed over carbon burnt if all the air as blown gave CO
   * @param residence from mouth to air inlet, s
   */
  public record Rates(double charcoal, double ore, double metal, double slag, double ofCarbonMonoxideLimit,
      double residence) {
  }

  /**
   * The foot and the mouth.
   *
   * @param zoneGas gas leaving the burning zone, K
   * @param inletSolid solids at the air inlet, K
   * @param hottestSolid hottest solids, K
   * @param mouthGas gas at the mouth, K
   * @param topCoShare CO/(CO + CO2) at the mouth
   * @param topHydrogen H2 in the gas at the mouth, mole share
   * @param bound largest metal share that silica allows
   * @param metalShare share of the ore's iron that becomes metal
   * @param consolidation how far slag runs and metal gathers, 0 to 1
   * @param slagFeo mass share of FeO in the slag
   * @param slagSilica mass share of SiO2 in the slag
   * @param slagAlumina mass share of Al2O3 in the slag
   * @param riseTime time until slag and metal fill the hearth to the inlet, s
   * @param wallLoss heat through the stack wall, W
   * @param hearthLoss heat through hearth and bottom, W
   */
  public record Hearth(double zoneGas, double inletSolid, double hottestSolid, double mouthGas, double topCoShare, double topHydrogen,
      double bound, double metalShare, double consolidation, double slagFeo, double slagSilica, double slagAlumina,
      double riseTime, double wallLoss, double hearthLoss) {

    /** Share of the ore's iron found in a compact bloom. */
    public double bloomShare() {
      return metalShare * consolidation;
    }
  }

  /**
   * Relative remainders.
   *
   * @param carbon of carbon
   * @param oxygen of oxygen
   * @param iron of iron
   * @param hydrogen of hydrogen
   * @param energy of energy, against the heat of burning to CO
   */
  public record Balance(double carbon, double oxygen, double iron, double hydrogen, double energy) {
  }

  static ShaftSolution refused(ShaftInputs inputs, String reason) {
    return new ShaftSolution(inputs, Optional.of(reason), List.of(), null, null, List.of(), null, 0);
  }

  /** Gas temperature at a height above the inlet in m, K; that of the mouth above it. */
  public double gas(double height) {
    for (int i = 1; i < profile.size(); i++) {
      Level b = profile.get(i);
      if (b.height() >= height) {
        Level a = profile.get(i - 1);
        return a.gas() + (b.gas() - a.gas()) * (height - a.height()) / (b.height() - a.height());
      }
    }
    return profile.getLast().gas();
  }

  /** Whether there is a solution. */
  public boolean converged() {
    return refusal.isEmpty();
  }
}
