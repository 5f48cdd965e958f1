package daubline.cli;

import daubline.base.Amount;
import daubline.base.AmountReader;
import daubline.base.DecimalSign;
import daubline.base.EnteredText;
import daubline.base.Moisture;
import daubline.base.MoistureBasis;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Typed;
import daubline.base.Unit;
import daubline.base.Units;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Converts water and masses between the wet and the dry basis. */
@Command(name = "moisture", mixinStandardHelpOptions = true,
    description = "Convert water between the wet basis (water / moist mass) and the dry basis (water / dry mass), and a mass with it: moisture \"12 ± 1 %%\" --basis dry "
        + "--mass \"40 kg\". The basis must be named; it is never assumed.")
final class MoistureCommand implements Callable<Integer> {

  private static final Unit PERCENT = Units.find(Quantity.FRACTION, "%").orElseThrow();

  @Parameters(index = "0", paramLabel = "WATER", description = "share of water, such as \"12 ± 1 %%\"")
  private String water;

  @Option(names = "--basis", required = true, paramLabel = "BASIS", description = "wet or dry: of which mass the water is a share")
  private String basis;

  @Option(names = "--mass", paramLabel = "MASS", description = "a moist mass of which the dry mass is wanted")
  private String moist;

  @Option(names = "--dry-mass", paramLabel = "MASS", description = "a dry mass of which the moist mass is wanted")
  private String dry;

  @Override
  public Integer call() {
    MoistureBasis on = MoistureBasis.find(basis).orElseThrow(() -> new IllegalArgumentException("“" + basis + "” is no basis; write wet or dry"));
    Amount share = read(water, Quantity.FRACTION, PERCENT);
    Moisture moisture = Moisture.of(share.value(), share.sigma(), on);
    Out.line("water %s on the wet basis, %s on the dry basis", Printed.withUnit(moisture.on(MoistureBasis.WET), PERCENT), Printed.withUnit(moisture.on(MoistureBasis.DRY), PERCENT));
    Unit kg = Units.canonical(Quantity.MASS);
    if (moist != null) {
      Amount mass = read(moist, Quantity.MASS, kg);
      Out.line("%s moist hold %s dry", Printed.withUnit(mass, kg), Printed.withUnit(moisture.dryMass(mass), kg));
    }
    if (dry != null) {
      Amount mass = read(dry, Quantity.MASS, kg);
      Out.line("%s dry are %s moist", Printed.withUnit(mass, kg), Printed.withUnit(moisture.moistMass(mass), kg));
    }
    return Out.DONE;
  }

  private static Amount read(String typed, Quantity quantity, Unit usual) {
    EnteredText text = EnteredText.split(typed, quantity);
    Typed read = new AmountReader(DecimalSign.POINT).number(text.value(), text.unit().isEmpty() ? usual : Units.find(quantity, text.unit()).orElse(usual));
    if (!read.isRead() || !read.amount().isNumber()) {
      throw new IllegalArgumentException("“" + typed + "” is no number that can be converted; write it as 12 or 12 ± 1, with its unit");
    }
    return read.amount();
  }
}
