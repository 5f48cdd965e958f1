package daubline.analysis.design;

import daubline.analysis.record.PlanningData.ForbiddenData;
import daubline.base.DecimalSign;
import daubline.base.Finding;
import daubline.base.Numbers;
import daubline.base.Unit;
import daubline.base.Units;
import daubline.base.Variables;
import daubline.engine.design.Condition;
import daubline.engine.design.Condition.Relation;
import daubline.engine.design.Factor;
import daubline.engine.design.Rule;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reads a forbidden combination as it is typed: "Air flow at least 700 and Furnace type is domed". Factors by name or id;
 * "at least", "at most", "is", "is not"; a unit may follow a number.
 */
final class RuleReader {

  private record Word(String text, Relation relation) {
  }

  private static final List<Word> WORDS = List.of(new Word("at least", Relation.AT_LEAST), new Word("at most", Relation.AT_MOST),
      new Word("is not", Relation.IS_NOT), new Word("is", Relation.IS), new Word(">=", Relation.AT_LEAST), new Word("≥", Relation.AT_LEAST),
      new Word("<=", Relation.AT_MOST), new Word("≤", Relation.AT_MOST), new Word("=", Relation.IS));

  private final List<Factor> factors;
  private final Variables variables;
  private final List<Finding> findings = new ArrayList<>();

  RuleReader(List<Factor> factors, Variables variables) {
    this.factors = factors;
    this.variables = variables;
  }

  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** The rule; empty when it cannot be read, with a finding that says so. */
  Optional<Rule> read(ForbiddenData data) {
    List<Condition> conditions = new ArrayList<>();
    String text = data.conditions().strip().replaceFirst("(?i)^never\\s+", "");
    for (String part : text.split("(?i)\\s+and\\s+|;")) {
      Optional<Condition> condition = condition(part.strip(), data);
      if (condition.isEmpty()) {
        return Optional.empty();
      }
      conditions.add(condition.get());
    }
    return Optional.of(new Rule(data.because(), conditions, null));
  }

  private Optional<Condition> condition(String part, ForbiddenData data) {
    Optional<Factor> factor = factors.stream().filter(f -> begins(part, f.name()) || begins(part, f.id()))
        .max(Comparator.comparingInt(f -> f.name().length()));
    if (factor.isEmpty()) {
      return wrong(data, "“" + part + "” names none of the factors: " + String.join(", ", factors.stream().map(Factor::name).toList()));
    }
    Factor f = factor.get();
    String rest = part.substring(begins(part, f.name()) ? f.name().length() : f.id().length()).strip();
    Optional<Word> word = WORDS.stream().filter(w -> begins(rest, w.text())).findFirst();
    if (word.isEmpty()) {
      return wrong(data, "“" + part + "” does not say “at least”, “at most”, “is” or “is not”");
    }
    String value = rest.substring(word.get().text().length()).strip();
    return f.isCategory() ? category(f, word.get().relation(), value, data) : number(f, word.get().relation(), value, data);
  }

  private static boolean begins(String text, String with) {
    return text.regionMatches(true, 0, with, 0, with.length());
  }

  private Optional<Condition> category(Factor f, Relation relation, String value, ForbiddenData data) {
    Optional<String> name = f.names().stream().filter(value::equalsIgnoreCase).findFirst();
    if (name.isEmpty() || relation != Relation.IS && relation != Relation.IS_NOT) {
      return wrong(data, f.name() + " is or is not one of " + String.join(", ", f.names()) + ", not “" + value + "”");
    }
    return Optional.of(new Condition(f.id(), relation, 0, name.get()));
  }

  private Optional<Condition> number(Factor f, Relation relation, String value, ForbiddenData data) {
    int end = 0;
    while (end < value.length() && "+-−0123456789.,".indexOf(value.charAt(end)) >= 0) {
      end++;
    }
    String digits = value.substring(0, end);
    String unit = value.substring(end).strip();
    Optional<Double> number = Numbers.parse(digits, digits.indexOf(',') >= 0 ? DecimalSign.COMMA : DecimalSign.POINT);
    Optional<Unit> own = variables.find(f.id()).flatMap(v -> Units.find(v.quantity(), f.unit()));
    Optional<Unit> typed = unit.isEmpty() ? own : variables.find(f.id()).flatMap(v -> Units.find(v.quantity(), unit));
    if (number.isEmpty() || own.isEmpty() || typed.isEmpty()) {
      return wrong(data, "“" + value + "” is not a setting of " + f.name() + (f.unit().isEmpty() ? "" : " in " + f.unit()));
    }
    return Optional.of(new Condition(f.id(), relation, own.get().fromCanonical(typed.get().toCanonical(number.get())), ""));
  }

  private Optional<Condition> wrong(ForbiddenData data, String what) {
    findings.add(Finding.error("design.rule", "forbidden combination “" + data.conditions() + "”", what,
        "write it like “Air flow at least 700 and Furnace type is domed”, with the names of the factors"));
    return Optional.empty();
  }
}
