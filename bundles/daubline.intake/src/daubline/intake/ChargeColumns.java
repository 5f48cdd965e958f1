package daubline.intake;

import daubline.base.Amount;
import daubline.base.HowGot;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variables;
import daubline.intake.FormColumn.Content;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The columns of a charge: for each material its mass, or a number of measures of a known mass, and its lot. */
final class ChargeColumns {

  private static final Map<String, Material> MASSES = masses();
  private static final Unit KILOGRAM = Units.canonical(Quantity.MASS);

  private ChargeColumns() {
  }

  private static Map<String, Material> masses() {
    Map<String, Material> masses = new LinkedHashMap<>();
    masses.put("charge_mass_ore", Material.ORE);
    masses.put("charge_mass_charcoal", Material.CHARCOAL);
    masses.put("flux", Material.FLUX);
    return masses;
  }

  static List<FormColumn> columns(Variables variables) {
    List<FormColumn> columns = new ArrayList<>();
    MASSES.forEach((id, material) -> {
      String name = material.word();
      columns.add(variables.find(id).map(v -> FormColumn.value(id, v, "Mass of the " + name + " of a charge."))
          .orElseGet(() -> Shared.mass(id, "Mass of the " + name + " of a charge.")));
      columns.add(FormColumn.of(name + "_count", Content.WHOLE, "Number of measures (scoops, buckets) of " + name + ".", "6"));
      columns.add(Shared.mass(name + "_measure", "Mass of one measure of " + name
          + " with its uncertainty, which all measures share; with the count it gives the mass when that is empty."));
      columns.add(FormColumn.text(name + "_lot", "Lot of the " + name + ", by name or id.", "Bog ore 2031, roasted"));
    });
    return columns;
  }

  /** Whether a column belongs to charges only. */
  static boolean isOne(String id) {
    return MASSES.containsKey(id) || id.endsWith("_measure");
  }

  static void write(Row row, Draft draft, Finder finder, Charge charge) {
    MASSES.forEach((id, material) -> {
      Optional<ReadValue> measure = row.value(material.word() + "_measure");
      Integer count = row.whole(material.word() + "_count");
      Optional<ReadValue> counted = count == null ? Optional.empty() : measure.flatMap(m -> times(count, m));
      row.value(id).or(() -> counted).ifPresent(mass -> {
        ChargeItem item = item(draft, charge, id, material, mass);
        Tally tally = draft.tally();
        tally.put(item, mass);
        tally.set(item, Literals.CHARGE_ITEM__COUNT, count);
        measure.filter(m -> m.amount().isNumber())
            .ifPresent(m -> tally.set(item, Literals.CHARGE_ITEM__UNIT_MASS, m.amount().value()));
        tally.set(item, Literals.CHARGE_ITEM__LOT, finder.lot(material.word() + "_lot"));
        if (!row.has(id)) {
          tally.set(item, Literals.READING__HOW, HowGot.COUNTED);
        }
      });
    });
  }

  /** Measures share the error of their calibration, so the uncertainty grows with the count, not with its root. */
  private static Optional<ReadValue> times(int count, ReadValue measure) {
    Amount one = measure.amount();
    if (!one.isNumber()) {
      return Optional.empty();
    }
    Amount all = Double.isNaN(one.sigma()) ? Amount.exact(count * one.value())
        : Amount.plusMinus(count * one.value(), count * one.sigma());
    return Optional.of(new ReadValue(all, Printed.amount(all, KILOGRAM), KILOGRAM.symbol()));
  }

  private static ChargeItem item(Draft draft, Charge charge, String id, Material material, ReadValue mass) {
    return charge.getItems().stream().filter(i -> i.getMaterial() == material).findFirst().orElseGet(() -> {
      ChargeItem made = draft.tally().fresh(ModelFactory.eINSTANCE.createChargeItem());
      made.setMaterial(material);
      made.setVariable(material == Material.FLUX ? null : id);
      charge.getItems().add(made);
      draft.tally().partAdded("added: " + material.word() + " " + mass.typed());
      return made;
    });
  }
}
