package daubline.engine.process;

import daubline.engine.process.air.Crew;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.OreSizes;
import daubline.engine.process.shaft.ShaftParameter;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is planned for one burn. Masses in kg, lengths in m, flows in m³/s at 20 °C.
 *
 * @param furnace what is known of furnace and charge; anything missing takes its usual value with the usual spread
 * @param ore oxides of the dry ore
 * @param lining oxides of the lining
 * @param ash oxides of the charcoal ash
 * @param oreMass ore to be charged, as weighed
 * @param charcoalMass charcoal to be burnt while ore is charged, as weighed
 * @param inlets where the air goes in
 * @param slagRoom where the slag goes
 * @param burnRate charcoal burnt, kg/s, from a charge log of three charges or more
 * @param oreSizes size classes of the ore, their sizes by that of {@link ShaftParameter#ORE_SIZE}
 * @param ownRecoveries bloom/(ore × Fe) of the team's earlier smelts
 */
public record BurnInputs(Map<ShaftParameter, Spread> furnace, Analysis ore, Analysis lining, Analysis ash,
    Spread oreMass, Spread charcoalMass, Inlets inlets, SlagRoom slagRoom, Optional<Spread> burnRate, OreSizes oreSizes,
    List<Double> ownRecoveries) {

  /** A clay for linings when none was analysed: 65 % SiO2, 18 % Al2O3, 5 % FeO (common practice, no source). */
  public static final Analysis USUAL_LINING = Analysis.ofPercent(Oxide.SIO2, 65, Oxide.AL2O3, 18, Oxide.FEO, 5,
      Oxide.CAO, 1, Oxide.MGO, 1, Oxide.K2O, 3);
  /** An ash of hardwood charcoal when none was analysed (common practice, no source). */
  public static final Analysis USUAL_ASH = Analysis.ofPercent(Oxide.SIO2, 10, Oxide.AL2O3, 2, Oxide.CAO, 45, Oxide.MGO,
      8, Oxide.K2O, 15, Oxide.P2O5, 5, Oxide.MNO, 3);

  /**
   * Where the air goes in.
   *
   * @param diameter inner diameter of an air inlet, m
   * @param number number of air inlets
   * @param delivered share of the bellows' stroke that reaches the furnace, 0 to 1
   * @param blown whether bellows or a blower move the air; otherwise the furnace draws it
   * @param turn how long somebody blows before relief, s
   */
  public record Inlets(double diameter, int number, double delivered, boolean blown, double turn) {

    /** Share of a stroke that hand bellows deliver when nobody measured it; 0.5 to 0.9 (from memory). */
    public static final double USUAL_DELIVERED = .7;
    /** One inlet of 25 mm. */
    public static final Inlets USUAL = new Inlets(.025, 1, USUAL_DELIVERED, true);

    /** The same with a turn of usual length. */
    public Inlets(double diameter, int number, double delivered, boolean blown) {
      this(diameter, number, delivered, blown, Crew.USUAL_TURN);
    }
  }

  /**
   * Where the slag goes beside the hearth between floor and air inlet.
   *
   * @param pit volume of a pit below the floor that slag can fill, m³; 0 for none
   * @param tapped whether it is let out through an opening
   */
  public record SlagRoom(double pit, boolean tapped) {

    /** No pit, no tap. */
    public static final SlagRoom NONE = new SlagRoom(0, false);
  }

  public BurnInputs {
    EnumMap<ShaftParameter, Spread> copy = new EnumMap<>(ShaftParameter.class);
    copy.putAll(furnace);
    furnace = Collections.unmodifiableMap(copy);
    ownRecoveries = List.copyOf(ownRecoveries);
  }

  /** A burn of so much ore and charcoal in a furnace, with the usual lining, ash and inlet, neither pit nor tap. */
  public static BurnInputs of(Map<ShaftParameter, Spread> furnace, Analysis ore, double oreMass, double charcoalMass) {
    return new BurnInputs(furnace, ore, USUAL_LINING, USUAL_ASH, Spread.relative(oreMass, .02),
        Spread.relative(charcoalMass, .03), Inlets.USUAL, SlagRoom.NONE, Optional.empty(), OreSizes.ONE, List.of());
  }

  /** The same with another recovery history. */
  public BurnInputs withOwnRecoveries(List<Double> recoveries) {
    return new BurnInputs(furnace, ore, lining, ash, oreMass, charcoalMass, inlets, slagRoom, burnRate, oreSizes, recoveries);
  }

  /** The same with a burn rate from the charge log, kg/s. */
  public BurnInputs withBurnRate(Spread rate) {
    return new BurnInputs(furnace, ore, lining, ash, oreMass, charcoalMass, inlets, slagRoom, Optional.of(rate), oreSizes, ownRecoveries);
  }

  /** The same with other air inlets. */
  public BurnInputs withInlets(Inlets others) {
    return new BurnInputs(furnace, ore, lining, ash, oreMass, charcoalMass, others, slagRoom, burnRate, oreSizes, ownRecoveries);
  }

  /** The same with another place for the slag. */
  public BurnInputs withSlagRoom(SlagRoom room) {
    return new BurnInputs(furnace, ore, lining, ash, oreMass, charcoalMass, inlets, room, burnRate, oreSizes, ownRecoveries);
  }

  /** The same with the ore in size classes. */
  public BurnInputs withOreSizes(OreSizes sizes) {
    return new BurnInputs(furnace, ore, lining, ash, oreMass, charcoalMass, inlets, slagRoom, burnRate, sizes, ownRecoveries);
  }

  /** What is used for a parameter: what is known, or the usual value with its usual spread. */
  public Spread spread(ShaftParameter p) {
    Spread known = furnace.get(p);
    return known != null ? known : usual(p);
  }

  /** Room that slag can fill before it reaches the air inlet, pit included, every input at its median, m³. */
  public double room() {
    double diameter = spread(ShaftParameter.DIAMETER).median();
    double hearth = Math.PI * diameter * diameter / 4 * spread(ShaftParameter.HEARTH).median();
    return (hearth + slagRoom.pit()) * spread(ShaftParameter.HEARTH_ROOM).median();
  }

  /** Spreads of small charcoal furnaces where nothing is known (assumed; see the shaft's page). */
  private static Spread usual(ShaftParameter p) {
    return switch (p) {
      case LEAK -> Spread.even(.05, .5);
      case ZONE_CO -> Spread.even(.6, .98);
      case CHARCOAL_DENSITY -> Spread.even(180, 280);
      case VOIDAGE -> Spread.even(.40, .52);
      case FIXED_CARBON -> Spread.even(.72, .88);
      case CHARCOAL_MOISTURE -> Spread.even(.03, .10);
      case REDUCIBILITY -> new Spread(1, .32, 3.13, Spread.Shape.LOG_NORMAL);
      case REACTIVITY -> new Spread(3.2e-4, 1.1e-4, 9e-4, Spread.Shape.LOG_NORMAL);
      case WALL_LOSS -> Spread.even(3, 11);
      case HOT_ZONE -> Spread.even(0, .35);
      case REOXIDISED -> Spread.even(0, .3);
      case ORE_MELTS -> Spread.even(1453, 1533);
      case LINING -> Spread.even(.05 / 3600, .5 / 3600);
      case HEARTH_ROOM -> Spread.even(.35, .55);
      case BLOOM_IRON -> Spread.even(.7, .9);
      default -> Spread.exact(p.usual());
    };
  }
}
