package daubline.record;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Moisture;
import daubline.base.MoistureBasis;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Treatment;
import daubline.session.store.LotFindings;
import daubline.session.store.LotMass;
import daubline.session.store.LotMoisture;
import daubline.session.store.LotStep;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What a lot went through, step by step, with its mass before and after. A new step takes up the mass that the last one left. */
public final class StepTable extends ObjectTable<Treatment> {

  private static final Unit KG = Units.canonical(Quantity.MASS);

  private final Lot lot;

  /** The steps of a lot. */
  public StepTable(Desk desk, Lot lot) {
    super("steps", desk);
    this.lot = lot;
    refresh();
  }

  @Override
  protected List<Treatment> find() {
    return lot.getTreatments();
  }

  @Override
  protected Treatment begin() {
    Treatment made = ModelFactory.eINSTANCE.createTreatment();
    lot.getTreatments().stream().reduce((a, b) -> b).ifPresent(last -> made.setMassIn(last.getMassOut() != null ? last.getMassOut() : last.getMassIn()));
    lot.getTreatments().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<Treatment>> make() {
    List<String> steps = Arrays.stream(LotStep.values()).map(LotStep::word).toList();
    return List.of(Columns.<Treatment>known(desk(), "step", 0.9, Literals.TREATMENT__STEP, "lotstep.", steps).doubting(LotFindings::of),
        Columns.<Treatment>date("on", 0.9, Literals.TREATMENT__ON),
        Columns.<Treatment>number(desk(), "massIn", 0.8, Literals.TREATMENT__MASS_IN, KG),
        Columns.<Treatment>number(desk(), "massOut", 0.8, Literals.TREATMENT__MASS_OUT, KG).doubting(LotFindings::of),
        Columns.<Treatment>number(desk(), "lost", 0.8, Literals.TREATMENT__LOST, KG).doubting(LotFindings::of),
        Columns.<Treatment>number(desk(), "sigma", 0.7, Literals.TREATMENT__SIGMA, KG),
        Columns.<Treatment>text("name", 1.6, Literals.NAMED__NAME).askedWhen(t -> false),
        Columns.<Treatment>text("note", 1.3, Literals.NAMED__NOTE).askedWhen(t -> false));
  }

  /** The lot. */
  public Lot lot() {
    return lot;
  }

  /** What is left of the lot and the water in it. */
  @Override
  public String summary() {
    String left = LotMass.of(desk().session().study(), lot).map(m -> desk().words().of("steps.left", shown(clamped(m.left())), shown(m.charged()), shown(m.taken())))
        .orElseGet(() -> desk().words().of("steps.unweighed"));
    return (left + " " + LotMoisture.of(lot).map(this::water).orElseGet(() -> desk().words().of("steps.nowater"))).strip();
  }

  /** What does not add up in the lot as a whole. */
  @Override
  public Optional<Finding> problem() {
    return LotFindings.of(desk().session().study(), lot).stream().findFirst().or(() -> LotMoisture.finding(lot));
  }

  private static Amount clamped(Amount left) {
    return left.value() < 0 ? Amount.plusMinus(0, left.sigma()) : left;
  }

  private String water(Moisture water) {
    String bases = desk().words().of("steps.water", percent(water, MoistureBasis.WET), percent(water, MoistureBasis.DRY));
    return bases + LotMoisture.moistMass(lot).map(moist -> " " + desk().words().of("steps.dry", shown(moist), shown(water.dryMass(moist)))).orElse("");
  }

  private String percent(Moisture water, MoistureBasis basis) {
    return signed(Printed.amount(water.on(basis), Units.find(Quantity.FRACTION, "%").orElseThrow()));
  }

  private String signed(String number) {
    return number.replace('.', desk().decimal().get().sign());
  }

  private String shown(Amount mass) {
    return signed(Printed.withUnit(mass, KG));
  }

  /** Says of which mass the water of the lot is a share; null takes it back. */
  public void basis(MoistureBasis basis) {
    desk().edit("change.cell", desk().words().of("steps.basis"), () -> lot.setMoistureBasis(basis == null ? null : basis.word()));
  }
}
