package daubline.engine.design.advise;

import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.judge.DesignReview;
import daubline.engine.design.search.Budget;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Trials asked for beside those that a design needs: they show how far equal trials differ, and whether a response bends.
 *
 * @param centres at least so many trials with every measured factor of the trial in the middle, zero or more
 * @param repeats so many trials burnt once more, those first that decide most of their own prediction, zero or more
 */
public record Extras(int centres, int repeats) {

  /** None. */
  public static final Extras NONE = new Extras(0, 0);
  private static final double SAME = 1e-9;

  public Extras {
    if (centres < 0 || repeats < 0) {
      throw new IllegalArgumentException("centre trials and repeats must be zero or more, not " + centres + " and " + repeats);
    }
  }

  /** How many trials they are at most. */
  public int total() {
    return centres + repeats;
  }

  /** What of a budget is left for the design itself. @throws IllegalArgumentException when nothing is */
  Budget left(Budget budget) {
    if (budget.mostTrials() <= total()) {
      throw new IllegalArgumentException("of the " + budget.mostTrials() + " trials that can be afforded " + total()
          + " are asked for as centre trials and repeats; ask for fewer of them");
    }
    return total() == 0 ? budget : new Budget(budget.mostTrials() - total(), budget.mostPerFurnace(),
        (furnaces, trials) -> budget.affords(Math.max(furnaces, -Math.floorDiv(-(trials + total()), budget.mostPerFurnace())), trials + total()));
  }

  /** A design with them, in furnaces that are not full yet, otherwise in new ones. @throws IllegalArgumentException when there is no room */
  Design add(Design design, Model model, Space space, Strata strata, Budget budget) {
    if (total() == 0) {
      return design;
    }
    if (centres > 0 && design.factors().stream().allMatch(Factor::isCategory)) {
      throw new IllegalArgumentException("a centre trial needs a measured factor, and all of these have categories; ask for repeats instead");
    }
    Adder adder = new Adder(design, budget.mostPerFurnace());
    for (int c = adder.centres(); c < centres; c++) {
      adder.centre(c);
    }
    double[] decides = repeats == 0 ? new double[0] : DesignReview.of(design, model, space, strata).leverage();
    List<Run> open = design.runs().stream().filter(r -> !r.done()).toList();
    List<Run> first = IntStream.range(0, decides.length).boxed().sorted(Comparator.comparingDouble(i -> -decides[i])).map(open::get).toList();
    for (int r = 0; r < repeats; r++) {
      adder.repeat(first.get(r % first.size()));
    }
    Design more = new Design(design.name(), design.factors(), adder.runs, design.notes());
    long furnaces = more.runs().stream().filter(r -> !r.done()).mapToInt(Run::furnace).distinct().count();
    long trials = more.runs().stream().filter(r -> !r.done()).count();
    if (!budget.affords((int) furnaces, (int) trials)) {
      throw new IllegalArgumentException("with " + centres + " centre trials and " + repeats + " repeats it takes " + trials + " trials in " + furnaces
          + " furnaces, more than the budget");
    }
    return more;
  }

  /** Puts one trial after the other into the furnace that was burnt least. */
  private static final class Adder {
    private final List<Factor> factors;
    private final int most;
    private final List<Run> runs;

    Adder(Design design, int most) {
      factors = design.factors();
      this.most = most;
      runs = new ArrayList<>(design.runs());
    }

    private boolean isBound(int j) {
      return factors.get(j).change() == Change.EACH_FURNACE;
    }

    private boolean isMiddle(int j, double[] setting) {
      return factors.get(j).isCategory() || Math.abs(setting[j]) < SAME;
    }

    int centres() {
      boolean free = IntStream.range(0, factors.size()).anyMatch(j -> !factors.get(j).isCategory() && !isBound(j));
      return (int) runs.stream().filter(r -> !r.done()).map(Run::setting).filter(s -> IntStream.range(0, s.length).allMatch(j -> free && isBound(j) || isMiddle(j, s))).count();
    }

    /** The measured factors of the trial in the middle; those of the furnace as it was built, unless all are. */
    void centre(int number) {
      boolean free = IntStream.range(0, factors.size()).anyMatch(j -> !factors.get(j).isCategory() && !isBound(j));
      int furnace = free ? furnace(r -> true, -1) : -1;
      double[] like = furnace < 0 ? runs.get(number % runs.size()).setting() : burntIn(furnace);
      double[] setting = new double[factors.size()];
      for (int j = 0; j < setting.length; j++) {
        boolean kept = isBound(j) && (furnace >= 0 || factors.get(j).isCategory());
        setting[j] = kept ? like[j] : factors.get(j).isCategory() ? number % factors.get(j).names().size() : 0;
      }
      put(setting, furnace);
    }

    /** The same trial in another furnace of its kind where one has room, otherwise in its own, otherwise in a new one. */
    void repeat(Run run) {
      double[] setting = run.setting();
      java.util.function.Predicate<double[]> alike = s -> IntStream.range(0, s.length).allMatch(j -> !isBound(j) || Math.abs(s[j] - setting[j]) < SAME);
      int furnace = furnace(alike, run.furnace());
      put(setting, furnace >= 0 ? furnace : furnace(alike, -1));
    }

    /** The furnace burnt least that has room and suits; −1 when there is none. */
    private int furnace(java.util.function.Predicate<double[]> suits, int not) {
      return runs.stream().filter(r -> !r.done() && r.furnace() != not && suits.test(r.setting())).mapToInt(Run::furnace).distinct().boxed()
          .filter(f -> burns(f) < most).min(Comparator.comparingLong(this::burns)).orElse(-1);
    }

    private long burns(int furnace) {
      return runs.stream().filter(r -> r.furnace() == furnace).count();
    }

    private double[] burntIn(int furnace) {
      return runs.stream().filter(r -> r.furnace() == furnace).findFirst().orElseThrow().setting();
    }

    private void put(double[] setting, int furnace) {
      int next = runs.stream().mapToInt(Run::furnace).max().orElse(-1) + 1;
      int day = runs.stream().mapToInt(Run::day).max().orElse(-1) + 1;
      runs.add(new Run(Arrays.copyOf(setting, setting.length), furnace < 0 ? next : furnace, day, false));
    }
  }
}
