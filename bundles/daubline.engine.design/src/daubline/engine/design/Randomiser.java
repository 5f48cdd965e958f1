package daubline.engine.design;

import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Puts the trials of a design in a random order within its strata: first the furnaces, then the trials inside each. A
 * factor fixed with the furnace is never torn apart. Trials already burnt keep their place in front.
 */
public final class Randomiser {

  /** The name of the procedure, kept with a plan. */
  public static final String ALGORITHM = "furnaces, then trials inside each, by Fisher–Yates over SplitMix64";
  /** The name of the procedure where furnaces share days. */
  public static final String ALGORITHM_OF_DAYS = "furnaces that share days, then days, then furnaces of a day, by Fisher–Yates over SplitMix64";
  /** Its version: another version may give another order for the same seed. */
  public static final String VERSION = "1";

  private Randomiser() {
  }

  /**
   * A plan in its order of burning.
   *
   * @param design the trials in order; new furnaces numbered in the order of building
   * @param from for each place the index of the trial in the design given
   * @param seed the seed
   * @param algorithm the procedure
   * @param version its version
   * @param restriction what was not free to move, in words; empty when every order was possible
   */
  public record Plan(Design design, int[] from, long seed, String algorithm, String version, String restriction) {
  }

  /** The random order for a seed. */
  public static Plan order(Design design, long seed) {
    return sharesDays(design) ? byDays(design, seed) : byFurnaces(design, seed);
  }

  private static boolean sharesDays(Design design) {
    List<Integer> days = design.runs().stream().filter(r -> !r.done()).map(Run::day).toList();
    return days.stream().distinct().count() < days.size();
  }

  /** Furnaces burnt on the same days stay together: such groups are shuffled, the days of a group, the furnaces of a day. */
  private static Plan byDays(Design design, long seed) {
    RandomStream random = new RandomStream(RandomStream.key(seed, "order of days"));
    List<Integer> order = new ArrayList<>();
    Map<Integer, Integer> number = new LinkedHashMap<>();
    Map<Integer, List<Integer>> byDay = new LinkedHashMap<>();
    for (int i = 0; i < design.size(); i++) {
      Run run = design.runs().get(i);
      if (run.done()) {
        order.add(i);
        number.putIfAbsent(run.furnace(), run.furnace());
      } else {
        byDay.computeIfAbsent(run.day(), k -> new ArrayList<>()).add(i);
      }
    }
    List<List<Integer>> groups = groups(design, byDay);
    shuffle(groups, random);
    for (List<Integer> days : groups) {
      shuffle(days, random);
      for (int day : days) {
        shuffle(byDay.get(day), random);
        order.addAll(byDay.get(day));
      }
    }
    int next = number.values().stream().mapToInt(v -> v + 1).max().orElse(0);
    for (int i : order) {
      int furnace = design.runs().get(i).furnace();
      if (!number.containsKey(furnace)) {
        number.put(furnace, next++);
      }
    }
    return new Plan(place(design, order, number), order.stream().mapToInt(i -> i).toArray(), seed, ALGORITHM_OF_DAYS, VERSION,
        "Furnaces burnt on the same days stay together; such groups were shuffled, then the days of each, then the furnaces of a day. Judge the effects with furnaces as a stratum.");
  }

  /** Days that share a furnace, directly or by others, belong together. */
  private static List<List<Integer>> groups(Design design, Map<Integer, List<Integer>> byDay) {
    List<List<Integer>> groups = new ArrayList<>();
    List<Set<Integer>> furnaces = new ArrayList<>();
    byDay.forEach((day, trials) -> {
      List<Integer> days = new ArrayList<>(List.of(day));
      Set<Integer> used = new HashSet<>();
      trials.forEach(i -> used.add(design.runs().get(i).furnace()));
      for (int g = groups.size() - 1; g >= 0; g--) {
        if (!Collections.disjoint(furnaces.get(g), used)) {
          used.addAll(furnaces.remove(g));
          days.addAll(0, groups.remove(g));
        }
      }
      groups.add(days);
      furnaces.add(used);
    });
    return groups;
  }

  private static Plan byFurnaces(Design design, long seed) {
    RandomStream random = new RandomStream(RandomStream.key(seed, "order of trials"));
    List<Integer> order = new ArrayList<>();
    Map<Integer, List<Integer>> byFurnace = new LinkedHashMap<>();
    Map<Integer, Integer> number = new LinkedHashMap<>();
    for (int i = 0; i < design.size(); i++) {
      Run run = design.runs().get(i);
      if (run.done()) {
        order.add(i);
        number.putIfAbsent(run.furnace(), run.furnace());
      } else {
        byFurnace.computeIfAbsent(run.furnace(), k -> new ArrayList<>()).add(i);
      }
    }
    List<Integer> furnaces = new ArrayList<>(byFurnace.keySet());
    shuffle(furnaces, random);
    int next = number.values().stream().mapToInt(v -> v + 1).max().orElse(0);
    for (int furnace : furnaces) {
      if (!number.containsKey(furnace)) {
        number.put(furnace, next++);
      }
      List<Integer> trials = byFurnace.get(furnace);
      shuffle(trials, random);
      order.addAll(trials);
    }
    return new Plan(place(design, order, number), order.stream().mapToInt(i -> i).toArray(), seed, ALGORITHM, VERSION,
        restriction(design));
  }

  private static Design place(Design design, List<Integer> order, Map<Integer, Integer> number) {
    List<Run> runs = new ArrayList<>();
    for (int i : order) {
      Run run = design.runs().get(i);
      runs.add(new Run(run.setting(), number.get(run.furnace()), run.day(), run.done()));
    }
    return new Design(design.name(), design.factors(), runs, design.notes());
  }

  private static String restriction(Design design) {
    if (!design.sharesFurnaces()) {
      return "";
    }
    String fixed = design.factors().stream().filter(f -> f.change() == Change.EACH_FURNACE).map(Factor::name)
        .collect(java.util.stream.Collectors.joining(", "));
    return "Trials were shuffled inside their furnace and furnaces among each other"
        + (fixed.isEmpty() ? "" : "; " + fixed + " stays as built") + ". Judge the effects with furnaces as a stratum.";
  }

  private static <T> void shuffle(List<T> list, RandomStream random) {
    for (int i = list.size() - 1; i > 0; i--) {
      Collections.swap(list, i, random.below(i + 1));
    }
  }
}
