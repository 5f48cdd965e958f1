package daubline.engine.design.search;

import daubline.engine.design.Change;
import daubline.engine.design.Factor;
import daubline.engine.design.Space;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Which trials must share the setting of each factor, and which of these settings may be changed. */
final class Groups {

  /**
   * Trials that share the setting of a factor.
   *
   * @param factor the factor
   * @param trials the trials
   * @param locked whether the setting is given
   */
  record Group(int factor, int[] trials, boolean locked) {
  }

  private final SearchRequest request;
  private final List<Group> all = new ArrayList<>();

  Groups(SearchRequest request) {
    this.request = request;
    List<Factor> factors = request.space().factors();
    for (int j = 0; j < factors.size(); j++) {
      Change change = factors.get(j).change();
      Map<Integer, List<Integer>> sharing = new LinkedHashMap<>();
      int[] key = change == Change.EACH_FURNACE ? request.allFurnaces() : change == Change.EACH_DAY ? request.allDays() : null;
      for (int i = 0; i < request.allDays().length; i++) {
        sharing.computeIfAbsent(key == null ? i : key[i], k -> new ArrayList<>()).add(i);
      }
      for (List<Integer> trials : sharing.values()) {
        boolean locked = change == Change.GIVEN || trials.get(0) < request.done().size();
        all.add(new Group(j, trials.stream().mapToInt(Integer::intValue).toArray(), locked));
      }
    }
  }

  /** The groups that may be exchanged, those of one trial next to each other because they share work. */
  List<Group> changeable() {
    return all.stream().filter(g -> !g.locked).sorted(java.util.Comparator.comparingInt(g -> g.trials[0])).toList();
  }

  /** Random settings that every rule allows. @throws IllegalArgumentException when none are found */
  double[][] draw(RandomStream random) {
    Space space = request.space();
    int done = request.done().size();
    double[][] settings = new double[request.allDays().length][space.factors().size()];
    for (int i = 0; i < done; i++) {
      settings[i] = request.done().get(i).setting();
    }
    for (Group g : all) {
      set(settings, g, first(g, settings, random));
    }
    for (int tries = 0; tries < 20_000; tries++) {
      int bad = forbidden(settings, done);
      if (bad < 0) {
        return settings;
      }
      for (Group g : all) {
        if (!g.locked && contains(g, bad)) {
          set(settings, g, value(g.factor, random));
        }
      }
    }
    throw new IllegalArgumentException("no set of trials that the rules allow was found; loosen one of: "
        + space.rules().stream().map(r -> r.text(space.factors())).toList());
  }

  private double first(Group g, double[][] settings, RandomStream random) {
    if (g.trials[0] < request.done().size()) {
      return settings[g.trials[0]][g.factor];
    }
    double[] codes = request.space().factors().get(g.factor).codes();
    if (g.locked && codes.length > 0) {
      return codes[g.trials[0] % codes.length];
    }
    return value(g.factor, random);
  }

  private double value(int factor, RandomStream random) {
    double[] codes = Space.steps(request.space().factors().get(factor), request.steps());
    return codes[random.below(codes.length)];
  }

  private int forbidden(double[][] settings, int from) {
    for (int i = from; i < settings.length; i++) {
      if (!request.space().allows(settings[i])) {
        return i;
      }
    }
    return -1;
  }

  private static boolean contains(Group g, int trial) {
    for (int t : g.trials) {
      if (t == trial) {
        return true;
      }
    }
    return false;
  }

  private void set(double[][] settings, Group g, double value) {
    for (int t : g.trials) {
      if (t >= request.done().size()) {
        settings[t][g.factor] = value;
      }
    }
  }
}
