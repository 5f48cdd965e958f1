package daubline.engine.process;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether the team's own smelts predict the next one better than the trade's experience does: each is left out in turn
 * and predicted from the others. Misses in points of recovery (bloom/(ore × Fe)).
 *
 * @param smelts number of smelts
 * @param own root mean square miss when predicted from the team's other smelts
 * @param trade root mean square miss of the middle of the published smelts
 */
public record OwnSkill(int smelts, double own, double trade) {

  private static final int LEAST = 3;

  /** The skill on these recoveries; empty below three smelts with a bloom. */
  public static Optional<OwnSkill> of(List<Double> recoveries) {
    List<Double> blooms = recoveries.stream().filter(r -> r > 0 && r < 1).toList();
    if (blooms.size() < LEAST) {
      return Optional.empty();
    }
    double published = RecoveryModel.of(List.of()).middle();
    double own = 0;
    double trade = 0;
    for (int i = 0; i < blooms.size(); i++) {
      List<Double> others = new ArrayList<>(blooms);
      others.remove(i);
      own += Math.pow(RecoveryModel.of(others).middle() - blooms.get(i), 2);
      trade += Math.pow(published - blooms.get(i), 2);
    }
    int n = blooms.size();
    return Optional.of(new OwnSkill(n, 100 * Math.sqrt(own / n), 100 * Math.sqrt(trade / n)));
  }

  /** Whether the team's own smelts do better. */
  public boolean isBetter() {
    return own < trade;
  }

  /** In one sentence. */
  public String sentence() {
    return String.format(Locale.ROOT, "left out one by one, your %d smelts are predicted from each other to %.0f points of recovery, by the trade's "
        + "experience to %.0f: %s", smelts, own, trade, isBetter() ? "your own record is the better guide" : "no better than the trade's experience");
  }
}
