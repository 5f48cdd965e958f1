package daubline.validation;

import daubline.engine.process.BurnInputs;
import daubline.engine.process.Spread;
import daubline.engine.process.balance.Analysis;
import daubline.engine.process.balance.Oxide;
import daubline.engine.process.shaft.ShaftParameter;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A published smelt as printed; NaN for what is not.
 *
 * @param id its number in the source
 * @param worker who led it
 * @param diameter inside, m
 * @param stack above the air inlet, m
 * @param hearth height of the air inlet above the base, m
 * @param oreIron iron of the ore, 0 to 1
 * @param ore ore charged, kg
 * @param charcoal charcoal, kg, often with the preheat
 * @param air air, m³/s; NaN where nobody measured or stated it
 * @param airAssumed air taken for the shaft where none is stated, m³/s
 * @param chargeRatio ore per charcoal of a charge; NaN where not stated
 * @param hours main sequence, s
 * @param bloom bloom, kg; 0 when none formed
 * @param slag slag, kg
 * @param burnRate charcoal burnt, kg/s
 * @param statedYield bloom per ore as the source states it, 0 to 1
 * @param note what is doubtful
 */
record Smelt(String id, String worker, double diameter, double stack, double hearth, double oreIron, double ore, double charcoal, double air, double airAssumed,
    double chargeRatio, double hours, double bloom, double slag, double burnRate, double statedYield, String note) {

  /** All of them. */
  static List<Smelt> all() {
    return Csv.rows("published-smelts").stream().map(Smelt::of).toList();
  }

  private static Smelt of(NamedCsvRecord r) {
    double inlet = Csv.number(r, "inlet_above_base_cm") / 100;
    double stack = Csv.number(r, "stack_cm") / 100;
    double height = Csv.number(r, "height_cm") / 100;
    return new Smelt(r.getField("id"), r.getField("worker").split(",")[0], Csv.number(r, "diameter_cm") / 100, Double.isNaN(stack) ? height - inlet : stack, inlet,
        Csv.number(r, "ore_iron_pct") / 100, Csv.number(r, "ore_kg"), Csv.number(r, "charcoal_kg"), Csv.number(r, "air_l_min") / 60_000,
        Csv.number(r, "air_assumed_l_min") / 60_000, Csv.number(r, "charge_ratio"),
        Csv.number(r, "hours") * 3600, Csv.number(r, "bloom_kg"), Csv.number(r, "slag_kg"), Csv.number(r, "burn_kg_h") / 3600,
        Csv.number(r, "stated_yield_pct") / 100, r.getField("note"));
  }

  /** Bloom over iron of the ore, 0 to 1: an upper bound of the recovery, since a bloom holds slag. */
  double recovery() {
    return bloom / (ore * oreIron);
  }

  /** Blast per hearth area, L/min per cm². */
  double blast() {
    return 6 * air / (Math.PI * diameter * diameter / 4);
  }

  /** What a person would have planned; empty when air or charcoal is not stated. */
  Optional<BurnInputs> plan() {
    return air > 0 && charcoal > 0 ? Optional.of(inputs(air, charcoal)) : Optional.empty();
  }

  /** The furnace for the shaft model, with air assumed where none is stated. */
  BurnInputs furnace() {
    return inputs(air > 0 ? air : airAssumed, charcoal > 0 ? charcoal : 2 * ore);
  }

  private BurnInputs inputs(double flow, double fuel) {
    Map<ShaftParameter, Spread> furnace = new EnumMap<>(ShaftParameter.class);
    furnace.put(ShaftParameter.DIAMETER, Spread.relative(diameter, .03));
    furnace.put(ShaftParameter.AIR, Spread.relative(flow, .06));
    if (stack > 0) {
      furnace.put(ShaftParameter.STACK, Spread.relative(stack, .03));
    }
    if (hearth > 0) {
      furnace.put(ShaftParameter.HEARTH, Spread.relative(hearth, .05));
    }
    furnace.put(ShaftParameter.ORE_SIZE, Spread.even(.003, .010));
    furnace.put(ShaftParameter.ORE_RATIO, Spread.relative(chargeRatio > 0 ? chargeRatio : ShaftParameter.ORE_RATIO.usual(), .1));
    Analysis analysis = Analysis.EMPTY.with(Oxide.FE2O3, Math.min(1, oreIron / Oxide.FE2O3.ironShare())).with(Oxide.SIO2, .09).with(Oxide.AL2O3, .03);
    return BurnInputs.of(furnace, analysis, ore, fuel);
  }
}
