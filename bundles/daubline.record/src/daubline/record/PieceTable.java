package daubline.record;

import daubline.base.Amount;
import daubline.base.Finding;
import daubline.base.HowGot;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.base.Variable;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Piece;
import daubline.model.Reading;
import daubline.model.Trial;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The pieces of metal as a tree: what each was parted from or forged out of, its mass after each step, and its density by
 * displacement. What the parts weigh less than the whole is shown as lost; parts heavier than the whole are flagged.
 */
public final class PieceTable extends ObjectTable<Piece> {

  private static final double TWO_SIGMA = 2;
  private static final double SCALE = 0.02;

  private final Trial trial;

  /** The pieces of a trial. */
  public PieceTable(Desk desk, Trial trial) {
    super("pieces", desk);
    this.trial = trial;
    refresh();
  }

  @Override
  protected List<Piece> find() {
    List<Piece> all = new ArrayList<>();
    trial.getPieces().forEach(p -> collect(p, all));
    return shown(all);
  }

  private static void collect(Piece piece, List<Piece> all) {
    all.add(piece);
    piece.getPieces().forEach(p -> collect(p, all));
  }

  @Override
  protected Piece begin() {
    Piece made = ModelFactory.eINSTANCE.createPiece();
    trial.getPieces().add(made);
    return made;
  }

  @Override
  public int depth(int row) {
    int depth = 0;
    for (org.eclipse.emf.ecore.EObject o = at(row); o != null && o.eContainer() instanceof Piece; o = o.eContainer()) {
      depth++;
    }
    return depth;
  }

  @Override
  protected List<EntryColumn<Piece>> make() {
    List<EntryColumn<Piece>> columns = new ArrayList<>(List.of(
        Columns.<Piece>text("name", 1.5, Literals.NAMED__NAME),
        parent(),
        stage(),
        mass(),
        EntryColumn.<Piece>shown("lost", 0.8, this::lost)));
    for (String id : List.of("forging_heats", "mass_in_water", "displaced_volume", "water_temperature")) {
      columns.add(weighed(id));
    }
    columns.add(density());
    for (String id : List.of("bloom_quality", "metal_carbon")) {
      columns.add(value(id).askedWhen(p -> false));
    }
    columns.add(Columns.<Piece>text("note", 1.4, Literals.NAMED__NOTE).askedWhen(p -> false));
    return columns;
  }

  /** The stage decides which mass it is: of a bloom, a billet or a bar. */
  private EntryColumn<Piece> stage() {
    return EntryColumn.<Piece>typed("stage", 1, p -> Columns.text(p.getStage()), typed -> Entry.of(p -> {
      p.setStage(typed.isBlank() ? null : typed);
      massOf(p).ifPresent(r -> r.setVariable(massVariable(p).id()));
    })).offering(p -> stages());
  }

  private List<String> stages() {
    return List.of("bloom", "compacted bloom", "bloom half", "fragment", "billet", "bar").stream().map(s -> desk().words().of("stage." + s.replace(' ', '_'))).toList();
  }

  private EntryColumn<Piece> parent() {
    return EntryColumn.<Piece>typed("of", 1.2, p -> p.eContainer() instanceof Piece whole ? Columns.text(whole.getName()) : "", typed -> {
      List<Piece> meant = find().stream().filter(p -> typed.equalsIgnoreCase(Columns.text(p.getName()))).toList();
      return typed.isBlank() || meant.size() == 1 ? Entry.of(p -> move(p, typed.isBlank() ? null : meant.get(0)))
          : Entry.wrong("piece.unknown", meant.isEmpty() ? "no piece is called “" + typed + "”" : "several pieces are called “" + typed + "”",
              "choose one of the list; give each piece a name of its own");
    }).offering(p -> find().stream().filter(o -> o != p && !isWithin(o, p)).map(o -> Columns.text(o.getName())).toList());
  }

  private static boolean isWithin(org.eclipse.emf.ecore.EObject object, Piece whole) {
    return whole != null && org.eclipse.emf.ecore.util.EcoreUtil.isAncestor(whole, object);
  }

  private void move(Piece piece, Piece whole) {
    if (whole == null) {
      trial.getPieces().add(piece);
    } else if (!isWithin(whole, piece)) {
      whole.getPieces().add(piece);
    }
  }

  /** A piece cannot be parted from itself or from what was parted from it. */
  @Override
  protected Optional<Finding> refusal(Piece piece, EntryColumn<Piece> column, String text) {
    boolean round = column.id().equals("of") && piece != null && find().stream().filter(p -> text.strip().equalsIgnoreCase(Columns.text(p.getName())))
        .anyMatch(p -> isWithin(p, piece));
    return round ? Optional.of(Finding.error("piece.round", "", "“" + text.strip() + "” is this piece or a part of it", "choose what it was parted from")) : Optional.empty();
  }

  private EntryColumn<Piece> mass() {
    return EntryColumn.<Piece>typed("mass", 0.9, p -> massOf(p).map(r -> Columns.print(desk(), r, massVariable(p))).orElse(""),
        typed -> typed.startsWith("-") && typed.length() > 1 ? Entry.wrong("mass.negative", "“" + typed + "” is less than nothing", "weigh again")
            : Columns.value(desk(), desk().variables().get("bloom_mass"), typed, (p, change) -> {
              if (change == null) {
                massOf(p).ifPresent(r -> org.eclipse.emf.ecore.util.EcoreUtil.delete(r, true));
              } else {
                Reading reading = massOf(p).orElseGet(() -> add(p));
                change.accept(reading);
                reading.setVariable(massVariable(p).id());
                reading.setHow(HowGot.WEIGHED);
              }
              density(p);
            })).doubting(this::heavier);
  }

  private static Reading add(Piece piece) {
    Reading made = ModelFactory.eINSTANCE.createReading();
    piece.getValues().add(made);
    return made;
  }

  private Variable massVariable(Piece piece) {
    String stage = Columns.text(piece.getStage()).toLowerCase(Locale.ROOT);
    String id = stage.startsWith("bar") ? "bar_mass" : stage.startsWith("billet") ? "billet_mass"
        : stage.startsWith("compacted") || stage.startsWith("verdichtet") ? "bloom_mass_compacted" : "bloom_mass";
    return desk().variables().get(id);
  }

  private static Optional<Reading> massOf(Piece piece) {
    return piece.getValues().stream().filter(r -> r.getVariable() != null && r.getVariable().contains("mass") && !r.getVariable().equals("mass_in_water")).findFirst();
  }

  private static Optional<Amount> amount(Optional<Reading> reading) {
    return reading.map(Readings::amount).filter(Amount::isNumber);
  }

  private static double sum(Piece piece) {
    return piece.getPieces().stream().flatMap(p -> amount(massOf(p)).stream()).mapToDouble(Amount::value).sum();
  }

  private String lost(Piece piece) {
    Optional<Amount> whole = amount(massOf(piece));
    boolean all = !piece.getPieces().isEmpty() && piece.getPieces().stream().allMatch(p -> amount(massOf(p)).isPresent());
    return whole.isPresent() && all ? Columns.local(desk(), Printed.number(whole.get().value() - sum(piece), 3)) + " kg" : "";
  }

  /** Parts that weigh more than the whole, beyond the uncertainty of the scale. */
  private Optional<Finding> heavier(Piece piece) {
    Optional<Amount> whole = amount(massOf(piece));
    double parts = sum(piece);
    double doubt = Math.sqrt(whole.map(w -> w.sigmaOr(SCALE / TWO_SIGMA * w.value())).map(s -> s * s).orElse(0.0)
        + piece.getPieces().stream().flatMap(p -> amount(massOf(p)).stream()).mapToDouble(a -> a.sigmaOr(0) * a.sigmaOr(0)).sum());
    return whole.isPresent() && parts > whole.get().value() + TWO_SIGMA * doubt ? Optional.of(Finding.warning("mass.pieces", "", "the parts weigh "
        + Printed.number(parts) + " kg, the whole only " + Printed.number(whole.get().value()) + " kg", "check the weighings, or what each was parted from")) : Optional.empty();
  }

  private EntryColumn<Piece> value(String variable) {
    return Columns.<Piece>value(desk(), variable, 0.9, desk().variables().get(variable), Piece::getValues);
  }

  /** A density that was typed is measured elsewhere; it is no longer worked out here. */
  private EntryColumn<Piece> density() {
    Variable variable = desk().variables().get("bloom_density");
    EntryColumn<Piece> plain = value(variable.id());
    return EntryColumn.<Piece>typed(plain.id(), plain.share(), plain.print(), typed -> {
      Entry<Piece> entry = plain.read().apply(typed);
      return entry.isRead() ? Entry.of(p -> {
        entry.change().accept(p);
        p.getValues().stream().filter(r -> variable.id().equals(r.getVariable())).forEach(r -> {
          r.setHow(HowGot.MEASURED);
          r.setNote(null);
        });
      }) : entry;
    }).doubting(plain.odd()).askedWhen(p -> false);
  }

  /** A value from which the density follows. */
  private EntryColumn<Piece> weighed(String variable) {
    EntryColumn<Piece> plain = value(variable);
    EntryColumn<Piece> column = plain.reading(typed -> {
      Entry<Piece> entry = plain.read().apply(typed);
      return entry.isRead() ? Entry.of(p -> {
        entry.change().accept(p);
        density(p);
      }) : entry;
    });
    return variable.equals("mass_in_water") ? column.doubting(p -> lift(p)) : column;
  }

  private static Optional<Finding> lift(Piece piece) {
    Optional<Amount> air = amount(massOf(piece));
    Optional<Amount> under = number(piece, "mass_in_water");
    return air.isPresent() && under.isPresent() && under.get().value() >= air.get().value() ? Optional.of(Finding.warning("mass.water", "",
        "a piece weighs less under water than in air", "check both weighings")) : Optional.empty();
  }

  private static Optional<Amount> number(Piece piece, String variable) {
    return amount(piece.getValues().stream().filter(r -> variable.equals(r.getVariable())).findFirst());
  }

  /** Works the density out anew where there is enough to do so; a density that was typed is left alone. */
  private void density(Piece piece) {
    Variable variable = desk().variables().get("bloom_density");
    Optional<Reading> old = piece.getValues().stream().filter(r -> variable.id().equals(r.getVariable())).findFirst();
    Optional<Amount> now = calculated(piece);
    if (now.isEmpty() || old.filter(r -> r.getHow() != HowGot.CALCULATED).isPresent()) {
      return;
    }
    Reading reading = old.orElseGet(() -> add(piece));
    Readings.put(reading, now.get());
    reading.setVariable(variable.id());
    reading.setTyped(Printed.amount(now.get(), Units.find(Quantity.DENSITY, "g/cm³").orElseThrow()));
    reading.setUnit("g/cm³");
    reading.setHow(HowGot.CALCULATED);
    reading.setNote(desk().words().of("density.formula"));
  }

  private static Optional<Amount> calculated(Piece piece) {
    Optional<Amount> air = amount(massOf(piece));
    Optional<Amount> under = number(piece, "mass_in_water");
    Optional<Amount> volume = number(piece, "displaced_volume");
    double celsius = number(piece, "water_temperature").map(Amount::value).orElse(Displacement.USUAL_TEMPERATURE);
    if (air.isPresent() && under.isPresent() && under.get().value() < air.get().value()) {
      return Optional.of(Displacement.weighed(air.get(), under.get(), celsius));
    }
    return air.isPresent() && volume.isPresent() && volume.get().value() > 0 ? Optional.of(Displacement.displaced(air.get(), volume.get())) : Optional.empty();
  }

  /** The headings of variables come from the catalogue. */
  @Override
  public String heading(int column) {
    String id = columns().get(column);
    return desk().words().orElse("pieces." + id, desk().variables().find(id).map(desk().words()::told).map(Variable::name).orElse(id));
  }
}
