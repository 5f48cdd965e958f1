package daubline.analysis;

import daubline.base.Amount;
import daubline.base.TrialStatus;
import daubline.base.Variable;
import daubline.engine.inference.Recipe;
import daubline.engine.inference.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * One variable that can be chosen for a trial: with which settings it was burnt, which are planned, and what the evidence says.
 *
 * @param variable the variable
 * @param numbers the setting of each burnt trial that states a number, by trial id, canonical
 * @param words the setting of each burnt trial that states a word, by trial id
 * @param planned numbers that are planned and not burnt yet, canonical
 * @param plannedWords words that are planned and not burnt yet
 * @param evidence from the lowest to the highest number that evidence sheets state, canonical; empty when none states one
 */
public record TriedVariable(Variable variable, Map<String, Double> numbers, Map<String, String> words, List<Double> planned,
    List<String> plannedWords, double[] evidence) {

  /** A scale that spans this factor or more is one of factors rather than of differences. */
  private static final double WIDE = 6;

  public TriedVariable {
    numbers = Map.copyOf(numbers);
    words = Map.copyOf(words);
    planned = List.copyOf(planned);
    plannedWords = List.copyOf(plannedWords);
    evidence = evidence.clone();
  }

  @Override
  public double[] evidence() {
    return evidence.clone();
  }

  /** Every variable that was chosen in any trial: those that no sheet gives a number for first, then in the order of the catalogue. */
  public static List<TriedVariable> of(StudySnapshot snapshot) {
    List<Recipe> recipes = Recipes.of(snapshot);
    List<TriedVariable> all = new ArrayList<>();
    for (Variable variable : snapshot.variables().at(Variable.Place.PLANNED)) {
      TriedVariable tried = of(snapshot, recipes, variable);
      if (!tried.numbers().isEmpty() || !tried.words().isEmpty()) {
        all.add(tried);
      }
    }
    all.sort(Comparator.comparing(TriedVariable::isEvidenced));
    return all;
  }

  private static TriedVariable of(StudySnapshot snapshot, List<Recipe> recipes, Variable variable) {
    Map<String, Double> numbers = new LinkedHashMap<>();
    Map<String, String> words = new LinkedHashMap<>();
    List<Double> planned = new ArrayList<>();
    List<String> plannedWords = new ArrayList<>();
    for (Recipe recipe : recipes) {
      TrialStatus status = snapshot.trial(recipe.trial()).orElseThrow().status();
      boolean burnt = status.isBurnt();
      Double number = recipe.numbers().get(variable.id());
      String word = recipe.words().get(variable.id());
      if (number != null && burnt) {
        numbers.put(recipe.trial(), number);
      } else if (word != null && burnt) {
        words.put(recipe.trial(), word);
      } else if (status != TrialStatus.ABANDONED) {
        planned.addAll(number == null ? List.of() : List.of(number));
        plannedWords.addAll(word == null ? List.of() : List.of(word));
      }
    }
    return new TriedVariable(variable, numbers, words, planned, plannedWords, stated(snapshot, variable.id()));
  }

  /** From the lowest to the highest number that sheets state, bounds of ranges included; limits such as "at least" bound one side only and do not count. */
  private static double[] stated(StudySnapshot snapshot, String variable) {
    double[] ends = snapshot.sheets().stream().flatMap(s -> s.sheet().about(variable).stream()).map(Statement::amount).filter(Amount::isNumber)
        .filter(a -> switch (a.kind()) {
          case EXACT, PLUS_MINUS, RANGE -> true;
          default -> false;
        }).flatMapToDouble(a -> Double.isNaN(a.low()) ? Arrays.stream(new double[] {a.value()}) : Arrays.stream(new double[] {a.low(), a.high()})).sorted().toArray();
    return ends.length == 0 ? ends : new double[] {ends[0], ends[ends.length - 1]};
  }

  /** Whether evidence sheets give a number for it; otherwise it is among the unknowns. */
  public boolean isEvidenced() {
    return evidence.length > 0;
  }

  /** Different numbers that were burnt, rising. */
  public List<Double> settings() {
    return List.copyOf(new TreeSet<>(numbers.values()));
  }

  /** The ends of the scale: the plausible range of the variable as far as it is stated, and everything tried, planned or evidenced. */
  public double[] scale() {
    double low = Double.isNaN(variable.plausibleLow()) ? Double.POSITIVE_INFINITY : variable.plausibleLow();
    double high = Double.isNaN(variable.plausibleHigh()) ? Double.NEGATIVE_INFINITY : variable.plausibleHigh();
    List<Double> all = new ArrayList<>(numbers.values());
    all.addAll(planned);
    Arrays.stream(evidence).forEach(all::add);
    for (double value : all) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    return new double[] {low, high};
  }

  /** Whether the scale is one of factors: it begins above zero and spans a factor of six or more. */
  public boolean isByFactors() {
    double[] scale = scale();
    return scale[0] > 0 && scale[1] >= WIDE * scale[0];
  }

  /** Where a canonical value stands on the scale, 0 to 1; a half on a scale without width. */
  public double share(double value) {
    double[] scale = scale();
    if (!(scale[1] > scale[0])) {
      return 0.5;
    }
    return isByFactors() ? Math.log(value / scale[0]) / Math.log(scale[1] / scale[0]) : (value - scale[0]) / (scale[1] - scale[0]);
  }

  /** The widest stretch of the scale without a burnt trial, its ends included; canonical. Without numbers the whole scale. */
  public double[] widestGap() {
    List<Double> stops = new ArrayList<>(settings());
    double[] scale = scale();
    stops.add(0, scale[0]);
    stops.add(scale[1]);
    double[] widest = {scale[0], scale[0]};
    for (int i = 1; i < stops.size(); i++) {
      if (share(stops.get(i)) - share(stops.get(i - 1)) > share(widest[1]) - share(widest[0])) {
        widest = new double[] {stops.get(i - 1), stops.get(i)};
      }
    }
    return widest;
  }

  /** The words of the variable that no trial was burnt with, in its order. */
  public List<String> untriedWords() {
    return variable.words().stream().filter(w -> !words.containsValue(w)).toList();
  }
}
