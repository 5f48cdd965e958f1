package daubline.record;

import daubline.base.Finding;
import daubline.base.ValueKind;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.Sheet;
import daubline.model.SpreadSquare;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Residue on the ground around a furnace, square by square; the same for excavated and experimental remains. */
public final class SpreadTable extends ObjectTable<SpreadSquare> {

  private static final double SAME = 1e-6;

  private final Supplier<Sheet> sheet;
  private final Supplier<Sheet> make;
  private final ResidueEntry residues;

  /**
   * The squares of a sheet.
   *
   * @param sheet the sheet; may say null when there is none yet
   * @param make the sheet, made when there is none; called inside a change
   */
  public SpreadTable(Desk desk, Supplier<Sheet> sheet, Supplier<Sheet> make) {
    super("spread", desk);
    this.sheet = sheet;
    this.make = make;
    residues = new ResidueEntry(desk);
    refresh();
  }

  @Override
  protected List<SpreadSquare> find() {
    return sheet.get() == null ? List.of() : shown(sheet.get().getSpread());
  }

  /** A new square is as large and holds the class of the one before. */
  @Override
  protected SpreadSquare begin() {
    SpreadSquare made = ModelFactory.eINSTANCE.createSpreadSquare();
    made.setKind(ValueKind.NOT_RECORDED);
    make.get();
    List<SpreadSquare> before = find();
    if (!before.isEmpty()) {
      made.setSide(before.get(before.size() - 1).getSide());
      made.setResidueClass(before.get(before.size() - 1).getResidueClass());
    }
    make.get().getSpread().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<SpreadSquare>> make() {
    return List.of(Columns.<SpreadSquare>metres(desk(), "east", 0.8, Literals.SPREAD_SQUARE__EAST).doubting(this::odd),
        Columns.<SpreadSquare>metres(desk(), "north", 0.8, Literals.SPREAD_SQUARE__NORTH),
        residues.<SpreadSquare>mass(1), Columns.<SpreadSquare>metres(desk(), "side", 0.7, Literals.SPREAD_SQUARE__SIDE).askedWhen(s -> s != null && s.getSide() == null),
        EntryColumn.<SpreadSquare>typed("class", 1.4, s -> s.getResidueClass() == null ? "" : Columns.text(s.getResidueClass().getName()),
            typed -> Entry.of(s -> s.setResidueClass(typed.isBlank() ? null : residues.residueClass(typed)))).offering(s -> residues.names())
            .askedWhen(s -> s != null && s.getResidueClass() == null),
        Columns.<SpreadSquare>text("note", 1.4, Literals.READING__NOTE).askedWhen(s -> false));
  }

  @Override
  protected Optional<Finding> refusal(SpreadSquare square, EntryColumn<SpreadSquare> column, String text) {
    if (!column.id().equals("side") || text.isBlank()) {
      return Optional.empty();
    }
    SpreadSquare probe = ModelFactory.eINSTANCE.createSpreadSquare();
    column.read().apply(text).change().accept(probe);
    return probe.getSide() > 0 ? Optional.empty() : Optional.of(Finding.error("square.side", "", "“" + text + "” is no side of a square", "write a length above zero, such as 1 m"));
  }

  private Optional<Finding> odd(SpreadSquare s) {
    if (s.getEast() == null || s.getNorth() == null || s.getSide() == null) {
      return Optional.of(Finding.note("square.part", "", "the square is not whole", "write its middle east and north of the middle of the furnace, and its side"));
    }
    boolean twice = find().stream().anyMatch(o -> o != s && o.getResidueClass() == s.getResidueClass() && o.getEast() != null && o.getNorth() != null
        && Math.abs(o.getEast() - s.getEast()) < SAME && Math.abs(o.getNorth() - s.getNorth()) < SAME);
    return twice ? Optional.of(Finding.warning("square.twice", "", "this square has another mass of the same class", "put the masses together, or mend the place")) : Optional.empty();
  }
}
