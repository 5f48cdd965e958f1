package daubline.engine.design.learn;

import daubline.engine.design.Design;
import daubline.engine.design.judge.Freedom;
import java.util.ArrayList;
import java.util.List;

/**
 * Which groups of trials count as strata: furnaces burnt more than once, and days with more than one trial.
 *
 * @param furnaces whether furnaces do
 * @param days whether days do
 * @param freedom the degrees of freedom of each
 * @param shadow why days that are shared count for nothing; empty when they count or are not shared
 */
record Layers(boolean furnaces, boolean days, Freedom freedom, String shadow) {

  /**
   * The strata that these trials can carry.
   *
   * @param x the columns of the model by rows
   */
  static Layers of(Design design, double[][] x) {
    Freedom plain = Freedom.of(design, x, false);
    // one furnace alone shows nothing of how furnaces differ
    boolean furnaces = design.sharesFurnaces() && design.furnaceCount() > 1;
    if (!design.sharesDays()) {
      return new Layers(furnaces, false, plain, "");
    }
    if (alike(design.furnaces(), design.days())) {
      return new Layers(true, false, plain, "the trials of a furnace share its day, and what the weather or the crew of a day did cannot be told from what the furnace did");
    }
    Freedom with = Freedom.of(design, x, true);
    return with.trials() > 0 ? new Layers(furnaces, true, with, "")
        : new Layers(furnaces, false, plain, "trials share days, and too few are left to tell the weather or the crew of a day from the settings burnt on it");
  }

  /** The same without days, where the variance between them cannot be found. */
  Layers withoutDays(Design design, double[][] x) {
    return new Layers(furnaces, false, Freedom.of(design, x, false), "trials share days, and the variance between days cannot be found from so few");
  }

  /** Whether any group counts. */
  boolean any() {
    return furnaces || days;
  }

  /** The method that judges with these strata. */
  EffectsReport.Method method() {
    return furnaces && days ? EffectsReport.Method.FURNACES_AND_DAYS : days ? EffectsReport.Method.DAYS : EffectsReport.Method.FURNACES;
  }

  /** The groups of each stratum, furnaces first. */
  List<int[]> groups(Design design) {
    List<int[]> groups = new ArrayList<>();
    if (furnaces) {
      groups.add(design.furnaces());
    }
    if (days) {
      groups.add(design.days());
    }
    return groups;
  }

  /** Whether two trials share a group of the one kind exactly when they share one of the other. */
  private static boolean alike(int[] a, int[] b) {
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < i; j++) {
        if ((a[i] == a[j]) != (b[i] == b[j])) {
          return false;
        }
      }
    }
    return true;
  }
}
