package daubline.engine.design.next;

import daubline.engine.design.Design;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How far reconstructions are believed after trials, by Bayes' rule from equal belief. A reconstruction is taken to be wrong by one
 * unknown amount at every setting alike, normal with its own deviation; trials scatter about that. What the trials tell of this amount
 * also moves and sharpens what it predicts next. Without it a suggestion would ask for the same trial again and again.
 */
public final class Beliefs {

  private Beliefs() {
  }

  /**
   * The reconstructions as they stand after the trials burnt.
   *
   * @param rivals as they stood before
   * @param done the trials
   * @param outcomes the outcome of each, NaN where there is none
   * @param deviation the standard deviation between trials, greater than zero
   */
  public static List<Rival> after(List<Rival> rivals, Design done, double[] outcomes, double deviation) {
    int[] used = IntStream.range(0, outcomes.length).filter(i -> Double.isFinite(outcomes[i])
        && rivals.stream().allMatch(r -> Double.isFinite(r.prediction().applyAsDouble(done.settings().get(i))))).toArray();
    if (used.length == 0 || rivals.isEmpty()) {
      return rivals;
    }
    double[] weights = new double[rivals.size()];
    List<Rival> moved = new ArrayList<>();
    for (int k = 0; k < weights.length; k++) {
      Rival rival = rivals.get(k);
      double[] missed = Arrays.stream(used).mapToDouble(i -> (outcomes[i] - rival.prediction().applyAsDouble(done.settings().get(i))) / deviation).toArray();
      double own = Math.pow(rival.deviation() / deviation, 2);
      double sum = Arrays.stream(missed).sum();
      double shrunk = own / (1 + missed.length * own);
      double squares = Arrays.stream(missed).map(m -> m * m).sum();
      weights[k] = Math.log(rival.probability()) - 0.5 * (Math.log(1 + missed.length * own) + squares - shrunk * sum * sum);
      double shift = shrunk * sum * deviation;
      moved.add(new Rival(rival.name(), 0, s -> rival.prediction().applyAsDouble(s) + shift, Math.sqrt(shrunk) * deviation));
    }
    double most = Arrays.stream(weights).max().orElseThrow();
    return IntStream.range(0, weights.length).mapToObj(k -> new Rival(moved.get(k).name(), Math.exp(weights[k] - most), moved.get(k).prediction(), moved.get(k).deviation()))
        .toList();
  }
}
