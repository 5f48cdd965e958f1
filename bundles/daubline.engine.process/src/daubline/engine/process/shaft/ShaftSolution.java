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
 * @param balance how far the balances are from closing
 * @param steps Newton steps taken
 */
public record ShaftSolution(ShaftInputs inputs, Optional<String> refusal, List<Level> profile, Rates rates,
    Hearth hearth, Balance balance, int steps) {

  /**
   * One height.
   *
   * @param height above the air inlet, m
   * @param gas gas temperature, K
   * @param solid temperature of charcoal and ore, K
   * @param coShare CO/(CO + CO2)
   * @param toWustite degree of reduction past FeO, 0 to 1
   * @param toMetal degree of reduction past iron, 0 to 1
   */
  public record Level(double height, double gas, double solid, double coShare, double toWustite, double toMetal) {
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
  public record Hearth(double zoneGas, double inletSolid, double hottestSolid, double mouthGas, double topCoShare,
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
   * @param energy of energy, against the heat of burning to CO
   */
  public record Balance(double carbon, double oxygen, double iron, double energy) {
  }

  static ShaftSolution refused(ShaftInputs inputs, String reason) {
    return new ShaftSolution(inputs, Optional.of(reason), List.of(), null, null, null, 0);
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
