package daubline.intake;

import daubline.base.Material;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.intake.FormColumn.Content;
import daubline.model.Citation;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The form of lots: ore, charcoal, clay and what else is in the store. */
final class LotsForm implements Form {

  @Override
  public Target target() {
    return Target.LOTS;
  }

  @Override
  public String explanation() {
    return "One row a lot of material, with what is known of it. A row is recognised again by its id or name.";
  }

  @Override
  public List<FormColumn> columns(Variables variables) {
    List<FormColumn> columns = new ArrayList<>(List.of(Shared.id(),
        FormColumn.text("name", "Name of the lot.", "Bog ore 2031, roasted").must(),
        FormColumn.word("material", Shared.words(Material.values(), Material::word), "What it is.").must(),
        FormColumn.text("supplier", "Who delivered it.", "Thorne's yard"),
        FormColumn.text("origin", "Where it comes from.", "Hollin Beck, north bank"),
        FormColumn.of("delivered", Content.DATE, "When it was delivered.", "2031-03-02"),
        FormColumn.of("from", Content.NAMES, "Lots it was made from, parted by semicolons.", "Bog ore 2031, raw"),
        Shared.note()));
    columns.addAll(Shared.origin());
    variables.at(Variable.Place.LOT).forEach(v -> columns.add(FormColumn.value(v.id(), v, v.meaning())));
    return columns;
  }

  @Override
  public String key(Row row) {
    return row.has("id") ? row.key("id") : row.key("name");
  }

  @Override
  public void write(Row row, Draft draft) {
    String name = row.must("name");
    Material material = row.word("material", Material.class, Material::word);
    List<Lot> all = draft.study().getLots();
    Optional<Lot> known = draft.named(row, Lot.class).or(() -> all.stream().filter(l -> !row.has("id")
        && name.equals(l.getName())).findFirst());
    if (name.isEmpty() || row.isFaulty()) {
      return;
    }
    Lot lot = known.orElseGet(() -> {
      Lot made = draft.subject(row, ModelFactory.eINSTANCE.createLot());
      all.add(made);
      return made;
    });
    Finder finder = new Finder(row, draft);
    Tally tally = draft.tally();
    tally.set(lot, Literals.NAMED__NAME, name);
    tally.set(lot, Literals.NAMED__NOTE, row.orNull("note"));
    tally.set(lot, Literals.LOT__MATERIAL, material);
    tally.set(lot, Literals.LOT__SUPPLIER, row.orNull("supplier"));
    tally.set(lot, Literals.LOT__ORIGIN, row.orNull("origin"));
    tally.set(lot, Literals.LOT__DELIVERED_ON, row.date("delivered"));
    tally.include(lot, lot.getFrom(), finder.lots("from"));
    row.values().forEach(column -> row.value(column).ifPresent(value -> write(row, draft, finder, lot, column, value)));
  }

  private static void write(Row row, Draft draft, Finder finder, Lot lot, Bound column, ReadValue value) {
    String variable = column.column().variable().id();
    Citation citation = finder.citation();
    List<Reading> same = lot.getValues().stream().filter(r -> variable.equals(r.getVariable()))
        .filter(r -> Shared.sameOrigin(r, citation, row.orNull("page"))).toList();
    Reading reading = Shared.matching(same, value.amount());
    if (reading == null) {
      reading = draft.tally().fresh(ModelFactory.eINSTANCE.createReading());
      reading.setVariable(variable);
      lot.getValues().add(reading);
      draft.tally().partAdded("added: " + variable + " " + value.typed());
    }
    draft.tally().put(reading, value);
    Shared.origin(row, draft, reading, finder);
  }
}
