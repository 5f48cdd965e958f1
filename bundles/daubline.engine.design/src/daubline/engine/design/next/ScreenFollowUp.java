package daubline.engine.design.next;

import daubline.base.Printed;
import daubline.engine.design.Design;
import daubline.engine.design.Model;
import daubline.engine.design.learn.BoxMeyer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The trials that best tell apart the explanations of an aliased two-level screen (Meyer, Steinberg &amp; Box 1996): the most
 * probable sets of active factors make rival models, and settings are sought at which these predict different outcomes.
 */
public final class ScreenFollowUp {

  /** As many rival models as the published examples take. */
  private static final int MODELS = 5;
  /** So few factors are varied that every corner can be a candidate. */
  private static final int MOST_FACTORS = 6;
  private static final int MOST_TRIALS = 4;

  private ScreenFollowUp() {
  }

  /**
   * The follow-up.
   *
   * @param screen the trials burnt, at two levels of each factor
   * @param outcomes their outcomes, NaN where there is none
   * @param beliefs what they say about which factors are active
   * @param prior the prior of these beliefs
   * @param allowed whether a setting may be burnt
   * @param cost what one trial costs, in words
   * @return empty when one explanation is all but certain, or no two allowed settings are left to choose from
   */
  public static Optional<NextTrial.Suggestion> of(Design screen, double[] outcomes, BoxMeyer beliefs, BoxMeyer.Prior prior, Predicate<double[]> allowed, String cost) {
    int[] used = IntStream.range(0, outcomes.length).filter(i -> Double.isFinite(outcomes[i])).toArray();
    int[] varied = beliefs.models().stream().limit(MODELS).flatMapToInt(m -> Arrays.stream(m.factors())).distinct()
        .boxed().sorted(Comparator.comparingDouble(f -> -beliefs.active()[f])).limit(MOST_FACTORS).mapToInt(f -> f).sorted().toArray();
    List<double[]> candidates = corners(screen, varied).stream().filter(allowed).toList();
    if (candidates.size() < 2 || beliefs.models().get(0).probability() > 0.95) {
      return Optional.empty();
    }
    Model main = Model.main(screen.factors());
    double[][] x = Arrays.stream(used).mapToObj(i -> signs(main, screen.settings().get(i))).toArray(double[][]::new);
    double[][] at = candidates.stream().map(s -> signs(main, s)).toArray(double[][]::new);
    // what is burnt later may differ for reasons of its own: a column of its own keeps that out
    double[][] before = IntStream.of(used).mapToObj(i -> new double[] {-1}).toArray(double[][]::new);
    double[][] after = candidates.stream().map(s -> new double[] {1}).toArray(double[][]::new);
    double[] y = Arrays.stream(used).mapToDouble(i -> outcomes[i]).toArray();
    List<ModelDiscrimination.FollowUp> best = ModelDiscrimination.search(x, before, y, beliefs, prior, MODELS, at, after, MOST_TRIALS, 2);
    return Optional.of(suggestion(screen, candidates, best, beliefs, cost));
  }

  private static double[] signs(Model main, double[] setting) {
    double[] row = main.row(setting);
    return Arrays.copyOfRange(row, 1, row.length);
  }

  /** Every combination of the ends of the varied factors; the others stay as in the first trial. */
  private static List<double[]> corners(Design screen, int[] varied) {
    List<double[]> corners = new ArrayList<>();
    for (int bits = 0; bits < 1 << varied.length; bits++) {
      double[] setting = screen.settings().get(0);
      for (int v = 0; v < varied.length; v++) {
        boolean high = (bits >> v & 1) == 1;
        setting[varied[v]] = screen.factors().get(varied[v]).isCategory() ? high ? 1 : 0 : high ? 1 : -1;
      }
      corners.add(setting);
    }
    return corners;
  }

  private static NextTrial.Suggestion suggestion(Design screen, List<double[]> candidates, List<ModelDiscrimination.FollowUp> best, BoxMeyer beliefs, String cost) {
    List<double[]> settings = Arrays.stream(best.get(0).candidates()).mapToObj(candidates::get).toList();
    String text = settings.stream().map(s -> Design.independent("", screen.factors(), new double[][] {s}).text(0)).collect(Collectors.joining("; then "));
    String rivals = beliefs.models().stream().limit(MODELS).map(m -> (m.factors().length == 0 ? "none of them" : IntStream.of(m.factors())
        .mapToObj(f -> screen.factors().get(f).name()).collect(Collectors.joining(" with "))) + " (" + Printed.number(100 * m.probability(), 2) + " %)")
        .collect(Collectors.joining(", "));
    String runnerUp = best.size() < 2 ? "" : "; the next best set separates " + Printed.number(100 * best.get(1).separation() / best.get(0).separation(), 3) + " % as much";
    return new NextTrial.Suggestion(NextTrial.Aim.SCREEN, settings.get(0), text, best.get(0).separation(), "these " + settings.size()
        + " trials together separate the explanations that the screen leaves open: " + rivals, cost.isEmpty() ? "" : cost + ", each",
        "it rests on the belief that a quarter of the factors act" + runnerUp, List.of());
  }
}
