package daubline.analysis.checks;

import daubline.base.Finding;
import daubline.base.Quantity;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable.Place;
import daubline.base.Variables;
import daubline.model.ResidueClass;
import daubline.model.VariableDefinition;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Variables and residue classes of the study's own: what is missing from their definitions, or cannot be understood. */
final class OwnVariableCheck implements Check {

  private static final String CODE = "own.";

  @Override
  public String id() {
    return "own";
  }

  @Override
  public String description() {
    return "Variables and residue classes that the study adds: name, definition, kind, unit and place must be clear.";
  }

  @Override
  public void run(CheckedStudy study) {
    study.each(VariableDefinition.class, v -> new Judge(study, v).run());
    study.each(ResidueClass.class, r -> {
      if (isBlank(r.getDefinition())) {
        study.report(Finding.warning(CODE + "definition", "", "the residue class " + r.getName() + " has no definition",
            "write what belongs to it, so that two people sort alike"), r, "");
      }
    });
  }

  /** Looks at one variable. */
  private record Judge(CheckedStudy study, VariableDefinition v) {

    void run() {
      warnIf(isBlank(v.getMeaning()), "meaning", "says nowhere what is measured", "write what is measured and how, so that another team does the same");
      warnIf(Variables.standard().all().stream().anyMatch(s -> s.name().equalsIgnoreCase(String.valueOf(v.getName()).strip())), "twin",
          "has the name of a variable of the catalogue", "use that one, or name this one so that they are told apart");
      failIf(isBlank(v.getName()), "name", "has no name", "give it one that says what is measured");
      failIf(!known(ValueType.class, v.getType()), "type", "has no known kind of value: “" + v.getType() + "” is taken as text", "choose one of " + words(ValueType.class));
      if (known(Quantity.class, v.getQuantity())) {
        unit(Quantity.valueOf(normal(v.getQuantity())));
      } else {
        failIf(true, "quantity", "measures nothing known: “" + v.getQuantity() + "” is taken as a plain number", "choose one of " + words(Quantity.class));
      }
      List<String> unknown = list(v.getStages()).stream().filter(p -> !known(Place.class, p)).toList();
      failIf(list(v.getStages()).isEmpty() || !unknown.isEmpty(), "places",
          unknown.isEmpty() ? "is asked for nowhere" : "is asked for at an unknown place: " + String.join(", ", unknown),
          "name some of " + words(Place.class) + ", with semicolons between them");
      failIf(v.getLow() != null && v.getHigh() != null && v.getLow() > v.getHigh(), "range", "has its least plausible value above the most plausible one", "exchange the two");
      failIf(normal(v.getType()).equals(ValueType.CATEGORY.name()) && list(v.getCategories()).isEmpty(), "words", "is a word to choose, and there are no words",
          "write the words, with semicolons between them");
    }

    private void unit(Quantity quantity) {
      failIf(!isBlank(v.getUnit()) && Units.find(quantity, v.getUnit()).isEmpty(), "unit", "has the unit “" + v.getUnit() + "”, in which " + word(quantity) + " is not measured",
          "choose one of " + Units.of(quantity).stream().map(Unit::symbol).filter(s -> !s.isEmpty()).collect(Collectors.joining(", ")) + ", or leave it empty");
    }

    private void warnIf(boolean wrong, String code, String what, String remedy) {
      if (wrong) {
        study.report(Finding.warning(CODE + code, "", name() + " " + what, remedy), v, v.getId());
      }
    }

    private void failIf(boolean wrong, String code, String what, String remedy) {
      if (wrong) {
        study.report(Finding.error(CODE + code, "", name() + " " + what, remedy), v, v.getId());
      }
    }

    private String name() {
      return "the variable " + (isBlank(v.getName()) ? v.getId() : v.getName());
    }
  }

  private static <E extends Enum<E>> boolean known(Class<E> type, String text) {
    return Arrays.stream(type.getEnumConstants()).anyMatch(e -> e.name().equals(normal(text)));
  }

  private static <E extends Enum<E>> String words(Class<E> type) {
    return Arrays.stream(type.getEnumConstants()).map(OwnVariableCheck::word).collect(Collectors.joining(", "));
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String normal(String text) {
    return text == null ? "" : text.strip().toUpperCase(Locale.ROOT).replace(' ', '_');
  }

  private static List<String> list(String text) {
    return text == null ? List.of() : Arrays.stream(text.split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  private static boolean isBlank(String text) {
    return text == null || text.isBlank();
  }
}
