package daubline.record;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.Lot;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.SizeBand;
import daubline.model.Treatment;
import daubline.session.Readings;
import daubline.session.store.LotFindings;
import daubline.session.store.LotStep;
import java.util.List;
import java.util.Optional;

/** What the sievings of a lot gave, band by band. The fines are a band like the others and may become a lot of their own. */
public final class BandTable extends ObjectTable<SizeBand> {

  private static final Unit MM = Units.find(Quantity.LENGTH, "mm").orElseThrow();

  private final Lot lot;

  /** The size bands of a lot. */
  public BandTable(Desk desk, Lot lot) {
    super("bands", desk);
    this.lot = lot;
    refresh();
  }

  @Override
  protected List<SizeBand> find() {
    return lot.getTreatments().stream().flatMap(t -> t.getBands().stream()).toList();
  }

  private List<Treatment> sievings() {
    return lot.getTreatments().stream().filter(LotStep.SIEVE::is).toList();
  }

  @Override
  protected SizeBand begin() {
    SizeBand made = ModelFactory.eINSTANCE.createSizeBand();
    sievings().get(sievings().size() - 1).getBands().add(made);
    return made;
  }

  @Override
  protected Optional<Finding> refusal(SizeBand band, EntryColumn<SizeBand> column, String text) {
    return band == null && sievings().isEmpty() ? Optional.of(Finding.error("band.none", "", "this lot was never sieved", "enter the sieving with its masses on the page Steps first"))
        : Optional.empty();
  }

  @Override
  protected List<EntryColumn<SizeBand>> make() {
    return List.of(
        Columns.<SizeBand>number(desk(), "meshFrom", 0.8, Literals.SIZE_BAND__MESH_FROM, MM).doubting(LotFindings::of),
        Columns.<SizeBand>number(desk(), "meshTo", 0.8, Literals.SIZE_BAND__MESH_TO, MM).doubting(LotFindings::of),
        mass(),
        EntryColumn.shown("share", 0.7, this::share),
        into(),
        sieving().askedWhen(b -> false),
        Columns.<SizeBand>text("note", 1.4, Literals.READING__NOTE).askedWhen(b -> false));
  }

  private EntryColumn<SizeBand> mass() {
    Variable mass = Masses.of("band_mass", heading("mass"));
    return EntryColumn.<SizeBand>typed("mass", 0.9, b -> b.getKind() == null ? "" : Columns.print(desk(), b, mass), typed -> Masses.read(desk(), mass, typed))
        .doubting(b -> LotFindings.of((Treatment) b.eContainer()).filter(f -> f.code().equals("mass.bands")));
  }

  private String heading(String id) {
    return desk().words().of("bands." + id);
  }

  private String share(SizeBand band) {
    Amount mass = Readings.amount(band);
    double whole = ((Treatment) band.eContainer()).getBands().stream().map(Readings::amount).filter(Amount::isNumber).mapToDouble(Amount::value).sum();
    return mass.isNumber() && whole > 0 ? Columns.local(desk(), Printed.number(100 * mass.value() / whole, 3)) + " %" : "";
  }

  /** The lot that a band was put into; an unknown name makes a lot, so that nothing is lost. */
  private EntryColumn<SizeBand> into() {
    return EntryColumn.<SizeBand>typed("lot", 1.3, b -> b.getLot() == null ? "" : Columns.text(b.getLot().getName()),
        typed -> Entry.of(b -> b.setLot(typed.isBlank() ? null : lot(b, typed))))
        .offering(b -> desk().session().study().getLots().stream().filter(l -> l != lot).map(l -> Columns.text(l.getName())).toList());
  }

  private Lot lot(SizeBand band, String name) {
    List<Lot> all = desk().session().study().getLots();
    return all.stream().filter(l -> name.equalsIgnoreCase(Columns.text(l.getName()))).findFirst().orElseGet(() -> {
      Lot made = ModelFactory.eINSTANCE.createLot();
      made.setName(name);
      made.setMaterial(lot.getMaterial());
      made.getFrom().add(lot);
      Amount mass = Readings.amount(band);
      Treatment step = ModelFactory.eINSTANCE.createTreatment();
      step.setStep(LotStep.SIEVE.word());
      step.setOn(((Treatment) band.eContainer()).getOn());
      step.setMassIn(mass.isNumber() ? (Double) mass.value() : null);
      step.setMassOut(step.getMassIn());
      step.setSigma(mass.isNumber() && !Double.isNaN(mass.sigma()) ? (Double) mass.sigma() : null);
      made.getTreatments().add(step);
      all.add(all.indexOf(lot) + 1, made);
      return made;
    });
  }

  private EntryColumn<SizeBand> sieving() {
    return EntryColumn.<SizeBand>typed("sieving", 1.2, b -> name((Treatment) b.eContainer()), typed -> {
      List<Treatment> meant = sievings().stream().filter(t -> typed.equalsIgnoreCase(name(t))).toList();
      return meant.isEmpty() ? Entry.wrong("name.unknown", "this lot has no sieving “" + typed + "”", "choose one of the list, or enter it on the page Steps first")
          : Entry.of(b -> meant.get(0).getBands().add(b));
    }).offering(b -> sievings().stream().map(this::name).toList());
  }

  private String name(Treatment step) {
    String name = Columns.text(step.getName()).isEmpty() ? desk().words().of("lotstep.sieve") : step.getName();
    return (name + " " + Columns.text(step.getOn())).strip();
  }
}
