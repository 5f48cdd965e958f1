package daubline.engine.design.next;

import daubline.engine.design.learn.BoxMeyer;
import daubline.engine.stats.Cholesky;
import daubline.engine.stats.Matrices;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Trials chosen to tell rival models apart (Meyer, Steinberg &amp; Box 1996, Technometrics 38, 303–313): the expected
 * separation of their predictions, weighed by how probable each pair is.
 */
public final class ModelDiscrimination {

  private static final double MOST_COMPLETE = 60_000;

  private final List<Rival> rivals = new ArrayList<>();
  private final double[][] candidates;
  private final int trials;

  /** A model with its predictions at the candidates. */
  private record Rival(double probability, double variance, double[] prediction, double[][] spread) {
  }

  /**
   * Trials to add.
   *
   * @param candidates the indices of the candidates, one may come twice
   * @param separation the MD criterion
   */
  public record FollowUp(int[] candidates, double separation) {
  }

  private ModelDiscrimination(double[][] x, double[][] given, double[] y, BoxMeyer beliefs, BoxMeyer.Prior prior, int models,
      double[][] candidates, double[][] candidatesGiven, int trials) {
    this.candidates = candidates;
    this.trials = trials;
    List<BoxMeyer.Candidate> best = beliefs.models().subList(0, Math.min(models, beliefs.models().size()));
    for (BoxMeyer.Candidate model : best) {
      double[][] xm = BoxMeyer.columns(x, given, model.factors(), prior.mostOrder());
      double[][] cm = BoxMeyer.columns(candidates, candidatesGiven, model.factors(), prior.mostOrder());
      Cholesky m = Cholesky.of(BoxMeyer.penalisedSquare(xm, prior.size()));
      double[] beta = m.solve(Matrices.times(Matrices.transpose(xm), y));
      double[][] spread = Matrices.times(cm, Matrices.times(m.inverse(), Matrices.transpose(cm)));
      rivals.add(new Rival(model.probability(), model.variance(), Matrices.times(cm, beta), spread));
    }
  }

  /**
   * The best sets of trials, best first.
   *
   * @param x the settings burnt, −1 to 1
   * @param given columns in every model, by trial
   * @param y the outcomes
   * @param beliefs the probabilities of the models after them
   * @param prior the prior these were made with
   * @param models how many of the most probable models are told apart
   * @param candidates the settings that may be burnt
   * @param candidatesGiven their columns that are in every model
   * @param trials how many to add
   * @param keep how many sets to give
   */
  public static List<FollowUp> search(double[][] x, double[][] given, double[] y, BoxMeyer beliefs, BoxMeyer.Prior prior,
      int models, double[][] candidates, double[][] candidatesGiven, int trials, int keep) {
    ModelDiscrimination md = new ModelDiscrimination(x, given, y, beliefs, prior, models, candidates, candidatesGiven, trials);
    double sets = 1;
    for (int i = 1; i <= trials; i++) {
      sets = sets * (candidates.length + i - 1) / i;
    }
    List<FollowUp> found = sets <= MOST_COMPLETE ? md.all() : md.exchanged();
    found.sort(Comparator.comparingDouble(f -> -f.separation));
    return List.copyOf(found.subList(0, Math.min(keep, found.size())));
  }

  private List<FollowUp> all() {
    List<FollowUp> found = new ArrayList<>();
    choose(found, new int[trials], 0, 0);
    return found;
  }

  private void choose(List<FollowUp> found, int[] chosen, int depth, int from) {
    if (depth == trials) {
      found.add(new FollowUp(chosen.clone(), separation(chosen)));
      return;
    }
    for (int c = from; c < candidates.length; c++) {
      chosen[depth] = c;
      choose(found, chosen, depth + 1, c);
    }
  }

  /** Greedy starts from each candidate, then exchanges until none helps. */
  private List<FollowUp> exchanged() {
    List<FollowUp> found = new ArrayList<>();
    for (int start = 0; start < candidates.length; start++) {
      int[] chosen = new int[trials];
      java.util.Arrays.fill(chosen, start);
      double best = separation(chosen);
      for (boolean better = true; better;) {
        better = false;
        for (int t = 0; t < trials; t++) {
          int keep = chosen[t];
          for (int c = 0; c < candidates.length; c++) {
            int before = chosen[t];
            chosen[t] = c;
            double now = separation(chosen);
            if (now > best * (1 + 1e-12)) {
              best = now;
            } else {
              chosen[t] = before;
            }
          }
          better |= chosen[t] != keep;
        }
      }
      int[] sorted = IntStream.of(chosen).sorted().toArray();
      if (found.stream().noneMatch(f -> java.util.Arrays.equals(f.candidates, sorted))) {
        found.add(new FollowUp(sorted, best));
      }
    }
    return found;
  }

  private double separation(int[] chosen) {
    double[][][] v = new double[rivals.size()][][];
    double[][][] inverse = new double[rivals.size()][][];
    double[][] at = new double[rivals.size()][];
    for (int r = 0; r < v.length; r++) {
      Rival rival = rivals.get(r);
      v[r] = new double[trials][trials];
      for (int i = 0; i < trials; i++) {
        for (int j = 0; j < trials; j++) {
          v[r][i][j] = rival.spread[chosen[i]][chosen[j]] + (i == j ? 1 : 0);
        }
      }
      inverse[r] = Cholesky.of(v[r]).inverse();
      at[r] = IntStream.of(chosen).mapToDouble(c -> rival.prediction[c]).toArray();
    }
    double sum = 0;
    for (int i = 0; i < v.length; i++) {
      for (int j = 0; j < v.length; j++) {
        if (i != j) {
          double[] gap = new double[trials];
          for (int t = 0; t < trials; t++) {
            gap[t] = at[i][t] - at[j][t];
          }
          double distance = Matrices.dot(gap, Matrices.times(inverse[j], gap)) / rivals.get(i).variance;
          sum += rivals.get(i).probability * rivals.get(j).probability * (Matrices.trace(inverse[j], v[i]) - trials + distance);
        }
      }
    }
    return sum / 2;
  }
}
