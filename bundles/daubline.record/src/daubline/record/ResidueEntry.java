package daubline.record;

import daubline.base.Amount;
import daubline.base.HowGot;
import daubline.base.Quantity;
import daubline.base.ResidueKinds;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.model.ModelFactory;
import daubline.model.Reading;
import daubline.model.ResidueClass;
import daubline.model.Study;
import daubline.session.Readings;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Classes and masses of residues, as tables ask for them.
 *
 * @param desk where it is written
 */
record ResidueEntry(Desk desk) {

  private static final Variable MASS = new Variable("", "Mass of the class", "Residues", ValueType.NUMBER, Quantity.MASS, Units.canonical(Quantity.MASS),
      0, 20_000, Set.of(), List.of(), false, "", "", "");

  /** The column of a mass that is the reading itself. */
  <R extends Reading> EntryColumn<R> mass(double share) {
    return EntryColumn.<R>typed("mass", share, this::print, this::read).doubting(r -> Columns.odd(r, MASS));
  }

  private String print(Reading r) {
    return r.getKind() == null || r.getKind() == ValueKind.NOT_RECORDED && r.getTyped() == null ? "" : Columns.print(desk, r, MASS);
  }

  private <R extends Reading> Entry<R> read(String typed) {
    Entry<R> read = Columns.value(desk, MASS, typed, (r, change) -> {
      if (change == null) {
        Readings.put(r, Amount.of(ValueKind.NOT_RECORDED));
      } else {
        change.accept(r);
        r.setVariable(null);
        r.setHow(r.getHow() == null && r.getKind().isNumber() ? HowGot.WEIGHED : r.getHow());
      }
    });
    return typed.startsWith("-") && typed.length() > 1 ? Entry.wrong("mass.negative", "“" + typed + "” is less than nothing", "weigh again; write 0 for weighed and nothing found")
        : read;
  }

  /** The names of the study's classes and of the standard ones. */
  List<String> names() {
    return Stream.concat(desk.session().study().getResidueClasses().stream().map(c -> Columns.text(c.getName())),
        ResidueKinds.standard().stream().map(ResidueKinds.Kind::name)).distinct().toList();
  }

  /** The class of a name, made when there is none; for use inside a change. */
  ResidueClass residueClass(String name) {
    Study study = desk.session().study();
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
}
