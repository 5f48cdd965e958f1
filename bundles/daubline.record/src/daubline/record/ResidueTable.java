package daubline.record;

import daubline.base.Finding;
import daubline.base.HowGot;
import daubline.base.Quantity;
import daubline.base.ResidueKinds;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.model.ModelFactory;
import daubline.model.ModelPackage.Literals;
import daubline.model.ResidueClass;
import daubline.model.ResidueMass;
import daubline.model.Sheet;
import daubline.model.Study;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Residues by class: a mass, 0 for weighed and nothing found, or "not weighed" for there and not put on a scale. */
public final class ResidueTable extends ObjectTable<ResidueMass> {

  private static final Variable MASS = new Variable("", "Mass of the class", "Residues", ValueType.NUMBER, Quantity.MASS, Units.canonical(Quantity.MASS),
      0, 20_000, Set.of(), List.of(), false, "", "", "");

  private final Supplier<Sheet> sheet;
  private final Supplier<Sheet> make;

  /**
   * The residues of a sheet.
   *
   * @param sheet the sheet; may say null when there is none yet
   * @param make the sheet, made when there is none; called inside a change
   */
  public ResidueTable(Desk desk, Supplier<Sheet> sheet, Supplier<Sheet> make) {
    super("residues", desk);
    this.sheet = sheet;
    this.make = make;
    refresh();
  }

  @Override
  protected List<ResidueMass> find() {
    return sheet.get() == null ? List.of() : sheet.get().getResidues();
  }

  @Override
  protected ResidueMass begin() {
    ResidueMass made = ModelFactory.eINSTANCE.createResidueMass();
    made.setKind(daubline.base.ValueKind.NOT_RECORDED);
    make.get().getResidues().add(made);
    return made;
  }

  @Override
  protected List<EntryColumn<ResidueMass>> make() {
    return List.of(
        EntryColumn.<ResidueMass>typed("class", 1.4, r -> r.getResidueClass() == null ? "" : Columns.text(r.getResidueClass().getName()), this::readClass)
            .offering(r -> names()),
        EntryColumn.<ResidueMass>typed("mass", 1, ResidueTable::printMass, this::readMass).doubting(r -> Columns.odd(r, MASS)),
        Columns.<ResidueMass>whole(desk(), "count", 0.6, Literals.RESIDUE_MASS__COUNT),
        Columns.<ResidueMass, HowGot>word(desk(), "how", 0.9, Literals.READING__HOW, HowGot.values(), HowGot::word).askedWhen(r -> false),
        Columns.<ResidueMass>text("note", 1.4, Literals.READING__NOTE).askedWhen(r -> false),
        EntryColumn.<ResidueMass>typed("definition", 2.6, r -> r.getResidueClass() == null ? "" : Columns.text(r.getResidueClass().getDefinition()),
            typed -> Entry.of(r -> {
              if (r.getResidueClass() != null) {
                r.getResidueClass().setDefinition(typed.isBlank() ? null : typed);
              }
            })).askedWhen(r -> false));
  }

  private static String printMass(ResidueMass r) {
    return r.getKind() == null || r.getKind() == daubline.base.ValueKind.NOT_RECORDED && r.getTyped() == null ? "" : Columns.print(r, MASS);
  }

  private Entry<ResidueMass> readMass(String typed) {
    Entry<ResidueMass> read = Columns.value(desk(), MASS, typed, (r, change) -> {
      if (change == null) {
        daubline.session.Readings.put(r, daubline.base.Amount.of(daubline.base.ValueKind.NOT_RECORDED));
      } else {
        change.accept(r);
        r.setVariable(null);
        r.setHow(r.getHow() == null && r.getKind().isNumber() ? HowGot.WEIGHED : r.getHow());
      }
    });
    return typed.startsWith("-") && typed.length() > 1 ? Entry.wrong("mass.negative", "“" + typed + "” is less than nothing", "weigh again; write 0 for weighed and nothing found")
        : read;
  }

  private Entry<ResidueMass> readClass(String typed) {
    return Entry.of(r -> r.setResidueClass(typed.isBlank() ? null : residueClass(typed)));
  }

  private List<String> names() {
    return Stream.concat(desk().session().study().getResidueClasses().stream().map(c -> Columns.text(c.getName())),
        ResidueKinds.standard().stream().map(ResidueKinds.Kind::name)).distinct().toList();
  }

  private ResidueClass residueClass(String name) {
    Study study = desk().session().study();
    return study.getResidueClasses().stream().filter(c -> name.equalsIgnoreCase(Columns.text(c.getName()))).findFirst().orElseGet(() -> {
      ResidueClass made = ModelFactory.eINSTANCE.createResidueClass();
      Optional<ResidueKinds.Kind> known = ResidueKinds.standard().stream().filter(k -> k.name().equalsIgnoreCase(name)).findFirst();
      known.ifPresent(k -> made.setId(k.id()));
      made.setName(known.map(ResidueKinds.Kind::name).orElse(name));
      made.setDefinition(known.map(ResidueKinds.Kind::definition).orElse(null));
      made.setSource(known.map(ResidueKinds.Kind::source).orElse(null));
      study.getResidueClasses().add(made);
      return made;
    });
  }

  /** A class stands once in a sheet unless two sources say different things; and one of the study's own needs a definition. */
  @Override
  protected Optional<Finding> refusal(ResidueMass object, EntryColumn<ResidueMass> column, String text) {
    boolean twice = column.id().equals("class") && find().stream().filter(r -> r != object && r.getResidueClass() != null)
        .filter(r -> object == null || r.getCitation() == object.getCitation()).anyMatch(r -> text.strip().equalsIgnoreCase(r.getResidueClass().getName()));
    return twice ? Optional.of(Finding.error("residue.twice", "", "“" + text.strip() + "” has a row already", "change that row, or choose another class")) : Optional.empty();
  }

  /** Gives each class that has no row one, to be filled in; nothing is said about them yet. */
  public void layOut() {
    List<String> there = find().stream().filter(r -> r.getResidueClass() != null).map(r -> r.getResidueClass().getName()).toList();
    List<String> missing = names().stream().filter(n -> !there.contains(n)).toList();
    if (!missing.isEmpty()) {
      desk().edit("change.layOut", "", () -> missing.forEach(name -> begin().setResidueClass(residueClass(name))));
      refresh();
    }
  }
}
