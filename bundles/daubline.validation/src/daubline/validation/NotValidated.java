package daubline.validation;

import java.util.List;

/** What nothing here was checked against, said plainly. */
final class NotValidated implements Section {

  @Override
  public String title() {
    return "Not validated";
  }

  @Override
  public void write(Page page) {
    page.list(List.of(
        "**Apportionment of a slag to ore, lining and ash**: no published set of ore, lining, ash and slag of one smelt with its published apportionment was at hand. "
            + "The solver is checked against a statistics library and on mixtures of known shares (`ApportionmentTest`); that it finds the shares of a real smelt is not validated.",
        "**Temperatures and gas along the shaft**: no profile of CO and CO2 and no tabulated profile of temperatures of a bloomery was at hand. The hot zone and the mouth "
            + "lie where practitioners measure them, which is no validation.",
        "**The chance of no bloom** rests on one published low-blast smelt.",
        "**When slag reaches the air inlet**: no published smelt tells room, slag and time together.",
        "**Air that a furnace without bellows draws**: hydrostatics and Ergun's law are checked, no measured natural draught of a bloomery was at hand.",
        "**Carbon of the bloom**: equilibrium and diffusion are checked against published values, the tendency against no bloom.",
        "**Work at the bellows** rests on common practice.",
        "**Outside small charcoal furnaces** (inside diameter 10 cm to 1 m, stack 15 cm to 2.5 m, 40 to 2500 L/min) nothing is claimed."));
  }
}
