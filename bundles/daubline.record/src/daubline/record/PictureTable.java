package daubline.record;

import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Printed;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.model.DataFile;
import daubline.model.Measurement;
import daubline.model.ModelPackage.Literals;
import daubline.model.Sheet;
import daubline.session.Readings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.eclipse.emf.ecore.EObject;

/** What is measured on one picture: the scale with its known length, and lengths; a length whose property is chosen becomes a claim. Lines are drawn on the picture. */
public final class PictureTable extends ObjectTable<Measurement> {

  private static final Unit MM = Units.find(Quantity.LENGTH, "mm").orElseThrow();
  private static final Variable KNOWN = new Variable("", "Known length", "", ValueType.NUMBER, Quantity.LENGTH, MM, 0.001, 100, Set.of(), List.of(), false, "", "", "");
  private static final double MOST_POINTING = 1000;

  private final Supplier<Sheet> make;
  private final OwnVariable variables;
  private DataFile file;

  /**
   * The measurements of no picture yet.
   *
   * @param make the sheet that claims go to, made when there is none; called inside a change
   */
  public PictureTable(Desk desk, Supplier<Sheet> make) {
    super("measured", desk);
    this.make = make;
    variables = new OwnVariable(desk, v -> v.isAt(Variable.Place.REMAINS) && v.type() == ValueType.NUMBER && v.quantity() == Quantity.LENGTH);
    refresh();
  }

  /** Shows the measurements of a picture; null for none. */
  public void of(DataFile picture) {
    file = picture;
    refresh();
  }

  @Override
  protected List<Measurement> find() {
    return file == null ? List.of() : shown(file.getMeasurements());
  }

  @Override
  public boolean canAdd() {
    return false;
  }

  @Override
  public boolean isShortened() {
    return true;
  }

  /** The scale stays while lengths rest on it. */
  @Override
  public boolean canRemove(int row) {
    return at(row) != null && !desk().session().isReadOnly() && (!at(row).isScale() || rows() == 1);
  }

  /** A claim goes with the length that it states. */
  @Override
  protected List<EObject> removed(Measurement object) {
    List<EObject> all = new ArrayList<>(Pictures.claims(object));
    all.add(object);
    return all;
  }

  @Override
  protected List<EntryColumn<Measurement>> make() {
    EntryColumn<Measurement> property = variables.<Measurement>property(1.6);
    return List.of(
        EntryColumn.<Measurement>typed("property", 1.6, m -> m.isScale() ? desk().words().of("measured.scale") : property.print().apply(m), this::readProperty)
            .editing(m -> property.print().apply(m)).offering(m -> m != null && m.isScale() ? List.of() : property.choices().apply(m)).askedWhen(m -> m != null && !m.isScale()),
        EntryColumn.<Measurement>typed("length", 1.1, this::printLength, typed -> readKnown(typed)).doubting(this::odd).askedWhen(m -> m != null && m.isScale()),
        EntryColumn.<Measurement>typed("pointing", 0.8, m -> Columns.local(desk(), Printed.number(Pictures.line(m).pointing(), 3)), this::readPointing).askedWhen(m -> m != null && m.isScale()),
        EntryColumn.shown("parts", 1.4, this::parts),
        EntryColumn.shown("points", 1.6, PictureTable::points),
        Columns.<Measurement>text("note", 1.2, Literals.READING__NOTE).askedWhen(m -> false));
  }

  @Override
  public boolean isEditable(int row, int column) {
    Measurement m = at(row);
    String id = columns().get(column);
    return m != null && super.isEditable(row, column) && (!id.equals("property") || !m.isScale()) && (!id.equals("length") || m.isScale());
  }

  private String printLength(Measurement m) {
    return m.isScale() ? m.getTyped() == null ? "" : Columns.print(desk(), m, KNOWN)
        : Readings.amount(m).isNumber() ? Columns.local(desk(), Printed.withUnit(Readings.amount(m), MM)) : "";
  }

  private static String points(Measurement m) {
    PictureLength.Line line = Pictures.line(m);
    return "(" + Printed.fixed(line.x1(), 1) + ", " + Printed.fixed(line.y1(), 1) + ") – (" + Printed.fixed(line.x2(), 1) + ", " + Printed.fixed(line.y2(), 1) + ")";
  }

  private String parts(Measurement m) {
    return Pictures.length(file, m).filter(l -> l.sigma() > 0)
        .map(l -> desk().words().of("measured.parts.of", mm(l.fromKnown()), mm(l.fromScale()), mm(l.fromPoints()))).orElse("");
  }

  private String mm(double metres) {
    return Columns.local(desk(), Printed.number(MM.fromCanonical(metres), 2));
  }

  private Entry<Measurement> readProperty(String typed) {
    if (typed.isBlank()) {
      return Entry.of(m -> {
        m.setVariable(null);
        Pictures.claims(m).forEach(c -> org.eclipse.emf.ecore.util.EcoreUtil.delete(c, true));
      });
    }
    Optional<Variable> meant = variables.offered().stream().filter(v -> desk().words().isMeant(v, typed)).findFirst();
    return meant.map(v -> Entry.<Measurement>of(m -> Pictures.claim(m, v.id(), make.get())))
        .orElseGet(() -> Entry.wrong("value.variable", "“" + typed + "” is no length that is asked of remains", "choose one of the list, or leave it empty"));
  }

  private Entry<Measurement> readKnown(String typed) {
    Entry<Measurement> read = Columns.value(desk(), KNOWN, typed, (m, change) -> {
      if (change == null) {
        Readings.put(m, daubline.base.Amount.of(daubline.base.ValueKind.NOT_RECORDED));
      } else {
        change.accept(m);
        m.setVariable(null);
      }
      Pictures.follow(file);
    });
    if (!read.isRead() || typed.isBlank()) {
      return read;
    }
    daubline.model.Reading probe = daubline.model.ModelFactory.eINSTANCE.createReading();
    daubline.base.EnteredText parts = daubline.base.EnteredText.split(typed, Quantity.LENGTH);
    Readings.put(probe, KNOWN, parts.value(), parts.unit(), desk().decimal().get());
    return PictureLength.isKnown(Readings.amount(probe)) ? read
        : Entry.wrong("picture.known", "“" + typed + "” gives no scale", "write a length above zero with its standard uncertainty, such as 500 ± 1 mm, or a range");
  }

  private Entry<Measurement> readPointing(String typed) {
    Optional<Double> pixels = Numbers.parse(typed, desk().decimal().get()).filter(p -> p >= 0 && p <= MOST_POINTING);
    return pixels.isEmpty() ? Entry.wrong("picture.pointing", "“" + typed + "” is no uncertainty in pixels", "write how far off a point may be, from 0 to 1000, such as 1.5")
        : Entry.of(m -> {
          m.setPointing(pixels.get());
          Pictures.follow(file);
        });
  }

  private Optional<Finding> odd(Measurement m) {
    if (m.isScale()) {
      return !PictureLength.isKnown(Readings.amount(m))
          ? Optional.of(Finding.warning("picture.unscaled", "", "the length of the scale is not known yet, so nothing can be measured", "type it here, such as 500 ± 1 mm"))
          : Readings.amount(m).kind() == daubline.base.ValueKind.EXACT
          ? Optional.of(Finding.note("picture.exact", "", "no uncertainty of the known length is stated; it is taken for exact", "write how far off it may be, such as 500 ± 1 mm"))
          : Optional.empty();
    }
    return Pictures.length(file, m).filter(l -> !l.clear()).map(l -> Finding.warning("picture.short", "",
        "the points of the line or of the scale lie too close together for their uncertainty", "draw longer lines, or zoom in and state a smaller uncertainty of the points"));
  }
}
