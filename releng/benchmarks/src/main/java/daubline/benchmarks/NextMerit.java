package daubline.benchmarks;

import daubline.engine.design.Design;
import daubline.engine.design.Factor;
import daubline.engine.design.Model;
import daubline.engine.design.Progress;
import daubline.engine.design.Run;
import daubline.engine.design.Space;
import daubline.engine.design.Strata;
import daubline.engine.design.catalogue.LatinHypercube;
import daubline.engine.design.next.Beliefs;
import daubline.engine.design.next.NextTrial;
import daubline.engine.design.next.Rival;
import daubline.engine.stats.RandomStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Whether the suggestion of the next trial settles between reconstructions in fewer trials than settings chosen otherwise. In each
 * campaign three reconstructions predict an outcome by random surfaces over two factors, each wrong by an unknown amount of its own; one
 * of them is right. Trials are burnt until one holds 95 % of the belief (Bayes' rule, the wrongness integrated out), ten at most.
 */
public final class NextMerit {

  private static final List<Factor> FACTORS = List.of(Factor.measured("a", "air flow", "L/min", 400, 800), Factor.measured("o", "ore charged", "kg", 15, 25));
  private static final Space SPACE = new Space(FACTORS, List.of());
  private static final Model MODEL = Model.main(FACTORS);
  private static final int CAMPAIGNS = 500;
  private static final int MOST = 10;
  private static final int RIVALS = 3;
  private static final double SETTLED = 0.95;

  private NextMerit() {
  }

  /** How the settings of a campaign are chosen. */
  private enum Way {
    NEXT("next, all believed alike"), NEXT_BELIEF("next, belief kept up to date (as built)"), SHARPEN("next trial for sharper effects"), FILL("space-filling (maximin Latin square)"), RANDOM(
        "random settings");

    private final String word;

    Way(String word) {
      this.word = word;
    }
  }

  private record Ending(int trials, boolean settled, boolean wrong) {
  }

  /** Prints the table; no arguments. */
  public static void main(String[] arguments) {
    System.out.printf("%d campaigns each, %d reconstructions, at most %d trials; trials until one holds %.0f %% of the belief%n", CAMPAIGNS, RIVALS, MOST, 100 * SETTLED);
    for (double own : new double[] {0.3, 1}) {
      for (double size : new double[] {1, 2}) {
        System.out.printf(Locale.ROOT, "predictions differ by about %.0f standard deviations of a trial, each wrong by about %.1f%n", 2 * size, own);
        for (Way way : Way.values()) {
          List<Ending> ends = IntStream.range(0, CAMPAIGNS).parallel().mapToObj(c -> campaign(way, size, own, c)).toList();
          int[] trials = ends.stream().mapToInt(e -> e.settled ? e.trials : MOST + 1).sorted().toArray();
          String within = IntStream.of(2, 4, 6, MOST).mapToObj(n -> String.format(Locale.ROOT, "%3.0f %%", 100.0 * Arrays.stream(trials).filter(t -> t <= n).count() / CAMPAIGNS))
              .collect(Collectors.joining("  "));
          System.out.printf(Locale.ROOT, "  %-38s median %2d%s  settled within 2, 4, 6, %d: %s   wrongly %.1f %%%n", way.word, Math.min(MOST, trials[CAMPAIGNS / 2]),
              trials[CAMPAIGNS / 2] > MOST ? "+" : " ", MOST, within, 100.0 * ends.stream().filter(e -> e.settled && e.wrong).count() / CAMPAIGNS);
        }
      }
    }
  }

  /** One campaign; the truth and its scatter depend on its number alone, so that every way meets the same ones. */
  private static Ending campaign(Way way, double size, double own, int number) {
    RandomStream random = new RandomStream(RandomStream.key(20_311_104, number));
    double[][] surface = new double[RIVALS][];
    for (int k = 0; k < RIVALS; k++) {
      double[] b = random.normals(5);
      surface[k] = IntStream.range(0, 5).mapToDouble(i -> size * b[i] * (i == 0 ? 0.5 : 0.7)).toArray();
    }
    int right = random.below(RIVALS);
    double wrongBy = own * random.normals(1)[0];
    double[] scatter = random.normals(MOST);
    List<double[]> fill = LatinHypercube.design(FACTORS, MOST, 1, number, Progress.NONE).settings();
    List<double[]> burnt = new ArrayList<>();
    double[] outcomes = new double[MOST];
    for (int t = 0; t < MOST; t++) {
      double[] setting = switch (way) {
        case RANDOM -> new double[] {random.below(5) / 2.0 - 1, random.below(5) / 2.0 - 1};
        case FILL -> fill.get((t * 7 + number) % MOST);
        default -> suggested(way, burnt, outcomes, surface, own, number);
      };
      burnt.add(setting);
      outcomes[t] = at(surface[right], setting) + wrongBy + scatter[t];
      double[] belief = belief(burnt, outcomes, surface, own);
      int best = IntStream.range(0, RIVALS).reduce(0, (a, b) -> belief[b] > belief[a] ? b : a);
      if (belief[best] >= SETTLED) {
        return new Ending(t + 1, true, best != right);
      }
    }
    return new Ending(MOST, false, false);
  }

  private static double at(double[] b, double[] s) {
    return b[0] + b[1] * s[0] + b[2] * s[1] + b[3] * s[0] * s[1] + b[4] * (s[0] * s[0] - 0.5);
  }

  private static double[] suggested(Way way, List<double[]> burnt, double[] outcomes, double[][] surface, double own, long seed) {
    List<Run> runs = IntStream.range(0, burnt.size()).mapToObj(i -> new Run(burnt.get(i), i, i, true)).toList();
    List<Rival> rivals = IntStream.range(0, RIVALS).mapToObj(k -> new Rival("reconstruction " + (k + 1), 1, s -> at(surface[k], s), own)).toList();
    Design done = new Design("burnt", FACTORS, runs, List.of());
    List<Rival> now = way == Way.NEXT_BELIEF ? Beliefs.after(rivals, done, Arrays.copyOf(outcomes, burnt.size()), 1) : rivals;
    double[] none = new double[burnt.size()];
    Arrays.fill(none, Double.NaN);
    NextTrial next = NextTrial.suggest(new NextTrial.Request(done, MODEL, SPACE, Strata.NONE, none, now, 1, "", seed), Progress.NONE);
    NextTrial.Aim aim = way == Way.SHARPEN ? NextTrial.Aim.AUGMENT : NextTrial.Aim.DISCRIMINATE;
    return next.suggestions().stream().filter(s -> s.aim() == aim).findFirst().orElse(next.suggestions().get(0)).setting();
  }

  private static double[] belief(List<double[]> burnt, double[] outcomes, double[][] surface, double own) {
    double[] log = Arrays.stream(surface).mapToDouble(s -> logLikelihood(burnt, outcomes, s, own)).toArray();
    double most = Arrays.stream(log).max().orElseThrow();
    double sum = Arrays.stream(log).map(l -> Math.exp(l - most)).sum();
    return Arrays.stream(log).map(l -> Math.exp(l - most) / sum).toArray();
  }

  /** Normal scatter of one between trials, and an unknown amount by which the reconstruction is wrong everywhere alike. */
  private static double logLikelihood(List<double[]> burnt, double[] outcomes, double[] surface, double own) {
    int n = burnt.size();
    double sum = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double r = outcomes[i] - at(surface, burnt.get(i));
      sum += r;
      squares += r * r;
    }
    double v = own * own;
    return -0.5 * (Math.log(1 + n * v) + squares - v / (1 + n * v) * sum * sum);
  }
}
