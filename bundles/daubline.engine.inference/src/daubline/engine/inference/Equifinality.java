package daubline.engine.inference;

import daubline.engine.stats.Clusters;
import daubline.engine.stats.Dissimilarity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Different recipes that agree equally well. Trials whose probability of a higher agreement than the first lies between
 * 0.1 and 0.9 agree equally well; among them recipes closer than a limit (Gower's distance, complete linkage) are one.
 *
 * @param groups ids of the trials of each different recipe, the group with the best trial first
 */
public record Equifinality(List<List<String>> groups) {

  private static final double EQUAL = 0.1;
  /** Recipes closer than this are one: a tenth of the range of every factor, on average (common practice, no source). */
  public static final double SAME_RECIPE = 0.1;

  public Equifinality {
    groups = groups.stream().map(List::copyOf).toList();
  }

  /** The sentence to print. */
  public String sentence() {
    return groups.size() < 2 ? "no different recipe agrees equally well"
        : groups.size() + " different recipes agree equally well; the evidence cannot tell them apart";
  }

  /**
   * Groups of one ranking.
   *
   * @param recipes a recipe for each trial; trials without one stand alone
   */
  public static Equifinality of(Ranking ranking, List<Recipe> recipes, double sameRecipe) {
    if (ranking.places().isEmpty()) {
      return new Equifinality(List.of());
    }
    Ranking.Place first = ranking.places().get(0);
    List<String> top = ranking.places().stream().map(Ranking.Place::trial)
        .filter(t -> t.equals(first.trial()) || isEqual(first.wins().get(t))).toList();
    double[][] distances = distances(top, recipes);
    List<List<String>> groups = new ArrayList<>();
    for (List<Integer> members : Clusters.of(distances, Clusters.Linkage.COMPLETE).cutAt(sameRecipe)) {
      groups.add(members.stream().map(top::get).toList());
    }
    return new Equifinality(groups);
  }

  private static boolean isEqual(double win) {
    return win > EQUAL && win < 1 - EQUAL;
  }

  private static double[][] distances(List<String> trials, List<Recipe> recipes) {
    Set<String> numbers = recipes.stream().flatMap(r -> r.numbers().keySet().stream()).collect(Collectors.toCollection(TreeSet::new));
    Set<String> words = recipes.stream().flatMap(r -> r.words().keySet().stream()).collect(Collectors.toCollection(TreeSet::new));
    double[] ranges = numbers.stream().mapToDouble(n -> range(n, recipes)).toArray();
    double[][] distances = new double[trials.size()][trials.size()];
    for (int i = 0; i < distances.length; i++) {
      for (int j = 0; j < distances.length; j++) {
        distances[i][j] = i == j ? 0 : distance(find(trials.get(i), recipes), find(trials.get(j), recipes), numbers, ranges, words);
      }
    }
    return distances;
  }

  private static double distance(Optional<Recipe> a, Optional<Recipe> b, Set<String> numbers, double[] ranges, Set<String> words) {
    if (a.isEmpty() || b.isEmpty()) {
      return 1;
    }
    double[][] values = {row(a.get().numbers(), numbers), row(b.get().numbers(), numbers)};
    String[][] texts = {words.stream().map(a.get().words()::get).toArray(String[]::new), words.stream().map(b.get().words()::get).toArray(String[]::new)};
    double distance = Dissimilarity.gower(values, ranges, texts);
    return Double.isNaN(distance) ? 1 : distance;
  }

  private static double[] row(Map<String, Double> values, Set<String> ids) {
    return ids.stream().mapToDouble(id -> values.getOrDefault(id, Double.NaN)).toArray();
  }

  private static double range(String id, List<Recipe> recipes) {
    double[] values = recipes.stream().filter(r -> r.numbers().containsKey(id)).mapToDouble(r -> r.numbers().get(id)).sorted().toArray();
    return values[values.length - 1] - values[0];
  }

  private static Optional<Recipe> find(String trial, List<Recipe> recipes) {
    return recipes.stream().filter(r -> r.trial().equals(trial)).findFirst();
  }
}
