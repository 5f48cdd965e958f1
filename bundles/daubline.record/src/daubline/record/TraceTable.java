package daubline.record;

import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Units;
import daubline.model.Lot;
import daubline.session.store.LotTrace;
import java.util.List;
import org.eclipse.emf.ecore.EObject;

/** Where a lot came from, back to its deliveries, and where it went, on to the trials; nothing is typed here. */
public final class TraceTable extends ObjectTable<LotTrace.Line> {

  private final Lot lot;

  /** The trace of a lot. */
  public TraceTable(Desk desk, Lot lot) {
    super("trace", desk);
    this.lot = lot;
    refresh();
  }

  @Override
  protected List<LotTrace.Line> find() {
    return LotTrace.of(desk().session().study(), lot);
  }

  @Override
  protected EObject subject(LotTrace.Line line) {
    return line.thing();
  }

  @Override
  public boolean canAdd() {
    return false;
  }

  @Override
  public int depth(int row) {
    return at(row).depth();
  }

  @Override
  protected List<EntryColumn<LotTrace.Line>> make() {
    return List.of(EntryColumn.shown("name", 2.2, l -> Columns.text(l.thing().getName())),
        EntryColumn.shown("what", 1.2, this::what),
        EntryColumn.shown("mass", 0.9, l -> l.mass().map(m -> Printed.withUnit(m, Units.canonical(Quantity.MASS))).orElse("")),
        EntryColumn.<LotTrace.Line>shown("on", 0.9, LotTrace.Line::on).dated(),
        EntryColumn.shown("supplier", 1.3, l -> l.thing() instanceof Lot from ? Columns.text(from.getSupplier()) : ""),
        EntryColumn.shown("origin", 1.3, l -> l.thing() instanceof Lot from ? Columns.text(from.getOrigin()) : ""));
  }

  private String what(LotTrace.Line line) {
    boolean delivered = line.kind() == LotTrace.Kind.ORIGIN && ((Lot) line.thing()).getFrom().isEmpty();
    boolean planned = line.kind() == LotTrace.Kind.TRIAL && line.mass().isEmpty();
    return desk().words().of("trace." + (delivered ? "DELIVERED" : planned ? "PLANNED" : line.kind().name()));
  }
}
