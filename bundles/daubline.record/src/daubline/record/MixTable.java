package daubline.record;

import daubline.base.Amount;
import daubline.base.EnteredText;
import daubline.base.Finding;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.Lot;
import daubline.model.MixPart;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.session.Readings;
import daubline.session.store.LotMoisture;
import java.util.List;
import java.util.Optional;

/** The recipe of a mix: parts by mass or by volume, as bare parts or measured, and what share each is by mass, moist and dry. */
public final class MixTable extends ObjectTable<MixPart> {

  private static final List<String> WAYS = List.of("mass", "volume");

  private final Lot lot;

  /** The recipe of a lot. */
  public MixTable(Desk desk, Lot lot) {
    super("mix", desk);
    this.lot = lot;
    refresh();
  }

  @Override
  protected List<MixPart> find() {
    return lot.getRecipe();
  }

  @Override
  protected MixPart begin() {
    MixPart made = ModelFactory.eINSTANCE.createMixPart();
    made.setByVolume(!lot.getRecipe().isEmpty() && lot.getRecipe().get(lot.getRecipe().size() - 1).isByVolume());
    lot.getRecipe().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<MixPart>> make() {
    return List.of(Columns.<MixPart>text("part", 1.4, Literals.MIX_PART__PART),
        EntryColumn.<MixPart>typed("amount", 1, MixTable::amount, this::read).doubting(p -> problem()),
        way(),
        Columns.<MixPart>number(desk(), "density", 1, Literals.MIX_PART__BULK_DENSITY, Units.canonical(Quantity.DENSITY))
            .askedWhen(p -> p != null && p.isByVolume()),
        Columns.<MixPart, Lot>named("lot", 1.3, Literals.MIX_PART__LOT, Lot.class, () -> desk().session().study().getLots().stream().filter(l -> l != lot).toList()),
        EntryColumn.shown("share", 0.8, p -> share(p, false)),
        EntryColumn.shown("dryShare", 0.9, p -> share(p, true)),
        Columns.<MixPart>text("note", 1.2, Literals.READING__NOTE).askedWhen(p -> false));
  }

  private static String amount(MixPart part) {
    return part.getKind() == null ? "" : (Columns.text(part.getTyped()) + " " + Columns.text(part.getUnit())).strip();
  }

  /** A unit of mass or volume says by what it is measured; a bare number is so many parts. */
  private Entry<MixPart> read(String typed) {
    boolean mass = !EnteredText.split(typed, Quantity.MASS).unit().isEmpty();
    boolean volume = !mass && !EnteredText.split(typed, Quantity.VOLUME).unit().isEmpty();
    Variable variable = Masses.of("mix_amount", heading(1), mass ? Quantity.MASS : volume ? Quantity.VOLUME : Quantity.NUMBER);
    Entry<MixPart> entry = Masses.read(desk(), variable, typed);
    return !entry.isRead() ? entry : Entry.of(part -> {
      entry.change().accept(part);
      part.setByVolume(volume || !mass && part.isByVolume());
    });
  }

  private EntryColumn<MixPart> way() {
    return EntryColumn.<MixPart>typed("by", 0.8, p -> word(p.isByVolume()), typed -> {
      Optional<Boolean> volume = WAYS.stream().filter(w -> typed.equalsIgnoreCase(w) || typed.equalsIgnoreCase(desk().words().of("mixby." + w))).map("volume"::equals).findFirst();
      return volume.isPresent() ? Entry.of(p -> p.setByVolume(volume.get()))
          : Entry.wrong("value.category", "“" + typed + "” is not in the list", "write " + word(false) + " or " + word(true));
    }).offering(p -> WAYS.stream().map(w -> desk().words().of("mixby." + w)).toList());
  }

  private String word(boolean byVolume) {
    return desk().words().of("mixby." + (byVolume ? "volume" : "mass"));
  }

  /** A unit already says by what a part is measured. */
  @Override
  protected Optional<Finding> refusal(MixPart part, EntryColumn<MixPart> column, String text) {
    boolean measured = column.id().equals("by") && part != null && !bare(part) && part.getKind() != null;
    return measured ? Optional.of(Finding.error("mix.unit", "", "its unit says that already", "type the amount with another unit, or without one")) : Optional.empty();
  }

  private static boolean bare(MixPart part) {
    return Columns.text(part.getUnit()).isEmpty();
  }

  /** Why no shares by mass can be told. */
  @Override
  public Optional<Finding> problem() {
    List<MixPart> parts = lot.getRecipe().stream().filter(p -> Readings.amount(p).isNumber()).toList();
    boolean mixed = parts.stream().map(p -> bare(p) ? 1 + (p.isByVolume() ? 1 : 0) : 0).distinct().count() > 1;
    boolean dense = parts.stream().anyMatch(p -> p.isByVolume() && p.getBulkDensity() == null);
    return mixed ? Optional.of(Finding.warning("mix.parts", "", "parts by mass, parts by volume and measured amounts cannot be added up", "give all as parts of one kind, or all with units"))
        : dense ? Optional.of(Finding.note("mix.density", "", "a part by volume has no bulk density, so its share by mass is not known", "weigh a full bucket of it, and type mass ÷ volume"))
        : Optional.empty();
  }

  private static Optional<Double> mass(MixPart part, boolean dry) {
    Amount amount = Readings.amount(part);
    if (!amount.isNumber() || part.isByVolume() && part.getBulkDensity() == null) {
      return Optional.empty();
    }
    double moist = amount.value() * (part.isByVolume() ? part.getBulkDensity() : 1);
    return !dry ? Optional.of(moist) : part.getLot() == null ? Optional.empty()
        : LotMoisture.of(part.getLot()).map(water -> water.dryMass(Amount.exact(moist)).value());
  }

  private String share(MixPart part, boolean dry) {
    List<Optional<Double>> all = lot.getRecipe().stream().filter(p -> Readings.amount(p).isNumber()).map(p -> mass(p, dry)).toList();
    boolean known = problem().isEmpty() && all.stream().allMatch(Optional::isPresent) && mass(part, dry).isPresent();
    double whole = all.stream().flatMap(Optional::stream).mapToDouble(Double::doubleValue).sum();
    return known && whole > 0 ? Columns.local(desk(), Printed.number(100 * mass(part, dry).orElseThrow() / whole, 3)) + " %" : "";
  }
}
