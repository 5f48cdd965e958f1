package daubline.ui.study;

import daubline.analysis.Against;
import daubline.analysis.ComparisonOptions;
import daubline.ui.prefs.Preferred;
import java.util.Arrays;

/** With what the trials are compared in the window, and which of them take part; remembered from one start to the next. */
public final class Comparing {

  private static final String AGAINST = "comparing.against";
  private static final String DEMONSTRATIONS = "comparing.demonstrations";
  private static final String REPEATS = "comparing.repeats";

  private Comparing() {
  }

  /** The options as chosen, with the standard draws and seed. */
  public static ComparisonOptions options() {
    ComparisonOptions usual = ComparisonOptions.standard();
    return new ComparisonOptions(isOn(DEMONSTRATIONS), usual.trials(), usual.sheets(), usual.draws(), usual.seed(), usual.threads(), against(), isOn(REPEATS));
  }

  private static Against against() {
    String kept = Preferred.node().get(AGAINST, "");
    return Arrays.stream(Against.values()).filter(a -> a.name().equals(kept)).findFirst().orElse(Against.SHEET);
  }

  private static boolean isOn(String key) {
    return !Preferred.node().get(key, "").isEmpty();
  }

  /** Chooses; every open study is compared anew. */
  public static void choose(Against against, boolean demonstrations, boolean repeatsAsTolerance) {
    Preferred.put(AGAINST, against == Against.SHEET ? "" : against.name());
    Preferred.put(DEMONSTRATIONS, demonstrations ? "yes" : "");
    Preferred.put(REPEATS, repeatsAsTolerance ? "yes" : "");
    Studies.get().all().forEach(OpenStudy::recompute);
  }
}
