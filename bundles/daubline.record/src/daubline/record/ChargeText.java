package daubline.record;

import daubline.base.Amount;
import daubline.base.HowGot;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.Measure;
import daubline.model.ModelFactory;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What is charged of one material: a mass such as "1.2" or "800 g", a count of a weighed measure such as "6×" or "6 × bucket", or of a mass. */
final class ChargeText {

  private static final Pattern COUNT = Pattern.compile("(\\d{1,4})\\s*[x×*]\\s*(.*)", Pattern.CASE_INSENSITIVE);
  private static final Map<Material, String> VARIABLES = Map.of(Material.ORE, "charge_mass_ore", Material.CHARCOAL, "charge_mass_charcoal");

  private final Desk desk;
  private final Trial trial;
  private final Material material;

  ChargeText(Desk desk, Trial trial, Material material) {
    this.desk = desk;
    this.trial = trial;
    this.material = material;
  }

  /** The variable of a mass; any additions are weighed as ore is, under no variable of their own. */
  private Variable variable() {
    Variable mass = desk.variables().get(VARIABLES.getOrDefault(material, "charge_mass_ore"));
    boolean own = VARIABLES.containsKey(material);
    return own ? mass : new Variable("", material.word(), mass.group(), mass.type(), Quantity.MASS, mass.unit(), 0, mass.plausibleHigh(), Set.of(), List.of(),
        false, "", "", "");
  }

  /** The item of this material in a charge. */
  Optional<ChargeItem> item(Charge charge) {
    return charge.getItems().stream().filter(i -> i.getMaterial() == material).findFirst();
  }

  String print(Charge charge) {
    return item(charge).map(i -> i.getCount() != null && i.getMeasure() != null ? i.getCount() + " × " + Columns.text(i.getMeasure().getName())
        : i.getCount() != null ? i.getCount() + " × " + Printed.number(i.getUnitMass() == null ? Double.NaN : i.getUnitMass()) + " kg"
        : Columns.print(desk, i, variable())).orElse("");
  }

  Optional<daubline.base.Finding> odd(Charge charge) {
    return item(charge).flatMap(i -> Columns.odd(i, variable()));
  }

  Entry<Charge> read(String typed) {
    Matcher count = COUNT.matcher(typed);
    if (count.matches() && !count.group(2).isEmpty() && Character.isDigit(count.group(2).charAt(0))) {
      return times(Integer.parseInt(count.group(1)), count.group(2).strip());
    }
    if (count.matches()) {
      return counted(Integer.parseInt(count.group(1)), count.group(2).strip());
    }
    return Columns.value(desk, variable(), typed, (charge, change) -> {
      if (change == null) {
        item(charge).ifPresent(i -> EcoreUtil.delete(i, true));
      } else {
        ChargeItem item = claim(charge);
        change.accept(item);
        item.setVariable(VARIABLES.get(material));
        item.setHow(HowGot.WEIGHED);
        item.setCount(null);
        item.setUnitMass(null);
        item.setMeasure(null);
      }
    });
  }

  /** A count of a mass that is written beside it, such as "2 × 0.5 kg". */
  private Entry<Charge> times(int count, String each) {
    return Columns.value(desk, variable(), each, (charge, change) -> {
      ChargeItem item = claim(charge);
      change.accept(item);
      Amount one = Readings.amount(item);
      Amount all = Double.isNaN(one.sigma()) ? Amount.exact(count * one.value()) : Amount.plusMinus(count * one.value(), count * one.sigma());
      Readings.put(item, all);
      settle(item, count, one.value(), null, all);
    });
  }

  private Entry<Charge> counted(int count, String name) {
    List<Measure> known = trial.getMeasures().stream().filter(m -> m.getMaterial() == null || m.getMaterial() == material)
        .filter(m -> UnitMass.of(m).isKnown()).toList();
    List<Measure> meant = known.stream().filter(m -> Columns.text(m.getName()).toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT))).toList();
    if (meant.size() == 1) {
      return Entry.of(charge -> count(claim(charge), count, meant.get(0)));
    }
    List<String> names = known.stream().map(m -> Columns.text(m.getName())).toList();
    return known.isEmpty() ? Entry.wrong("measure.none", "no measure of " + material.word() + " has been weighed",
        "enter a measure with its weighings on the page of measures, or type the mass")
        : Entry.wrong("measure.which", "it is not clear which measure “" + name + "” is", "write its name after the count; there are: " + String.join(", ", names));
  }

  /** The item of this material; made when the charge has none. */
  private ChargeItem claim(Charge charge) {
    return item(charge).orElseGet(() -> {
      ChargeItem made = ModelFactory.eINSTANCE.createChargeItem();
      made.setMaterial(material);
      charge.getItems().add(made);
      return made;
    });
  }

  /** Puts a count of a measure into an item; its mass and uncertainty follow from the weighings. */
  static void count(ChargeItem item, int count, Measure measure) {
    UnitMass unit = UnitMass.of(measure);
    Readings.put(item, unit.times(count));
    settle(item, count, unit.mean(), measure, unit.times(count));
    if (item.getLot() == null) {
      item.setLot(measure.getLot());
    }
  }

  private static void settle(ChargeItem item, int count, double each, Measure measure, Amount all) {
    item.setTyped(Printed.amount(all, Units.canonical(Quantity.MASS)));
    item.setUnit(Units.canonical(Quantity.MASS).symbol());
    item.setVariable(VARIABLES.get(item.getMaterial()));
    item.setHow(HowGot.COUNTED);
    item.setCount(count);
    item.setUnitMass(each);
    item.setMeasure(measure);
  }
}
