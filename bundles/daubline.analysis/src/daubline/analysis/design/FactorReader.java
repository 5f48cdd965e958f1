package daubline.analysis.design;

import daubline.analysis.record.SeriesData.FactorData;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.ValueType;
import daubline.base.Variable;
import daubline.base.Variables;
import daubline.engine.design.Change;
import daubline.engine.design.Factor;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a factor as it is typed: "500 to 800" for every setting between two limits, "500; 650; 800" for these alone, words
 * for categories; a unit may follow. Nothing typed means every word of the variable. Settings stay in the unit typed.
 */
public final class FactorReader {

  /** A factor by this id varies the reconstruction; its levels are names of reconstructions. */
  public static final String RECONSTRUCTION = "reconstruction";

  private static final String NUMBER = "[-−]?\\d+(?:[.,]\\d+)?(?:[eE][-+]?\\d+)?";
  private static final Pattern RANGE = Pattern.compile("(" + NUMBER + ")\\s*(?:to|bis|\\.\\.|–|-)\\s*(" + NUMBER + ")\\s*(.*)");
  private static final Pattern ONE = Pattern.compile("(" + NUMBER + ")\\s*(.*)");

  private final Variables variables;
  private final List<String> reconstructions;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * A reader.
   *
   * @param reconstructions the names of the study's reconstructions
   */
  public FactorReader(Variables variables, List<String> reconstructions) {
    this.variables = variables;
    this.reconstructions = List.copyOf(reconstructions);
  }

  /** What was wrong with the factors read so far. */
  public List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** The factor; empty when it cannot be read, with a finding that says so. */
  public Optional<Factor> read(FactorData data) {
    Change change = data.hardToChange() ? Change.EACH_FURNACE : data.daily() ? Change.EACH_DAY : Change.EACH_TRIAL;
    if (data.variable().equals(RECONSTRUCTION)) {
      return words("Reconstruction", data, reconstructions, Change.EACH_FURNACE);
    }
    Optional<Variable> variable = variables.find(data.variable());
    if (variable.isEmpty()) {
      return wrong(data, "there is no variable “" + data.variable() + "” in the catalogue", "choose one of the catalogue, or add it to the study");
    }
    Variable v = variable.get();
    return switch (v.type()) {
      case NUMBER -> number(v, data, change);
      case YES_NO -> words(v.name(), data, List.of("absent", "present"), change);
      case CATEGORY -> words(v.name(), data, v.words(), change);
      case TEXT -> words(v.name(), data, List.of(), change);
    };
  }

  private Optional<Factor> wrong(FactorData data, String what, String remedy) {
    String name = variables.find(data.variable()).map(Variable::name).orElse(data.variable());
    findings.add(Finding.error("design.factor", "factor " + name, what, remedy).about("", data.variable()));
    return Optional.empty();
  }

  private Optional<Factor> words(String name, FactorData data, List<String> known, Change change) {
    List<String> typed = list(data.levels());
    List<String> unknown = typed.stream().filter(w -> !known.isEmpty() && known.stream().noneMatch(w::equalsIgnoreCase)).toList();
    if (!unknown.isEmpty()) {
      return wrong(data, "“" + String.join("”, “", unknown) + "” is not among its words: " + String.join(", ", known), "use these words, with “;” between them");
    }
    List<String> names = typed.isEmpty() ? known
        : typed.stream().map(w -> known.stream().filter(w::equalsIgnoreCase).findFirst().orElse(w)).distinct().toList();
    if (names.size() < 2) {
      return wrong(data, "it has fewer than two words to vary", "give two or more, with “;” between them");
    }
    return Optional.of(new Factor(data.variable(), name, "", 0, 0, List.of(), names, change));
  }

  private Optional<Factor> number(Variable v, FactorData data, Change change) {
    String text = data.levels().strip();
    Matcher range = RANGE.matcher(text);
    if (range.matches()) {
      return limits(v, data, change, range);
    }
    List<Double> levels = new ArrayList<>();
    String unit = "";
    for (String part : list(text)) {
      Matcher one = ONE.matcher(part);
      if (!one.matches() || Double.isNaN(number(one.group(1)))) {
        return wrong(data, "“" + part + "” is not a number", "write limits as “500 to 800”, or levels as “500; 650; 800”");
      }
      levels.add(number(one.group(1)));
      unit = one.group(2).isBlank() ? unit : one.group(2).strip();
    }
    List<Double> sorted = levels.stream().distinct().sorted().toList();
    if (sorted.size() < 2) {
      return wrong(data, "it has fewer than two settings", "write limits as “500 to 800”, or levels as “500; 650; 800”");
    }
    return make(v, data, change, unit, sorted.get(0), sorted.get(sorted.size() - 1), sorted);
  }

  private Optional<Factor> limits(Variable v, FactorData data, Change change, Matcher range) {
    double low = number(range.group(1));
    double high = number(range.group(2));
    if (!(low < high)) {
      return wrong(data, "the lower limit " + range.group(1) + " is not below the upper limit " + range.group(2), "give two different limits, the lower first");
    }
    return make(v, data, change, range.group(3).strip(), low, high, List.of());
  }

  private Optional<Factor> make(Variable v, FactorData data, Change change, String unit, double low, double high, List<Double> levels) {
    Optional<Unit> known = unit.isEmpty() ? Optional.of(v.unit()) : Units.find(v.quantity(), unit);
    if (known.isEmpty()) {
      return wrong(data, "“" + unit + "” is no unit of it", "use one of: " + String.join(", ", Units.of(v.quantity()).stream().map(Unit::symbol).toList()));
    }
    for (double limit : new double[] {low, high}) {
      if (!v.isPlausible(known.get().toCanonical(limit))) {
        findings.add(Finding.warning("design.factor-range", "factor " + v.name(), limit + " " + known.get().symbol()
            + " lies outside what is plausible for it", "check the number and its unit").about("", v.id()));
      }
    }
    return Optional.of(new Factor(v.id(), v.name(), known.get().symbol(), low, high, levels, List.of(), change));
  }

  private static double number(String text) {
    return Numbers.parse(text, text.indexOf(',') >= 0 ? DecimalSign.COMMA : DecimalSign.POINT).orElse(Double.NaN);
  }

  static List<String> list(String text) {
    return Arrays.stream(text.split(";")).map(String::strip).filter(s -> !s.isEmpty()).toList();
  }

  /** Whether settings of a factor are numbers in a unit of the variable. */
  static boolean isNumber(Variables variables, String id) {
    return variables.find(id).filter(v -> v.type() == ValueType.NUMBER).isPresent();
  }
}
