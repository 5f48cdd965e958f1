package daubline.engine.process;

import daubline.base.Source;
import daubline.engine.process.slag.Liquidus;
import daubline.engine.process.slag.ViscosityModel;

/** Something that a forecast tells, with its unit, its source and what its figure is worth. */
public enum BurnQuantity {
  /** Air going in. */
  AIR("air going in", "m³/s", Standing.ESTIMATE, Source.derived("as planned, or from the bellows' strokes; without bellows, where the draught of the hot column "
      + "equals what openings and charge resist: hydrostatics, and S. Ergun, Chem. Eng. Prog. 48 (1952) 89; wind and shape of the pieces by a factor of 1.6 either "
      + "way (common practice, no source)")),
  /** Blast per hearth area. */
  BLAST("blast per hearth area", "m/s", Standing.EXACT, Source.derived("flow by cross section")),
  /** Air speed in the inlet. */
  INLET_SPEED("air speed in the inlet", "m/s", Standing.EXACT, Source.derived("flow by inlet area")),
  /** Pressure to drive the inlet. */
  INLET_PRESSURE("pressure lost in the inlet", "Pa", Standing.EXACT, Source.derived("Bernoulli with entry loss")),
  /** Pressure lost in the bed. */
  BED_PRESSURE("pressure lost in the charge", "Pa", Standing.ESTIMATE,
      Source.published("S. Ergun, Chem. Eng. Prog. 48 (1952) 89, with the temperature at each height")),
  /** Draught. */
  DRAUGHT("draught of the hot column", "Pa", Standing.ESTIMATE, Source.derived("hydrostatics, with the gas temperature at each height")),
  /** Muscle power. */
  BELLOWS_POWER("muscle power at the bellows", "W", Standing.ESTIMATE,
      Source.derived("flow by pressure of inlet and charge; a third of the muscle's power ends up in the air (common "
          + "practice, no source)")),
  /** People at the bellows. */
  PEOPLE("people at the bellows at once", "1", Standing.ESTIMATE,
      Source.derived("muscle power by 75 W that a fit person keeps up for hours (common practice, no source)")),
  /** People who blow by turns. */
  PEOPLE_BY_SHIFT("people to blow by turns, those resting among them", "1", Standing.ESTIMATE,
      Source.derived("muscle power by what a fit person keeps up for one turn and for the whole charging: 0.35 - 0.092 log10(minutes) horse power, "
          + "D. R. Wilkie, Ergonomics 3 (1960) 1 (from memory)")),
  /** Least charcoal burnt. */
  BURN_LEAST("charcoal burnt, all to CO2", "kg/s", Standing.EXACT, Source.derived("stoichiometry")),
  /** Most charcoal burnt. */
  BURN_MOST("charcoal burnt, all to CO", "kg/s", Standing.EXACT, Source.derived("stoichiometry")),
  /** Charcoal burnt. */
  BURN_RATE("charcoal burnt", "kg/s", Standing.EXPERIENCE,
      Source.derived("0.75 (0.5–1.0) of the all-CO limit from two logged smelts, or the charge log")),
  /** Time to burn the charcoal. */
  DURATION("duration of charging", "s", Standing.EXPERIENCE, Source.derived("charcoal by burn rate")),
  /** Time from mouth to inlet. */
  RESIDENCE("time from mouth to air inlet", "s", Standing.EXPERIENCE, Source.derived("stack volume, bulk density and "
      + "burn rate")),
  /** Gas leaving the burning zone. */
  ZONE_GAS("gas at the air inlet", "°C", Standing.EXPLAINS, Shaft.SOURCE),
  /** Hottest solids. */
  HOTTEST("hottest charge", "°C", Standing.EXPLAINS, Shaft.SOURCE),
  /** Gas at the mouth. */
  MOUTH_GAS("gas at the mouth", "°C", Standing.EXPLAINS, Shaft.SOURCE),
  /** CO share at the mouth. */
  TOP_CO("CO/(CO + CO2) at the mouth", "1", Standing.EXPLAINS, Shaft.SOURCE),
  /** Hydrogen at the mouth. */
  TOP_H2("H2 of the air's moisture at the mouth", "1", Standing.EXPLAINS, Shaft.SOURCE),
  /** Height of 900 °C. */
  HEIGHT_900("height of 900 °C above the inlet", "m", Standing.EXPLAINS, Shaft.SOURCE),
  /** Most metal. */
  IRON_BOUND("largest share of iron that silica leaves free", "1", Standing.EXACT,
      Source.derived("stoichiometry of fayalite")),
  /** Recovery. */
  RECOVERY("bloom per iron in ore", "1", Standing.EXPERIENCE, RecoveryModel.SOURCE),
  /** Chance of no bloom. */
  NO_BLOOM("chance of no bloom", "1", Standing.WEAK, Source.derived("one published low-blast smelt and the heat "
      + "balance of the shaft")),
  /** Bloom mass. */
  BLOOM("bloom", "kg", Standing.EXPERIENCE, RecoveryModel.SOURCE),
  /** Metal. */
  METAL("iron in the bloom", "kg", Standing.EXPERIENCE, RecoveryModel.SOURCE),
  /** Carbon of the iron. */
  CARBON("carbon that the gas gives the iron", "1", Standing.TENDENCY, Source.derived("CO and CO2 against the Boudouard equilibrium, carbon of austenite after "
      + "S. Gunnarson 1967 (from memory), Fick's law in a piece of the ore's size, time from the descent")),
  /** Slag mass. */
  SLAG("slag", "kg", Standing.EXPERIENCE, Source.derived("oxide balance with the recovery above")),
  /** FeO of slag. */
  SLAG_FEO("FeO in slag", "1", Standing.EXPERIENCE, Source.derived("oxide balance with the recovery above")),
  /** Liquidus of slag. */
  SLAG_LIQUIDUS("slag wholly liquid above", "°C", Standing.ESTIMATE, Liquidus.SOURCE),
  /** Viscosity of slag. */
  SLAG_VISCOSITY("viscosity of slag where the charge is hottest", "Pa·s", Standing.ESTIMATE,
      ViscosityModel.CALIBRATED.source()),
  /** Time until slag reaches the inlet. */
  BLOCKING("slag reaches the air inlet after", "s", Standing.EXPERIENCE,
      Source.derived("slag and metal by time against the room below the inlet")),
  /** Taps needed. */
  TAPS("times to tap, or pits to fill", "1", Standing.EXPERIENCE, Source.derived("duration by blocking time"));

  private final String label;
  private final String unit;
  private final Standing standing;
  private final Source source;

  BurnQuantity(String label, String unit, Standing standing, Source source) {
    this.label = label;
    this.unit = unit;
    this.standing = standing;
    this.source = source;
  }

  /** Holds the source that several constants name before the constants exist. */
  private static final class Shaft {
    static final Source SOURCE = Source.derived("steady counter-current shaft model");
  }

  /** What a figure is worth. */
  public enum Standing {
    /** Follows from stoichiometry or geometry. */
    EXACT("follows from stoichiometry or geometry"),
    /** The spread of published smelts, narrowed by the team's own. */
    EXPERIENCE("no better than the trade's experience until your own trials are in"),
    /** The physics. */
    EXPLAINS("explains, not validated for yield"),
    /** The physics of one part of the matter. */
    TENDENCY("a tendency: not checked against blooms"),
    /** A formula used near the edge of its data. */
    ESTIMATE("estimate from a published formula"),
    /** One case. */
    WEAK("weak: rests on one published case");

    private final String words;

    Standing(String words) {
      this.words = words;
    }

    /** The words to print beside the figure. */
    public String words() {
      return words;
    }
  }

  /** The name to print. */
  public String label() {
    return label;
  }

  /** Unit of the figures; temperatures in °C. */
  public String unit() {
    return unit;
  }

  /** What the figure is worth. */
  public Standing standing() {
    return standing;
  }

  /** Where the formula comes from. */
  public Source source() {
    return source;
  }
}
