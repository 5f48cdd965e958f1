package daubline.engine.process;

import static daubline.engine.process.shaft.ShaftParameter.*;

import daubline.engine.process.air.Bellows;
import daubline.engine.process.air.Blast;
import daubline.engine.process.air.Crew;
import daubline.engine.process.air.Descent;
import daubline.engine.process.air.Draught;
import daubline.engine.process.air.PackedBed;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.ForwardBalance;
import daubline.engine.process.balance.LockedIron;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.balance.OxideMasses;
import daubline.engine.process.balance.Portion;
import daubline.engine.process.shaft.ShaftInputs;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.process.shaft.ShaftSolver;
import daubline.engine.process.slag.Liquidus;
import daubline.engine.process.slag.SlagDensity;
import daubline.engine.process.slag.ViscosityModel;
import daubline.engine.process.thermo.Combustion;
import daubline.engine.process.thermo.Constants;
import daubline.engine.stats.RandomStream;
import java.util.EnumMap;
import java.util.List;

/**
 * One possible course of a burn: every uncertain number takes one value and everything follows from it. The middle
 * course takes every median.
 */
final class BurnDraw {

  private static final double METAL_DENSITY = 4500;
  private static final double CO_SHARE = .75;
  private static final double CO_SHARE_SIGMA = .15;
  private static final double LEAST_SHARE = .4;
  private static final double ORE_SPREAD = .1;
  private static final double IRON_SPREAD = .015;
  /** Spread of the draught by wind and of Ergun's law for a charge, in the logarithm (common practice, no source). */
  private static final double DRAUGHT_SIGMA = .3;

  final ShaftInputs shaft;
  final ShaftSolution solution;
  /** Carbon tendency of the iron; null without a shaft. */
  CarbonTendency carbon;
  private final double flow;
  private final BurnInputs in;
  private final RecoveryModel model;
  private final RandomStream random;
  private final EnumMap<BurnQuantity, Double> values = new EnumMap<>(BurnQuantity.class);
  private final EnumMap<Guess, Double> guesses = new EnumMap<>(Guess.class);

  /** What is drawn beside the furnace itself; each has its share of the spread as an input of the shaft has. */
  enum Guess {
    BURN_RATE("charcoal burnt per air"), RECOVERY("recovery, from smelt to smelt"), ORE_IRON("iron of the ore"), ORE_GANGUE("silica of the ore"),
    ORE_MASS("weight of the ore"), CHARCOAL_MASS("weight of the charcoal"), LIQUIDUS("liquidus formula"), VISCOSITY("viscosity formula"),
    DRAUGHT("wind, and shape of the pieces");

    private final String label;

    Guess(String label) {
      this.label = label;
    }

    String label() {
      return label;
    }
  }

  /** A course; a null stream gives the middle one. */
  BurnDraw(BurnInputs in, RecoveryModel model, RandomStream random) {
    this.in = in;
    this.model = model;
    this.random = random;
    Analysis ore = ore();
    double oreMass = draw(in.oreMass());
    double charcoal = draw(in.charcoalMass());
    guesses.put(Guess.ORE_MASS, oreMass);
    guesses.put(Guess.CHARCOAL_MASS, charcoal);
    guesses.put(Guess.ORE_IRON, ore.iron());
    guesses.put(Guess.ORE_GANGUE, ore.share(Oxide.SIO2));
    ShaftInputs planned = shaftInputs(ore, oreMass, charcoal);
    DrawnAir drawn = in.inlets().blown() ? null : drawnAir(planned);
    shaft = drawn == null ? planned : drawn.shaft();
    solution = drawn == null ? new ShaftSolver().solve(shaft) : drawn.solution();
    flow = drawn == null ? get(AIR) : drawn.flow();
    air();
    double burn = burnRate();
    put(BurnQuantity.DURATION, charcoal / burn);
    put(BurnQuantity.RESIDENCE, Descent.residence(get(DIAMETER), get(STACK), get(CHARCOAL_DENSITY), burn));
    heat();
    iron(ore, oreMass * (1 - get(ORE_MOISTURE)), charcoal * (1 - get(CHARCOAL_MOISTURE)), charcoal / burn);
  }

  /** What was drawn for something beside the furnace; NaN where nothing was. */
  double guess(Guess guess) {
    return guesses.getOrDefault(guess, Double.NaN);
  }

  double value(BurnQuantity quantity) {
    return values.getOrDefault(quantity, Double.NaN);
  }

  private double get(ShaftParameter p) {
    return shaft.get(p);
  }

  private void put(BurnQuantity quantity, double value) {
    values.put(quantity, value);
  }

  private double draw(Spread spread) {
    return random == null ? spread.median() : spread.draw(random.uniform(), random.normal());
  }

  private double normal() {
    return random == null ? 0 : random.normal();
  }

  /** The ore with its iron and its gangue varied apart, as between the pieces of a heap. */
  private Analysis ore() {
    EnumMap<Oxide, Double> shares = new EnumMap<>(Oxide.class);
    double iron = Math.exp(IRON_SPREAD * normal());
    in.ore().shares().forEach((oxide, share) -> shares.put(oxide,
        Math.min(1, share * (oxide.isIron() ? iron : Math.exp(ORE_SPREAD * normal())))));
    return new Analysis(shares);
  }

  private ShaftInputs shaftInputs(Analysis ore, double oreMass, double charcoal) {
    ShaftInputs inputs = ShaftInputs.usual().with(in.oreSizes());
    for (ShaftParameter p : ShaftParameter.values()) {
      inputs = inputs.with(p, Math.clamp(p == VAPOUR && isDry() ? 0 : draw(in.spread(p)), p.low(), p.high()));
    }
    double ratio = oreMass * (1 - inputs.get(ORE_MOISTURE)) / (charcoal * (1 - inputs.get(CHARCOAL_MOISTURE)));
    return inputs.with(ORE_RATIO, clamp(ORE_RATIO, ratio)).with(ORE_IRON, clamp(ORE_IRON, ore.iron()))
        .with(ORE_SILICA, clamp(ORE_SILICA, ore.share(Oxide.SIO2)))
        .with(ORE_ALUMINA, clamp(ORE_ALUMINA, ore.share(Oxide.AL2O3)));
  }

  /** Dry air draws no number, so that the numbers drawn after it are those of a forecast that knows no moist air. */
  private boolean isDry() {
    return in.spread(VAPOUR).equals(Spread.exact(0));
  }

  private static double clamp(ShaftParameter p, double value) {
    return Math.clamp(value, p.low(), p.high());
  }

  private DrawnAir drawnAir(ShaftInputs planned) {
    guesses.put(Guess.DRAUGHT, Math.exp(DRAUGHT_SIGMA * normal()));
    return DrawnAir.of(planned, in.inlets(), guess(Guess.DRAUGHT));
  }

  private void air() {
    put(BurnQuantity.AIR, flow);
    double speed = Blast.inletSpeed(flow, in.inlets().diameter(), in.inlets().number());
    put(BurnQuantity.BLAST, Blast.perArea(flow, get(DIAMETER)));
    put(BurnQuantity.INLET_SPEED, speed);
    put(BurnQuantity.INLET_PRESSURE, Blast.inletPressure(speed, get(AMBIENT)));
    put(BurnQuantity.NO_BLOOM, RecoveryModel.noBloom(Blast.perArea(flow, get(DIAMETER))));
  }

  /** Share of the limit on the air as told; the share holds what leaks and what leaves as CO2 together. */
  private double burnRate() {
    Blast.BurnBounds bounds = Blast.burnBounds(flow, get(FIXED_CARBON), get(CHARCOAL_MOISTURE));
    put(BurnQuantity.BURN_LEAST, bounds.allCarbonDioxide());
    put(BurnQuantity.BURN_MOST, bounds.allCarbonMonoxide());
    double share = Math.clamp(CO_SHARE + CO_SHARE_SIGMA * normal(), LEAST_SHARE, 1);
    double rate = share * flow * Combustion.carbonPerAir(1);
    double burn = in.burnRate().map(this::draw).orElse(rate);
    guesses.put(Guess.BURN_RATE, in.burnRate().isPresent() ? burn : share);
    put(BurnQuantity.BURN_RATE, burn);
    return burn;
  }

  private void heat() {
    if (!solution.converged()) {
      return;
    }
    ShaftSolution.Hearth h = solution.hearth();
    put(BurnQuantity.ZONE_GAS, h.zoneGas() - Constants.ZERO_C);
    put(BurnQuantity.HOTTEST, h.hottestSolid() - Constants.ZERO_C);
    put(BurnQuantity.MOUTH_GAS, h.mouthGas() - Constants.ZERO_C);
    put(BurnQuantity.TOP_CO, h.topCoShare());
    put(BurnQuantity.TOP_H2, h.topHydrogen());
    carbon = CarbonTendency.of(solution, value(BurnQuantity.RESIDENCE));
    put(BurnQuantity.CARBON, carbon.carbon());
    put(BurnQuantity.HEIGHT_900, heightOf(900 + Constants.ZERO_C));
    double area = Math.PI * get(DIAMETER) * get(DIAMETER) / 4;
    double flux = flow * (1 - get(LEAK)) * (Blast.density(Constants.BLOWER_T) + Combustion.carbonPerAir(1)) / area;
    PackedBed bed = new PackedBed(get(CHARCOAL_SIZE), get(SPHERICITY), get(VOIDAGE));
    double drop = bed.drop(flux, get(STACK), solution::gas);
    put(BurnQuantity.BED_PRESSURE, drop);
    put(BurnQuantity.DRAUGHT, Draught.pressure(get(STACK), solution::gas, get(AMBIENT)));
    double strokes = in.inlets().blown() ? flow / in.inlets().delivered() : 0;
    double power = new Bellows(strokes, 1, in.inlets().delivered()).power(value(BurnQuantity.INLET_PRESSURE) + drop);
    put(BurnQuantity.BELLOWS_POWER, power);
    put(BurnQuantity.PEOPLE, power / Bellows.PERSON_POWER);
    put(BurnQuantity.PEOPLE_BY_SHIFT, Crew.needed(power, in.inlets().turn(), value(BurnQuantity.DURATION)));
  }

  /** Highest level at which the charge is this hot; 0 when it never is. */
  private double heightOf(double t) {
    double height = 0;
    for (ShaftSolution.Level level : solution.profile()) {
      height = level.solid() >= t ? level.height() : height;
    }
    return height;
  }

  private void iron(Analysis ore, double dryOre, double dryCharcoal, double duration) {
    List<Portion> portions = List.of(new Portion("ore", dryOre, ore),
        new Portion("lining", get(LINING) * duration, in.lining()),
        new Portion("ash", dryCharcoal * get(ASH), in.ash()));
    OxideMasses charged = OxideMasses.of(portions);
    double bound = LockedIron.mostMetal(charged) / charged.iron();
    double bloomIron = get(BLOOM_IRON);
    double oreIron = dryOre * ore.iron();
    double recovery = recovery();
    double metal = Math.min(recovery * bloomIron * oreIron, bound * charged.iron());
    put(BurnQuantity.IRON_BOUND, bound);
    put(BurnQuantity.RECOVERY, metal / bloomIron / oreIron);
    put(BurnQuantity.METAL, metal);
    put(BurnQuantity.BLOOM, metal / bloomIron);
    slag(ForwardBalance.of(portions, ForwardBalance.Partition.ofIron(metal / charged.iron())), duration);
  }

  private double recovery() {
    if (random == null) {
      return model.middle();
    }
    double drawn = model.draw(random);
    double recovery = random.uniform() < value(BurnQuantity.NO_BLOOM) ? 0 : Math.min(1, drawn);
    guesses.put(Guess.RECOVERY, recovery);
    return recovery;
  }

  private void slag(ForwardBalance balance, double duration) {
    Analysis slag = balance.slag().analysis();
    double mass = balance.slag().total();
    put(BurnQuantity.SLAG, mass);
    put(BurnQuantity.SLAG_FEO, slag.share(Oxide.FEO));
    double hottest = solution.converged() ? solution.hearth().hottestSolid() : 1500;
    if (slag.share(Oxide.SIO2) > 0) {
      Liquidus liquidus = Liquidus.of(slag);
      guesses.put(Guess.LIQUIDUS, normal());
      guesses.put(Guess.VISCOSITY, normal());
      put(BurnQuantity.SLAG_LIQUIDUS, liquidus.temperature() + liquidus.sigma() * guess(Guess.LIQUIDUS) - Constants.ZERO_C);
      put(BurnQuantity.SLAG_VISCOSITY,
          ViscosityModel.CALIBRATED.of(slag, hottest) * Math.pow(10, VISCOSITY_SIGMA * guess(Guess.VISCOSITY)));
    }
    double depth = get(HEARTH) + in.slagRoom().pit() / (Math.PI * get(DIAMETER) * get(DIAMETER) / 4);
    double blocking = Descent.blockingTime(get(DIAMETER), depth, get(HEARTH_ROOM), mass / duration,
        SlagDensity.of(slag, hottest), balance.metal() / duration, METAL_DENSITY);
    put(BurnQuantity.BLOCKING, blocking);
    put(BurnQuantity.TAPS, Math.floor(duration / blocking));
  }

  /** Error of the calibrated viscosity on the study left out, log10. */
  private static final double VISCOSITY_SIGMA = .12;
}
