package daubline.engine.design.advise;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.search.Budget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Places the trials of a closed design into furnaces. */
final class Furnaces {

  private Furnaces() {
  }

  /**
   * Trials with the same furnace-bound settings share furnaces, each burnt as often as the budget allows; without such
   * factors the trials are spread over as many furnaces as can be afforded.
   *
   * @throws IllegalArgumentException when the furnaces and trials cost more than there is
   */
  static Design place(Design design, Budget budget) {
    int[] bound = java.util.stream.IntStream.range(0, design.factors().size())
        .filter(j -> design.factors().get(j).change() == Change.EACH_FURNACE).toArray();
    int fewest = count(design, bound, budget.mostPerFurnace());
    if (!budget.affords(fewest, design.size())) {
      throw new IllegalArgumentException("its " + design.size() + " trials need " + fewest + " furnaces, more than the budget");
    }
    int each = budget.mostPerFurnace();
    while (each > 1 && budget.affords(count(design, bound, each - 1), design.size())) {
      each--;
    }
    return design.inFurnaces(assign(design, bound, each));
  }

  private static int count(Design design, int[] bound, int each) {
    return (int) Arrays.stream(assign(design, bound, each)).distinct().count();
  }

  private static int[] assign(Design design, int[] bound, int each) {
    Map<String, List<Integer>> alike = new LinkedHashMap<>();
    for (int i = 0; i < design.size(); i++) {
      double[] setting = design.settings().get(i);
      String key = Arrays.toString(Arrays.stream(bound).mapToDouble(j -> setting[j]).toArray());
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(i);
    }
    int[] furnaces = new int[design.size()];
    int next = 0;
    for (List<Integer> trials : alike.values()) {
      int number = (trials.size() + each - 1) / each;
      for (int t = 0; t < trials.size(); t++) {
        furnaces[trials.get(t)] = next + t % number;
      }
      next += number;
    }
    return furnaces;
  }
}
