package daubline.engine.design.judge;

import daubline.base.Finding;
import daubline.base.Printed;
import daubline.engine.design.Change;
import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Strata;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Says in words what a design cannot show. */
final class Warnings {

  private static final String WHERE = "the design";

  private Warnings() {
  }

  static List<Finding> of(Design design, Model model, List<DesignReview.EffectReview> effects, Freedom freedom,
      List<DesignReview.Alias> aliases, List<DesignReview.LostRun> lost, Strata strata) {
    List<Finding> found = new ArrayList<>();
    inseparable(effects, found);
    confounded(design, found);
    furnaceError(design, effects, freedom, strata, found);
    errors(effects, freedom, found);
    bent(aliases, found);
    losses(lost, found);
    return found;
  }

  private static void inseparable(List<DesignReview.EffectReview> effects, List<Finding> found) {
    List<String> names = effects.stream().filter(e -> !e.estimable()).map(DesignReview.EffectReview::name).toList();
    if (!names.isEmpty()) {
      found.add(Finding.error("design.inseparable", WHERE, "these trials cannot tell apart from the other effects: "
          + String.join(", ", names), "leave the terms out or add trials that break the tie"));
    }
  }

  /** A factor that changes with every furnace and never within one cannot be told from the furnace itself. */
  private static void confounded(Design design, List<Finding> found) {
    if (!design.sharesFurnaces()) {
      return;
    }
    for (int j = 0; j < design.factors().size(); j++) {
      Factor factor = design.factors().get(j);
      int column = j;
      double[] values = design.settings().stream().mapToDouble(s -> s[column]).toArray();
      if (differs(values) && constantInFurnaces(values, design.furnaces())) {
        long levels = java.util.Arrays.stream(values).distinct().count();
        boolean single = levels == design.furnaceCount();
        String what = factor.name() + " changes only from furnace to furnace" + (single ? ", and every furnace has its own "
            + "setting: its effect is confounded with the furnace" : "");
        found.add(single ? Finding.error("design.confounded", WHERE, what, "build at least two furnaces with the same "
            + factor.name()) : Finding.note("design.between-furnaces", WHERE, what, factor.change() == Change.EACH_FURNACE
            ? "it is judged by the differences between furnaces of the same " + factor.name()
            : "change it from trial to trial if the furnace allows"));
      }
    }
  }

  private static boolean differs(double[] values) {
    return java.util.Arrays.stream(values).distinct().count() > 1;
  }

  private static boolean constantInFurnaces(double[] values, int[] furnaces) {
    for (int i = 0; i < values.length; i++) {
      for (int k = 0; k < i; k++) {
        if (furnaces[i] == furnaces[k] && Math.abs(values[i] - values[k]) > 1e-9) {
          return false;
        }
      }
    }
    return true;
  }

  private static void furnaceError(Design design, List<DesignReview.EffectReview> effects, Freedom freedom, Strata strata,
      List<Finding> found) {
    String names = effects.stream().filter(e -> e.stratum().equals("furnace")).map(e -> e.term().name(design.factors()))
        .distinct().collect(Collectors.joining(", "));
    if (!names.isEmpty() && freedom.furnaces() < 2) {
      found.add(Finding.warning("design.furnace-error", WHERE, names + " cannot be separated from furnace-to-furnace "
          + "variation: " + freedom.furnaces() + " degrees of freedom are left between furnaces", "build more furnaces, or "
          + "ask about it in words only"));
    }
    if (design.sharesFurnaces() && strata.furnace() == 0) {
      found.add(Finding.warning("design.furnace-ignored", WHERE, "furnaces are burnt more than once but counted as if they "
          + "were all alike", "allow for a difference between furnaces"));
    }
  }

  private static void errors(List<DesignReview.EffectReview> effects, Freedom freedom, List<Finding> found) {
    if (freedom.trials() < 1) {
      found.add(Finding.warning("design.no-error", WHERE, "no trial is left to show how far equal trials differ", "add "
          + "repeats or centre trials, or read the effects from a half-normal plot"));
    }
    effects.stream().filter(e -> e.estimable() && Double.isFinite(e.smallest()))
        .max(java.util.Comparator.comparingDouble(DesignReview.EffectReview::smallest))
        .ifPresent(e -> found.add(Finding.note("design.smallest-effect", WHERE, "the effect hardest to see is " + e.name()
            + ": only one of " + Printed.number(e.smallest(), 3) + " standard deviations between trials or more is seen four "
            + "times in five", "smaller ones need more trials or closer repeats")));
  }

  private static void bent(List<DesignReview.Alias> aliases, List<Finding> found) {
    String full = aliases.stream().filter(a -> Math.abs(Math.abs(a.share()) - 1) < 1e-6 && !a.column().contains("×"))
        .map(a -> a.column() + " with " + a.interaction()).distinct().limit(8).collect(Collectors.joining("; "));
    if (!full.isEmpty()) {
      found.add(Finding.warning("design.aliased", WHERE, "cannot be told apart: " + full, "read such an effect as either of "
          + "the two, or burn the mirrored half"));
    }
  }

  private static void losses(List<DesignReview.LostRun> lost, List<Finding> found) {
    List<String> fatal = lost.stream().filter(l -> !l.lost().isEmpty()).map(l -> Integer.toString(l.trial() + 1)).toList();
    if (!fatal.isEmpty() && fatal.size() == lost.size()) {
      found.add(Finding.warning("design.no-spare", WHERE, "the loss of any one trial leaves some effect without an estimate",
          "plan a spare trial"));
    } else if (!fatal.isEmpty()) {
      found.add(Finding.warning("design.fragile", WHERE, "the loss of trial " + String.join(" or ", fatal) + " leaves some "
          + "effect without an estimate", "burn these early, while a repeat is still possible"));
    }
  }
}
