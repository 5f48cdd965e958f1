package daubline.record;

import daubline.base.EnteredText;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Plausibility;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueKind;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.model.ModelFactory;
import daubline.model.Named;
import daubline.model.Person;
import daubline.model.Reading;
import daubline.model.Study;
import daubline.session.Readings;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Columns of the usual kinds. */
final class Columns {

  private Columns() {
  }

  /** A text, never null. */
  static String text(String text) {
    return text == null ? "" : text;
  }

  /** A text attribute. */
  static <T extends EObject> EntryColumn<T> text(String id, double share, EAttribute attribute) {
    return EntryColumn.typed(id, share, t -> text((String) t.eGet(attribute)),
        typed -> Entry.of(t -> t.eSet(attribute, typed.isBlank() ? null : typed)));
  }

  /** A date in ISO form; only form is checked, a year or month alone is allowed. */
  static <T extends EObject> EntryColumn<T> date(String id, double share, EAttribute attribute) {
    return EntryColumn.<T>typed(id, share, t -> text((String) t.eGet(attribute)), typed -> typed.isBlank()
        || typed.matches("\\d{4}(-(0[1-9]|1[0-2])(-(0[1-9]|[12]\\d|3[01])(T.+)?)?)?")
        ? Entry.of(t -> t.eSet(attribute, typed.isBlank() ? null : typed))
        : Entry.wrong("date.form", "“" + typed + "” is no date", "write year, month and day as 2031-08-16")).dated();
  }

  /** A whole number that is not negative. */
  static <T extends EObject> EntryColumn<T> whole(Desk desk, String id, double share, EAttribute attribute) {
    return EntryColumn.typed(id, share, t -> t.eGet(attribute) == null ? "" : t.eGet(attribute).toString(), typed -> {
      Optional<Double> number = Numbers.parse(typed, desk.decimal().get());
      if (typed.isBlank() || number.filter(n -> n == Math.rint(n) && n >= 0 && n < Integer.MAX_VALUE).isPresent()) {
        return Entry.of(t -> t.eSet(attribute, typed.isBlank() ? null : (Object) number.get().intValue()));
      }
      return Entry.wrong("number.whole", "“" + typed + "” is no whole number", "write a count without sign and decimals");
    });
  }

  /** A height or other length kept in metres; shown in millimetres, typed with or without its unit. */
  static <T extends EObject> EntryColumn<T> length(Desk desk, String id, double share, EAttribute attribute) {
    return length(desk, id, share, attribute, "mm", 0.001);
  }

  /** A distance kept, shown and typed in metres. */
  static <T extends EObject> EntryColumn<T> metres(Desk desk, String id, double share, EAttribute attribute) {
    return length(desk, id, share, attribute, "m", 1);
  }

  private static <T extends EObject> EntryColumn<T> length(Desk desk, String id, double share, EAttribute attribute, String unit, double metres) {
    return EntryColumn.typed(id, share, t -> t.eGet(attribute) == null ? "" : local(desk, daubline.base.Printed.number(steady((Double) t.eGet(attribute) / metres))), typed -> {
      Optional<Double> number = number(desk, typed, Units.find(daubline.base.Quantity.LENGTH, unit).orElseThrow());
      return typed.isBlank() || number.isPresent() ? Entry.of(t -> t.eSet(attribute, typed.isBlank() ? null : (Object) steady(number.get())))
          : Entry.wrong("length.form", "“" + typed + "” is no length", "write a number with or without its unit, such as 240 mm or 24 cm");
    });
  }

  /** Without the crumbs of the conversion: to a thousandth of what is shown at most. */
  private static double steady(double value) {
    return Math.rint(value * 1e9) / 1e9;
  }

  /** One of the constants of an enumeration, by its word in either language. */
  static <T extends EObject, E extends Enum<E>> EntryColumn<T> word(Desk desk, String id, double share, EAttribute attribute, E[] all, Function<E, String> word) {
    Function<E, String> shown = e -> desk.words().orElse(e.getDeclaringClass().getSimpleName().toLowerCase(java.util.Locale.ROOT) + "." + e.name(), desk.words().said(word.apply(e)));
    List<String> words = java.util.Arrays.stream(all).map(shown).toList();
    return EntryColumn.<T>typed(id, share, t -> Optional.ofNullable(all[0].getDeclaringClass().cast(t.eGet(attribute))).map(shown).orElse(""), typed -> {
      Optional<E> found = java.util.Arrays.stream(all).filter(e -> typed.equalsIgnoreCase(shown.apply(e)) || typed.equalsIgnoreCase(word.apply(e))).findFirst();
      return typed.isBlank() || found.isPresent() ? Entry.of(t -> t.eSet(attribute, found.orElse(null)))
          : Entry.wrong("value.category", "“" + typed + "” is not in the list", "choose one of: " + String.join(", ", words));
    }).offering(t -> words);
  }

  /** A number kept in the canonical unit of a quantity, shown in another; what is typed may carry any unit of the quantity. */
  static <T extends EObject> EntryColumn<T> number(Desk desk, String id, double share, EAttribute attribute, Unit unit) {
    return EntryColumn.typed(id, share, t -> t.eGet(attribute) == null ? "" : plain(desk, unit.fromCanonical((Double) t.eGet(attribute))), typed -> {
      Optional<Double> number = number(desk, typed, unit).filter(n -> n >= 0);
      return typed.isBlank() || number.isPresent() ? Entry.of(t -> t.eSet(attribute, number.orElse(null)))
          : Entry.wrong("number.bounds", "“" + typed + "” is no " + unit.quantity().name().toLowerCase(java.util.Locale.ROOT) + " of zero or more",
              "write a number with “" + desk.decimal().get().sign() + "” as decimal sign, in " + unit.symbol() + " or with its unit");
    });
  }

  /** A number with or without a unit of its own, in canonical units. */
  static Optional<Double> number(Desk desk, String typed, Unit usual) {
    EnteredText parts = EnteredText.split(typed, usual.quantity());
    Optional<Unit> unit = parts.unit().isEmpty() ? Optional.of(usual) : Units.find(usual.quantity(), parts.unit());
    return unit.flatMap(u -> Numbers.parse(parts.value(), desk.decimal().get()).map(u::toCanonical));
  }

  /** A printed number with the decimal sign of the desk. */
  static String local(Desk desk, String printed) {
    return printed.replace('.', desk.decimal().get().sign());
  }

  /** A number as it is typed here. */
  static String plain(Desk desk, double number) {
    return local(desk, daubline.base.Printed.number(number, 6));
  }

  /** One of some words that the study keeps in English, shown in the language of the desk; any other text is taken as it is. */
  static <T extends EObject> EntryColumn<T> known(Desk desk, String id, double share, EAttribute attribute, String stem, List<String> known) {
    Function<String, String> shown = w -> desk.words().orElse(stem + w.replace(' ', '_'), w);
    return EntryColumn.<T>typed(id, share, t -> shown.apply(text((String) t.eGet(attribute))), typed -> {
      String kept = known.stream().filter(w -> typed.equalsIgnoreCase(shown.apply(w)) || typed.equalsIgnoreCase(w)).findFirst().orElse(typed);
      return Entry.of(t -> t.eSet(attribute, kept.isBlank() ? null : kept));
    }).offering(t -> known.stream().map(shown).toList());
  }

  /** A thing of the study by its name. */
  static <T extends EObject, N extends Named> EntryColumn<T> named(String id, double share, EReference reference, Class<N> type, Supplier<List<N>> all) {
    return EntryColumn.<T>typed(id, share, t -> name(t.eGet(reference)), typed -> {
      Optional<N> found = all.get().stream().filter(n -> typed.equalsIgnoreCase(text(n.getName())) || typed.equals(n.getId())).findFirst();
      return typed.isBlank() || found.isPresent() ? Entry.of(t -> t.eSet(reference, found.orElse(null)))
          : Entry.wrong("name.unknown", "nothing here is called “" + typed + "”", "choose one of the list, or enter it first");
    }).offering(t -> all.get().stream().filter(n -> n != t).map(n -> text(n.getName())).toList());
  }

  /** A person by name or initials; somebody unknown is entered as a new person of the study. */
  static <T extends EObject> EntryColumn<T> person(Desk desk, String id, double share, EReference reference) {
    Study study = desk.session().study();
    return EntryColumn.<T>typed(id, share, t -> name(t.eGet(reference)),
        typed -> Entry.of(t -> t.eSet(reference, typed.isBlank() ? null : person(study, typed))))
        .offering(t -> study.getPeople().stream().map(p -> text(p.getName())).toList());
  }

  /** The person of a name; made when there is none. */
  static Person person(Study study, String name) {
    return study.getPeople().stream().filter(p -> name.equalsIgnoreCase(text(p.getName()))).findFirst().orElseGet(() -> {
      Person made = ModelFactory.eINSTANCE.createPerson();
      made.setName(name);
      study.getPeople().add(made);
      return made;
    });
  }

  private static String name(Object named) {
    return named instanceof Named n ? text(n.getName()) : "";
  }

  /** A value of a variable that is kept among others in a list of the object. */
  static <T extends EObject> EntryColumn<T> value(Desk desk, String id, double share, Variable variable, Function<T, List<Reading>> list) {
    Function<T, Optional<Reading>> find = t -> list.apply(t).stream().filter(r -> variable.id().equals(r.getVariable())).findFirst();
    return EntryColumn.<T>typed(id, share, t -> find.apply(t).map(r -> print(desk, r, variable)).orElse(""), typed -> value(desk, variable, typed, (t, change) -> {
      if (change == null) {
        find.apply(t).ifPresent(r -> EcoreUtil.delete(r, true));
      } else {
        change.accept(find.apply(t).orElseGet(() -> {
          Reading made = ModelFactory.eINSTANCE.createReading();
          list.apply(t).add(made);
          return made;
        }));
      }
    })).offering(t -> offered(desk, variable)).doubting(t -> find.apply(t).flatMap(r -> odd(r, variable)));
  }

  /** The words on offer for a variable, in the language of the desk. */
  static List<String> offered(Desk desk, Variable variable) {
    return switch (variable.type()) {
      case CATEGORY -> variable.words().stream().map(w -> desk.words().word(variable, w)).toList();
      case YES_NO -> Stream.of(ValueKind.PRESENT, ValueKind.ABSENT, ValueKind.NOT_RECORDED).map(k -> desk.words().word(variable, k.word())).toList();
      default -> List.of();
    };
  }

  /** What is implausible about a value. */
  static Optional<Finding> odd(Reading reading, Variable variable) {
    return Plausibility.check(variable, Readings.amount(reading), Units.find(variable.quantity(), text(reading.getUnit())).orElse(variable.unit()));
  }

  /** Reads a value with or without its unit; the receiver gets what to do to the reading, null when it is taken away. */
  static <T> Entry<T> value(Desk desk, Variable variable, String typed, BiConsumer<T, java.util.function.Consumer<Reading>> receiver) {
    if (typed.isBlank()) {
      return Entry.of(t -> receiver.accept(t, null));
    }
    String kept = desk.words().kept(variable, typed);
    EnteredText parts = variable.type() == ValueType.NUMBER ? EnteredText.split(kept, variable.quantity()) : new EnteredText(kept, "");
    Optional<Finding> complaint = Readings.put(ModelFactory.eINSTANCE.createReading(), variable, parts.value(), parts.unit(), desk.decimal().get());
    return complaint.<Entry<T>>map(Entry::wrong).orElseGet(() -> Entry.of(t -> receiver.accept(t,
        r -> Readings.put(r, variable, parts.value(), parts.unit(), desk.decimal().get()))));
  }

  /** A value as typed with its unit; a word where it is missing, in the language of the desk. */
  static String print(Desk desk, Reading reading, Variable variable) {
    return desk.words().word(variable, reading.getTyped() == null ? daubline.base.Printed.withUnit(Readings.amount(reading), variable.unit())
        : (reading.getTyped() + " " + text(reading.getUnit())).strip());
  }
}
