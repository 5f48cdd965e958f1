package daubline.engine.process;

import daubline.base.Finding;
import daubline.engine.process.shaft.ShaftParameter;
import daubline.engine.process.shaft.ShaftSolution;
import daubline.engine.process.thermo.Constants;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** What to beware of before lighting, in plain words with the physics behind it. */
final class BurnWarnings {

  private static final String WHERE = "before the fire";
  private static final double DEAD_BLAST = .5;
  private static final double HAND_PRESSURE = 1000;
  private static final double MOST_PEOPLE = 5;
  /** Kelvin that the gas of the zone loses by mole of vapour in a mole of dry air: -78 K at 0.02 in the usual furnace by the shaft model. */
  private static final double PER_VAPOUR = 3900;

  private final List<Forecast> forecasts;
  private final List<Finding> findings = new ArrayList<>();

  private BurnWarnings(List<Forecast> forecasts) {
    this.forecasts = forecasts;
  }

  static List<Finding> of(BurnInputs in, BurnDraw middle, List<Forecast> forecasts, double refused,
      RecoveryModel model) {
    BurnWarnings w = new BurnWarnings(forecasts);
    w.air(in);
    w.carbon(middle, in);
    w.heat(middle.solution);
    w.slag(in);
    w.iron(in);
    w.oreSizes(middle.solution);
    w.moisture(middle);
    w.worth(model, refused, in);
    return List.copyOf(w.findings);
  }

  private double of(BurnQuantity q) {
    return forecasts.get(q.ordinal()).central();
  }

  private void warn(String code, String what, String remedy) {
    findings.add(Finding.warning("burn." + code, WHERE, what, remedy));
  }

  private void note(String code, String what, String remedy) {
    findings.add(Finding.note("burn." + code, WHERE, what, remedy));
  }

  private static String number(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  private void air(BurnInputs in) {
    double litres = 6 * of(BurnQuantity.BLAST);
    boolean blown = in.inlets().blown();
    if (!blown) {
      drawn(in);
    }
    if (litres < DEAD_BLAST) {
      warn("low-air", number("%.2f L/min of air per cm² of hearth: walls take so much of the heat that slag may not run "
          + "and the iron does not gather", litres), blown ? "more air, or a narrower furnace" : "a taller shaft, coarser charcoal without fines, or more and larger openings");
    }
    double pressure = of(BurnQuantity.INLET_PRESSURE)
        + (Double.isNaN(of(BurnQuantity.BED_PRESSURE)) ? 0 : of(BurnQuantity.BED_PRESSURE));
    if (blown && pressure > HAND_PRESSURE) {
      warn("pressure", number("inlet and charge need about %.1f kPa, more than hand bellows give for long",
          pressure / 1000), "a wider inlet, or charcoal screened of fines");
    }
    double people = of(BurnQuantity.PEOPLE);
    if (people > MOST_PEOPLE) {
      warn("people", number("by hand this air is the work of about %.0f people at once: power is flow by pressure, and leaks are pumped too", people),
          "a blower, a wider inlet, or less air in a narrower furnace");
    }
  }

  private void drawn(BurnInputs in) {
    String pull = Double.isNaN(of(BurnQuantity.DRAUGHT)) ? "no hot column was found, so the air is that of a stack kept hot from outside"
        : number("its hot column pulls %.1f Pa", of(BurnQuantity.DRAUGHT));
    note("drawn", number("the furnace draws its own air, about %.0f L/min: %s, against charcoal of %.0f mm and %d openings of %.0f mm; a breeze of 3 m/s on the openings "
        + "presses 5 Pa, as much again", 6e4 * of(BurnQuantity.AIR), pull, 1000 * in.spread(ShaftParameter.CHARCOAL_SIZE).median(), in.inlets().number(),
        1000 * in.inlets().diameter()), "measure the air at an opening; yield and burn rate here come from smelts with bellows, none with drawn air was at hand");
  }

  private void carbon(BurnDraw middle, BurnInputs in) {
    CarbonTendency c = middle.carbon;
    if (c == null || Double.isNaN(of(BurnQuantity.CARBON))) {
      return;
    }
    String physics = c.hot() > 0 ? number("where it forms, gas of %.1f %% CO at %.0f °C allows %.2f %%, at the inlet %.2f %%, and it takes %.0f min as pieces of %.0f mm to sink",
        100 * c.coShare(), c.formed() - Constants.ZERO_C, 100 * c.aboveInlet(), 100 * c.atInlet(), c.hot() / 60, 1000 * in.spread(ShaftParameter.ORE_SIZE).median())
        : "hardly any iron forms above the inlet where it is hot enough to take carbon";
    note("carbon", number("by the gas alone the iron tends to %s, about %.2f %% carbon at the inlet: %s", c.word(), 100 * c.carbon(), physics),
        "slower descent and a taller hot zone carburise, slag rich in FeO takes carbon away; test a piece of the bloom, none was there to check this against");
  }

  private void heat(ShaftSolution solution) {
    if (!solution.converged()) {
      warn("refused", "no steady hot shaft was found: " + solution.refusal().orElse(""),
          "check air, diameter and charge; the other figures stand without it");
      return;
    }
    double hottest = of(BurnQuantity.HOTTEST);
    if (hottest < of(BurnQuantity.SLAG_LIQUIDUS)) {
      warn("cold", number("the charge reaches about %.0f °C, below the %.0f °C at which this slag is wholly liquid: it "
          + "will be stiff", hottest, of(BurnQuantity.SLAG_LIQUIDUS)), "more air or less heat lost through the wall");
    }
    if (of(BurnQuantity.MOUTH_GAS) > 800) {
      note("hot-mouth", "gas leaves hotter than 800 °C: heat that a taller charge would use goes out of the mouth",
          "a taller stack, or smaller charges more often");
    }
  }

  private void slag(BurnInputs in) {
    double blocking = of(BurnQuantity.BLOCKING);
    double duration = of(BurnQuantity.DURATION);
    String fills = number("slag and bloom fill the room below the air inlet after about %.1f h of %.1f h: %.1f kg of slag for %.1f L of room among the "
        + "charcoal%s", blocking / 3600, duration / 3600, of(BurnQuantity.SLAG), 1000 * in.room(), in.slagRoom().pit() > 0 ? ", the pit included" : "");
    if (blocking < duration && in.slagRoom().tapped()) {
      note("tap", fills, "tap before then, and again after as long");
    } else if (blocking < duration) {
      warn("choke", fills + "; then the air is blocked and the fire dies back", "tap, dig a deeper pit, raise the inlet, or charge a cleaner ore");
    }
    if (of(BurnQuantity.SLAG_VISCOSITY) > 1) {
      warn("viscous", "the slag is too thick to run freely: much silica and alumina for its iron",
          "less lining loss, a richer ore or some iron-rich slag with the charge");
    }
  }

  private void iron(BurnInputs in) {
    double bound = of(BurnQuantity.IRON_BOUND);
    if (bound < .3) {
      warn("poor-ore", number("silica binds most of the iron: at most %.0f %% of it can become metal", 100 * bound),
          "a richer or washed ore");
    }
    double size = in.spread(ShaftParameter.ORE_SIZE).median();
    if (size > .01) {
      warn("coarse-ore", number("ore of %.0f mm is reduced to its core only slowly", 1000 * size),
          "break it below 10 mm (common practice)");
    }
  }

  private void oreSizes(ShaftSolution solution) {
    if (solution.classes().size() > 1) {
      var sorted = solution.classes().stream().sorted(Comparator.comparingDouble(ShaftSolution.OreClass::size)).toList();
      var fine = sorted.getFirst();
      var coarse = sorted.getLast();
      note("ore-classes", number("the coarsest ore, %.1f mm and %.0f %% of its weight, comes to the air inlet with %.0f %% of its oxygen gone, the finest, %.1f mm, with %.0f %%",
          1000 * coarse.size(), 100 * coarse.share(), 100 * coarse.reduced(), 1000 * fine.size(), 100 * fine.reduced()),
          "break or screen out what is coarse; what is not reduced above the inlet goes into the slag or is reduced there");
    }
  }

  private void moisture(BurnDraw middle) {
    double vapour = middle.shaft.get(ShaftParameter.VAPOUR);
    if (vapour > 0 && middle.solution.converged()) {
      note("moist", number("the air carries %.1f %% of vapour: charcoal turns it into hydrogen and carbon monoxide, which cools the air inlet by some %.0f °C",
          100 * vapour / (1 + vapour), PER_VAPOUR * vapour), "nothing is to be done on a humid day but to know it; steam of wet charcoal leaves at the mouth");
    }
  }

  private void worth(RecoveryModel model, double refused, BurnInputs in) {
    if (model.priorWeight() >= 1) {
      note("worth", "yield here is no better than the trade's experience: all of it comes from seven published smelts, and on those no physics beat "
          + "their mean", "weigh ore, bloom and slag of your own smelts; after five the figure is mostly yours");
    } else {
      String skill = OwnSkill.of(in.ownRecoveries()).map(OwnSkill::sentence).orElse("below three smelts of your own, no better than the trade's experience");
      note("worth", number("%.0f %% of the yield still comes from seven published smelts, the rest from your own; %s", 100 * model.priorWeight(), skill),
          "weigh ore, bloom and slag of every smelt");
    }
    if (in.burnRate().isEmpty()) {
      note("measure", "the burn rate is a guess from two logged smelts; times and slag level follow it",
          "log three charges with the clock, or measure the air or CO and CO2 at the mouth");
    }
    if (refused > .05) {
      note("refused-draws", number("%.0f %% of the drawn furnaces had no steady hot shaft and are left out of "
          + "temperatures and gas", 100 * refused), "narrow the inputs, air and leakage first");
    }
  }
}
