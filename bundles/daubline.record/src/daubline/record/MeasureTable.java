package daubline.record;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Material;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.Charge;
import daubline.model.ChargeItem;
import daubline.model.LogEntry;
import daubline.model.Lot;
import daubline.model.Measure;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Reading;
import daubline.model.Trial;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;

/** Scoops, buckets and baskets of a trial with their weighings, such as "1.92; 2.05; 1.98". What was counted follows when a weighing changes. */
public final class MeasureTable extends ObjectTable<Measure> {

  private final Trial trial;

  /** The measures of a trial. */
  public MeasureTable(Desk desk, Trial trial) {
    super("measures", desk);
    this.trial = trial;
    refresh();
  }

  @Override
  protected List<Measure> find() {
    return trial.getMeasures();
  }

  @Override
  protected Measure begin() {
    Measure made = ModelFactory.eINSTANCE.createMeasure();
    trial.getMeasures().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<Measure>> make() {
    return List.of(Columns.<Measure>text("name", 1.2, Literals.NAMED__NAME),
        Columns.<Measure, Material>word(desk(), "material", 1, Literals.MEASURE__MATERIAL, new Material[] {Material.ORE, Material.CHARCOAL, Material.FLUX}, Material::word),
        Columns.<Measure, Lot>named("lot", 1.4, Literals.MEASURE__LOT, Lot.class, () -> desk().session().study().getLots()),
        EntryColumn.typed("weighings", 2.4, m -> String.join("; ", m.getWeighings().stream().map(r -> Columns.print(desk(), r, mass())).toList()), this::readWeighings),
        EntryColumn.shown("unitMass", 1.3, m -> UnitMass.of(m).isKnown() ? Printed.withUnit(UnitMass.of(m).times(1), Units.canonical(Quantity.MASS)) : ""),
        EntryColumn.shown("spread", 1, m -> UnitMass.of(m).weighings() < 2 ? "" : Printed.number(UnitMass.of(m).spread(), 2) + " kg"),
        EntryColumn.shown("counted", 0.8, m -> String.valueOf(items(m).stream().mapToInt(i -> i.getCount() == null ? 0 : i.getCount()).sum())));
  }

  private Variable mass() {
    return desk().variables().get("charcoal_unit_mass");
  }

  private Entry<Measure> readWeighings(String typed) {
    List<Consumer<Reading>> all = new ArrayList<>();
    for (String part : Arrays.stream(typed.split(";")).filter(s -> !s.isBlank()).toList()) {
      Entry<Void> one = Columns.value(desk(), mass(), part.strip(), (nothing, change) -> all.add(change));
      if (!one.isRead()) {
        return Entry.wrong(one.complaint());
      }
      one.change().accept(null);
    }
    Reading probe = ModelFactory.eINSTANCE.createReading();
    for (Consumer<Reading> change : all) {
      change.accept(probe);
      Amount amount = daubline.session.Readings.amount(probe);
      if (!amount.isNumber() || amount.value() <= 0) {
        return Entry.wrong(Finding.error("mass.negative", "", "“" + typed + "” holds a weighing that is no mass", "write masses greater than zero with semicolons between them"));
      }
    }
    return Entry.of(measure -> {
      measure.getWeighings().clear();
      all.forEach(change -> {
        Reading made = ModelFactory.eINSTANCE.createReading();
        measure.getWeighings().add(made);
        change.accept(made);
      });
      if (UnitMass.of(measure).isKnown()) {
        items(measure).forEach(i -> ChargeText.count(i, i.getCount(), measure));
      }
    });
  }

  private List<ChargeItem> items(Measure measure) {
    List<ChargeItem> items = new ArrayList<>();
    for (LogEntry entry : trial.getLog()) {
      if (entry instanceof Charge charge) {
        charge.getItems().stream().filter(i -> i.getMeasure() == measure && i.getCount() != null).forEach(items::add);
      }
    }
    return items;
  }
}
